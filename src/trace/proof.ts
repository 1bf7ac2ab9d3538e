/** The proof run: what has to be seen before a car goes back, held against its own figures. */
import { FIGURES, type FigurePath, figureFits } from '../model/figures.ts';
import { type Habit, METRIC } from '../model/habit.ts';
import { readQuantity } from '../model/quantity.ts';
import type { TraceJudgement } from './judge-trace.ts';
import { degrees, figureText } from './say.ts';
import type { Figure, TraceVehicle, VehicleFigures } from './vehicle.ts';

export const MILESTONES = [
  'hose-cold',
  'opens',
  'holds',
  'hoses-equal',
  'fan-on',
  'fan-off',
  'vents',
  'gauge',
  'leaks',
  'level',
] as const;
export type MilestoneId = (typeof MILESTONES)[number];

export interface Milestone {
  id: MilestoneId;
  label: string;
  /** How to see it. */
  how: string;
  /** A temperature, or one of these answers; the first one passes. */
  asks: 'temperature' | readonly { value: string; label: string }[];
  /** Usual range, K; undefined when the answer alone decides. */
  wanted: Figure | undefined;
}

export type MilestoneResult = 'pass' | 'fail' | 'not done';

/** A switch, a scan tool and a stamp are each 2 to 3 K out. */
const OUT = 3;

/** The figures a milestone is judged by: a vehicle that cannot have them does not have it. */
const JUDGED_BY: Partial<Record<MilestoneId, FigurePath[]>> = {
  'hose-cold': ['thermostat.opens'],
  opens: ['thermostat.opens'],
  holds: ['running.cruise'],
  'hoses-equal': ['thermostat.opens'],
  'fan-on': ['fan.on'],
  'fan-off': ['fan.off'],
  vents: ['vent.heater'],
};

/** The milestones that this vehicle has: a clutch has no switching points, an electric car no thermostat. */
export function milestonesFor(vehicle: TraceVehicle, sheet: VehicleFigures | undefined): Milestone[] {
  const { layout } = vehicle;
  return [...measuredMilestones(vehicle, sheet), ...SEEN_MILESTONES].filter(({ id }) => {
    if (id.startsWith('fan-') && layout.fan === 'viscous clutch') return false;
    return (JUDGED_BY[id] ?? []).every(
      (path) => sheet?.figures[path] !== undefined || figureFits(path, layout),
    );
  });
}

/** Those that are a temperature, each with the band it has to lie in. */
function measuredMilestones(vehicle: TraceVehicle, sheet: VehicleFigures | undefined): Milestone[] {
  const { opens, cruise, fanOn, fanOff, lowLimit, layout } = vehicle;
  const inlet = layout.thermostat === 'inlet side';
  return [
    {
      id: 'hose-cold',
      label: inlet ? 'Hose from the radiator still cold at' : 'Hose to the radiator still cool at',
      how: 'The last coolant reading at which the hose was not yet warm to the back of a gloved hand.',
      asks: 'temperature',
      wanted: between(opens, opens.low - 6, opens.high + (inlet ? 6 : 3)),
    },
    {
      id: 'opens',
      label: 'Thermostat starts at',
      how: 'Where the rise pauses and the hose begins to warm.',
      asks: 'temperature',
      wanted: between(opens, opens.low - OUT, opens.high + OUT + 1),
    },
    {
      id: 'holds',
      label: 'Holds at steady speed',
      how: 'Ten minutes at one speed on a level road.',
      asks: 'temperature',
      wanted: between(cruise, Math.max(lowLimit.high, cruise.low - OUT), cruise.high + OUT),
    },
    {
      id: 'hoses-equal',
      label: 'Hoses equally hot at',
      how: 'Standing: radiator inlet and outlet within a few degrees by infrared on the rubber.',
      asks: 'temperature',
      wanted: between(opens, opens.low, fanOn.high + OUT),
    },
    {
      id: 'fan-on',
      label: 'Fan starts at',
      how: 'Standing, air conditioning off. Hands and cloths clear: it starts by itself.',
      asks: 'temperature',
      wanted: between(fanOn, fanOn.low - OUT, fanOn.high + OUT),
    },
    {
      id: 'fan-off',
      label: 'Fan stops at',
      how: 'The figure falls, and it stops.',
      asks: 'temperature',
      wanted: between(fanOff, fanOff.low - OUT, Math.min(fanOff.high + OUT, fanOn.high)),
    },
    {
      id: 'vents',
      label: 'Air at the vents',
      how: 'Heater on hot, blower on second speed, thermometer in the middle vent.',
      asks: 'temperature',
      wanted: ventAir(sheet),
    },
  ];
}

function between(from: Figure, low: number, high: number): Figure {
  return { low, high, from: from.from === 'general' ? 'general' : 'computed' };
}

/** Air at the middle vent on hot: as the vehicle's record has it, else the usual. */
function ventAir(sheet: VehicleFigures | undefined): Figure {
  const own = sheet?.figures['vent.heater']?.quantity;
  const general = readQuantity(FIGURES['vent.heater'].general, 'temperature');
  const low = own?.low ?? (general.ok ? general.quantity.low : 0);
  return { low: low - OUT, high: 363, from: own ? 'vehicle' : 'general' };
}

