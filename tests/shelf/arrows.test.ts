/** The arrows of the architecture: who may import whom. A line that breaks one is named. */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { expect, test } from 'vitest';

const SRC = resolve('src');

/** What each folder may import of the others, besides itself. */
const ALLOWED: Record<string, readonly string[]> = {
  physics: [],
  diagnosis: [],
  trace: ['physics', 'model'],
  // The frequency words stand with the arithmetic that gives them their numbers.
  model: ['diagnosis'],
  calculators: ['model', 'physics'],
  library: ['model', 'diagnosis', 'physics'],
  cli: ['library', 'model', 'diagnosis', 'physics'],
  site: ['library', 'model', 'diagnosis', 'physics', 'calculators', 'trace'],
};

/** Folders that run anywhere: no Node, no DOM library, no Astro. */
const PURE = ['physics', 'diagnosis', 'trace', 'model', 'calculators'];
const PACKAGES_OF_PURE = new Set(['zod', 'fastest-levenshtein', 'papaparse']);

interface Import {
  file: string;
  line: number;
  target: string;
}

function importsOf(folder: string): Import[] {
  return readdirSync(join(SRC, folder), { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.(ts|astro|mjs)$/.test(file))
    .flatMap((file) => {
      const path = join(SRC, folder, file);
      return readFileSync(path, 'utf8')
        .split('\n')
        .flatMap((text, at): Import[] => {
          const target = /(?:from|import)\s*\(?\s*'([^']+)'/.exec(text)?.[1];
          return target === undefined ? [] : [{ file: path, line: at + 1, target }];
        });
    });
}

test('every folder of src has its arrows', () => {
  const folders = readdirSync(SRC, { withFileTypes: true }).filter((entry) => entry.isDirectory());
  expect(folders.map(({ name }) => name).filter((name) => !(name in ALLOWED))).toEqual([]);
});

test.each(Object.entries(ALLOWED))('%s imports only what it may', (folder, allowed) => {
  const broken = importsOf(folder).flatMap(({ file, line, target }) => {
    const where = `${relative('.', file)}:${line} imports ${target}`;
    if (target.startsWith('.')) {
      const into = relative(SRC, resolve(dirname(file), target)).split(/[\\/]/)[0] ?? '';
      // A path that leaves src leads to package.json or the like, which no folder may need.
      return into === folder || allowed.includes(into) ? [] : [where];
    }
    if (!PURE.includes(folder)) return [];
    return PACKAGES_OF_PURE.has(target) ? [] : [where];
  });
  expect(broken).toEqual([]);
});

test('pure folders touch no document, window or storage', () => {
  const touching = PURE.flatMap((folder) => {
    const files = readdirSync(join(SRC, folder), { recursive: true, encoding: 'utf8' }).filter((file) =>
      file.endsWith('.ts'),
    );
    return files.flatMap((file) => {
      const text = readFileSync(join(SRC, folder, file), 'utf8');
      return /\b(document|window|localStorage|navigator)\.\w/.test(text) ? [join(folder, file)] : [];
    });
  });
  expect(touching).toEqual([]);
});
