/** Logs of the road test: any file gives a verdict or a message, and what is drawn of it is a drawing and nothing else. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { drawTrace } from '../../src/site/drawings/trace-chart.ts';
import { eventsOf } from '../../src/trace/events.ts';
import { judgeTrace } from '../../src/trace/judge-trace.ts';
import { decode } from '../../src/trace/read/decode.ts';
import { finish, readLog } from '../../src/trace/read/read-log.ts';
import { tell } from '../../src/trace/say.ts';
import { traceVehicleOf } from '../../src/trace/vehicle.ts';
import { STAMP_87 } from '../trace/known-cars.ts';
import { isWellSaid, saidAbout } from '../trace/read-mutated.ts';
import { escapes, HOSTILE, hostileText, LIMIT, runs, UNCLEAN } from './runs.ts';

/** Elements of a drawing. */
const DRAWN = [
  'svg',
  'title',
  'desc',
  'g',
  'path',
  'line',
  'rect',
  'circle',
  'polygon',
  'polyline',
  'text',
  'tspan',
  'defs',
  'linearGradient',
  'stop',
  'clipPath',
  'use',
];

test('whole logs, spoilt as files get spoilt: a verdict or a message each, both kinds', {
  timeout: LIMIT,
}, () => {
  const kinds = new Set<string>();
  fc.assert(
    fc.property(fc.nat({ max: 2 ** 31 - 1 }), fc.boolean(), (seed, hasVehicle) => {
      const said = saidAbout(seed, hasVehicle ? STAMP_87 : undefined);
      kinds.add(said.kind);
      if (!isWellSaid(said)) expect.fail(said.words.join(' | '));
    }),
    // Found by long runs: a stretch that begins in a gap of the log, a heading with "NaN" in it.
    {
      ...runs(600),
      examples: [
        [1570709420, true],
        [477228237, false],
      ],
    },
  );
  expect([...kinds].sort()).toEqual(['message', 'verdict']);
});

const cell = fc.oneof(
  { weight: 6, arbitrary: fc.double({ min: -60, max: 250, noNaN: true }).map((value) => value.toFixed(1)) },
  {
    weight: 2,
    arbitrary: fc.constantFrom(
      '',
      'NaN',
      '1e999',
      '-',
      '12:00:61',
      '2026-02-30T25:00',
      'on',
      '--',
      '85,5',
      '0x1F',
    ),
  },
  { weight: 1, arbitrary: fc.constantFrom(...HOSTILE) },
);
const heading = fc.oneof(
  fc.constantFrom(
    'time',
    'Time (s)',
    'Coolant °C',
    'ECT [degF]',
    'speed km/h',
    'fan',
    'rpm',
    'IAT',
    'load %',
    'Uhrzeit',
    '',
  ),
  fc.constantFrom(...HOSTILE),
);
const bytes = fc
  .tuple(
    fc.constantFrom(',', ';', '\t', '|', ' '),
    fc.constantFrom('\n', '\r\n', '\r'),
    fc
      .integer({ min: 1, max: 6 })
      .chain((width) =>
        fc.tuple(
          fc.array(heading, { minLength: width, maxLength: width }),
          fc.array(fc.array(cell, { minLength: width, maxLength: width }), { maxLength: 40 }),
        ),
      ),
    fc.constantFrom('utf8', 'utf16le', 'latin1'),
    fc.boolean(),
  )
  .map(([delimiter, end, [names, rows], encoding, counts]) => {
    const lines = rows.map((row, at) => (counts ? [String(at * 5), ...row.slice(1)] : row).join(delimiter));
    return new Uint8Array(
      Buffer.from([names.join(delimiter), ...lines].join(end), encoding as BufferEncoding),
    );
  });

test('small tables of any shape and bytes of any kind are read or refused in words', {
  timeout: LIMIT,
}, () => {
  fc.assert(
    fc.property(
      fc.oneof({ weight: 9, arbitrary: bytes }, { weight: 1, arbitrary: fc.uint8Array({ maxLength: 2000 }) }),
      hostileText,
      (file, title) => {
        const read = finish(readLog(decode(file)));
        if (!read.ok) {
          expect(read.fault.message.length).toBeGreaterThan(10);
          return;
        }
        for (const { time, value } of Object.values(read.trace))
          for (const each of [...time, ...value]) expect(Number.isFinite(each)).toBe(true);
        const vehicle = { ...traceVehicleOf(STAMP_87), title };
        const judged = judgeTrace(read.trace, vehicle);
        const events = eventsOf(judged, vehicle);
        const svg = drawTrace({
          id: 'x',
          title: vehicle.title,
          description: tell(judged, vehicle).sentence,
          judged,
          vehicle,
          events,
          from: 0,
          to: Math.max(1, read.understood.duration),
        });
        expect(escapes(svg, DRAWN)).toEqual([]);
        expect(svg).not.toMatch(UNCLEAN);
      },
    ),
    runs(2000),
  );
});
