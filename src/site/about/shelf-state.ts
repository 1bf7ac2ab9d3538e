/** What the shelf holds and where it wants work: for the page about the shelf. */
import { item } from '../../diagnosis/arrays.ts';
import type { Entry } from '../../library/shelf.ts';
import { FIGURE_PATHS, FIGURES, figureFits } from '../../model/figures.ts';
import { type Kind, PAGE_KINDS } from '../../model/kinds.ts';
import { entriesOf } from '../shelf/record-pages.ts';
import { shelf } from '../shelf/shelf.ts';
import { commonestCase, countedFor } from '../walk/build/booking.ts';
import { type JudgedTree, judgeInWorker } from './judge-in-worker.ts';

export interface TreeState extends JudgedTree {
  symptom: Entry<'symptom'>;
  /** Whose layout it is judged on, in words. */
  counted: string;
  because: string | undefined;
}

/** Each tree beside the best that a search finds, on the layout that most of the shelf's vehicles have. */
export async function treeStates(): Promise<TreeState[]> {
  const trees = entriesOf('symptom').map((symptom) => ({ symptom, usual: commonestCase(symptom.id) }));
  const judged = await judgeInWorker(
    trees.map(({ symptom, usual: { compiled, tree } }) => ({ symptom: symptom.id, compiled, tree })),
  );
  return trees.map(({ symptom, usual }, at) => ({
    ...item(judged, at),
    symptom,
    counted: countedFor(usual),
    because: shelf.records.tree.get(symptom.data.tree)?.data.because,
  }));
}

/**
 * Records in the order in which they are to be read again, the first of them. The reader compares the day with today's: a build
 * of the same shelf is the same on any day.
 */
export function nextReviews(count: number): { entry: Entry<Kind>; due: string }[] {
  return PAGE_KINDS.flatMap((kind) => entriesOf(kind) as Entry<Kind>[])
    .map((entry) => ({
      entry,
      due: addMonths(entry.data.reviewed, entry.data['review-every'] ?? shelf.shop['review-every']),
    }))
    .sort((a, b) => a.due.localeCompare(b.due))
    .slice(0, count);
}

/** Figures nobody read off a source or measured twice, and figures that are missing, by vehicle. */
export function weakFigures(): { vehicle: Entry<'vehicle'>; weak: string[]; missing: number }[] {
  return entriesOf('vehicle').map((vehicle) => ({
    vehicle,
    weak: FIGURE_PATHS.filter((path) =>
      ['second hand', 'guess', 'measured once'].includes(vehicle.data.figures[path]?.sure ?? ''),
    ).map((path) => FIGURES[path].label),
    missing: FIGURE_PATHS.filter(
      (path) => vehicle.data.figures[path] === undefined && figureFits(path, vehicle.data.layout),
    ).length,
  }));
}

/** The day so many months on, as text; days past a month's end roll over. */
function addMonths(day: string, months: number): string {
  const date = new Date(`${day}T00:00:00Z`);
  date.setUTCMonth(date.getUTCMonth() + months);
  return date.toISOString().slice(0, 10);
}
