/** The page's way to the search engine. */
import { loadScript } from '../../browser/load-script.ts';
import type { SearchAnswer } from './engine.ts';
import type { SearchEngine, SearchReply, SearchRequest } from './start.ts';
import '../../browser/page-globals.ts';

let opening: Promise<SearchEngine> | undefined;

/**
 * Beside the page, where a common word never holds up the typing; in the page when it was opened from its folder, where
 * browsers start no workers.
 * @throws Error when it cannot be fetched; the next call tries again
 */
export function openSearch(): Promise<SearchEngine> {
  opening ??= location.protocol === 'file:' ? inPage() : besidePage();
  return opening;
}

async function inPage(): Promise<SearchEngine> {
  try {
    await loadScript('search-start');
    if (!globalThis.headertankSearch) throw new Error('scripts/search-start.js is not the search.');
    return globalThis.headertankSearch;
  } catch (error) {
    opening = undefined;
    throw error;
  }
}

async function besidePage(): Promise<SearchEngine> {
  const worker = new Worker(new URL('scripts/search-start.js', window.headertank.root));
  const waiting = new Map<number, { resolve(answer: SearchAnswer): void; reject(error: Error): void }>();
  let turn = 0;
  worker.addEventListener('message', ({ data }: MessageEvent<SearchReply>) => {
    const asker = waiting.get(data.turn);
    waiting.delete(data.turn);
    if (data.answer) asker?.resolve(data.answer);
    else asker?.reject(new Error('A part of the index cannot be fetched.'));
  });
  worker.addEventListener('error', () => {
    opening = undefined;
    worker.terminate();
    for (const { reject } of waiting.values()) reject(new Error('The search cannot be fetched.'));
    waiting.clear();
  });
  return {
    ask: (question) =>
      new Promise((resolve, reject) => {
        const asked: SearchRequest = { turn: ++turn, question };
        waiting.set(asked.turn, { resolve, reject });
        worker.postMessage(asked);
      }),
  };
}
