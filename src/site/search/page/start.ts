/** The search engine, loaded with the first search: as a worker beside the page, or as a script in it. */
import { ask, type Question, type SearchAnswer } from './engine.ts';

export interface SearchEngine {
  /** @throws Error when a part of the index cannot be fetched */
  ask(question: Question): Promise<SearchAnswer>;
}

/** To the worker. */
export interface SearchRequest {
  turn: number;
  question: Question;
}

/** From the worker; without an answer when a part of the index cannot be fetched. */
export interface SearchReply {
  turn: number;
  answer?: SearchAnswer;
}

declare global {
  var headertankSearch: SearchEngine | undefined;
}

if (typeof window === 'undefined')
  addEventListener('message', async ({ data: { turn, question } }: MessageEvent<SearchRequest>) => {
    const reply: SearchReply = await ask(question).then(
      (answer) => ({ turn, answer }),
      () => ({ turn }),
    );
    postMessage(reply);
  });
else globalThis.headertankSearch = { ask };