/** Those that are looked at. */
const SEEN_MILESTONES: readonly Milestone[] = [
  {
    id: 'gauge',
    label: 'Gauge through the whole run',
    how: 'It may not pass the middle. Many are buffered, so a steady needle alone proves nothing.',
    asks: [
      { value: 'middle', label: 'Did not pass the middle' },
      { value: 'past', label: 'Passed the middle' },
      { value: 'none', label: 'There is no gauge' },
    ],
    wanted: undefined,
  },
  {
    id: 'leaks',
    label: 'Leaks, hot and under pressure',
    how: 'Every joint that was open, the pump, the heater connections, and under the car.',
    asks: [
      { value: 'none', label: 'None seen' },
      { value: 'seen', label: 'A leak seen' },
    ],
    wanted: undefined,
  },
  {
    id: 'level',
    label: 'Level after cooling down',
    how: 'Cold again, on level ground. The cap stays shut while it is hot.',
    asks: [
      { value: 'mark', label: 'At the mark' },
      { value: 'topped', label: 'Low: topped up, look again' },
      { value: 'high', label: 'Too high' },
    ],
    wanted: undefined,
  },
];

/** @param answer kelvin, or one of the milestone's values; undefined when it was not done */
export function passes({ asks, wanted }: Milestone, answer: number | string | undefined): MilestoneResult {
  if (answer === undefined) return 'not done';
  if (asks !== 'temperature') return answer === asks[0]?.value || answer === 'none' ? 'pass' : 'fail';
  if (typeof answer !== 'number' || !wanted) return 'not done';
  // Half a degree of rounding in the reader's own unit is nobody's fault.
  return answer >= wanted.low - 0.5 && answer <= wanted.high + 0.5 ? 'pass' : 'fail';
}

/**
 * What the log shows of the milestones, K. Never what only a hand or an eye can tell; the hoses only where a second
 * temperature was logged.
 */
export function fromTrace(
  judged: TraceJudgement,
  vehicle: TraceVehicle,
): Partial<Record<MilestoneId, number>> {
  const { course, cold, fan, verdict } = judged;
  if (verdict.finding.startsWith('sensor')) return {};
  const { pause } = course;
  const level = cold.is === 'unknown' ? undefined : cold.settled?.level;
  // The second cycle is the one that counts, when there is one.
  const run = fan.runs.filter(({ off }) => off !== undefined)[1] ?? fan.runs[0];
  const seen: [MilestoneId, number | undefined][] = [
    // The logged hose is the one from the radiator; only on the inlet side is that the one to feel for this.
    ['hose-cold', vehicle.layout.thermostat === 'inlet side' ? hoseColdUntil(judged) : undefined],
    ['opens', pause?.kelvin],
    ['holds', level],
    ['hoses-equal', hosesEqualAt(judged, vehicle)],
    ['fan-on', run?.on],
    ['fan-off', run?.off],
  ];
  return Object.fromEntries(seen.filter(([, kelvin]) => Number.isFinite(kelvin)));
}

/** Warm to the back of a gloved hand: so far over where it began, K. */
const FELT_WARM = 8;
/** Equal by infrared on the rubber, within a few degrees, K. */
const EQUAL = 6;

/** Coolant when the second temperature had only just begun to warm. */
function hoseColdUntil({ grid }: TraceJudgement): number | undefined {
  const { outlet } = grid.signals;
  const cold = outlet?.find(Number.isFinite);
  if (!outlet || cold === undefined || (grid.smooth.find(Number.isFinite) ?? 999) > cold + FELT_WARM)
    return undefined;
  const warmed = outlet.findIndex((each) => each > cold + FELT_WARM);
  return warmed === -1 ? undefined : grid.smooth[warmed];
}

/** Coolant when, standing, the second temperature first came up to it, once it had opened. */
function hosesEqualAt({ grid, drive }: TraceJudgement, { opens }: TraceVehicle): number | undefined {
  const { outlet } = grid.signals;
  if (!outlet) return undefined;
  for (const { from, to } of drive?.standing ?? [])
    for (let at = from; at <= to; at++) {
      const coolant = grid.smooth[at] ?? Number.NaN;
      if (coolant > opens.low - OUT && Math.abs(coolant - (outlet[at] ?? Number.NaN)) <= EQUAL)
        return coolant;
    }
  return undefined;
}

/** Pass or fail of all of them, in a sentence. Never that the car is safe. */
export function proofSentence(results: readonly MilestoneLine[]): string {
  const failed = results.filter(({ passed }) => passed === 'fail');
  const open = results.filter(({ passed }) => passed === 'not done');
  if (failed.length > 0) return `Not passed: ${listed(failed)}.`;
  if (open.length === results.length) return 'Nothing entered yet.';
  if (open.length > 0) return `So far in order: ${results.length - open.length} of ${results.length}.`;
  return 'Every milestone passes.';
}

/** What is still to be done, in a sentence; empty when nothing is. */
export function leftToDo(results: readonly MilestoneLine[]): string {
  const open = results.filter(({ passed }) => passed === 'not done');
  return open.length === 0 ? '' : `Still to do: ${listed(open)}.`;
}

export interface MilestoneLine {
  label: string;
  passed: MilestoneResult;
}

function listed(results: readonly MilestoneLine[]): string {
  // Without the word that leads to the figure: "fan starts at" is "fan starts".
  return results.map(({ label }) => label.toLowerCase().replace(/ at$/, '')).join('; ');
}

/** The range that passes, in words. */
export function wantedText({ id, wanted }: Milestone, habit: Habit = METRIC): string {
  if (!wanted) return '';
  if (id === 'vents')
    return `${degrees(wanted.low, habit)} or more${wanted.from === 'general' ? ' (general)' : ''}`;
  return figureText(wanted, habit);
}
