/** Which of scan tool, infrared and resistance lies: what the readings of a coolant sensor come to, in words. */
import { HOSE_ABOVE, INFRARED_ERROR } from '../physics/hose-wall.ts';
import { SENSOR_AGREES, type SensorCurve } from '../physics/thermistor.ts';
import { fromCelsius, type Kelvin } from '../physics/units.ts';
import type { Answer, QuantityFormatter } from './declaration.ts';

/** So far apart they may still be two moments: the resistance is read with the plug off, K. Common practice, no source. */
export const TWO_MOMENTS = 10;
/** What a controller shows without a sensor, and with a shorted one, K. Follows from the scaling of SAE J1979: −40 and far up. */
const OPEN_WIRE = fromCelsius(-39);
const SHORTED = fromCelsius(140);

/** What was read, each as a temperature. */
export interface Reading {
  /** By its resistance. */
  sensor?: Kelvin;
  /** Ohm. */
  resistance?: number;
  /** How far the rounding of the table moves the temperature, K. */
  rounding?: number;
  scan?: Kelvin;
  infrared?: Kelvin;
  /** Whether infrared can be trusted on what it was held on. */
  matt: boolean;
  /** What infrared would show on bare metal at the scan tool's or sensor's temperature. */
  onMetal?: readonly [Kelvin, Kelvin];
  /** Most that the surface can be below the coolant, K. */
  wallDrop(coolant: Kelvin): number;
}

type Verdict = Pick<Answer, 'sentence' | 'tone'>;
type Fit = 'fits' | 'above' | 'below';

const fine = (sentence: string): Verdict => ({ sentence, tone: 'fine' });
const look = (sentence: string): Verdict => ({ sentence, tone: 'look' });

/** What the readings come to, and what to do next. */
export function judgeReadings(read: Reading, curve: SensorCurve, show: QuantityFormatter): Verdict {
  const { sensor: own, scan, infrared, matt } = read;
  const say = (each: Kelvin) => show.quantity(each, '°C', 0);
  const faulty = wireFault(read, say) ?? bareMetal(read, show);
  if (faulty) return faulty;
  if (own !== undefined && scan !== undefined)
    return infrared === undefined ? sensorAndScan(own, scan, say) : allThree(own, scan, infrared, read, say);
  if (own !== undefined && infrared !== undefined) return oneAndHose('Sensor', own, infrared, read, say);
  if (scan !== undefined && infrared !== undefined) return oneAndHose('Scan tool', scan, infrared, read, say);
  if (own !== undefined) return resistanceAlone(own, read.rounding ?? 0, show);
  if (infrared !== undefined && !matt)
    return look(
      'Infrared on bare metal reads far too low and proves nothing. Hold it on a hose or stick on a piece of paper tape and read again.',
    );
  return resistanceFor(scan ?? infrared, curve, show);
}

type Say = (temperature: Kelvin) => string;

function near(a: Kelvin, b: Kelvin, within: number): boolean {
  return Math.abs(a - b) <= within;
}

/**
 * Whether a surface can belong to coolant of a temperature. It is never warmer than the coolant, and colder by no more
 * than the wall takes.
 */
export function hoseAgainst(coolant: Kelvin, surface: Kelvin, wallDrop: Reading['wallDrop']): Fit {
  if (surface >= coolant + HOSE_ABOVE) return 'above';
  return surface < coolant - wallDrop(coolant) - INFRARED_ERROR ? 'below' : 'fits';
}

/** An end of the controller's scale that nothing else confirms is a wire and no temperature. */
function wireFault(read: Reading, say: Say): Verdict | undefined {
  const { sensor: own, scan, infrared, matt } = read;
  if (scan === undefined) return undefined;
  const confirmed =
    own !== undefined
      ? near(scan, own, TWO_MOMENTS)
      : infrared !== undefined && matt && near(scan, infrared, TWO_MOMENTS);
  if (confirmed) return undefined;
  if (scan <= OPEN_WIRE)
    return look(
      `An open wire: ${say(scan)} is what controllers show when no sensor is there. Look at the plug, its pins and the wire before the sensor.`,
    );
  if (scan >= SHORTED)
    return look(
      `A short: ${say(scan)} is no coolant, it is a wire that touches earth or a sensor shorted inside. Pull the plug: if the reading drops to the other end, the sensor is it; if it stays, the wire.`,
    );
  return undefined;
}

/** Infrared held on bare metal, beside a reading that it would be held against. */
function bareMetal(
  { sensor: own, scan, infrared, matt, onMetal }: Reading,
  show: QuantityFormatter,
): Verdict | undefined {
  const others = own ?? scan;
  if (infrared === undefined || matt || others === undefined) return undefined;
  const would = onMetal ? show.range(onMetal[0], onMetal[1], '°C', 0) : '';
  return look(
    `Infrared on bare metal proves nothing: it would show ${would} where the others say ${show.quantity(others, '°C', 0)}. Hold it on a hose or stick on a piece of paper tape and read again.`,
  );
}

