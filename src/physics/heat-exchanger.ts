import { NEAR_A_LIMIT, USUAL_DIFFERENCE } from './heat-balance.ts';
import { OutOfRange, within } from './out-of-range.ts';
import { type Kelvin, type KelvinDifference, kelvin, kelvinDifference } from './units.ts';

/** Coolant in and out of a core, air before and behind it. */
export interface ExchangerReadings {
  /** Coolant going in: nothing is hotter. */
  readonly hot: Kelvin;
  readonly cold: Kelvin;
  readonly airIn: Kelvin;
  readonly airOut: Kelvin;
}

/** What the four temperatures say by themselves. */
export interface ExchangerEffect {
  /** How far the air comes towards the coolant, 0 to 1: the effectiveness where the air carries less heat than the coolant. */
  readonly ofAir: number;
  /** How far the coolant comes towards the air, 0 to 1. */
  readonly ofCoolant: number;
  /** Missing between the air behind and the coolant going in, K. */
  readonly approach: KelvinDifference;
  /** Heat that a kelvin of the coolant's stream carries beside a kelvin of the air's. */
  readonly carries: number;
}

/** Under this between coolant and air in, thermometers decide, K. Each is good to 1 K, behind the core to 2. Common practice, no source. */
export const LEAST_TO_AIR = 30;

/**
 * Effectiveness of a core on either side.
 *
 * Heat given over the heat that could be: (air out − air in)/(hot − air in), (hot − cold)/(hot − air in); as much heat leaves the coolant as the
 * air takes, so their ratio is that of the streams. Kays and London, Compact Heat Exchangers; Incropera, Fundamentals of Heat and Mass Transfer, 11.4.
 * Within 0.1 for thermometers as of `LEAST_TO_AIR`.
 * @throws OutOfRange where the coolant is less than 30 K over the air, gets warmer or colder than the air, or the air gets colder or hotter than the coolant
 */
export function exchanged({ hot, cold, airIn, airOut }: ExchangerReadings): ExchangerEffect {
  const most = within('coolant over the air', hot - airIn, LEAST_TO_AIR, Infinity, 'K');
  const given = within('fall of the coolant', hot - cold, 0, most, 'K');
  const taken = within('rise of the air', airOut - airIn, 0, most, 'K');
  if (given === 0) throw new OutOfRange('fall of the coolant', 0, [0.1, most], 'K');
  return {
    ofAir: taken / most,
    ofCoolant: given / most,
    approach: kelvinDifference(hot - airOut),
    carries: taken / given,
  };
}

/**
 * How far the air comes in working order, and where it surely goes past the core. By the crossflow formula a radiator of 1 to 1.5 transfer
 * units comes to 0.58 to 0.71, a heater core of 1.5 to 3 to 0.74 to 0.92; so many transfer units have sound ones at idle with fan or blower. Common practice, no source.
 */
export const AIR_COMES = {
  radiator: { works: 0.6, past: 0.45 },
  heater: { works: 0.7, past: 0.55 },
} as const;

/** Bits of a decimal. */
const SLACK = 1e-9;

/** What the four readings speak for. */
export type ExchangerVerdict = 'works' | 'edge' | 'little coolant' | 'little air' | 'air past it';

/**
 * Which side of a radiator or heater fails, by the fall between the hoses and how far the air comes.
 *
 * `USUAL_DIFFERENCE` of the heat balance and `AIR_COMES`.
 * @throws OutOfRange as `exchanged`
 */
export function judgeExchanger(
  place: keyof typeof USUAL_DIFFERENCE,
  readings: ExchangerReadings,
): ExchangerVerdict {
  const { ofAir } = exchanged(readings);
  const fall = readings.hot - readings.cold;
  const [low, high] = USUAL_DIFFERENCE[place];
  const { works, past } = AIR_COMES[place];
  if (fall > high + NEAR_A_LIMIT + SLACK) return 'little coolant';
  if (fall > high + SLACK) return 'edge';
  if (ofAir < past - SLACK) return 'air past it';
  if (ofAir < works - SLACK) return 'edge';
  if (fall < low - NEAR_A_LIMIT - SLACK) return 'little air';
  return fall < low - SLACK ? 'edge' : 'works';
}

/**
 * Air behind the core on another day, coolant and blower alike: its effectiveness stays.
 *
 * @param ofAir 0 to 1
 * @throws OutOfRange outside it
 */
export function airBehind(ofAir: number, hot: Kelvin, airIn: Kelvin): Kelvin {
  return kelvin(airIn + within('effectiveness', ofAir, 0, 1, '1') * (hot - airIn));
}
