/** One calculator's declaration with its arithmetic as a classic script, asked for by calculator-live when it is wanted. */
import { resolve } from 'node:path';
import type { APIRoute } from 'astro';
import { CALCULATORS } from '../../../calculators/catalogue.ts';
import { bundleScript } from '../../after-build/bundle-script.ts';

export const getStaticPaths = () => CALCULATORS.map(({ id }) => ({ params: { id } }));

const ENTRY = 'declared-calculator';

/** The file named like the id exports its declaration and nothing else. */
function entryText(id: string): string {
  const file = JSON.stringify(resolve('src/calculators', `${id}.ts`));
  return `import * as file from ${file};
const [detail] = Object.values(file);
document.dispatchEvent(new CustomEvent('headertank:calculator', { detail }));`;
}

export const GET: APIRoute = async ({ params: { id = '' } }) => {
  const modules = { [ENTRY]: { text: entryText(id), loader: 'js' as const } };
  return new Response(await bundleScript(ENTRY, { minify: true, modules }), {
    headers: { 'content-type': 'text/javascript; charset=utf-8' },
  });
};
