/** What every command does alike: arguments in one way, and what goes wrong said in a sentence instead of a trace. */
import { type ParseArgsConfig, parseArgs } from 'node:util';

/** Wrong use of a command, or a folder that is not there; 1 is for what a command has found wrong. */
const WRONG_USE = 2;

/** What went wrong and what to do, for the person at the terminal. */
export class Refusal extends Error {}

/** Somebody asked how a command is called. */
class Help extends Error {}

/**
 * The options and words a command was called with.
 * @param use how it is called, a line
 * @param most words it takes beside its options
 * @throws Refusal for what is not understood, with that line; and for --help, which runCommand answers with it
 */
export function readArguments<T extends ParseArgsConfig>(
  use: string,
  config: T,
  most = 1,
): ReturnType<typeof parseArgs<T>> {
  if (process.argv.slice(2).some((word) => word === '--help' || word === '-h')) throw new Help(use);
  const read = parsed(use, config);
  const tooMany = read.positionals[most];
  if (tooMany !== undefined)
    throw new Refusal(`"${tooMany}" is a word too many; words that belong together go in quotes.\n${use}`);
  return read;
}

function parsed<T extends ParseArgsConfig>(use: string, config: T): ReturnType<typeof parseArgs<T>> {
  try {
    return parseArgs(config);
  } catch (error) {
    // Behind its first sentence comes advice that npm's own "--" makes wrong.
    const [says] = (error as Error).message.split(/\. |\n/);
    throw new Refusal(`${says?.replace(/\.$/, '')}.\n${use}`);
  }
}

/** Runs a command. What it throws is said in a sentence, and the exit code tells that nothing was done. */
export async function runCommand(command: () => Promise<void> | void): Promise<void> {
  try {
    await command();
  } catch (error) {
    if (error instanceof Help) {
      process.stdout.write(`${error.message}\n`);
      return;
    }
    process.stderr.write(`${wordsFor(error)}\n`);
    process.exitCode = WRONG_USE;
  }
}

/** An error as a sentence. */
export function wordsFor(error: unknown): string {
  const { code, path, message } = error as NodeJS.ErrnoException;
  if (path !== undefined && (code === 'ENOENT' || code === 'ENOTDIR'))
    return `There is no folder "${path}". Give the folder of a shelf, such as content.`;
  return message;
}
