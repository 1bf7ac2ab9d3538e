/** A record that was renamed or merged leaves a page that sends the reader on. */
import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { Shelf } from '../../library/shelf.ts';
import { KINDS } from '../../model/kinds.ts';
import type { Output } from './output.ts';

export async function writeMovedPages(output: Output, moved: Shelf['moved']): Promise<void> {
  for (const { kind, id, to } of moved) {
    const name = `${KINDS[kind].folder}/${id}.html`;
    const page = movedPage(to);
    await mkdir(dirname(join(output.folder, name)), { recursive: true });
    await writeFile(join(output.folder, name), page);
    output.pages.set(name, page);
  }
}

/** Ids are kebab-case words, so they need no escape. */
function movedPage(to: string): string {
  return `<!doctype html>
<html lang="en-GB">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="robots" content="noindex">
<meta http-equiv="refresh" content="0; url=${to}.html">
<title>Moved · Headertank</title>
</head>
<body><main><h1>This record has moved</h1><p><a href="${to}.html">Go to its new place</a></p></main></body>
</html>
`;
}
