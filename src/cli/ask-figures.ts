/** Figures and torques of a vehicle as `npm run new vehicle` asks them: in the order of the form, each with where it is from. */
import { checkVehicle } from '../library/check-vehicle.ts';
import { FIGURE_PATHS, FIGURES, type FigurePath, figureFits, JOINT_NAMES, JOINTS } from '../model/figures.ts';
import type { KnownLayout } from '../model/layout.ts';
import { torqueEntry } from '../model/torque.ts';
import { type Ask, askChoice, askText, OPEN } from './ask-field.ts';

const { shape } = torqueEntry;
const ORIGINS = shape.from.options;
const TRUSTS = shape.sure.options;

type Entry = Record<string, string>;
/** Where a figure is from: said once, and taken again for the next one by Enter. */
interface Source {
  from: string;
  page: string | undefined;
  sure: string;
}

/**
 * Asks for the figures and torques that a vehicle of this layout can have, a group at a time, and puts them into the values.
 * @param today as 2026-11-30: each was held against its source while it was typed
 */
export async function askFigures(values: Record<string, unknown>, ask: Ask, today: string): Promise<void> {
  const layout = (values.layout ?? {}) as KnownLayout;
  const figures = entriesOf(values, 'figures');
  let before: Source | undefined;
  for (const [group, paths] of figureGroups(layout)) {
    if (!(await wants(ask, `${group}: ${paths.map((path) => FIGURES[path].label).join('; ')}`))) continue;
    for (const path of paths) {
      const question = `${FIGURES[path].label}, usually ${FIGURES[path].general} (${OPEN} not known): `;
      const is = await askText(question, ask, (text) => faultAt(['figures', path], { is: text }));
      if (is === undefined) continue;
      before = await askSource(ask, before);
      figures[path] = { is, ...parts(before), checked: today };
    }
  }
  const torques = entriesOf(values, 'torques');
  const joints = JOINT_NAMES.filter((joint) => figureFits(`torque.${joint}`, layout));
  if (!(await wants(ask, `Torques: ${joints.map((joint) => JOINTS[joint].label).join('; ')}`))) return;
  for (const joint of joints) {
    const { label, bolt, usual } = JOINTS[joint];
    const question = `${label}, often ${bolt}, ${usual} (${OPEN} not known): `;
    const is = await askText(question, ask, (text) => faultAt(['torques', joint], { is: text }));
    if (is === undefined) continue;
    const entry: Entry = { is };
    const thread = await askChoice({ asks: 'Thread', words: shape.bolt.options }, ask);
    if (thread !== undefined) entry.bolt = thread;
    const marked = await askChoice(
      { asks: 'Class, if it stands on the head', words: shape.class.unwrap().options },
      ask,
    );
    if (marked !== undefined) entry.class = marked;
    const into = await askChoice({ asks: 'Screwed into', words: shape.into.options }, ask);
    if (into !== undefined) entry.into = into;
    before = await askSource(ask, before);
    torques[joint] = { ...entry, ...parts(before), checked: today };
  }
}

function entriesOf(values: Record<string, unknown>, name: 'figures' | 'torques'): Record<string, Entry> {
  const entries = (values[name] ?? {}) as Record<string, Entry>;
  values[name] = entries;
  return entries;
}

/** Figures that fit the layout, by the part of the car they belong to, in the order of the form. */
function figureGroups(layout: KnownLayout): [name: string, paths: FigurePath[]][] {
  const groups = new Map<string, FigurePath[]>();
  for (const path of FIGURE_PATHS.filter((each) => figureFits(each, layout))) {
    const [part = ''] = path.split('.');
    const name = part.charAt(0).toUpperCase() + part.slice(1).replaceAll('-', ' ');
    groups.set(name, [...(groups.get(name) ?? []), path]);
  }
  return [...groups];
}

async function wants(ask: Ask, group: string): Promise<boolean> {
  const answer = await ask(`\n${group}\nEnter to go through them, ${OPEN} for none at hand: `, (typed) =>
    ['', OPEN].includes(typed.trim()) ? undefined : `Enter, or ${OPEN}.`,
  );
  return answer.trim() !== OPEN;
}

async function askSource(ask: Ask, before: Source | undefined): Promise<Source> {
  if (before !== undefined) {
    const says = [before.from, before.page, before.sure].filter(Boolean).join(', ');
    const answer = await ask(`From: Enter as the one before (${says}), or n for another: `, (typed) =>
      ['', 'n'].includes(typed.trim().toLowerCase()) ? undefined : 'Enter, or n.',
    );
    if (answer.trim() === '') return before;
  }
  const from = await askChoice({ asks: 'From', words: ORIGINS, must: true }, ask);
  const page = await askText(`Page, or place on the car (${OPEN} without): `, ask);
  const sure = await askChoice({ asks: 'How sure', words: TRUSTS, must: true }, ask);
  return { from: from ?? '', page, sure: sure ?? '' };
}

function parts({ from, page, sure }: Source): Entry {
  return { from, ...(page !== undefined && { page }), sure };
}

/** What the shelf's own rules say against a value, with the spelling that would be right; undefined where nothing. */
function faultAt([group, name]: readonly [string, string], entry: Entry): string | undefined {
  return checkVehicle('new', { [group]: { [name]: entry } }).faults.find(
    ({ path, isMissing }) => !isMissing && path[0] === group && path[1] === name && path[2] === 'is',
  )?.says;
}
