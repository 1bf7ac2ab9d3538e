/**
 * The words of what a sound log clears and does not. They are made where the log is judged, so that the page has them
 * only once a log is read.
 */
import type { LeftLine, LeftPart } from './cleared.ts';

/** A line of what is not cleared, without its first words, cut where a difference in kelvin stands. */
export function leftWords(line: LeftLine, parts: readonly LeftPart[], causes: readonly string[]): string[] {
  return wordsOf(line, parts, causes).split(BY);
}

function wordsOf(line: LeftLine, parts: readonly LeftPart[], causes: readonly string[]): string {
  const has = (cause: string, words: string) => (causes.includes(cause) ? words : '');
  switch (line) {
    case 'contents':
      return 'low coolant, trapped air, a little combustion gas. Level cold; both heater hoses hot at idle; gas test if it loses coolant.';
    case 'radiator':
      return `a radiator half blocked${has('pump-impeller-failed', ', a weak pump')}: a level road needs little of ${causes.includes('pump-impeller-failed') ? 'either' : 'it'}. Fins by eye; both radiator hoses by infrared with the fan running; then a hill on a warm day.`;
    case 'fan':
      return 'the fan: many logs hold the order, not the motor. Idle until it has come and gone twice, and see it turn, hands away from it.';
    case 'thermostat': {
      const words = parts.map((part) =>
        `${THERMOSTAT[part]}`.replace('{sensor}', has('sensor-reads-high', ', a sensor that reads high')),
      );
      return `${words.join('; ')}. ${parts.includes('stamp') ? 'Type stamp and fan below. ' : ''}Compare scan tool and hose; from cold, the hose to the radiator stays cool until it opens.`;
    }
  }
}

/** Where the difference in kelvin stands in a line. */
const BY = '{by}';

const THERMOSTAT: Record<LeftPart, string> = {
  seat: 'a thermostat that does not quite shut, which mild air hides',
  'over the stamp': `one of another rating or that opens late{sensor}: ${BY} over the stamp is right only with the thermostat in the inlet`,
  'under the stamp': `one of another rating or that opens early, a sensor that reads low: with the thermostat in the inlet it should read ${BY} more`,
  stamp: 'whether this is the right thermostat and a true sensor',
};

/** What a log clears, in a sentence. @param cleared ids of causes */
export function clearedWords(cleared: readonly string[]): string {
  const said = GROUPS.filter(([causes]) => causes.every((each) => cleared.includes(each)));
  return `Cleared: ${said.map(([, words]) => words).join(', ')}.`;
}

/** Causes that are said as one. */
const GROUPS: readonly (readonly [readonly string[], string])[] = [
  [['thermostat-stuck-shut'], 'a thermostat stuck shut'],
  [['thermostat-missing'], 'one stuck wide open'],
  [['thermostat-stuck-open', 'thermostat-not-seated'], 'one leaking at its seat'],
  [['thermostat-opens-early'], 'one opening early'],
  [['thermostat-opens-late'], 'one opening late'],
  [['fan-motor-dead'], 'the fan'],
  [['pump-impeller-failed'], 'a pump that moves nothing'],
  [['sensor-open-circuit'], 'the sensor’s wiring on this drive'],
];
