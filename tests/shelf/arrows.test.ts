/** The arrows of the architecture: who may import whom, in src and inside src/site. A line that breaks one is named. */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve, sep } from 'node:path';
import { expect, test } from 'vitest';

const SRC = resolve('src');

/** What each folder may import of the others, besides itself. */
const ALLOWED: Record<string, readonly string[]> = {
  physics: [],
  diagnosis: [],
  recogniser: [],
  trace: ['physics', 'model'],
  // The simulated car judges the shelf: what it may not read it cannot repeat.
  car: ['physics'],
  // The frequency words stand with the arithmetic that gives them their numbers.
  model: ['diagnosis'],
  calculators: ['model', 'physics'],
  library: ['model', 'diagnosis', 'physics', 'recogniser'],
  cli: ['library', 'model', 'diagnosis', 'physics'],
  site: ['library', 'model', 'diagnosis', 'physics', 'calculators', 'trace', 'recogniser', 'car'],
};

/** Folders that run anywhere: no Node, no DOM library, no Astro. */
const PURE = ['physics', 'diagnosis', 'recogniser', 'trace', 'model', 'calculators', 'car'];
const PACKAGES_OF_PURE = new Set(['zod', 'fastest-levenshtein', 'papaparse']);

/** Code of the site that runs in the browser, that runs when the site is built, and that may run in either. */
const BROWSER = ['browser', 'every-page', 'islands', 'worker', 'page'];
const BUILD = ['about', 'after-build', 'guides', 'layouts', 'pages', 'parts', 'shelf', 'styles', 'build'];
const EITHER = [
  'calculator',
  'drawings',
  'job',
  'moves',
  'note',
  'practice',
  'road-test',
  'search',
  'text',
  'timer',
  'vehicle',
  'walk',
];

/** What each room of src/site may import of the others, besides itself. A room is a folder, or build/ or page/ of a feature. */
const ROOMS: Record<string, readonly string[]> = {
  // What build and page share: types they agree on, and pure functions.
  text: [],
  drawings: [],
  note: [],
  search: [],
  vehicle: ['drawings'],
  walk: [],
  'road-test': [],
  job: ['note', 'vehicle'],
  calculator: ['drawings'],
  moves: ['drawings'],
  timer: [],
  practice: ['walk'],
  // In the browser. The types of what hangs on the window are the features'.
  browser: ['drawings', 'job', 'note', 'practice', 'vehicle', 'walk'],
  'note/page': ['browser', 'note', 'text'],
  'search/page': ['browser', 'search'],
  'vehicle/page': ['browser', 'vehicle', 'text', 'note'],
  'walk/page': ['browser', 'walk', 'vehicle', 'vehicle/page', 'text'],
  'job/page': ['browser', 'job', 'note', 'note/page', 'text', 'vehicle', 'vehicle/page', 'walk'],
  'calculator/page': ['browser', 'calculator', 'job/page'],
  'road-test/page': ['browser', 'drawings', 'job/page', 'road-test', 'text'],
  'about/page': ['browser'],
  'moves/page': ['browser', 'moves'],
  'timer/page': ['browser', 'text', 'timer'],
  'practice/page': ['browser', 'job/page', 'practice', 'text', 'vehicle', 'walk', 'walk/page'],
  'every-page': ['browser', 'job/page', 'vehicle', 'worker'],
  worker: [],
  // When the site is built.
  shelf: [],
  'search/build': ['drawings', 'guides', 'search', 'shelf', 'walk/build'],
  'calculator/build': ['calculator', 'drawings', 'shelf'],
  parts: ['calculator/build', 'note', 'shelf', 'text', 'timer'],
  'vehicle/build': ['drawings', 'parts', 'shelf', 'text', 'vehicle', 'walk/build'],
  'walk/build': ['calculator/build', 'drawings', 'parts', 'shelf', 'text', 'walk'],
  'job/build': ['job', 'shelf', 'text', 'walk/build'],
  'practice/build': ['practice', 'shelf', 'walk/build'],
  guides: ['calculator/build', 'drawings', 'moves', 'parts', 'shelf', 'text', 'walk/build'],
  about: ['shelf', 'walk/build'],
  styles: [],
  layouts: ['parts', 'search/build', 'shelf', 'styles'],
  // What the site is made of and what is done to it afterwards may lean on all that the build may, and on the worker's list of files.
  'after-build': ['search', 'walk', 'worker'],
};

/** Whether code of the one room may run where the other runs. */
function fitsTogether(from: string, to: string): boolean {
  const [own, other] = [from, to].map((room) => room.split('/').at(-1) ?? '');
  return (
    EITHER.includes(other ?? '') || (BROWSER.includes(own ?? '') ? BROWSER : BUILD).includes(other ?? '')
  );
}

function roomOf(file: string): string {
  const [folder = '', inside = '', ...more] = relative(join(SRC, 'site'), file).split(/[\\/]/);
  return more.length > 0 && /^(build|page)$/.test(inside) ? `${folder}/${inside}` : folder;
}

interface Import {
  file: string;
  line: number;
  target: string;
}

