/** Saved note files and job-card exports into files of the shelf. Nothing is written here: what is handed back can be. */
import { isDeepStrictEqual } from 'node:util';
import { parse } from 'yaml';
import { addedCounts, type Counts, countsPath, countsSchema, NO_COUNTS } from '../model/counts.ts';
import { dayText } from '../model/day.ts';
import { type FinishedJob, finishedJobsSchema } from '../model/finished-jobs.ts';
import { jobCardsSchema } from '../model/job.ts';
import { LARGEST_EXPORT } from '../model/job-limits.ts';
import { type Note, noteSchema } from '../model/note.ts';
import { notePath, noteText } from '../model/note-file.ts';
import { ID_FORM } from '../model/scalars.ts';
import { vehiclePath } from '../model/vehicle-file.ts';
import { checkFiles } from './check-files.ts';
import { countJobs, countsText } from './count-jobs.ts';
import { formatYaml } from './format-yaml.ts';
import { withMeasured } from './measured-into-record.ts';
import { inOrdinarySpelling } from './ordinary-spelling.ts';
import { reportText } from './report/text.ts';
import { isPlainObject } from './schema-tree.ts';
import type { RawFile } from './source-file.ts';

/** Bytes; the longest note a person writes is a few thousand. */
const LARGEST_NOTE = 64 * 1024;

/** A file somebody hands in. */
export interface Submission {
  /** As it was named on the command line. */
  name: string;
  bytes: Uint8Array;
}

/** A note, a vehicle, or a year's counts. */
export interface NewNote {
  id: string;
  title: string;
  /** Initials; '' for what is no note. */
  by: string;
  /** The file is there, and is written anew with what has been added. */
  grows?: true;
  /** From the shelf's folder: notes/2026/second-screw.yaml. */
  path: string;
  text: string;
}

export interface TakeInResult {
  notes: NewNote[];
  /** What is refused: which file and why, ready to be shown. Any refusal means that nothing is taken in. */
  refused: { name: string; why: string }[];
  /** Notes that lie on the shelf already, word for word. */
  known: { name: string; path: string }[];
}

/**
 * @param shelfName how the shelf's folder is shown, such as content
 * @param shelf its files
 * @param today the day as 2026-11-30, for figures that finished jobs measured
 */
export function takeIn(
  shelfName: string,
  shelf: readonly RawFile[],
  handed: readonly Submission[],
  today = dayText(new Date()),
): TakeInResult {
  const result: TakeInResult = { notes: [], refused: [], known: [] };
  const jobs: FinishedJob[] = [];
  for (const file of handed) {
    for (const candidate of candidatesIn(file)) {
      if ('why' in candidate) result.refused.push(candidate);
      else if ('jobs' in candidate) jobs.push(...candidate.jobs);
      else place(candidate, file.name, shelf, result);
    }
  }
  if (jobs.length > 0) placeCounts(jobs, shelfName, shelf, result, today);
  judge(shelfName, shelf, result);
  return result;
}

type Candidate =
  | { id: string; text: string }
  | { jobs: readonly FinishedJob[] }
  | { name: string; why: string };

function candidatesIn({ name, bytes }: Submission): Candidate[] {
  const refuse = (why: string): Candidate[] => [{ name, why }];
  const base = name.split(/[\\/]/).at(-1) ?? '';
  const isExport = base.toLowerCase().endsWith('.json');
  const largest = isExport ? LARGEST_EXPORT : LARGEST_NOTE;
  if (bytes.length > largest)
    return refuse(
      `It has ${Math.ceil(bytes.length / 1024)} kB; ${isExport ? 'an export' : 'a note'} has at most ${largest / 1024} kB.`,
    );
  const text = textOf(bytes);
  if (text === undefined)
    return refuse('It is not UTF-8 text. Save it again as UTF-8, or save it from the form once more.');
  if (isExport) return notesOfExport(name, text);
  const id = /^(.+)\.ya?ml$/.exec(base)?.[1];
  if (id === undefined) return refuse('It is neither a note (.yaml) nor an export of job cards (.json).');
  // Browsers number a second download of the same name.
  const plain = id.replace(/ ?\(\d+\)$/, '');
  if (!ID_FORM.test(plain))
    return refuse(
      `Its name "${base}" is no name for a note: lower-case words joined by hyphens, such as second-bleed-screw.yaml.`,
    );
  const { text: formatted } = formatYaml(text);
  return [{ id: plain, text: formatted }];
}

