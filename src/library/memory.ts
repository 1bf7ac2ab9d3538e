/**
 * What the last check worked out, so that the next one does it again only for what has changed.
 *
 * Lies in node_modules/.cache. Keyed by content: a text, or a model with its tree; and by the code that worked it
 * out, so that a changed rule is never answered from memory. Deleting it costs a second and nothing else.
 */
import { createHash } from 'node:crypto';
import { mkdir, readdir, readFile, rename, writeFile } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';

export interface Memory {
  /** What was worked out from this content, or undefined. */
  recall(content: string): unknown;
  /** @param value plain data, as JSON keeps it */
  remember(content: string, value: unknown): void;
}

/** Remembers nothing: for tests, and where nothing may be written. */
export const NO_MEMORY: Memory = { recall: () => undefined, remember: () => undefined };

export interface KeptMemory extends Memory {
  /** Writes down what this run used or worked out; where that cannot be written, the next run is only slower. */
  keep(): Promise<void>;
}

const FOLDER = 'node_modules/.cache/headertank';
/** The code whose answers are remembered. */
const CODE = ['src/model', 'src/diagnosis', 'src/recogniser', 'src/library'];

/** @param shelf which shelf, so that two do not push each other out */
export async function openMemory(shelf: string): Promise<KeptMemory> {
  const code = await codeHash();
  if (code === undefined) return { ...NO_MEMORY, keep: () => Promise.resolve() };
  const file = resolve(FOLDER, `${hashOf(shelf)}.json`);
  const before = await readKept(file, code);
  const now = new Map<string, unknown>();
  let news = false;
  return {
    recall(content) {
      const key = hashOf(content);
      const value = now.get(key) ?? before.get(key);
      if (value !== undefined) now.set(key, value);
      return value;
    },
    remember(content, value) {
      now.set(hashOf(content), value);
      news = true;
    },
    async keep() {
      if (!news && now.size === before.size) return;
      try {
        await mkdir(dirname(file), { recursive: true });
        // Two runs at once: each writes whole, the later one stands.
        const draft = `${file}.${process.pid}`;
        await writeFile(draft, JSON.stringify({ code, answers: [...now] }));
        await rename(draft, file);
      } catch {
        // Nowhere to write: not worth a word.
      }
    },
  };
}

function hashOf(content: string): string {
  return createHash('sha1').update(content).digest('base64url');
}

/** Undefined when the code does not lie here: the check runs from somewhere else. */
async function codeHash(): Promise<string | undefined> {
  try {
    const hash = createHash('sha1');
    for (const folder of CODE) {
      const files = (await readdir(folder, { recursive: true }))
        .filter((name) => name.endsWith('.ts'))
        .sort();
      for (const name of files) hash.update(name).update(await readFile(join(folder, name)));
    }
    hash.update(await readFile('node_modules/yaml/package.json'));
    return hash.digest('base64url');
  } catch {
    return undefined;
  }
}

async function readKept(file: string, code: string): Promise<Map<string, unknown>> {
  try {
    const kept: unknown = JSON.parse(await readFile(file, 'utf8'));
    if (typeof kept !== 'object' || kept === null || !('code' in kept) || !('answers' in kept))
      return new Map();
    return kept.code === code ? new Map(kept.answers as [string, unknown][]) : new Map();
  } catch {
    return new Map();
  }
}
