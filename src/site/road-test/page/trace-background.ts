/** Has logs read without holding up the page: in a worker, or in slices on the page where there is none. */
import '../../browser/page-globals.ts';
import type { LogFault } from '../../../trace/read/read-log.ts';
import { loadScript } from '../../browser/load-script.ts';
import type { Order, ReaderAnswer, TraceReader } from './trace-reader.ts';

/** A slice on the page ends after so long, ms: under a frame at 60 a second. */
const SLICE = 10;

const BROKEN: LogFault = {
  id: 'broken',
  message:
    'The reader stopped at this log; nothing is said about it. Cut it to the one drive, with fewer columns, and choose it again.',
  columns: [],
  layout: undefined,
};

/** Reads logs in a worker, or on the page where there can be none. */
export class BackgroundReader {
  private worker: Worker | undefined;
  private onPage: Promise<TraceReader> | undefined;
  /** Orders given; answers to an older one are not wanted any more. */
  private current = 0;
  /** Orders the worker has not finished with. */
  private waiting = 0;
  private file: ArrayBuffer | undefined;
  private readonly answer: (answer: ReaderAnswer) => void;

  constructor(answer: (answer: ReaderAnswer) => void) {
    this.answer = answer;
  }

  /** Gives an order; the answers come one after the other, the last one being a fault or a judgement. */
  give(order: Order): void {
    if (order.bytes) this.file = order.bytes;
    this.current++;
    if (this.worker || !this.onPage) this.inWorker(order);
    else void this.inSlices(order, this.current);
  }

  private inWorker(order: Order): void {
    const number = this.current;
    const gone = () => {
      this.worker?.terminate();
      this.worker = undefined;
      this.onPage ??= readerOnPage();
      // Nothing is lost: the page has kept the file and reads it itself.
      void this.inSlices({ ...order, ...(this.file && { bytes: this.file }) }, number);
    };
    try {
      this.worker ??= new Worker(new URL('scripts/trace-worker.js', window.headertank.root));
    } catch {
      gone();
      return;
    }
    this.waiting++;
    this.worker.onmessage = ({ data }: MessageEvent<ReaderAnswer>) => {
      if (data.kind !== 'progress') this.waiting--;
      // An answer to an order that a later one has overtaken would put the page back for a moment.
      if (this.waiting === 0 || data.kind === 'progress') this.answer(data);
    };
    this.worker.onerror = (event) => {
      event.preventDefault();
      gone();
    };
    this.worker.postMessage(order);
  }

  private async inSlices(order: Order, number: number): Promise<void> {
    const reader = await this.onPage;
    if (!reader) return;
    try {
      let started = performance.now();
      for (const answer of reader.work(order)) {
        if (number !== this.current) return;
        if (answer && answer.kind !== 'progress') this.answer(answer);
        if (performance.now() - started < SLICE) continue;
        if (answer?.kind === 'progress') this.answer(answer);
        await new Promise((rested) => setTimeout(rested));
        started = performance.now();
      }
    } catch {
      // What the worker stumbled over, the page stumbles over again: that is said, and the next log can be read.
      if (number === this.current) this.answer({ kind: 'fault', fault: BROKEN });
    }
  }
}

async function readerOnPage(): Promise<TraceReader> {
  const come = new Promise<TraceReader>((resolve) => {
    document.addEventListener('headertank:trace-reader', ({ detail: Reader }) => resolve(new Reader()), {
      once: true,
    });
  });
  await loadScript('trace-worker');
  return come;
}
