import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import { expect, test } from 'vitest';

/** What a symptom page needs: ranking, contradiction, next step, reasons. */
const NEEDED = `
  export { compile } from './compiled.ts';
  export { posterior } from './posterior.ts';
  export { contradiction } from './contradiction.ts';
  export { nextStep, splitOf } from './next-step.ts';
  export { reasonFor, describeContradiction } from './reason.ts';
`;

async function bundle(): Promise<{ code: string; files: string[] }> {
  const result = await build({
    stdin: {
      contents: NEEDED,
      resolveDir: new URL('../../src/diagnosis', import.meta.url).pathname,
      loader: 'ts',
    },
    bundle: true,
    minify: true,
    format: 'esm',
    write: false,
    metafile: true,
  });
  return { code: result.outputFiles[0]?.text ?? '', files: Object.keys(result.metafile.inputs) };
}

test('the part for the page draws in no search, tree or bound', async () => {
  const { files } = await bundle();
  expect(files.length).toBeGreaterThan(8);
  expect(
    files.filter((file) => /exact-search|best-policy|lower-bound|relaxed|tree|soundness|budget/.test(file)),
  ).toEqual([]);
  for (const file of files) expect(file, 'outside diagnosis').toMatch(/src\/diagnosis\/|<stdin>/);
});

// A quarter of the 35 kB a symptom page may weigh with everything.
test('the part for the page stays small', async () => {
  const { code } = await bundle();
  expect(gzipSync(code).length).toBeLessThan(8_750);
});
