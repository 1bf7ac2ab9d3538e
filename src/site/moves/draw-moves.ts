/** A moment of two cars: both circuits with their temperatures, and the whole half hour as a curve below. */
import { type Habit, METRIC } from '../../model/habit.ts';
import { drawCurve } from '../drawings/curve.ts';
import { inUnit, temperatureStep } from '../drawings/ladder-scale.ts';
import { at, escapeText, picture } from '../drawings/svg.ts';
import { BACK, type CarMoment, END, EVERY, OUT, type TwoRuns } from './two-runs.ts';

export interface MomentInput {
  /** Prefix of the ids; unique on the page. */
  id: string;
  /** What the faulty car has, as a title. */
  fault: string;
  runs: TwoRuns;
  /** Which picture, from 0. */
  at: number;
  habit?: Habit;
}

/** Pictures of a run. */
export const PICTURES = (END * 60) / EVERY + 1;

/** What the car does at a picture, in words. */
export function phaseAt(picture: number): string {
  const minute = (picture * EVERY) / 60;
  const does = minute < OUT ? 'idling in the bay' : minute < BACK ? '80 km/h' : 'idling in the bay again';
  return `${minute} min, ${does}`;
}

/** Three drawings: the sound circuit, the faulty one, the curve. */
export function drawMoment({
  id,
  fault,
  runs,
  at: index,
  habit = METRIC,
}: MomentInput): [string, string, string] {
  const sound = runs.sound[index];
  const faulty = runs.faulty[index];
  if (!sound || !faulty) throw new RangeError(`No picture ${index}.`);
  const unit = habit.temperature === '°F' ? '°F' : '°C';
  const minute = (index * EVERY) / 60;
  const points = (list: readonly CarMoment[]) =>
    list.map(({ head }, place) => [(place * EVERY) / 60, head] as const);
  const highest = Math.max(...runs.sound.map(({ head }) => head), ...runs.faulty.map(({ head }) => head));
  const curve = drawCurve({
    id: `${id}-curve`,
    title: `Coolant at the head: sound, and ${fault}`,
    x: { label: 'since cold start', unit: 'min', low: 0, high: END },
    y: { label: 'coolant at the head', unit: '°C', low: 0, high: highest > 118 ? 140 : 120 },
    curves: [{ points: points(runs.sound) }, { points: points(runs.faulty), dashed: true }],
    points: [
      { x: minute, y: sound.head, label: 'sound', below: sound.head < faulty.head },
      { x: minute, y: faulty.head, label: 'with the fault', below: faulty.head <= sound.head },
    ],
    habit,
  });
  return [
    drawCircuitNow(`${id}-sound`, 'Sound', sound, unit),
    drawCircuitNow(`${id}-fault`, fault, faulty, unit),
    curve,
  ];
}

const SIZE = { width: 350, height: 214 };

/** Head and block on the left, radiator on the right, hoses between, heater below the upper one. */
function drawCircuitNow(id: string, title: string, now: CarMoment, unit: '°C' | '°F'): string {
  const degrees = (celsius: number) => `${Math.round(inUnit(celsius, unit))} ${unit}`;
  const step = (celsius: number) => `t-${temperatureStep(celsius)}`;
  const box = (x: number, y: number, width: number, height: number, celsius: number) =>
    `<rect class="${step(celsius)} fill" x="${x}" y="${y}" width="${width}" height="${height}"/>`;
  const hose = (data: string, celsius: number) => `<path class="${step(celsius)} hose-now" d="${data}"/>`;
  const text = (x: number, y: number, words: string, anchor = 'middle', strong = false) =>
    `<text${strong ? ' class="strong"' : ''} x="${x}" y="${y}" text-anchor="${anchor}">${escapeText(words)}</text>`;
  const lift = now.lift < 0.01 ? 'shut' : `${Math.round(now.lift * 100)} % open`;
  const body = [
    hose(`M${at(96, 44)}H252`, now.upperHose),
    hose(`M${at(252, 176)}H96`, now.lowerHose),
    hose(`M${at(96, 98)}H138M${at(202, 98)}H222V176`, now.heater),
    box(20, 28, 76, 56, now.head),
    box(20, 84, 76, 108, now.head),
    `<path class="heavy" d="M${at(20, 28)}H96V192H20ZM${at(20, 84)}H96"/>`,
    ...now.slices.map((celsius, slice) => box(252, 28 + slice * 41, 78, 41, celsius)),
    `<path class="heavy" d="M${at(252, 28)}H330V192H252Z"/>`,
    box(138, 74, 64, 48, now.heater),
    `<path class="heavy" d="M${at(138, 74)}H202V122H138Z"/>`,
    label(58, 60, 'head', degrees(now.head)),
    label(291, 60, 'inlet', degrees(now.slices[0])),
    label(291, 166, 'outlet', degrees(now.slices[3])),
    label(170, 95, 'heater', degrees(now.heater)),
    text(174, 34, `upper hose ${degrees(now.upperHose)}`),
    text(154, 166, `lower hose ${degrees(now.lowerHose)}`),
    text(20, 18, `scan tool ${degrees(now.scan)}`, 'start', true),
    text(330, 18, now.isFanOn ? 'fan on' : 'fan off', 'end', true),
    text(20, 210, `thermostat ${lift}`, 'start', true),
  ].join('');
  const description = `Head ${degrees(now.head)}, upper hose ${degrees(now.upperHose)}, radiator ${degrees(now.slices[0])} at the inlet and ${degrees(now.slices[3])} at the outlet, lower hose ${degrees(now.lowerHose)}, heater ${degrees(now.heater)}. Thermostat ${lift}, ${now.isFanOn ? 'fan on' : 'fan off'}.`;
  return picture({ id, kind: 'moves', title, description, ...SIZE }, body);
}

/** Two lines on a coloured part, on a patch of the sheet so that they are read in every theme. */
function label(x: number, y: number, name: string, value: string): string {
  return (
    `<rect class="patch" x="${x - 27}" y="${y - 13}" width="54" height="32"/>` +
    `<text x="${x}" y="${y}" text-anchor="middle">${name}</text>` +
    `<text class="strong" x="${x}" y="${y + 14}" text-anchor="middle">${value}</text>`
  );
}
