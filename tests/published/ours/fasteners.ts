import { isPropertyClass, type PropertyClass, proofLoad } from '../../../src/physics/bolt.ts';
import { torqueAtFriction } from '../../../src/physics/friction.ts';
import { strippingLoad } from '../../../src/physics/stripping.ts';
import { parseThread, stressArea, type Thread } from '../../../src/physics/thread.ts';
import {
  assemblyPreload,
  clampLoad,
  clampLoadByNutFactor,
  nutFactor,
  tighteningTorque,
} from '../../../src/physics/tightening.ts';
import { torquePlausibility } from '../../../src/physics/torque-plausibility.ts';
import { TORQUE_UNITS, type TorqueUnit } from '../../../src/physics/torque-units.ts';
import { metre, newtonMetre } from '../../../src/physics/units.ts';
import { wrenchSetting } from '../../../src/physics/wrench-extension.ts';
import type { Ours, OursByTable } from '../compare.ts';
import { number, type Row, text } from '../tables.ts';

function threadNamed(name: string): Thread {
  const thread = parseThread(name);
  if (!thread) throw new Error(`no thread "${name}"`);
  return thread;
}

function classNamed(name: string): PropertyClass {
  if (!isPropertyClass(name)) throw new Error(`no property class "${name}"`);
  return name;
}

const threadOf = (row: Row): Thread => threadNamed(text(row, 'thread'));

const load =
  (name: string): Ours =>
  (row) =>
    proofLoad(threadNamed(name), classNamed(text(row, 'class')));

const vdi: Readonly<Record<string, Ours>> = Object.fromEntries(
  (['8.8', '10.9', '12.9'] as const).flatMap((propertyClass): [string, Ours][] => [
    [`F ${propertyClass}`, (row) => assemblyPreload(threadOf(row), propertyClass, number(row, 'mu')) / 1000],
    [`M ${propertyClass}`, (row) => tighteningTorque(threadOf(row), propertyClass, number(row, 'mu'))],
  ]),
);

const torqueAt =
  (propertyClass: PropertyClass, friction: number): Ours =>
  (row) =>
    tighteningTorque(threadOf(row), propertyClass, friction);

/** Limit at which the verdict itself turns to "no bolt of this thread", found by asking it. */
const refusedAbove: Ours = (row) => {
  const answer = torquePlausibility({
    thread: text(row, 'thread'),
    propertyClass: '12.9',
    torque: newtonMetre(1000),
    into: 'steel',
  });
  return answer.verdict === 'impossible' ? answer.limit : Number.NaN;
};

const oiledByMistake: Ours = (row) => {
  const thread = threadOf(row);
  const propertyClass = classNamed(text(row, 'class'));
  const torque = tighteningTorque(thread, propertyClass, 0.14);
  return (100 * clampLoad(thread, torque, 0.1)) / proofLoad(thread, propertyClass);
};

const factorAt =
  (friction: number): Ours =>
  (row) =>
    nutFactor(threadOf(row), friction);

export const FASTENERS: OursByTable = {
  'stress-area': { mm2: (row) => stressArea(threadOf(row)) * 1e6 },
  'proof-loads': { M5: load('M5'), M6: load('M6'), M8: load('M8'), M10: load('M10'), M12: load('M12') },
  'vdi-fine': vdi,
  'vdi-coarse': vdi,
  'torque-older': {
    'tool 8.8': torqueAt('8.8', 0.14),
    'tool 10.9': torqueAt('10.9', 0.14),
    'tool 12.9': torqueAt('12.9', 0.14),
    'machine 8.8': torqueAt('8.8', 0.14),
    'machine 10.9': torqueAt('10.9', 0.14),
    'machine 12.9': torqueAt('12.9', 0.14),
  },
  'nut-factor': {
    '0.10': factorAt(0.1),
    '0.12': factorAt(0.12),
    '0.14': factorAt(0.14),
    '0.16': factorAt(0.16),
    '0.20': factorAt(0.2),
  },
  'nut-factor-example': {
    N: (row) => clampLoadByNutFactor(threadOf(row), newtonMetre(number(row, 'N·m')), number(row, 'K')),
  },
  'oiled-by-mistake': { '%': oiledByMistake },
  'oiled-torque': {
    'oiled N·m': (row) =>
      torqueAtFriction(threadOf(row), newtonMetre(number(row, 'dry N·m')), 'dry', 'oiled'),
  },
  'torque-limits': {
    '8.8': torqueAt('8.8', 0.16),
    '10.9': torqueAt('10.9', 0.16),
    '12.9': torqueAt('12.9', 0.16),
    'refuse above': refusedAbove,
  },
  'wrench-setting': {
    M_set: (row) =>
      wrenchSetting(
        newtonMetre(number(row, 'M')),
        metre(number(row, 'L mm') / 1000),
        metre(number(row, 'E mm') / 1000),
        (number(row, 'angle') * Math.PI) / 180,
      ),
  },
  'torque-units': { N·m: (row) => TORQUE_UNITS[text(row, 'unit') as TorqueUnit] },
  'strip-load': {
    kN: (row) =>
      strippingLoad(threadNamed('M6'), metre(number(row, 'engagement mm') / 1000), 'aluminium') / 1000,
  },
};