function textOf(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: false }).decode(bytes);
  } catch {
    return undefined;
  }
}

function notesOfExport(name: string, text: string): Candidate[] {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return [{ name, why: 'It is cut short or changed: this is not JSON. Export the job cards again.' }];
  }
  const finished = finishedJobsSchema.safeParse(data);
  if (finished.success) return [{ jobs: finished.data.jobs }];
  const parsed = jobCardsSchema.safeParse(data);
  if (!parsed.success) {
    const { path, message } = parsed.error.issues[0] ?? { path: [], message: '' };
    return [
      {
        name,
        why: `It is no export of job cards as the site makes them: ${path.join('.') || 'the file'}: ${message}`,
      },
    ];
  }
  if (parsed.data.notes.length === 0)
    return [
      {
        name,
        why: 'There is no note in it. On the job card: “Write a note from this card”, then export again.',
      },
    ];
  return parsed.data.notes.map(({ id, note }) => ({ id, text: noteText(note) }));
}

/** Finished jobs go into the counts of their years; the whole shelf says which are counted already. */
function placeCounts(
  jobs: readonly FinishedJob[],
  shelfName: string,
  shelf: readonly RawFile[],
  result: TakeInResult,
  today: string,
): void {
  const own = checkFiles(shelfName, shelf).shelf;
  const { years, counted, known, strange } = countJobs(jobs, own, own.counts.counted);
  if (strange > 0)
    result.refused.push({
      name: `${strange} of ${jobs.length} finished jobs`,
      why: 'They name a complaint or a cause that this shelf does not have: they come from another one.',
    });
  for (const [year, added] of years) {
    const path = countsPath(year);
    const there = shelf.find((file) => file.path === path);
    const before = there && countsSchema.safeParse(parse(textOf(there.bytes) ?? '', { maxAliasCount: 0 }));
    if (before && !before.success) {
      result.refused.push({ name: path, why: 'It cannot be read. Mend it first: npm run check' });
      continue;
    }
    const text = countsText(addedCounts(before?.data ?? NO_COUNTS, added));
    const title = `${counted} finished jobs counted${known > 0 ? `, ${known} were in it already` : ''}`;
    result.notes.push({ id: `counts-${year}`, title, by: '', path, text, ...(there && { grows: true }) });
  }
  let measured = own.counts.measured;
  for (const { measured: added } of years.values())
    measured = addedCounts({ ...NO_COUNTS, measured }, { ...NO_COUNTS, measured: added }).measured;
  for (const id of new Set([...years.values()].flatMap((year) => Object.keys(year.measured))))
    placeMeasured(id, measured[id] ?? {}, shelf, result, today);
  if (years.size === 0 && strange === 0)
    result.known.push({ name: `${known} finished jobs`, path: 'counts' });
}

/** What finished jobs measured of a figure that a vehicle's record lacks is proposed for it; all else stays in the counts. */
function placeMeasured(
  id: string,
  measured: Counts['measured'][string],
  shelf: readonly RawFile[],
  result: TakeInResult,
  today: string,
): void {
  const path = vehiclePath(id);
  const file = shelf.find((each) => each.path === path);
  const merged = file && withMeasured(id, textOf(file.bytes) ?? '', measured, today);
  if (!merged) return;
  const title = `Figures measured on finished jobs: ${merged.paths.join(', ')}`;
  result.notes.push({ id, title, by: '', path, text: merged.text, grows: true });
}

