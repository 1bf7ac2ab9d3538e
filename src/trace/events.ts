/** What happened on the road test, in order: for the marks on the chart and for the table beside it. */
import { pausedAtStamp } from './first-rise.ts';
import { middleOf } from './grid.ts';
import type { TraceJudgement } from './judge-trace.ts';
import { stretchesWhere } from './stretches.ts';
import type { TraceVehicle } from './vehicle.ts';

export type TraceEventKind =
  | 'start'
  | 'reached'
  | 'opens'
  | 'pause'
  | 'at speed'
  | 'standing'
  | 'fan on'
  | 'fan off'
  | 'highest'
  | 'heat soak'
  | 'sensor fault'
  | 'gap'
  | 'end';

export interface TraceEvent {
  kind: TraceEventKind;
  /** Seconds from the start. */
  at: number;
  /** Where it ended, for what lasts. */
  until: number | undefined;
  /** Coolant, K; at the end for what lasts. */
  kelvin: number;
  /** Coolant at its beginning, for what lasts; reading before a jump. */
  from: number | undefined;
}

/** Stretches of a stop-and-go that are told one by one; more of them say nothing. */
const MOST_STRETCHES = 8;
const HEAT_SOAK_LEAST = 60;
/** Readings further apart than this are a gap, s. */
const GAP = 60;

/** What happened on the drive, in order of time. */
export function eventsOf(judged: TraceJudgement, vehicle: TraceVehicle): TraceEvent[] {
  const { grid, start, course, drive, fan, sensor, hot } = judged;
  const { smooth, step } = grid;
  const reading = (at: number) =>
    smooth[Math.min(smooth.length - 1, Math.max(0, Math.round(at / step)))] ?? Number.NaN;
  const event = (kind: TraceEventKind, at: number, more: Partial<TraceEvent> = {}): TraceEvent => ({
    kind,
    at,
    until: undefined,
    kelvin: reading(at),
    from: undefined,
    ...more,
  });
  const first = smooth.findIndex(Number.isFinite);
  // Smoothing lifts the first reading of a cold start by a degree; the log's own is told.
  const begun = (at: number) => (at <= first ? start.coolant : reading(at * step));
  const lasting = (kind: TraceEventKind, from: number, to: number) =>
    event(kind, from * step, {
      until: to * step,
      from: begun(from),
      kelvin: middleOf(smooth, to - Math.round(30 / step), to),
    });
  const stops = drive?.standing.filter(({ from, to }) => (to - from) * step >= 120) ?? [];
  const events = [
    event('start', Math.max(0, first) * step, { kelvin: start.coolant }),
    ...course.milestones.map(({ kelvin, at }) => event('reached', at, { kelvin })),
    ...(course.pause
      ? [
          event(pausedAtStamp(course, vehicle) ? 'opens' : 'pause', course.pause.at, {
            kelvin: course.pause.kelvin,
          }),
        ]
      : []),
    ...longestOf(drive?.atSpeed ?? []).map(({ from, to }) => lasting('at speed', from, to)),
    ...longestOf(stops).map(({ from, to }) => lasting('standing', from, to)),
    ...fan.runs
      .slice(0, MOST_STRETCHES)
      .flatMap(({ from, to, on, off }) => [
        event('fan on', from, { kelvin: on }),
        ...(to === undefined || off === undefined ? [] : [event('fan off', to, { kelvin: off })]),
      ]),
    ...(hot.highest > vehicle.fanOn.low - 5 ? [event('highest', smooth.indexOf(hot.highest) * step)] : []),
    ...heatSoaks(judged).map(({ from, to }) => lasting('heat soak', from, to)),
    ...sensor.faults.map(({ at, from, to }) => event('sensor fault', at, { kelvin: to, from })),
    ...stretchesWhere(smooth.length, (at) => Number.isNaN(smooth[at]), GAP / step).map(({ from, to }) =>
      event('gap', from * step, { until: to * step }),
    ),
    event('end', (smooth.length - 1) * step),
  ];
  return events.sort((a, b) => a.at - b.at);
}

function longestOf<T extends { from: number; to: number }>(stretches: readonly T[]): T[] {
  return [...stretches].sort((a, b) => b.to - b.from - (a.to - a.from)).slice(0, MOST_STRETCHES);
}

/** Engine off and the coolant still rising: the heat of the metal comes out. */
function heatSoaks({ grid }: TraceJudgement): { from: number; to: number }[] {
  const { signals, smooth, step } = grid;
  const { rpm } = signals;
  if (!rpm) return [];
  return stretchesWhere(rpm.length, (at) => (rpm[at] ?? 999) < 50, HEAT_SOAK_LEAST / step).filter(
    ({ from, to }) => Math.max(...smooth.subarray(from, to + 1)) > (smooth[from] ?? 0) + 1 && from > 0,
  );
}
