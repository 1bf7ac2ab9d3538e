import { atmosphericPressure } from './atmosphere.ts';
import { boilingPoint } from './boiling.ts';
import type { Mixture } from './glycol.ts';
import { within } from './out-of-range.ts';
import { type Kelvin, kelvin, type MassFraction, type Metre, ZERO_CELSIUS } from './units.ts';

/** Opening against the stamp, K: one maker's page, and common practice. */
const OPENING_TOLERANCE = 2;
/** Fully open above the stamp, K: 10 to 15 by the trade's word, 15 to 20 by one maker's page. */
const FULLY_OPEN_ABOVE = [10, 20] as const;
/** An open pot is never heated evenly; within this of boiling nothing can be read, K. Common practice, no source. */
const POT_ALLOWANCE = 0.5;

const PLAIN_WATER: Mixture = { glycol: 'ethylene', fraction: 0 as MassFraction };

/** What an open pot can show of a thermostat. */
export type BenchVerdict =
  /** The pot boils below the stamp: the test can only mislead. */
  | 'cannot open'
  /** It boils inside the tolerance of the stamp: not opening proves nothing. */
  | 'may not open'
  /** Start of opening can be seen, full opening never. */
  | 'starts only'
  /** Start can be seen; full opening only if this one is early. */
  | 'starts, perhaps fully'
  /** Start and full opening can be seen. */
  | 'opens fully';

/** What a bench test of a thermostat can show here. */
export interface BenchTest {
  readonly verdict: BenchVerdict;
  /** Temperature at which the pot boils in standard air, K; weather moves it by about 0.6 K. */
  readonly potBoilsAt: Kelvin;
  /** Opening starts between these if the thermostat is sound, K. */
  readonly starts: { readonly lowest: Kelvin; readonly highest: Kelvin };
  /** Fully open between these if it is sound, K. */
  readonly fullyOpen: { readonly lowest: Kelvin; readonly highest: Kelvin };
}

/**
 * Whether a thermostat can be tested in an open pot at an altitude, and what to expect.
 *
 * Boiling by `boilingPoint`; opening tolerance and travel by maker and trade, see the constants.
 * @param stamp opening temperature stamped on it, 323.15 to 393.15 K (50 to 120 °C)
 * @param altitude -500 to 6,000 m
 * @param pot what is in it, plain water when left out; a strong mixture boils later
 * @throws OutOfRange on any of them
 */
export function benchTest(stamp: Kelvin, altitude: Metre, pot: Mixture = PLAIN_WATER): BenchTest {
  const opens = within('thermostat stamp', stamp, ZERO_CELSIUS + 50, ZERO_CELSIUS + 120, 'K');
  const potBoilsAt = boilingPoint(pot, atmosphericPressure(altitude));
  const starts = { lowest: kelvin(opens - OPENING_TOLERANCE), highest: kelvin(opens + OPENING_TOLERANCE) };
  const fullyOpen = {
    lowest: kelvin(opens + FULLY_OPEN_ABOVE[0]),
    highest: kelvin(opens + FULLY_OPEN_ABOVE[1]),
  };
  const reach = potBoilsAt - POT_ALLOWANCE;
  return { verdict: judge(reach, opens, starts.highest, fullyOpen), potBoilsAt, starts, fullyOpen };
}

function judge(
  reach: number,
  opens: number,
  latest: Kelvin,
  fullyOpen: BenchTest['fullyOpen'],
): BenchVerdict {
  if (reach < opens) return 'cannot open';
  if (reach < latest) return 'may not open';
  if (reach < fullyOpen.lowest) return 'starts only';
  return reach < fullyOpen.highest ? 'starts, perhaps fully' : 'opens fully';
}
