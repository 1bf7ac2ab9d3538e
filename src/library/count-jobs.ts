/** Finished jobs into the shelf's counts. A job that is in them already, or names what the shelf does not have, is passed over. */
import { stringify } from 'yaml';
import type { System } from '../model/cause.ts';
import { addedCounts, type Counts, NO_COUNTS } from '../model/counts.ts';
import type { FinishedJob } from '../model/finished-jobs.ts';
import type { Kind } from '../model/kinds.ts';
import { readMeasured } from '../model/measured-on-job.ts';
import { formatYaml } from './format-yaml.ts';
import type { Records, Shelf } from './shelf.ts';

export interface CountedJobs {
  /** New counts by year. */
  years: Map<string, Counts>;
  counted: number;
  /** In the counts already. */
  known: number;
  /** Of a complaint or a cause that the shelf does not have. */
  strange: number;
}

/**
 * @param shelf its records, and where those that were renamed stand now
 * @param before every card that is counted already, of all years
 */
export function countJobs(
  jobs: readonly FinishedJob[],
  { records, moved }: Pick<Shelf, 'records' | 'moved'>,
  before: readonly string[],
): CountedJobs {
  const seen = new Set(before);
  const result: CountedJobs = { years: new Map(), counted: 0, known: 0, strange: 0 };
  const today = (kind: Kind, id: string): string =>
    moved.find((each) => each.kind === kind && each.id === id)?.to ?? id;
  for (const written of jobs) {
    const job = {
      ...written,
      ...(written.vehicle !== undefined && { vehicle: today('vehicle', written.vehicle) }),
      symptom: today('symptom', written.symptom),
      cause: today('cause', written.cause),
      answers: written.answers.map(({ test, outcome }) => ({ test: today('test', test), outcome })),
    };
    if (seen.has(job.id)) result.known += 1;
    else if (!records.symptom.has(job.symptom) || !records.cause.has(job.cause)) result.strange += 1;
    else {
      seen.add(job.id);
      result.counted += 1;
      result.years.set(job.year, addedCounts(result.years.get(job.year) ?? NO_COUNTS, oneJob(job, records)));
    }
  }
  return result;
}

function oneJob(job: FinishedJob, records: Records): Counts {
  const { id, symptom, cause, answers } = job;
  const readings = answers.filter(({ test, outcome }) => isCounted(test, outcome, cause, records));
  const ofCause = Object.fromEntries(readings.map(({ test, outcome }) => [test, { [outcome]: 1 }]));
  return {
    counted: [id],
    causes: { [symptom]: { [cause]: 1 } },
    readings: readings.length === 0 ? {} : { [cause]: ofCause },
    measured: measuredIn(job, records),
  };
}

/** The figures that a fault in a system falsifies, by the word before their dot. */
const FIGURES_OF: Partial<Record<System, readonly string[]>> = {
  thermostat: ['thermostat', 'block-thermostat'],
  'radiator fan': ['fan'],
  'pump and belts': ['pump', 'after-run-pump', 'belt'],
  'radiator, hoses, cap and coolers': ['cap'],
  'coolant and filling': ['coolant'],
  'heater and cabin': ['heater-pump', 'vent'],
  'sensors, gauge and wiring': ['sensor', 'second-sensor'],
  'engine and exhaust': ['head', 'compression', 'leak-down', 'exhaust'],
  'gearbox, brakes and steering': ['gearbox'],
  'electric drive': ['drive', 'battery'],
};

/** What was measured on the system that was faulty is left out. */
function measuredIn({ vehicle, cause, measured = [] }: FinishedJob, records: Records): Counts['measured'] {
  const system = records.cause.get(cause)?.data.system;
  const faulty = (system && FIGURES_OF[system]) ?? [];
  const sound = measured.filter(
    ({ figure, is }) => !faulty.includes(figure.split('.')[0] ?? '') && readMeasured(is, figure),
  );
  if (vehicle === undefined || !records.vehicle.has(vehicle) || sound.length === 0) return {};
  return { [vehicle]: Object.fromEntries(sound.map(({ figure, is }) => [figure, [is]])) };
}

/** The test that proves the cause showed it by definition: counted, it would confirm itself. */
function isCounted(test: string, outcome: string, cause: string, records: Records): boolean {
  const { confirm } = records.cause.get(cause)?.data ?? {};
  const proofs = [confirm?.test, ...(confirm?.or ?? []).map((other) => other.test)];
  return records.test.get(test)?.data.outcomes[outcome] !== undefined && !proofs.includes(test);
}

/** A year's file. */
export function countsText(counts: Counts): string {
  const head =
    '# Finished jobs, counted by npm run take-in. Nothing of a customer, a plate or a day is in it.\n';
  return formatYaml(`${head}${stringify(counts, { lineWidth: 110 })}`).text;
}
