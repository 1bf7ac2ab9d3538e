/** The drawing of a road test: small however long the log, true to the peaks, free of anything that is no number. */
import { describe, expect, test } from 'vitest';
import { US } from '../../../src/model/habit.ts';
import { drawTrace } from '../../../src/site/drawings/trace-chart.ts';
import { eventsOf } from '../../../src/trace/events.ts';
import { judgeTrace } from '../../../src/trace/judge-trace.ts';
import { finish, readLog } from '../../../src/trace/read/read-log.ts';
import { traceVehicleOf } from '../../../src/trace/vehicle.ts';
import { handLog, SOUND_RUN } from '../../trace/hand-log.ts';
import { STAMP_88 } from '../../trace/known-cars.ts';

function chart(text: string, more: Partial<Parameters<typeof drawTrace>[0]> = {}): string {
  const read = finish(readLog(text));
  if (!read.ok) throw new Error(read.fault.message);
  const vehicle = traceVehicleOf(STAMP_88);
  const judged = judgeTrace(read.trace, vehicle);
  const to = (judged.grid.length - 1) * judged.grid.step;
  const events = eventsOf(judged, vehicle);
  return drawTrace({ id: 'c', title: 'T', description: 'D', judged, vehicle, events, from: 0, to, ...more });
}

/** Points of the path with this class. */
function points(svg: string, name: string): { x: number; y: number }[] {
  const data = new RegExp(`class="${name}" d="([^"]*)"`).exec(svg)?.[1] ?? '';
  return [...data.matchAll(/[ML]([\d.-]+) ([\d.-]+)/g)].map(([, x, y]) => ({ x: Number(x), y: Number(y) }));
}

describe('the drawing of a road test', () => {
  test.each([false, true])(
    'holds numbers only, its words and the figures of the vehicle; narrow %s',
    (narrow) => {
      const svg = chart(handLog(SOUND_RUN, 15), { narrow });
      expect(svg).not.toMatch(/NaN|undefined|Infinity/);
      for (const words of ['96\u00a0°C', '88\u00a0°C', 'minutes', 'km/h']) expect(svg).toContain(words);
      expect(svg).not.toContain('style=');
    },
  );

  test('a spike of one second in two hours is still drawn', () => {
    const rows = Array.from({ length: 7200 }, (_, at) => `${at},${at > 3600 && at < 3640 ? 100 : 80},50`);
    const svg = chart(`time (s),coolant (°C),speed (km/h)\n${rows.join('\n')}`);
    const drawn = points(svg, 'trace');
    expect(drawn.length).toBeLessThan(1500);
    const ys = drawn.map(({ y }) => y);
    expect(Math.max(...ys) - Math.min(...ys)).toBeGreaterThan(50);
  });

  test('no mark stands on the figures of the axis, where the log begins', () => {
    const rows = Array.from(
      { length: 900 },
      (_, at) => `${at},${Math.min(95, 15 + at / 8)},${at < 5 ? 0 : 80}`,
    );
    for (const narrow of [false, true]) {
      const svg = chart(`time (s),coolant (°C),speed (km/h)\n${rows.join('\n')}`, { narrow });
      const marks = [...svg.matchAll(/<circle class="event" cx="([\d.]+)"/g)].map(([, x]) => Number(x));
      expect(marks.length).toBeGreaterThan(0);
      for (const x of marks) expect(x - 8.5).toBeGreaterThan(narrow ? 34 : 46);
    }
  });

  test('a gap is left open', () => {
    const rows = Array.from({ length: 600 }, (_, at) => `${at < 300 ? at : at + 400},80,50`);
    const svg = chart(`time (s),coolant (°C),speed (km/h)\n${rows.join('\n')}`);
    expect(/class="trace" d="M[^M]*M/.test(svg)).toBe(true);
  });

  test('a part of the log fills the width', () => {
    const part = points(chart(handLog(SOUND_RUN, 15), { from: 600, to: 700 }), 'trace');
    expect((part.at(-1)?.x ?? 0) - (part[0]?.x ?? 0)).toBeGreaterThan(650);
  });

  test('follows the reader’s units', () => {
    const svg = chart(handLog(SOUND_RUN, 15), { habit: US });
    expect(svg).toContain('190\u00a0°F');
    expect(svg).toContain('mph');
  });
});
