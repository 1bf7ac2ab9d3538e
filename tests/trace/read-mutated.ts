/** A spoilt file through everything the page does with a log. */
import { eventsOf } from '../../src/trace/events.ts';
import { judgeTrace } from '../../src/trace/judge-trace.ts';
import { fromTrace } from '../../src/trace/proof.ts';
import { finish, readLog } from '../../src/trace/read/read-log.ts';
import { eventText, monitorText, tell } from '../../src/trace/say.ts';
import { traceVehicleOf, type VehicleFigures } from '../../src/trace/vehicle.ts';
import { mutated } from './mutate.ts';

/** Everything said about it, a line each. @throws whatever a user would meet */
export function saidAbout(
  seed: number,
  sheet: VehicleFigures | undefined,
): { kind: 'verdict' | 'message'; words: string[] } {
  const read = finish(readLog(mutated(seed)));
  if (!read.ok) return { kind: 'message', words: [read.fault.message] };
  const vehicle = traceVehicleOf(sheet);
  const judged = judgeTrace(read.trace, vehicle);
  const { sentence, because, next, open } = tell(judged, vehicle);
  const events = eventsOf(judged, vehicle).map((event) => eventText(event));
  const proof = Object.values(fromTrace(judged, vehicle)).map(String);
  const { words, remarks } = read.understood;
  return {
    kind: 'verdict',
    words: [
      sentence,
      next,
      because,
      ...open,
      ...events,
      ...proof,
      words,
      ...remarks,
      monitorText(judged, vehicle) ?? '',
    ],
  };
}

export function isWellSaid({ words }: { words: string[] }): boolean {
  // A heading is quoted as it stands in the file, whatever that is.
  const own = words.map((each) => each.replace(/".*"/s, ''));
  return (words[0] ?? '').length > 10 && own.every((each) => !/NaN|undefined|Infinity|\[object/.test(each));
}
