/** What the simulated cars showed when the bench was last run, and what persons have settled about it. */
import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { z } from 'zod';
import type { Parted } from './compare.ts';

/** Written by `npx node tests/bench/car-rows.ts --write`. */
export const KEPT_FILE = new URL('./simulated.json', import.meta.url);
const SETTLED_FILE = new URL('./settled.yaml', import.meta.url);

const keptSchema = z.strictObject({
  made: z.iso.date(),
  by: z.string(),
  rows: z.array(
    z.strictObject({
      test: z.string(),
      cause: z.string(),
      cars: z.int().positive(),
      seen: z.record(z.string(), z.int().positive()),
    }),
  ),
});

const settledSchema = z.array(
  z.strictObject({
    /** One test, with one cause or several of which the same holds. */
    test: z.string(),
    causes: z.array(z.string()).min(1),
    /** What stood against what: the record's share or words, and the cars. */
    record: z.string().min(3),
    simulated: z.string().min(3),
    right: z.enum(['the record', 'the simulation', 'neither']),
    why: z.string().min(20),
    /** What was done about it. */
    done: z.enum(['evidence changed', 'nothing', 'simulation mended', 'figure wanted']),
  }),
);

export type Kept = z.infer<typeof keptSchema>;
export type Settled = z.infer<typeof settledSchema>;

/** @throws when the file is not as the bench writes it */
export function keptRows(): Kept {
  return keptSchema.parse(JSON.parse(readFileSync(KEPT_FILE, 'utf8')));
}

/** @throws when the file is not as its fields are described */
export function settledRows(): Settled {
  return settledSchema.parse(parse(readFileSync(SETTLED_FILE, 'utf8')));
}

/** Whether somebody has settled the row of this test and cause. */
export function isSettled(settled: Settled, { test, cause }: Pick<Parted, 'test' | 'cause'>): boolean {
  return settled.some((one) => one.test === test && one.causes.includes(cause));
}