function importsOf(folder: string): Import[] {
  return readdirSync(join(SRC, folder), { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.(ts|astro|mjs)$/.test(file))
    .flatMap((file) => {
      const path = join(SRC, folder, file);
      return readFileSync(path, 'utf8')
        .split('\n')
        .flatMap((text, at): Import[] => {
          const target = /(?:from|import)\s*\(?\s*'([^']+)'/.exec(text)?.[1];
          return target === undefined ? [] : [{ file: path, line: at + 1, target }];
        });
    });
}

test('every folder of src has its arrows', () => {
  const folders = readdirSync(SRC, { withFileTypes: true }).filter((entry) => entry.isDirectory());
  expect(folders.map(({ name }) => name).filter((name) => !(name in ALLOWED))).toEqual([]);
});

test.each(Object.entries(ALLOWED))('%s imports only what it may', (folder, allowed) => {
  const broken = importsOf(folder).flatMap(({ file, line, target }) => {
    const where = `${relative('.', file)}:${line} imports ${target}`;
    if (target.startsWith('.')) {
      const into = relative(SRC, resolve(dirname(file), target)).split(/[\\/]/)[0] ?? '';
      // A path that leaves src leads to package.json or the like, which no folder may need.
      return into === folder || allowed.includes(into) ? [] : [where];
    }
    if (!PURE.includes(folder)) return [];
    return PACKAGES_OF_PURE.has(target) ? [] : [where];
  });
  expect(broken).toEqual([]);
});

/** The imports inside src/site, each with the file it leads to. */
const inSite = importsOf('site').flatMap((each) => {
  const to = resolve(dirname(each.file), each.target);
  return each.target.startsWith('.') && to.startsWith(join(SRC, 'site') + sep) ? [{ ...each, to }] : [];
});

const placeOf = ({ file, line, target }: Import) => `${relative('.', file)}:${line} imports ${target}`;

test('every room of src/site has its arrows, and only folders lie in it', () => {
  const files = readdirSync(join(SRC, 'site'), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));
  const known = [...Object.keys(ROOMS), 'pages', 'islands'];
  const unknown = new Set(
    files.filter((file) => !known.includes(roomOf(file))).map((file) => relative('.', file)),
  );
  expect([...unknown]).toEqual([]);
  expect(
    known
      .map((room) => room.split('/').at(-1))
      .filter((name) => ![...BROWSER, ...BUILD, ...EITHER].includes(name ?? '')),
  ).toEqual([]);
});

test('a room of src/site imports only what it may', () => {
  const broken = inSite.filter(({ file, to }) => {
    const [from, into] = [roomOf(file), roomOf(to)];
    if (from === into) return false;
    // The pages and the entries of the scripts may use whatever runs where they do.
    return from in ROOMS ? !ROOMS[from]?.includes(into) : !fitsTogether(from, into);
  });
  expect(broken.map(placeOf)).toEqual([]);
});

test.each(Object.entries(ROOMS))('the arrows of %s lead to what runs where it runs', (room, allowed) => {
  const own = room.split('/').at(-1) ?? '';
  const isEither = EITHER.includes(own);
  const wrong = allowed.filter((to) => (isEither ? !EITHER.includes(to) : !fitsTogether(room, to)));
  // The list of files to keep on a device is written after the build and read by the worker.
  expect(wrong.filter((to) => !(room === 'after-build' && to === 'worker'))).toEqual([]);
});

test('nothing imports an entry of islands/', () => {
  expect(inSite.filter(({ to }) => roomOf(to) === 'islands').map(placeOf)).toEqual([]);
});

test('what runs in the browser or in either place imports no Node', () => {
  const broken = importsOf('site').filter(({ file, target }) => {
    const own = roomOf(file).split('/').at(-1) ?? '';
    return target.startsWith('node:') && !BUILD.includes(own);
  });
  expect(broken.map(placeOf)).toEqual([]);
});

test('no circle of imports inside src/site, of types neither', () => {
  const done = new Set<string>();
  const circles: string[][] = [];
  const follow = (file: string, way: readonly (Import & { to: string })[]) => {
    const at = way.findIndex((each) => each.file === file);
    if (at >= 0) circles.push(way.slice(at).map(placeOf));
    if (at >= 0 || done.has(file)) return;
    for (const each of inSite.filter((one) => one.file === file)) follow(each.to, [...way, each]);
    done.add(file);
  };
  for (const { file } of inSite) follow(file, []);
  expect(circles).toEqual([]);
});

test('the simulated car reads no evidence, prior or tree, and no file at all', () => {
  const read = importsOf('car').filter(({ target }) => !/^\.{1,2}\/(physics\/)?[\w-]+\.ts$/.test(target));
  expect(read.map(({ file, line, target }) => `${relative('.', file)}:${line} imports ${target}`)).toEqual(
    [],
  );
});

test('pure folders touch no document, window or storage', () => {
  const touching = PURE.flatMap((folder) => {
    const files = readdirSync(join(SRC, folder), { recursive: true, encoding: 'utf8' }).filter((file) =>
      file.endsWith('.ts'),
    );
    return files.flatMap((file) => {
      const text = readFileSync(join(SRC, folder, file), 'utf8');
      return /\b(document|window|localStorage|navigator)\.\w/.test(text) ? [join(folder, file)] : [];
    });
  });
  expect(touching).toEqual([]);
});