/** Where a note belongs, if it may come in at all. */
function place(
  { id, text }: { id: string; text: string },
  name: string,
  shelf: readonly RawFile[],
  result: TakeInResult,
): void {
  const refuse = (why: string) => result.refused.push({ name, why });
  const vehicle = readVehicle(text);
  if (vehicle) return void placeVehicle({ id, text, ...vehicle }, name, shelf, result);
  const note = readNote(text);
  if (typeof note === 'string') return void refuse(note);
  if (note.status !== 'proposed')
    return void refuse(
      `Its status is "${note.status}". A note comes in as proposed; it is accepted in the pull request, by somebody else.`,
    );
  const path = notePath(id, { date: note.date });
  const there = shelf.find((file) => file.path.startsWith('notes/') && file.path.endsWith(`/${id}.yaml`));
  if (there && isDeepStrictEqual(readNote(textOf(there.bytes) ?? ''), note))
    return void result.known.push({ name, path: there.path });
  if (there)
    return void refuse(
      `Another note has this name: ${there.path}. Give the file another name; ids live for ever.`,
    );
  if (result.notes.some((other) => other.id === id))
    return void refuse(`Two of the files handed in are called "${id}". Give one of them another name.`);
  result.notes.push({ id, title: note.title, by: note.by, path, text });
}

/** A vehicle, told by its layout: everything else about it is for the check. */
function readVehicle(text: string): { title: string; data: unknown } | undefined {
  try {
    const data: unknown = parse(text, { maxAliasCount: 0, logLevel: 'error' });
    if (!isPlainObject(data) || !('layout' in data) || !('figures' in data)) return undefined;
    return { title: typeof data.title === 'string' ? data.title : '', data };
  } catch {
    return undefined;
  }
}

/** A vehicle that the shelf does not have; one that it has is changed by hand, with both before one's eyes. */
function placeVehicle(
  { id, text, title, data }: { id: string; text: string; title: string; data: unknown },
  name: string,
  shelf: readonly RawFile[],
  result: TakeInResult,
): void {
  const path = vehiclePath(id);
  const there = shelf.find((file) => file.path === path);
  if (there && isDeepStrictEqual(readVehicle(textOf(there.bytes) ?? '')?.data, data))
    return void result.known.push({ name, path });
  const twice = result.notes.some((other) => other.path === path);
  if (there || twice)
    return void result.refused.push({
      name,
      why: `A vehicle has this name already: ${path}. Give the file another name, or change the vehicle that is there.`,
    });
  result.notes.push({ id, title, by: '', path, text });
}

/** What place and date need to know, or why it cannot be known. The rest is for the check. */
function readNote(text: string): Pick<Note, 'title' | 'by' | 'date' | 'status'> | string {
  let data: unknown;
  try {
    data = parse(text, { maxAliasCount: 0, logLevel: 'error' });
  } catch (error) {
    const [first = ''] = error instanceof Error ? error.message.split('\n') : [];
    return `YAML cannot read it: ${first.replace(/:$/, '')}.`;
  }
  data = inOrdinarySpelling(noteSchema, data).value;
  const has = (name: string): string | undefined => {
    const value =
      typeof data === 'object' && data !== null ? (data as Record<string, unknown>)[name] : undefined;
    return typeof value === 'string' ? value : undefined;
  };
  const date = has('date') ?? '';
  if (!/^\d{4}-\d{2}-\d{2}$/.test(date))
    return 'It has no date, written as 2026-11-25: it decides the folder.';
  const status = has('status');
  if (status === undefined) return 'It has no status; a new note says "status: proposed".';
  return {
    ...(data as Note),
    title: has('title') ?? '',
    by: has('by') ?? '',
    date,
    status: status as Note['status'],
  };
}

/** The whole shelf checked with the notes on it; findings about them are refusals. */
function judge(shelfName: string, shelf: readonly RawFile[], result: TakeInResult): void {
  const added = result.notes.map(({ path, text }) => ({ path, bytes: new TextEncoder().encode(text) }));
  if (added.length === 0) return;
  const before = shelf.filter(({ path }) => !added.some((other) => other.path === path));
  const { findings } = checkFiles(shelfName, [...before, ...added]);
  for (const { path } of result.notes) {
    const file = shelfName === '' ? path : `${shelfName}/${path}`;
    const own = findings.filter(({ place, level }) => place.file === file && level === 'error');
    if (own.length > 0) result.refused.push({ name: file, why: reportText(own).trim() });
  }
}
