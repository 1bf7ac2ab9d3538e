/** The trials counted: by complaint, by complaint and cause, in all. */
import type { ComplaintId } from '../../../src/car/complaint.ts';
import type { FaultId } from '../../../src/car/faults.ts';
import type { Tried, Verdict } from './trial.ts';

/** Half, once and double the ranges of the table of faults. */
export const SCALES = [0.5, 1, 2] as const;

export interface Counted {
  readonly scale: number;
  readonly cars: number;
  readonly right: number;
  readonly honest: number;
  readonly lost: number;
  readonly wrong: number;
}

export interface Table {
  /** Day and command of the run. */
  readonly made: string;
  readonly by: string;
  /** Cars drawn for each complaint and cause at each scale, those that never show the complaint included. */
  readonly drawn: number;
  readonly all: readonly (Counted & { readonly complaint?: undefined })[];
  readonly complaints: readonly (Counted & { readonly complaint: ComplaintId })[];
  /** At once the ranges. */
  readonly causes: readonly (Counted & { readonly complaint: ComplaintId; readonly cause: FaultId })[];
  /** Causes of a complaint that no drawn car shows it with. */
  readonly neverShown: readonly { readonly complaint: ComplaintId; readonly cause: FaultId }[];
}

export interface Trials {
  readonly complaint: ComplaintId;
  readonly fault: FaultId;
  readonly scale: number;
  readonly tried: readonly Tried[];
}

export function countOf(scale: number, tried: readonly Tried[]): Counted {
  const of = (verdict: Verdict) => tried.filter((one) => one.verdict === verdict).length;
  return {
    scale,
    cars: tried.length,
    right: of('right'),
    honest: of('honest'),
    lost: of('lost'),
    wrong: of('wrong'),
  };
}

export function tableOf(trials: readonly Trials[], run: { cars: number; first: number }): Table {
  const scales = [...new Set(trials.map(({ scale }) => scale))];
  const complaints = [...new Set(trials.map(({ complaint }) => complaint))];
  const together = (scale: number, complaint?: ComplaintId) =>
    countOf(
      scale,
      trials
        .filter((one) => one.scale === scale && (complaint === undefined || one.complaint === complaint))
        .flatMap(({ tried }) => tried),
    );
  const once = trials.filter(({ scale }) => scale === 1);
  return {
    made: new Date().toISOString().slice(0, 10),
    by: `npx node tests/bench/car-trials.ts --cars ${run.cars} --seed ${run.first} --write`,
    drawn: run.cars,
    all: scales.map((scale) => together(scale)),
    complaints: complaints.flatMap((complaint) =>
      scales.map((scale) => ({ complaint, ...together(scale, complaint) })),
    ),
    causes: once
      .filter(({ tried }) => tried.length > 0)
      .map(({ complaint, fault, tried }) => ({ complaint, cause: fault, ...countOf(1, tried) })),
    neverShown: once
      .filter(({ tried }) => tried.length === 0)
      .map(({ complaint, fault }) => ({ complaint, cause: fault })),
  };
}

/** Text of the file that the site reads. */
export function trialsText(table: Table): string {
  return `${JSON.stringify(table, null, 1)}\n`;
}
