/** Documents as Markdown and as plain HTML. */
import { type Document, FOLDERS, type Piece } from './document.ts';

/**
 * @param hrefOf address of a page from its path
 * @param headed the title as a heading too, for who does not make one of the front matter
 */
export function markdownOf(
  { title, description, sections }: Document,
  hrefOf: (path: string) => string,
  headed: boolean,
): string {
  const say = (pieces: readonly Piece[]) =>
    pieces
      .map((piece) => (typeof piece === 'string' ? piece : `[${piece.text}](${hrefOf(piece.path)})`))
      .join('');
  const body = sections.flatMap(({ heading, items, isList }) => [
    `## ${heading}`,
    isList ? items.map((item) => `- ${say(item)}`).join('\n') : items.map(say).join('\n\n'),
  ]);
  const head = headed ? [`# ${title}`] : [];
  const front = `title: ${JSON.stringify(title)}\ndescription: ${JSON.stringify(description)}`;
  return `---\n${front}\n---\n\n${[...head, ...body].join('\n\n')}\n`;
}

/** Title and sections as a page that somebody typed: no framework, no script, one style sheet. */
export function plainPageOf(
  { title, description, sections }: Document,
  hrefOf: (path: string) => string,
): string {
  const say = (pieces: readonly Piece[]) =>
    pieces
      .map((piece) =>
        typeof piece === 'string'
          ? escaped(piece)
          : `<a href="${hrefOf(piece.path)}">${escaped(piece.text)}</a>`,
      )
      .join('');
  const body = sections.flatMap(({ heading, items, isList }) => [
    `<h2>${escaped(heading)}</h2>`,
    isList
      ? `<ul>\n${items.map((item) => `<li>${say(item)}</li>`).join('\n')}\n</ul>`
      : items.map((item) => `<p>${say(item)}</p>`).join('\n'),
  ]);
  const menu = FOLDERS.map(({ folder, many }) => `<a href="${hrefOf(`${folder}/index`)}">${many}</a>`);
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(title)}</title>
<meta name="description" content="${escaped(description)}">
<link rel="icon" href="data:,">
<link rel="stylesheet" href="/plain.css">
</head>
<body>
<nav>${menu.join(' ')}</nav>
<main>
<h1>${escaped(title)}</h1>
${body.join('\n')}
</main>
</body>
</html>
`;
}

function escaped(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/"/g, '&quot;');
}
