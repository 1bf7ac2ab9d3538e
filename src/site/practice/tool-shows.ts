/** A reading as the tool in hand can show it: a hand feels warm, a scan tool has whole degrees. */

/**
 * What a hand says of a temperature, °C. Where a hand takes a hose for warm and where nobody can hold it are those of the
 * simulated car (car-model: 40 and 55 °C); common practice, no source.
 */
const BY_HAND: readonly [below: number, says: string][] = [
  [15, 'cold'],
  [30, 'neither cold nor warm'],
  [40, 'lukewarm'],
  [55, 'warm, you can hold it'],
  [Number.POSITIVE_INFINITY, 'too hot to hold'],
];

/** Tools that read a temperature, and the step of their display, °C. A tool that is not here reads none. */
const STEPS: Readonly<Record<string, number>> = {
  'scan-tool': 1,
  'infrared-thermometer': 1,
  'contact-thermometer': 0.5,
};

const DEGREES = /([-−]?\d+(?:\.\d+)?)( ?)(°C|K)(?![A-Za-z])/g;

/**
 * The reading of a case as the finest tool of its test shows it.
 * @param reads as the case has it, such as "61.4 °C"
 * @param tools those the test is done with; without one that reads a temperature the hand is what there is
 */
export function asToolShows(reads: string, tools: readonly string[]): string {
  const steps = tools.flatMap((tool) => STEPS[tool] ?? []);
  if (steps.length === 0)
    return reads.replace(DEGREES, (whole, number: string, _space, unit: string) =>
      unit === 'K' ? whole : handSays(Number(number.replace('−', '-'))),
    );
  const step = Math.min(...steps);
  return reads.replace(DEGREES, (_, number: string, space: string, unit: string) => {
    const value = Math.round(Number(number.replace('−', '-')) / step) * step;
    return `${String(value).replace('-', '−')}${space}${unit}`;
  });
}

/** What a hand on a part of this temperature, °C, can say. */
export function handSays(celsius: number): string {
  return BY_HAND.find(([below]) => celsius < below)?.[1] ?? 'too hot to hold';
}
