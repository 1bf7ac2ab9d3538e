/** content/counts/<year>.yaml: what the shop's finished jobs came to, counted. Nothing of a customer, a plate or a day is in it. */
import { z } from 'zod';
import { FIGURE_PATHS, type FigurePath } from './figures.ts';
import { idSchema, lineSchema, reference } from './scalars.ts';

const countSchema = z.int().min(1).max(100_000);

export const countsSchema = z.strictObject({
  invented: z.literal(true).optional().describe('true for counts that nobody counted.'),
  counted: z
    .array(idSchema)
    .describe('Random names of the cards that are in it, so that no job is counted twice.')
    .meta({ empty: true }),
  causes: z
    .record(reference('symptom'), z.record(reference('cause'), countSchema))
    .describe('By complaint: how often each cause was the proven one.')
    .meta({ empty: true }),
  readings: z
    .record(reference('cause'), z.record(reference('test'), z.record(idSchema, countSchema)))
    .describe(
      'By proven cause: how often each outcome of a test was seen on such a car. The tests that prove the cause are not in it: they showed it by definition.',
    )
    .meta({ empty: true }),
  measured: z
    .record(
      reference('vehicle'),
      z.partialRecord(z.enum(FIGURE_PATHS as [FigurePath, ...FigurePath[]]), z.array(lineSchema)),
    )
    .default({})
    .describe(
      'By vehicle: every reading of a figure on a car that was sound at the end. It stands beside the record’s figure and changes nothing.',
    ),
});

export type Counts = z.infer<typeof countsSchema>;

/** Nothing counted yet. */
export const NO_COUNTS: Counts = { counted: [], causes: {}, readings: {}, measured: {} };

/** Counts of several years, or of a year and a new lot, together. */
export function addedCounts(one: Counts, other: Counts): Counts {
  return {
    ...((one.invented ?? other.invented) && { invented: true }),
    counted: [...one.counted, ...other.counted],
    causes: addedTables(one.causes, other.causes, addedNumbers),
    readings: addedTables(one.readings, other.readings, (a, b) => addedTables(a, b, addedNumbers)),
    measured: addedTables(one.measured, other.measured, addedReadings),
  };
}

type Table<T> = Record<string, T>;

function addedTables<T extends object>(one: Table<T>, other: Table<T>, add: (a: T, b: T) => T): Table<T> {
  const all = new Map(Object.entries(one));
  for (const [name, value] of Object.entries(other)) {
    const before = all.get(name);
    all.set(name, before === undefined ? value : add(before, value));
  }
  return Object.fromEntries(all);
}

function addedNumbers(one: Table<number>, other: Table<number>): Table<number> {
  const all = new Map(Object.entries(one));
  for (const [name, value] of Object.entries(other)) all.set(name, (all.get(name) ?? 0) + value);
  return Object.fromEntries(all);
}

type MeasuredReadings = Counts['measured'][string];

function addedReadings(one: MeasuredReadings, other: MeasuredReadings): MeasuredReadings {
  const all: MeasuredReadings = { ...one };
  for (const path of FIGURE_PATHS) {
    const added = other[path];
    if (added) all[path] = [...(all[path] ?? []), ...added];
  }
  return all;
}

/** Path of a year's counts, from the shelf's folder. */
export function countsPath(year: string): string {
  return `counts/${year}.yaml`;
}
