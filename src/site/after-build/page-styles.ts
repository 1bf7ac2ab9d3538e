/**
 * A page goes with the rules it can need: those whose classes and elements it has, or may be given by its scripts or, a
 * complaint, by the sections of its walk.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Output } from './output.ts';
import { attributeOf, type Tag } from './page-tags.ts';
import type { Outcome, Scanned } from './scanned.ts';
import { dropUnread, type RuleSheet, readRules, rulesFor } from './style-rules.ts';

const SCRIPT = /^\/?(scripts|calculators)\/([a-z-]+)\.js$/;
const CALCULATOR = 'calculator-live';
const LOADS = /\(["'`]([a-z-]+)["'`]\)/g;
const DEFINES = /customElements\.define\(["'`]([a-z-]+)/g;
const MAKES = /createElement\(["'`](ht-[a-z-]+)/g;
const WORD = /[a-z][\w-]*/gi;

/**
 * Changes the text of the tags too, so that a policy made later allows what the page has then.
 * @param output with all scripts written
 */
export function fitStyles(output: Output, scanned: Scanned): Outcome {
  const outcome: Outcome = { edits: new Map(), faults: [] };
  const wordsOf = wordsByScript(output);
  // Styles that come with a calculator read what the page before it does not.
  const files = [...output.others].filter((each) => each.endsWith('.css')).map((each) => read(output, each));
  const sheets = new Map<string, RuleSheet>();
  for (const [name, { tags }] of scanned) {
    const ofWalk = name.startsWith('symptoms/') && scanned.get(name.replace('symptoms/', 'walks/'));
    const names = namesIn([...tags, ...(ofWalk ? ofWalk.tags : [])]);
    const words = wordsOf(tags.flatMap(sourceOf), names);
    const has = (each: string) => names.has(each) || isAmong(words, each.replace('.', ''));
    const styles = tags.filter((tag) => tag.name === 'style');
    const fitted = styles.map(({ text: style = '' }) => {
      const sheet = sheets.get(style) ?? readRules(style);
      sheets.set(style, sheet);
      return rulesFor(sheet, has);
    });
    const whole = [...fitted, ...(words.has(CALCULATOR) ? files : [])].join('');
    const edits = styles.map((tag, index) => {
      const end = tag.end + (tag.text?.length ?? 0);
      tag.text = dropUnread(fitted[index] ?? '', whole);
      return { start: tag.end, end, text: tag.text };
    });
    outcome.edits.set(name, edits);
  }
  return outcome;
}

/** `t-hot` is among words with `t-` too: a script puts the rest of the name to it. */
function isAmong(words: ReadonlySet<string>, name: string): boolean {
  const stroke = name.lastIndexOf('-') + 1;
  return words.has(name) || (stroke > 0 && words.has(name.slice(0, stroke)));
}

/** Classes, written `.class`, and names of elements. */
function namesIn(tags: readonly Tag[]): Set<string> {
  const names = new Set<string>();
  for (const tag of tags) {
    names.add(tag.name);
    for (const each of attributeOf(tag, 'class')?.split(/\s+/) ?? []) names.add(`.${each}`);
  }
  return names;
}

/**
 * @returns the words in all scripts that a page with these elements begins with or may load: a class or an element they make
 *   is among them
 */
function wordsByScript(
  output: Output,
): (begun: readonly string[], elements: ReadonlySet<string>) => ReadonlySet<string> {
  const scripts = new Map<string, Script>();
  for (const address of output.others)
    if (SCRIPT.test(address) && !address.startsWith('scripts/search-'))
      scripts.set(address, readScript(read(output, address)));
  // Loaded by an address that is put together.
  const live = scripts.get(`scripts/${CALCULATOR}.js`);
  if (live) live.loads.push(...[...scripts.keys()].filter((address) => address.startsWith('calculators/')));
  const known = new Map<string, ReadonlySet<string>>();
  return (begun, elements) => {
    const all = new Set(begun);
    for (const address of all) {
      const script = scripts.get(address);
      for (const next of script?.loads ?? []) {
        const defines = scripts.get(next)?.defines ?? [];
        const isWanted = defines.some((each) => elements.has(each) || script?.makes.includes(each));
        if (isWanted || defines.length === 0) all.add(next);
      }
    }
    const key = [...all].join();
    const words =
      known.get(key) ?? new Set([...all].flatMap((address) => [...(scripts.get(address)?.words ?? [])]));
    known.set(key, words);
    return words;
  };
}

interface Script {
  words: ReadonlySet<string>;
  /** Addresses of scripts it may load. */
  loads: string[];
  /** Elements whose behaviour it is; a script that is loaded for none of the page's does nothing there. */
  defines: readonly string[];
  /** Elements with a behaviour that it puts into the page. */
  makes: readonly string[];
}

function read({ folder }: Output, address: string): string {
  return readFileSync(join(folder, address), 'utf8');
}

function readScript(text: string): Script {
  const all = (pattern: RegExp) => [
    ...new Set([...text.matchAll(pattern)].map(([whole, name]) => name ?? whole)),
  ];
  return {
    words: new Set(all(WORD)),
    loads: all(LOADS).map((name) => `scripts/${name}.js`),
    defines: all(DEFINES),
    makes: all(MAKES),
  };
}

function sourceOf(tag: Tag): string[] {
  const source = tag.name === 'script' ? attributeOf(tag, 'src') : undefined;
  return source === undefined ? [] : [source.replace(/^\//, '')];
}
