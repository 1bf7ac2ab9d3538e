/** The sample logs are what their generator makes, say that they are invented, and get the verdict they are there for. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { judgeTrace } from '../../src/trace/judge-trace.ts';
import { finish, readLog } from '../../src/trace/read/read-log.ts';
import { traceVehicleOf } from '../../src/trace/vehicle.ts';
import { STAMP_87, STAMP_88 } from './known-cars.ts';
import { SAMPLES, type SampleName, sampleLog } from './samples.ts';

const EXPECTED: Record<SampleName, string[]> = {
  'sound-run': ['sound'],
  'opens-early': ['cold-at-speed'],
  'no-flow': ['straight-past'],
  'air-pocket': ['swings-hot', 'straight-past'],
  'sensor-jumps': ['sensor-jumps'],
  'snow-minus-25': ['cannot-tell', 'sound'],
};

test('every file has its generator', () => {
  expect(readdirSync('public/samples').sort()).toEqual(
    Object.keys(SAMPLES)
      .map((name) => `${name}.csv`)
      .sort(),
  );
});

test.each(Object.keys(SAMPLES) as SampleName[])('%s', (name) => {
  const text = readFileSync(`public/samples/${name}.csv`, 'utf8');
  expect(text, 'make them anew with: npx node tests/trace/write-samples.ts').toBe(sampleLog(name));
  expect(text).toMatch(/^# Invented: /);
  const read = finish(readLog(text));
  if (!read.ok) throw new Error(read.fault.message);
  const { verdict } = judgeTrace(read.trace, traceVehicleOf(name === 'sound-run' ? STAMP_88 : STAMP_87));
  expect(EXPECTED[name]).toContain(verdict.finding);
});
