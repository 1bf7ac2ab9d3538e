/** A file of the shelf: its bytes as text, and where on the shelf it belongs. */
import { KIND_NAMES, KINDS, type Kind } from '../model/kinds.ts';

/** A file as it comes from the disk, or from a test. */
export interface RawFile {
  /** Path within the shelf, with forward slashes: tests/hose-warm-up.yaml. */
  path: string;
  bytes: Uint8Array;
  /** Why the bytes were not read: they stand elsewhere, are no file, or are too many. */
  unread?: UnreadableReason;
}

export type UnreadableReason = 'link' | 'no-file' | 'too-large';

/** What a file is by its place on the shelf. */
export type Role =
  | { is: 'record'; kind: Kind; id: string }
  | { is: 'shop' }
  | { is: 'words' }
  | { is: 'learning' }
  | { is: 'counts'; year: string }
  | { is: 'guide'; id: string }
  | { is: 'unexpected' };

export interface SourceFile {
  /** As shown to people: content/tests/hose-warm-up.yaml. */
  file: string;
  path: string;
  role: Role;
  text: string;
  /** False when the bytes are not UTF-8; the text then has replacement characters. */
  utf8: boolean;
  /** Why the text is empty although something lies here. */
  unread?: UnreadableReason;
}

const strictDecoder = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });
const lossyDecoder = new TextDecoder('utf-8', { ignoreBOM: true });

/** @param shelf how the shelf's folder is shown to people */
export function sourceFile(shelf: string, { path, bytes, unread }: RawFile): SourceFile {
  const file = shelf === '' ? path : `${shelf}/${path}`;
  const role = roleOf(path);
  if (unread !== undefined) return { file, path, role, text: '', utf8: true, unread };
  try {
    return { file, path, role, text: strictDecoder.decode(bytes), utf8: true };
  } catch {
    return { file, path, role, text: lossyDecoder.decode(bytes), utf8: false };
  }
}

const FOLDER_TO_KIND = new Map<string, Kind>(KIND_NAMES.map((kind) => [KINDS[kind].folder, kind]));

/** What stands at a path: the folder is the kind, the file name the id; notes lie in a folder per year. */
function roleOf(path: string): Role {
  if (path === 'shop.yaml') return { is: 'shop' };
  if (path === 'words.yaml') return { is: 'words' };
  if (path === 'learning.yaml') return { is: 'learning' };
  const parts = path.split('/');
  const name = parts.at(-1) ?? '';
  const [folder = ''] = parts;
  if (folder === 'guides' && parts.length === 2 && name.endsWith('.mdx'))
    return { is: 'guide', id: name.slice(0, -'.mdx'.length) };
  const year = /^counts\/(\d{4})\.yaml$/.exec(path)?.[1];
  if (year !== undefined) return { is: 'counts', year };
  const kind = FOLDER_TO_KIND.get(folder);
  const id = /^(.+)\.ya?ml$/.exec(name)?.[1];
  if (kind === undefined || id === undefined) return { is: 'unexpected' };
  const depthIsRight =
    kind === 'note' ? parts.length === 3 && /^\d{4}$/.test(parts[1] ?? '') : parts.length === 2;
  return depthIsRight ? { is: 'record', kind, id } : { is: 'unexpected' };
}
