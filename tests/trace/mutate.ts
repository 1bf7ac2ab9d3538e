/** Log files spoilt in the ways files get spoilt: cut off, edited, merged, of another program, or none at all. */
import { handLog, OPENS_EARLY, SOUND_RUN } from './hand-log.ts';
import { type Random, randomOf } from './random.ts';
import { simulate } from './simulate.ts';

/** Short logs to spoil: every tenth line of whole ones. */
const BASES = [
  ...[3, 8, 21, 34, 55, 89].map((seed) => thin(simulate(seed).text)),
  thin(handLog(SOUND_RUN, 15)),
  thin(handLog(OPENS_EARLY, 14)),
];

function thin(text: string): string {
  const [header = '', ...lines] = text.split('\n');
  const every = Math.max(1, Math.floor(lines.length / 150));
  return [header, ...lines.filter((_, at) => at % every === 0)].join('\n');
}

const STRANGE = [
  'NaN',
  'Infinity',
  '-1e308',
  '1e999',
  '0x1F',
  '∞',
  '--',
  '"',
  '""',
  '\u0000',
  '\t',
  ';',
  ',',
  ',,,,',
  '99999999999999999999',
  '12:61:99',
  '-40',
  '\ufeff',
  '😀',
  '=SUM(A1)',
  '<b>',
  '\r',
  '1,2,3',
  '2026-13-45T99:99:99Z',
  '−5',
  '1.2.3',
];

type Spoil = (text: string, random: Random) => string;

const SPOILS: readonly Spoil[] = [
  (text, random) => text.slice(0, random.between(0, text.length)),
  (text, random) => text.slice(random.between(0, text.length)),
  (text, random) => onCells(text, random, 0.05, (_, each) => each.pick(STRANGE)),
  (text, random) => onCells(text, random, 0.3, () => ''),
  (text, random) =>
    onCells(text, random, 0.2, (cell, each) => String(Number(cell) * each.pick([-1, 0, 1e3, 1e-6, 1e9]))),
  (text, random) => onLines(text, random, 0.1, () => []),
  (text, random) => onLines(text, random, 0.1, (line) => [line, line]),
  (text, random) => onLines(text, random, 0.05, (_, each) => [each.pick(STRANGE), '']),
  (text, random) => onLines(text, random, 0.05, (line) => [line.slice(0, line.length / 2)]),
  (text, random) =>
    text
      .split('\n')
      .sort(() => random.share() - 0.5)
      .join('\n'),
  (text) => text.split('\n').reverse().join('\n'),
  (text) => `${text}\n${text}`,
  (text) => text.split('\n').slice(1).join('\n'),
  (text, random) =>
    text.replaceAll(
      random.pick([',', ';', '\t', '.', '\n']),
      random.pick([',', ';', '\t', '|', ' ', '\n', '']),
    ),
  (text, random) =>
    Array.from(text, (each) =>
      random.chance(0.02) ? String.fromCharCode(random.between(0, 0x2fff)) : each,
    ).join(''),
  (text, random) =>
    text.replace(/\d/g, (digit) => (random.chance(0.05) ? String(Math.floor(random.between(0, 10))) : digit)),
  (text, random) => text.replaceAll('\n', random.pick(['\r', '\r\n', '\n\n', ' '])),
  (text, random) => `${random.pick(STRANGE).repeat(random.between(1, 400))}\n${text}`,
  (_, random) =>
    Array.from({ length: random.between(0, 500) }, () => String.fromCharCode(random.between(0, 0x4ff))).join(
      '',
    ),
  (_, random) =>
    Array.from(
      { length: random.between(1, 80) },
      (__, at) => `${at},${random.pick(STRANGE)},${random.between(-60, 200)}`,
    ).join('\n'),
];

function onCells(
  text: string,
  random: Random,
  share: number,
  change: (cell: string, random: Random) => string,
): string {
  return text.replace(/[^,;\t\n]+/g, (cell) => (random.chance(share) ? change(cell, random) : cell));
}

function onLines(
  text: string,
  random: Random,
  share: number,
  change: (line: string, random: Random) => string[],
): string {
  return text
    .split('\n')
    .flatMap((line) => (random.chance(share) ? change(line, random) : [line]))
    .join('\n');
}

/** The same number, the same spoilt file. */
export function mutated(seed: number): string {
  const random = randomOf(seed + 500_000);
  let text = random.pick(BASES);
  for (let times = Math.floor(random.between(1, 4)); times > 0; times--)
    text = random.pick(SPOILS)(text, random).slice(0, 60_000);
  return text;
}
