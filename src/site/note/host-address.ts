/** Pages of the repository's host: where a new file is proposed, and where one is edited. */
import type { HostKind } from '../../model/host-kinds.ts';

export interface Repository {
  /** As it stands in content/shop.yaml. */
  address: string;
  host?: HostKind | undefined;
  branch?: string | undefined;
}

export interface NewFilePage {
  href: string;
  /** False when the host takes the text only by pasting: its address has no place for it, or the text is too long for one. */
  carriesText: boolean;
}

/**
 * How each host's new-file address is made. GitHub and Gitea document `filename` and `value` (docs.gitea.com, Integrations;
 * github.com/isaacs/github issue 1527); GitLab and Bitbucket take a name only, from memory.
 */
const ADDRESSES: Record<
  HostKind,
  (branch: string, path: string, text: string) => [string, Record<string, string>]
> = {
  github: (branch, filename, value) => [`new/${branch}`, { filename, value }],
  forgejo: (branch, filename, value) => [`_new/${branch}/`, { filename, value }],
  gitlab: (branch, file_name) => [`-/new/${branch}`, { file_name }],
  bitbucket: (branch, filename) => [`create-file/${branch}`, { at: branch, filename }],
};

/** How each host's edit page is addressed; Bitbucket's from memory. */
const EDIT: Record<HostKind, (branch: string, path: string) => string> = {
  github: (branch, path) => `edit/${branch}/${path}`,
  forgejo: (branch, path) => `_edit/${branch}/${path}`,
  gitlab: (branch, path) => `-/edit/${branch}/${path}`,
  bitbucket: (branch, path) => `src/${branch}/${path}?mode=edit`,
};

/** Longer addresses are refused by some hosts; 8,192 bytes is the common limit. */
const LONGEST = 7000;

/** The kind of host, stated or told by its name; undefined when neither. */
export function hostKind({ address, host }: Repository): HostKind | undefined {
  if (host) return host;
  const name = new URL(address).hostname;
  if (/(^|\.)github\./.test(name)) return 'github';
  if (/(^|\.)gitlab\./.test(name)) return 'gitlab';
  if (/(^|\.)bitbucket\./.test(name)) return 'bitbucket';
  if (/(^|\.)(codeberg\.org|gitea\.|forgejo\.)/.test(`${name}.`)) return 'forgejo';
  return undefined;
}

/**
 * @param path of the file from the repository's top
 * @returns undefined when the repository is no web address or its kind of host is not known
 */
export function newFilePage(repository: Repository, path: string, text: string): NewFilePage | undefined {
  const found = placeOf(repository);
  if (!found) return undefined;
  const { kind, base, branch } = found;
  const [page, query] = ADDRESSES[kind](branch, path, text);
  const href = `${base}/${page}?${encoded(query)}`;
  if (href.length <= LONGEST) return { href, carriesText: 'value' in query };
  const { value: _, ...short } = query;
  return { href: `${base}/${page}?${encoded(short)}`, carriesText: false };
}

/**
 * The page where a file of the repository is edited.
 * @param path of the file from the repository's top
 * @returns undefined when the repository is no web address or its kind of host is not known
 */
export function editPage(repository: Repository, path: string): string | undefined {
  const found = placeOf(repository);
  return found && `${found.base}/${EDIT[found.kind](found.branch, inPath(path))}`;
}

function placeOf(repository: Repository): { kind: HostKind; base: string; branch: string } | undefined {
  if (!/^https?:\/\//.test(repository.address)) return undefined;
  const kind = hostKind(repository);
  const base = repository.address.replace(/(?:\.git)?\/*$/, '');
  return kind && { kind, base, branch: inPath(repository.branch ?? 'main') };
}

function inPath(path: string): string {
  return path.split('/').map(encodeURIComponent).join('/');
}

/** With %20 for a space: not every host takes a plus for one. */
function encoded(query: Record<string, string>): string {
  return Object.entries(query)
    .map(([name, value]) => `${name}=${encodeURIComponent(value)}`)
    .join('&');
}
