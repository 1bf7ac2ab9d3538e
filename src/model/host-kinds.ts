/** Kinds of repository host whose pages for a new file and for editing one are known. */
export const HOST_KINDS = ['github', 'gitlab', 'forgejo', 'bitbucket'] as const;
export type HostKind = (typeof HOST_KINDS)[number];