function allThree(own: Kelvin, scan: Kelvin, infrared: Kelvin, read: Reading, say: Say): Verdict {
  const byOwn = hoseAgainst(own, infrared, read.wallDrop);
  const byScan = hoseAgainst(scan, infrared, read.wallDrop);
  if (near(own, scan, SENSOR_AGREES)) {
    if (byOwn === 'fits' || byScan === 'fits')
      return fine(
        `All three agree: ${say(own)} inside, ${say(infrared)} on the outside. Sensor, wiring and reading can be believed; look elsewhere.`,
      );
    return byOwn === 'above'
      ? look(readsLow('sensor and scan tool say', own, infrared, say))
      : look(farBelow('sensor and scan tool say', own, infrared, say));
  }
  if (near(own, scan, TWO_MOMENTS)) return twoMoments(own, scan, say);
  if (byOwn === 'fits' && byScan !== 'fits')
    return look(
      `The scan tool shows fiction: sensor and infrared say about ${say(own)}, it shows ${say(scan)}. Look at plug, wiring and earth, and for a substitute value that the controller puts in.`,
    );
  if (byScan === 'fits' && byOwn !== 'fits')
    return look(
      `The resistance is out: scan tool and infrared say about ${say(scan)}, the resistance ${say(own)}. Measure again on clean pins, and check that the table is for this sensor.`,
    );
  if (byOwn === 'fits') return sensorAndScan(own, scan, say);
  return look(
    `No two agree: ${say(own)} by resistance, ${say(scan)} by scan tool, ${say(infrared)} by infrared. Repeat after a night’s standing, when all must show the air temperature.`,
  );
}

function sensorAndScan(own: Kelvin, scan: Kelvin, say: Say): Verdict {
  if (near(own, scan, SENSOR_AGREES))
    return fine(
      `Sensor and scan tool agree at ${say(own)}: the wiring is sound. Whether the sensor itself is right needs a third reading, on a matt patch beside it.`,
    );
  if (near(own, scan, TWO_MOMENTS)) return twoMoments(own, scan, say);
  return look(
    `The scan tool does not see the sensor: ${say(own)} by resistance, ${say(scan)} on the tool. Look at plug, wiring and earth, and for a substitute value.`,
  );
}

function twoMoments(own: Kelvin, scan: Kelvin, say: Say): Verdict {
  return look(
    `Read both again within the same minute: ${say(own)} by resistance and ${say(scan)} on the scan tool may be two moments, since the resistance is read with the plug off. Still so far apart, look at plug, wiring and earth.`,
  );
}

/** A reading beside a surface, with no third to tell which of the two lies. */
function oneAndHose(
  name: 'Sensor' | 'Scan tool',
  inside: Kelvin,
  infrared: Kelvin,
  { wallDrop }: Reading,
  say: Say,
): Verdict {
  const fit = hoseAgainst(inside, infrared, wallDrop);
  if (fit === 'fits')
    return fine(
      `${name} and infrared agree: ${say(inside)} inside, ${say(infrared)} on the outside. The reading can be believed.`,
    );
  const verb = name === 'Sensor' ? 'sensor says' : 'scan tool says';
  return look(
    fit === 'above' ? readsLow(verb, inside, infrared, say) : farBelow(verb, inside, infrared, say),
  );
}

function readsLow(who: string, inside: Kelvin, surface: Kelvin, say: Say): string {
  return `It reads low: ${who} ${say(inside)}, and the outside has ${say(surface)}. A surface is never hotter than the coolant behind it. Read both again within a minute, and compare after a night’s standing, when all must show the air; then look at plug and supply, and replace the sensor.`;
}

function farBelow(who: string, inside: Kelvin, surface: Kelvin, say: Say): string {
  return `Too far below: ${who} ${say(inside)}, and the outside has ${say(surface)}, more than the wall takes. Either nothing flows there (thermostat shut, air, the wrong hose), or the sensor reads high. Take a hose with flow in it, or paper tape close to the sensor; compare after a night’s standing before buying one.`;
}

/** What one resistance means, and how far the table lets that be told. */
function resistanceAlone(own: Kelvin, rounding: number, show: QuantityFormatter): Verdict {
  const doubt = rounding >= 2 ? `, ${show.difference(rounding)} either way as the table is rounded` : '';
  return fine(
    `This resistance means ${show.quantity(own, '°C', 0)}${doubt}. Hold it against the scan tool and a matt patch before believing either.`,
  );
}

/** What to measure where only a temperature is known. */
function resistanceFor(at: Kelvin | undefined, curve: SensorCurve, show: QuantityFormatter): Verdict {
  if (at === undefined || at < curve.from || at > curve.to)
    return look(
      `The curve does not reach so far: it answers from ${show.range(curve.from, curve.to, '°C', 0)}. Read again, or take points of a table nearer to it.`,
    );
  return fine(
    `At ${show.quantity(at, '°C', 0)} this sensor should have ${ohms(curve.resistanceAt(at), show)}. Measure it, plug off.`,
  );
}

/** A resistance in the unit a meter shows it in. @param resistance ohm */
export function ohms(resistance: number, show: QuantityFormatter): string {
  return resistance < 1000 ? show.quantity(resistance, 'Ω', 0) : show.quantity(resistance, 'kΩ', 2);
}
