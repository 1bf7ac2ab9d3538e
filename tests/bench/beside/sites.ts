/** The sites that are held beside each other: how each is laid out from the same shelf, built, and searched. */
import { cp, mkdir, readdir, readFile, symlink, writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import type { Page } from 'playwright-core';
import { type Document, documentsOf, FOLDERS, listsOf } from './shelf/document.ts';
import { shelfFiles, writeFiles } from './shelf/files.ts';
import { markdownOf, plainPageOf } from './shelf/markup.ts';
import type { MadeRecord } from './shelf/shelf.ts';

export interface Site {
  name: string;
  /** Where its package.json is, when its packages are fetched for the bench alone. */
  packages?: string;
  /** Lays the shelf out in an empty folder that may hold its packages. */
  layOut(folder: string, records: readonly MadeRecord[]): Promise<void>;
  /** Commands run one after the other, in the folder; none where there is nothing to build. */
  build: readonly (readonly string[])[];
  /** Where the built site is, from the folder. */
  output: string;
  /** Address of a record's page from its path. */
  address(path: string): string;
  /** From a record's page to an open search field, and what its results are; nothing where there is no search. */
  search?: { open(page: Page, root: string): Promise<void>; field: string; result: string };
}

const HERE = import.meta.dirname;
const PROJECT = resolve(HERE, '../../..');

const ours: Site = {
  name: 'Headertank',
  async layOut(folder, records) {
    for (const name of ['src', 'public', 'astro.config.mjs', 'package.json', 'tsconfig.json'])
      await cp(join(PROJECT, name), join(folder, name), { recursive: true });
    await writeFiles(join(folder, 'content'), shelfFiles(records));
    await mkdir(join(folder, 'content/guides'), { recursive: true });
    // The project's packages, but caches of its own: what was worked out for another shelf is no help here.
    await mkdir(join(folder, 'node_modules'));
    for (const name of await readdir(join(PROJECT, 'node_modules')))
      if (name === '.bin' || !name.startsWith('.'))
        await symlink(join(PROJECT, 'node_modules', name), join(folder, 'node_modules', name));
  },
  build: [['npm', 'run', '-s', 'build']],
  output: 'dist',
  address: (path) => `${path}.html`,
  search: {
    async open(page, root) {
      await page.goto(`${root}search.html`);
    },
    field: 'ht-search input[type=search]',
    result: '.search-results a',
  },
};

const starlight: Site = {
  name: 'starlight',
  packages: join(HERE, 'starlight'),
  async layOut(folder, records) {
    await cp(join(HERE, 'starlight/astro.config.mjs'), join(folder, 'astro.config.mjs'));
    await writeFolders(folder);
    await mkdir(join(folder, 'src'));
    await cp(join(PROJECT, 'public/icon.svg'), join(folder, 'public/favicon.svg'));
    await cp(join(HERE, 'starlight/content.config.mjs'), join(folder, 'src/content.config.mjs'));
    await writeMarkdown(join(folder, 'src/content/docs'), records, (path) => `/${slashed(path)}`);
  },
  build: [['npx', 'astro', 'build']],
  output: 'dist',
  address: slashed,
  search: {
    open: (page) => page.click('button[data-open-modal]'),
    field: '#starlight__search input',
    result: '.pagefind-ui__result-link',
  },
};

const vitepress: Site = {
  name: 'vitepress',
  packages: join(HERE, 'vitepress'),
  async layOut(folder, records) {
    await cp(join(HERE, 'vitepress/config.mjs'), join(folder, 'pages/.vitepress/config.mjs'));
    await writeFolders(join(folder, 'pages'));
    await writeMarkdown(join(folder, 'pages'), records, (path) => `/${path}.md`, { headed: true });
  },
  build: [['npx', 'vitepress', 'build', 'pages']],
  output: 'pages/.vitepress/dist',
  address: (path) => `${path}.html`,
  search: {
    open: (page) => page.click('.VPNavBarSearch button'),
    field: '#localsearch-input',
    result: '.VPLocalSearchBox .results .result',
  },
};

const eleventy: Site = {
  name: 'eleventy + pagefind',
  packages: join(HERE, 'eleventy'),
  async layOut(folder, records) {
    await cp(join(HERE, 'eleventy/eleventy.config.mjs'), join(folder, 'eleventy.config.mjs'));
    await writeFolders(folder);
    await cp(join(HERE, 'eleventy/page.njk'), join(folder, 'includes/page.njk'));
    await cp(join(HERE, 'eleventy/search.njk'), join(folder, 'pages/search.njk'));
    await writeMarkdown(join(folder, 'pages'), records, (path) => `/${slashed(path)}`);
    await cp(join(HERE, 'plain.css'), join(folder, '_site/plain.css'));
  },
  build: [
    ['npx', 'eleventy', '--quiet'],
    ['npx', 'pagefind', '--site', '_site', '--quiet'],
  ],
  output: '_site',
  address: slashed,
  search: {
    async open(page, root) {
      await page.goto(`${root}search/`);
    },
    field: '.pagefind-ui__search-input',
    result: '.pagefind-ui__result-link',
  },
};

const plain: Site = {
  name: 'plain HTML',
  async layOut(folder, records) {
    const pages = [...documentsOf(records), ...listsOf(records)];
    const files = pages.map(
      (each) => [`${each.path}.html`, plainPageOf(each, (path) => `/${path}.html`)] as const,
    );
    await writeFiles(
      folder,
      new Map([...files, ['plain.css', await readFile(join(HERE, 'plain.css'), 'utf8')]]),
    );
  },
  build: [],
  output: '.',
  address: (path) => `${path}.html`,
};

export const SITES: readonly Site[] = [ours, starlight, vitepress, eleventy, plain];

function slashed(path: string): string {
  return path.endsWith('/index') ? path.slice(0, -'index'.length) : `${path}/`;
}

async function writeMarkdown(
  folder: string,
  records: readonly MadeRecord[],
  hrefOf: (path: string) => string,
  { headed } = { headed: false },
): Promise<void> {
  const front: Document = {
    path: 'index',
    title: 'Bench Workshop',
    description: 'Everything on the shelf.',
    sections: [
      {
        heading: 'Shelves',
        isList: true,
        items: FOLDERS.map((each) => [{ text: each.many, path: `${each.folder}/index` }]),
      },
    ],
  };
  const pages = [front, ...documentsOf(records), ...listsOf(records)];
  await writeFiles(
    folder,
    new Map(pages.map((each) => [`${each.path}.md`, markdownOf(each, hrefOf, headed)])),
  );
}

/** The kinds, for the menus in the configurations. */
async function writeFolders(folder: string): Promise<void> {
  await mkdir(folder, { recursive: true });
  await writeFile(join(folder, 'folders.mjs'), `export const folders = ${JSON.stringify(FOLDERS)};\n`);
}
