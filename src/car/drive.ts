/** What the driver and the day do, second by second. */
import type { Random } from './random.ts';

export interface Moment {
  /** Road speed, m/s. */
  readonly speed: number;
  /** Engine speed held by the driver, rpm; undefined leaves it to idle control and gearbox. */
  readonly rpm: number | undefined;
  /** Rise of the road, 0.06 for 6 %. */
  readonly slope: number;
  readonly running: boolean;
  /** Blower 0 to 1, and temperature control 0 cold to 1 hot. */
  readonly blower: number;
  readonly hot: number;
  readonly airConditioning: boolean;
}

/** Moments are one second apart. */
export interface Drive {
  /** K, and Pa absolute. */
  readonly outside: number;
  readonly pressure: number;
  /** Everything has this temperature at the beginning, K. */
  readonly start: number;
  readonly moments: readonly Moment[];
}

const STANDS: Moment = {
  speed: 0,
  rpm: undefined,
  slope: 0,
  running: true,
  blower: 0,
  hot: 0,
  airConditioning: false,
};

/** A stretch of a drive with whatever differs from an engine that idles on the spot, heater off. */
export type Leg = Partial<Moment> & { readonly seconds: number };

const SEA_LEVEL = 101325;

/**
 * A drive made of stretches; speed changes by at most 1.5 m/s2.
 *
 * @param outside K, 220 to 330
 * @param legs at least one
 * @param start K; as outside where left out
 */
export function driveOf(outside: number, legs: readonly Leg[], start = outside): Drive {
  const moments: Moment[] = [];
  let speed = legs[0]?.speed ?? 0;
  for (const { seconds, ...leg } of legs) {
    const wanted = { ...STANDS, ...leg };
    let moment: Moment | undefined;
    for (let second = 0; second < seconds; second++) {
      speed += Math.max(-2, Math.min(1.5, wanted.speed - speed));
      // Half a day of standing is one moment, many times.
      if (moment?.speed !== speed) moment = { ...wanted, speed };
      moments.push(moment);
    }
  }
  return { outside, pressure: SEA_LEVEL, start, moments };
}

/** Town driving: legs of 20 to 80 s at up to a speed, stops of 5 to 40 s between. @param speed m/s */
export function town(random: Random, seconds: number, speed: number, more: Partial<Moment> = {}): Leg[] {
  const legs: Leg[] = [];
  for (let left = seconds; left > 0; ) {
    const going = Math.min(left, Math.round(random.between(20, 80)));
    legs.push({ ...more, seconds: going, speed: speed * random.between(0.8, 1.1) });
    const standing = Math.min(left - going, Math.round(random.between(5, 40)));
    if (standing > 0) legs.push({ ...more, seconds: standing, speed: 0 });
    left -= going + standing;
  }
  return legs;
}
