/** The editors' files are as the schemas say, and the language server that common editors use reads them. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { getLanguageService, type LanguageService } from 'yaml-language-server';
import { FIELD_TABLES, fieldTables } from '../../src/library/field-tables.ts';
import { editorFiles, schemaPath, schemaPatterns } from '../../src/library/schema-files.ts';
import { KIND_NAMES, KINDS } from '../../src/model/kinds.ts';

test.each([...editorFiles()])('%s is up to date; if not: npm run schemas', (path, text) => {
  expect(readFileSync(path, 'utf8')).toBe(text);
});

test('the field tables are up to date; if not: npm run schemas', () => {
  const text = readFileSync(FIELD_TABLES, 'utf8');
  expect(fieldTables()).toBe(text);
  expect(text).toContain('| `fooled-by` | must |');
  // What every record has is written once.
  expect(text.match(/^\| `reviewed` \|/gm)).toHaveLength(1);
});

describe('in an editor', () => {
  let service: LanguageService;
  beforeAll(() => {
    service = getLanguageService({
      schemaRequestService: (uri) => Promise.reject(new Error(`asked for ${uri}`)),
      workspaceContext: { resolveRelativePath: (path) => path },
    } as Parameters<typeof getLanguageService>[0]);
    service.configure({
      validate: true,
      completion: true,
      hover: true,
      schemas: Object.entries(schemaPatterns()).map(([path, pattern]) => ({
        uri: `file:///${path}`,
        fileMatch: [`/${pattern}`],
        schema: JSON.parse(readFileSync(path, 'utf8')),
      })),
    } as Parameters<LanguageService['configure']>[0]);
  });
  // The server answers for a version it has seen from memory.
  let version = 0;
  const open = (path: string, text: string) =>
    TextDocument.create(`file:///${path}`, 'yaml', version++, text);
  const messages = async (path: string, text: string) =>
    (await service.doValidation(open(path, text), false)).map(({ message }) => message);

  test('every record of the sound shelf has nothing underlined, and an empty one has', async () => {
    const sound = join(import.meta.dirname, 'sound');
    for (const kind of KIND_NAMES) {
      const { folder } = KINDS[kind];
      const place = kind === 'note' ? `${folder}/2026` : folder;
      for (const name of readdirSync(join(sound, place))) {
        const path = `content/${place}/${name}`;
        expect({ path, says: await messages(path, readFileSync(join(sound, place, name), 'utf8')) }).toEqual({
          path,
          says: [],
        });
      }
      expect(await messages(`content/${place}/empty.yaml`, '{}\n'), schemaPath(kind)).not.toEqual([]);
    }
  });

  test('a misspelt field and a word that is not in the list are underlined', async () => {
    const text = readFileSync(join(import.meta.dirname, 'sound/tests/hose-watch.yaml'), 'utf8');
    const wrong = text.replace('minutes:', 'minuets:').replace(/engine: .*/, 'engine: lukewarm');
    const says = (await messages('content/tests/hose-watch.yaml', wrong)).join('\n');
    expect(says).toMatch(/minutes/);
    expect(says).toMatch(/minuets/);
    expect(says).toMatch(/cold/);
  });

  test('fields and words are completed, with what they are for', async () => {
    const at = async (text: string) => {
      const document = open('content/causes/new.yaml', text);
      const { items } = await service.doComplete(document, document.positionAt(text.length), false);
      return items;
    };
    const fields = await at('title: Cap seal hardened\nfool');
    const found = fields.find(({ label }) => label === 'fooled-by');
    expect(JSON.stringify(found?.documentation)).toContain('What looks like this cause and is not.');
    const words = await at('layout:\n  fan-switched-by:\n    - ');
    expect(words.map(({ label }) => label)).toContain('switch in the radiator');
  });

  test('a record that has moved needs nothing but its new id', async () => {
    expect(await messages('content/causes/old.yaml', 'moved-to: cap-weak\n')).toEqual([]);
  });
});
