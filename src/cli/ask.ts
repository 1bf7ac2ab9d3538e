/** One question at the terminal. */
import { stdin, stdout } from 'node:process';
import { createInterface } from 'node:readline/promises';
import { Refusal } from './command.ts';

/** Whoever answers has stopped, by Ctrl-C or the end of what was piped in. */
export class Stopped extends Refusal {}

/** Whether somebody is there to answer. */
export function canAsk(): boolean {
  return stdin.isTTY === true && stdout.isTTY === true;
}

/**
 * Asks until the answer has nothing wrong with it.
 * @param wrong what is wrong with an answer, in words; undefined where nothing is
 * @throws Stopped
 */
export async function ask(question: string, wrong: (answer: string) => string | undefined): Promise<string> {
  const lines = createInterface({ input: stdin, output: stdout });
  const stopped = new Promise<never>((_, fail) =>
    lines.once('close', () => fail(new Stopped('Stopped. Nothing was written.'))),
  );
  // Closed after the last answer it has nobody to tell.
  stopped.catch(() => undefined);
  try {
    for (;;) {
      const answer = await Promise.race([lines.question(question), stopped]);
      const says = wrong(answer);
      if (says === undefined) return answer;
      stdout.write(`${says}\n`);
    }
  } finally {
    lines.close();
  }
}
