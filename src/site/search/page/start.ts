/** The search engine, loaded with the first search: as a worker beside the page, or as a script in it. */
import { type Answer, ask, type Question } from './engine.ts';

export interface SearchEngine {
  /** @throws Error when a part of the index cannot be fetched */
  ask(question: Question): Promise<Answer>;
}

/** To the worker. */
export interface Asked {
  turn: number;
  question: Question;
}

/** From the worker; without an answer when a part of the index cannot be fetched. */
export interface Replied {
  turn: number;
  answer?: Answer;
}

declare global {
  var headertankSearch: SearchEngine | undefined;
}

if (typeof window === 'undefined')
  addEventListener('message', async ({ data: { turn, question } }: MessageEvent<Asked>) => {
    const reply: Replied = await ask(question).then(
      (answer) => ({ turn, answer }),
      () => ({ turn }),
    );
    postMessage(reply);
  });
else globalThis.headertankSearch = { ask };
