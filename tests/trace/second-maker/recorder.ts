/** What a scan tool would have written of a journey: whole degrees, its own columns, the sensor's faults in the reading. */
import type { Random } from '../random.ts';
import type { Fault } from './cases.ts';
import type { State } from './engine.ts';

/** Readings as the car's computer gives them out, °C. */
export function readingsOf(states: readonly State[], fault: Fault, random: Random): number[] {
  const low = fault === 'sensor reads low' ? random.between(9, 19) : 0;
  const fails = states.length * random.between(0.15, 0.6);
  const substitute = random.pick([70, 80, 85, 90]);
  let out = 0;
  let depth = 0;
  return states.map(({ coolant }, at) => {
    if (fault === 'substitute value' && at > fails) return at < fails + 4 ? -40 : substitute;
    if (fault === 'sensor jumps') {
      if (out <= 0 && random.chance(0.012)) {
        out = random.between(1, 18);
        depth = random.pick([18, 30, 60]);
      }
      out--;
      if (out > 0) return coolant - depth;
    }
    return coolant - low;
  });
}

export function record(states: readonly State[], fault: Fault, outside: number, random: Random): string {
  const readings = readingsOf(states, fault, random);
  const every = random.pick([1, 1, 1, 2, 3]);
  const fine = random.chance(0.15);
  const fahrenheit = random.chance(0.12);
  const withAmbient = random.chance(0.5);
  const withIntake = random.chance(0.75);
  const withFan = random.chance(0.35);
  const withSpeed = random.chance(0.93);
  const semicolons = random.chance(0.3);
  const degrees = (celsius: number) =>
    fahrenheit
      ? String(Math.round(celsius * 1.8 + 32))
      : fine
        ? celsius.toFixed(1)
        : String(Math.round(celsius));
  const unit = fahrenheit ? 'degF' : 'degC';
  const head = [
    'Elapsed [s]',
    `ECT [${unit}]`,
    ...(withSpeed ? ['VSS [km/h]'] : []),
    'RPM [1/min]',
    ...(withIntake ? [`IAT [${unit}]`] : []),
    ...(withAmbient ? [`AAT [${unit}]`] : []),
    ...(withFan ? ['Fan duty [%]'] : []),
  ];
  const lines = states.flatMap(({ time, speed, rpm, intake, fan }, at) =>
    at % every === 0
      ? [
          [
            String(time),
            degrees(readings[at] ?? 0),
            ...(withSpeed ? [String(Math.round(speed * 3.6))] : []),
            String(Math.round(rpm)),
            ...(withIntake ? [degrees(intake)] : []),
            ...(withAmbient ? [degrees(outside)] : []),
            ...(withFan ? [fan ? '80' : '0'] : []),
          ],
        ]
      : [],
  );
  const [mark, comma] = semicolons ? [';', true] : [',', false];
  const rows = lines.map((cells) => cells.map((cell) => (comma ? cell.replace('.', ',') : cell)).join(mark));
  return `${head.join(mark)}\n${rows.join('\n')}\n`;
}
