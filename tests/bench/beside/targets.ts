/** The pages of a shelf that are opened, and the records that are searched for. */
import { pathOf } from './shelf/document.ts';
import { AREA, type MadeRecord } from './shelf/shelf.ts';

export interface Target {
  path: string;
  title: string;
}

export interface Targets {
  /** A tool: a plain record, the page that is opened and the first that is searched for. */
  record: Target;
  /** A complaint that has a tree. */
  complaint: Target;
  /** Tools of other areas, searched for by their titles. */
  searched: readonly Target[];
}

const SEARCHES = 8;

/** @throws Error when the shelf has no tools or complaints */
export function targetsIn(records: readonly MadeRecord[]): Targets {
  const tools = records.filter(({ kind }) => kind === 'tool');
  const inArea = tools.length / (records.length / AREA);
  const found = Array.from({ length: SEARCHES + 1 }, (_, at) => {
    const area = Math.floor((at * (records.length / AREA)) / (SEARCHES + 1));
    return tools[area * inArea + (at % inArea)];
  });
  const [record, ...searched] = found.flatMap((tool) => (tool ? [targetOf(tool)] : []));
  const complaint = records.find(({ kind }) => kind === 'symptom');
  if (!record || !complaint) throw new Error('The shelf has no tools or no complaints to look for.');
  return { record, complaint: targetOf(complaint), searched };
}

function targetOf(record: MadeRecord): Target {
  return { path: pathOf(record), title: record.title };
}
