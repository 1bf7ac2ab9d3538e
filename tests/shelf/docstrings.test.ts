/** What a file gives to others says what it is: units, ranges and errors are read there and not out of the code. */
import { globSync, readFileSync } from 'node:fs';
import { sep } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';

test('every exported function and class has a docstring', () => {
  const bare = globSync('src/**/*.ts').flatMap((file) => bareExports(file.split(sep).join('/')));
  expect(bare).toEqual([]);
});

function bareExports(file: string): string[] {
  const source = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest, true);
  return source.statements
    .filter((part) => ts.isFunctionDeclaration(part) || ts.isClassDeclaration(part))
    .filter((part) => part.modifiers?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword))
    .filter((part) => ts.getJSDocCommentsAndTags(part).length === 0)
    .map((part) => `${file}: ${part.name?.text ?? ''}`);
}
