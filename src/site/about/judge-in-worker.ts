/** Trees judged in a thread of its own, so that the pages need not wait: each takes a search of some hundredths of a second. */
import { resolve } from 'node:path';
import { Worker } from 'node:worker_threads';
import type { CompiledModel } from '../../diagnosis/compiled.ts';
import type { Tree } from '../../diagnosis/tree.ts';

export interface JudgeTask {
  symptom: string;
  compiled: CompiledModel;
  tree: Tree;
}

export interface JudgedTree {
  /** Expected minutes of the tree followed to a proven cause, wrong turns included, and what nine in ten stay within. */
  minutes: number;
  nineInTen: number;
  /** Chance that the true cause is proven before the car is passed on. */
  proven: number;
  /** Expected minutes of the best plan found, and minutes that none can beat. */
  best: number;
  bound: number;
  /** Tree over best found, 1 or more. */
  ratio: number;
}

/**
 * @returns in the order of the trees
 * @throws Error when a tree cannot be walked; the shelf check reports that first
 */
export function judgeInWorker(trees: readonly JudgeTask[]): Promise<JudgedTree[]> {
  return new Promise((done, failed) => {
    // By its place in the project: the module that calls it is bundled somewhere else.
    const worker = new Worker(resolve('src/site/about/judge-worker.ts'), { workerData: trees });
    worker.once('message', done);
    worker.once('error', failed);
  });
}
