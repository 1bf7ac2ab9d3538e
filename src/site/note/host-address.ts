/** The page on the repository's host where a new file is proposed. */
import type { HostKind } from '../../model/shop.ts';

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
  if (!/^https?:\/\//.test(repository.address)) return undefined;
  const kind = hostKind(repository);
  if (!kind) return undefined;
  const base = repository.address.replace(/(?:\.git)?\/*$/, '');
  const branch = (repository.branch ?? 'main').split('/').map(encodeURIComponent).join('/');
  const [page, query] = ADDRESSES[kind](branch, path, text);
  const href = `${base}/${page}?${encoded(query)}`;
  if (href.length <= LONGEST) return { href, carriesText: 'value' in query };
  const { value: _, ...short } = query;
  return { href: `${base}/${page}?${encoded(short)}`, carriesText: false };
}

/** With %20 for a space: not every host takes a plus for one. */
function encoded(query: Record<string, string>): string {
  return Object.entries(query)
    .map(([name, value]) => `${name}=${encodeURIComponent(value)}`)
    .join('&');
}
