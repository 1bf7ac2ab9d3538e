/**
 * What finished jobs measured of a vehicle, as figures of its record: those it lacks, and those that came from jobs before, with the
 * new readings in their mean. A figure that a person wrote stays as it is; the readings stand beside it on the vehicle's page.
 */
import { isMap, isNode, isScalar, parse, parseDocument } from 'yaml';
import type { Counts } from '../model/counts.ts';
import { FIGURE_PATHS, type FigurePath, figureFits } from '../model/figures.ts';
import { measuredTogether } from '../model/measured-on-job.ts';
import { vehicleSchema } from '../model/vehicle.ts';
import { inBraces } from '../model/vehicle-file.ts';
import { checkVehicle } from './check-vehicle.ts';
import { inOrdinarySpelling } from './ordinary-spelling.ts';

/** Begins the note of a figure that came from jobs: it may be written anew by the next. */
const FROM_JOBS = 'Finished jobs:';

/**
 * @param text of the vehicle's file
 * @param measured every reading there is, by figure
 * @param today the day as 2026-11-30
 * @returns the file with the figures that are proposed, and their paths; undefined where there is none, or the rules of the shelf
 *   do not take it with them
 */
export function withMeasured(
  id: string,
  text: string,
  measured: Counts['measured'][string],
  today: string,
): { text: string; paths: FigurePath[] } | undefined {
  const written: unknown = parse(text, { maxAliasCount: 0, logLevel: 'error' });
  const read = vehicleSchema.safeParse(inOrdinarySpelling(vehicleSchema, written).value);
  if (!read.success) return undefined;
  const { figures, layout } = read.data;
  const proposed = FIGURE_PATHS.flatMap((path) => {
    const there = figures[path];
    const isOurs = there === undefined ? figureFits(path, layout) : there.note?.startsWith(FROM_JOBS);
    const together = isOurs ? measuredTogether(measured[path] ?? [], path, undefined) : undefined;
    const note = `${FROM_JOBS} ${together?.says}.`;
    // A figure without a new reading keeps the day it was last written.
    if (!together || there?.note === note) return [];
    const entry = {
      is: together.mean,
      from: 'measured here',
      checked: today,
      sure: together.count === 1 ? 'measured once' : 'measured twice',
      note,
    };
    return [{ path, line: `${path}: ${inBraces(entry)}` }];
  });
  if (proposed.length === 0) return undefined;
  const merged = proposed.reduce((so, { path, line }) => withFigure(so, path, line), text);
  const { faults } = checkVehicle(id, parse(merged, { maxAliasCount: 0 }));
  return faults.length === 0 ? { text: merged, paths: proposed.map(({ path }) => path) } : undefined;
}

/** The file with one line more, or another in its place; every other line stays as its writer left it. */
function withFigure(text: string, path: FigurePath, line: string): string {
  const { contents } = parseDocument(text);
  const figures = isMap(contents)
    ? contents.items.find(({ key }) => isScalar(key) && key.value === 'figures')
    : undefined;
  if (!figures || !isScalar(figures.key)) return text;
  const replace = (from: number, to: number, by: string) => text.slice(0, from) + by + text.slice(to);
  const map = figures.value;
  const [, endOfName = 0] = figures.key.range ?? [];
  if (!isMap(map) || map.items.length === 0)
    return replace(
      endOfName,
      isNode(map) ? (map.range?.[1] ?? endOfName + 1) : endOfName + 1,
      `:\n  ${line}`,
    );
  const there = map.items.find(({ key }) => isScalar(key) && key.value === path);
  const at = there ?? map.items.at(-1);
  const [start = 0] = (isScalar(at?.key) && at.key.range) || [];
  const end = isNode(at?.value) ? (at.value.range?.[1] ?? start) : start;
  return there ? replace(start, end, line) : replace(end, end, `\n  ${line}`);
}
