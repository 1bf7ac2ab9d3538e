/** While writing, every change in content/ is checked at once: the terminal and the browser show what `npm run check` would. */
import type { ViteDevServer } from 'vite';
import type { Finding } from '../../library/finding.ts';
import { readShelf } from '../../library/read-shelf.ts';
import { reportText, summary } from '../../library/report/text.ts';

/** Editors save in several steps; they are one change. */
const PAUSE = 50;

/** Checks the shelf now and after each change under `content`, and shows the findings on the page. */
export async function watchShelf(server: ViteDevServer, content: string): Promise<void> {
  let timer: NodeJS.Timeout | undefined;
  server.watcher.add(content);
  server.watcher.on('all', (_event, path) => {
    if (!path.startsWith(content)) return;
    clearTimeout(timer);
    timer = setTimeout(() => checkAgain(server, content), PAUSE);
  });
  report(await check(content));
}

interface Checked {
  findings: Finding[];
  count: number;
  seconds: number;
}

async function check(content: string): Promise<Checked> {
  const began = performance.now();
  const { findings, count } = await readShelf(content);
  return { findings, count, seconds: (performance.now() - began) / 1000 };
}

function report({ findings, count, seconds }: Checked): void {
  if (findings.length > 0) process.stdout.write(`${reportText(findings)}\n`);
  process.stdout.write(`${summary(findings, { records: count, seconds })}\n`);
}

async function checkAgain(server: ViteDevServer, content: string): Promise<void> {
  const checked = await check(content);
  report(checked);
  for (const environment of Object.values(server.environments)) environment.moduleGraph.invalidateAll();
  const errors = checked.findings.filter(({ level }) => level === 'error');
  if (errors.length > 0) server.ws.send({ type: 'error', err: overlay(errors) });
  else server.ws.send({ type: 'full-reload', path: '*' });
}

function overlay(errors: readonly Finding[]) {
  const place = errors[0]?.place;
  const where = place ? { loc: { file: place.file, line: place.line, column: place.column } } : {};
  return { message: reportText(errors), stack: '', plugin: 'npm run check', ...where };
}
