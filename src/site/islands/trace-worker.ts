/**
 * scripts/trace-worker.js: started as a worker it reads logs in the background; loaded by a page, where a browser
 * refuses workers (a folder opened from a stick), it hands its reader over instead.
 */
import { type Order, type ReaderAnswer, TraceReader } from '../road-test/page/trace-reader.ts';

declare global {
  interface DocumentEventMap {
    /** The reader has come to the page itself. */
    'headertank:trace-reader': CustomEvent<typeof TraceReader>;
  }
}

interface Scope {
  onmessage: ((event: MessageEvent<Order>) => void) | null;
  postMessage(answer: ReaderAnswer): void;
}

/** Progress is told so often at most, ms. */
const TELL_EVERY = 100;

if (typeof document === 'undefined') {
  const scope = globalThis as unknown as Scope;
  const reader = new TraceReader();
  scope.onmessage = ({ data }) => {
    let told = 0;
    for (const answer of reader.work(data)) {
      if (!answer) continue;
      if (answer.kind === 'progress') {
        const now = performance.now();
        if (now - told < TELL_EVERY) continue;
        told = now;
      }
      scope.postMessage(answer);
    }
  };
} else {
  document.dispatchEvent(new CustomEvent('headertank:trace-reader', { detail: TraceReader }));
}
