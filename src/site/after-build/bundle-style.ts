/** Style files as one, without what only their writers need. */
import { readFile } from 'node:fs/promises';
import { transform } from 'esbuild';

/** @throws Error when a file cannot be read */
export async function bundleStyle(files: readonly string[]): Promise<string> {
  const texts = await Promise.all(files.map((file) => readFile(file, 'utf8')));
  const { code } = await transform(texts.join(''), { loader: 'css', minify: true, charset: 'utf8' });
  return code;
}
