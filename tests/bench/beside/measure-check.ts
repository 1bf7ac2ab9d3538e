/** How long the check of a shelf takes, from nothing and a second time. */
import { runMeasured, type Taken } from './run-measured.ts';

export interface CheckTimes {
  records: number;
  first: Taken | string;
  again: Taken | string;
}

/** @param folder laid out for our own build, with nothing remembered yet */
export async function measureCheck(folder: string, records: number, minutes: number): Promise<CheckTimes> {
  const run = async (): Promise<Taken | string> => {
    const outcome = await runMeasured(['npm', 'run', '-s', 'check'], folder, minutes);
    return outcome.ok ? outcome.taken : outcome.why;
  };
  return { records, first: await run(), again: await run() };
}

export function checkTable(all: readonly CheckTimes[]): string {
  const cell = (taken: Taken | string): string =>
    typeof taken === 'string'
      ? `${taken} | –`
      : `${taken.seconds.toFixed(1)} | ${taken.processor?.toFixed(1) ?? '–'}`;
  return [
    '| records | first check, s | processor s | again, s | processor s |',
    '|--:|--:|--:|--:|--:|',
    ...all.map(
      ({ records, first, again }) => `| ${records.toLocaleString('en')} | ${cell(first)} | ${cell(again)} |`,
    ),
  ].join('\n');
}
