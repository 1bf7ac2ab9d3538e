/** Which of scan tool, infrared and resistance lies: what the readings of a coolant sensor come to, in words. */
import type { SensorCurve } from '../physics/thermistor.ts';
import { fromCelsius, type Kelvin } from '../physics/units.ts';
import type { Answer, Shower } from './declaration.ts';

/** Scan tool and sensor agree within this, infrared with either within the second, K. Common practice, no source. */
export const AGREES = 4;
export const AGREES_INFRARED = 8;
/** What a controller shows without a sensor, and with a shorted one, K. Follows from the scaling of SAE J1979: −40 and far up. */
const OPEN_WIRE = fromCelsius(-39);
const SHORTED = fromCelsius(140);

/** What was read, each as a temperature. */
export interface Reading {
  /** By its resistance. */
  sensor?: Kelvin;
  /** Ohm. */
  resistance?: number;
  scan?: Kelvin;
  infrared?: Kelvin;
  /** Whether infrared can be trusted on what it was held on. */
  matt: boolean;
  /** What infrared would show on bare metal at the scan tool's or sensor's temperature. */
  onMetal?: readonly [Kelvin, Kelvin];
}

type Verdict = Pick<Answer, 'sentence' | 'tone'>;

const fine = (sentence: string): Verdict => ({ sentence, tone: 'fine' });
const look = (sentence: string): Verdict => ({ sentence, tone: 'look' });

/** What the readings come to, and what to do next. */
export function judgeReadings(read: Reading, curve: SensorCurve, show: Shower): Verdict {
  const { sensor: own, scan, infrared, matt } = read;
  const say = (each: Kelvin) => show.quantity(each, '°C', 0);
  const faulty = wireFault(read, say) ?? bareMetal(read, show);
  if (faulty) return faulty;
  if (own !== undefined && scan !== undefined)
    return infrared === undefined ? sensorAndScan(own, scan, say) : allThree(own, scan, infrared, say);
  if (own !== undefined && infrared !== undefined) return sensorAndInfrared(own, infrared, say);
  if (scan !== undefined && infrared !== undefined) return scanAndInfrared(scan, infrared, say);
  if (own !== undefined)
    return fine(
      `This resistance means ${say(own)}. Hold it against the scan tool and a matt patch before believing either.`,
    );
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

/** An end of the controller's scale that nothing else confirms is a wire and no temperature. */
function wireFault({ sensor: own, scan, infrared, matt }: Reading, say: Say): Verdict | undefined {
  const outside = own ?? (matt ? infrared : undefined);
  if (scan === undefined || (outside !== undefined && near(scan, outside, AGREES_INFRARED))) return undefined;
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
  show: Shower,
): Verdict | undefined {
  const others = own ?? scan;
  if (infrared === undefined || matt || others === undefined) return undefined;
  const would = onMetal ? show.range(onMetal[0], onMetal[1], '°C', 0) : '';
  return look(
    `Infrared on bare metal proves nothing: it would show ${would} where the others say ${show.quantity(others, '°C', 0)}. Hold it on a hose or stick on a piece of paper tape and read again.`,
  );
}

function allThree(own: Kelvin, scan: Kelvin, infrared: Kelvin, say: Say): Verdict {
  const wire = near(own, scan, AGREES);
  const warm = near(scan, infrared, AGREES_INFRARED);
  const cold = near(own, infrared, AGREES_INFRARED);
  if (wire && (warm || cold))
    return fine(
      `All three agree at about ${say(own)}. Sensor, wiring and reading can be believed; look elsewhere.`,
    );
  if (wire)
    return look(
      `The sensor lies, if infrared was held right: sensor and scan tool say ${say(own)}, the outside ${say(infrared)}. Compare again after a night’s standing, when all must show the air; then replace the sensor.`,
    );
  if (cold)
    return look(
      `The scan tool shows fiction: sensor and infrared say about ${say(own)}, it shows ${say(scan)}. Look at plug, wiring and earth, and for a substitute value that the controller puts in.`,
    );
  if (warm)
    return look(
      `The resistance is out: scan tool and infrared say about ${say(scan)}, the resistance ${say(own)}. Measure again on clean pins, and check that the table is for this sensor.`,
    );
  return look(
    `No two agree: ${say(own)} by resistance, ${say(scan)} by scan tool, ${say(infrared)} by infrared. Repeat after a night’s standing, when all must show the air temperature.`,
  );
}

function sensorAndScan(own: Kelvin, scan: Kelvin, say: Say): Verdict {
  return near(own, scan, AGREES)
    ? fine(
        `Sensor and scan tool agree at ${say(own)}: the wiring is sound. Whether the sensor itself is right needs a third reading, on a matt patch beside it.`,
      )
    : look(
        `The scan tool does not see the sensor: ${say(own)} by resistance, ${say(scan)} on the tool. Look at plug, wiring and earth, and for a substitute value.`,
      );
}

function sensorAndInfrared(own: Kelvin, infrared: Kelvin, say: Say): Verdict {
  return near(own, infrared, AGREES_INFRARED)
    ? fine(`Sensor and infrared agree at about ${say(own)}: the sensor can be believed.`)
    : look(
        `Sensor and infrared part: ${say(own)} by resistance, ${say(infrared)} outside. Compare again after a night’s standing before buying a sensor.`,
      );
}

function scanAndInfrared(scan: Kelvin, infrared: Kelvin, say: Say): Verdict {
  return near(scan, infrared, AGREES_INFRARED)
    ? fine(`Scan tool and infrared agree at about ${say(scan)}: the reading can be believed.`)
    : look(
        `One of two lies: ${say(scan)} on the scan tool, ${say(infrared)} outside. Measure the resistance of the sensor; it decides.`,
      );
}

/** What to measure where only a temperature is known. */
function resistanceFor(at: Kelvin | undefined, curve: SensorCurve, show: Shower): Verdict {
  if (at === undefined || at < curve.from || at > curve.to)
    return look(
      `The curve does not reach so far: it answers from ${show.range(curve.from, curve.to, '°C', 0)}. Read again, or take points of a table nearer to it.`,
    );
  return fine(
    `At ${show.quantity(at, '°C', 0)} this sensor should have ${ohms(curve.resistanceAt(at), show)}. Measure it, plug off.`,
  );
}

/** A resistance in the unit a meter shows it in. @param resistance ohm */
export function ohms(resistance: number, show: Shower): string {
  return resistance < 1000 ? show.quantity(resistance, 'Ω', 0) : show.quantity(resistance, 'kΩ', 2);
}
