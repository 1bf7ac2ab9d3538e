/** The scripts of the site: scripts/<name>.js from each file of src/site/islands, calculators/<id>.js from each declaration. */
import { readdirSync } from 'node:fs';
import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { CALCULATOR_IDS } from '../../model/calculator-ids.ts';
import { bundleScript } from './bundle-script.ts';
import type { Output } from './output.ts';

/** What the first script of every page has already, so that no other brings it again; it is in PageGlobals as well. */
const ON_PAGE = {
  'browser/element.ts': ['element', 'button'],
  'browser/load-script.ts': ['loadScript'],
};
const FIRST = 'page';
const DECLARED = 'declared-calculator';

/** Makes a script. @throws Error with the bundler's message */
export type MakeScript = (minify: boolean) => Promise<string>;

/**
 * Every script of the site and how it is made, by its address from the root.
 * @param source src/site
 */
export function scriptsOf(source: string): Map<string, MakeScript> {
  const islands = readdirSync(join(source, 'islands')).sort();
  return new Map([
    ...islands.map((file): [string, MakeScript] => {
      const name = file.replace(/\.ts$/, '');
      const onPage = name === FIRST ? {} : ON_PAGE;
      return [
        `scripts/${name}.js`,
        (minify) => bundleScript(join(source, 'islands', file), { minify, onPage }),
      ];
    }),
    ...CALCULATOR_IDS.map((id): [string, MakeScript] => {
      const modules = { [DECLARED]: { text: declaration(source, id), loader: 'js' as const } };
      return [`calculators/${id}.js`, (minify) => bundleScript(DECLARED, { minify, modules })];
    }),
  ]);
}

/** The file named like the id exports its declaration and nothing else. */
function declaration(source: string, id: string): string {
  const file = JSON.stringify(join(source, '../calculators', `${id}.ts`));
  return `import * as file from ${file};
const [detail] = Object.values(file);
document.dispatchEvent(new CustomEvent('headertank:calculator', { detail }));`;
}

/** Makes and writes all of them. */
export async function writeScripts(output: Output, source: string): Promise<void> {
  // The bundler has a process of its own: asked for all at once, it is not kept waiting.
  const made = await Promise.all(
    [...scriptsOf(source)].map(async ([address, make]) => ({ address, text: await make(true) })),
  );
  for (const { address, text } of made) await writeScript(output, address, text);
}

/**
 * Writes a script into the output.
 * @param address its path there
 */
export async function writeScript(output: Output, address: string, text: string): Promise<void> {
  await mkdir(dirname(join(output.folder, address)), { recursive: true });
  await writeFile(join(output.folder, address), text);
  output.others.add(address);
}
