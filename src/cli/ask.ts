/** One question at the terminal. */
import { stdin, stdout } from 'node:process';
import { createInterface } from 'node:readline/promises';

/** Whether somebody is there to answer. */
export function canAsk(): boolean {
  return stdin.isTTY === true && stdout.isTTY === true;
}

/**
 * Asks until the answer has nothing wrong with it.
 * @param wrong what is wrong with an answer, in words; undefined where nothing is
 */
export async function ask(question: string, wrong: (answer: string) => string | undefined): Promise<string> {
  const lines = createInterface({ input: stdin, output: stdout });
  try {
    for (;;) {
      const answer = await lines.question(question);
      const says = wrong(answer);
      if (says === undefined) return answer;
      stdout.write(`${says}\n`);
    }
  } finally {
    lines.close();
  }
}
