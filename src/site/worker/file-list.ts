/** Everything one version of the site consists of, made when the site is finished. */

export interface ListedFile {
  /** Address from the root of the site. */
  path: string;
  /** First 128 bits of the content's SHA-256, base64url. */
  hash: string;
  /** Bytes. */
  size: number;
}

/** Some files one behind the other in one compressed file, so that a first install takes few requests. */
export interface Pack {
  path: string;
  /** Number of the listed files in it; packs follow the order of the list. */
  files: number;
}

export interface FileList {
  version: string;
  files: ListedFile[];
  packs: Pack[];
}
