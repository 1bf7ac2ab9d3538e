/** Modules that exist only while the site is finished (src/site/after-build/search-scripts.ts). */

declare module 'pagefind-client' {
  export interface PagefindResult {
    id: string;
    score: number;
    words: number[];
    matchedMetaFields?: string[];
    data(): Promise<PagefindFragment>;
  }
  export interface PagefindFragment {
    url: string;
    raw_url: string;
    raw_content: string;
    meta: Record<string, string>;
  }
  export function options(options: object): Promise<void>;
  /** @param term nothing for all pages */
  export function search(term: string | null): Promise<{ results: PagefindResult[] }>;
}

declare module 'shelf-names' {
  /** Words of titles and other names, most used first. */
  const names: string[];
  export default names;
}

declare module 'shelf-kinds' {
  import type { KindsOfPages } from '../kinds-of-pages.ts';

  const kinds: KindsOfPages;
  export default kinds;
}

declare module 'pagefind-core' {
  /** File name -> content, base64. */
  const core: Record<string, string>;
  export default core;
}
