/** Properties of the coolant as tables, because a simulated drive asks for them tens of thousands of times. */
import { mixtureVapourPressure } from '../physics/boiling.ts';
import { volumeRatio } from '../physics/expansion.ts';
import type { Mixture } from '../physics/glycol.ts';
import { freezingPoint, mixtureDensity, mixtureSpecificHeat } from '../physics/mixture-properties.ts';
import { kelvin, massFraction } from '../physics/units.ts';

export interface Coolant {
  /** J/(m3 K) at 80 °C, volume at 20 °C. */
  readonly heatPerVolume: number;
  /** Volume at a temperature over that at 20 °C. */
  swells(temperature: number): number;
  /** Pressure under which it boils at a temperature, Pa absolute. */
  vapourPressure(temperature: number): number;
  /** Temperature at which it boils under an absolute pressure, K. */
  boilsAt(pressure: number): number;
}

/** The correlations of density and heat end here by mass; stronger ones are carried on straight to pure glycol. */
const STRONGEST = 0.6;
/** Specific heat of pure ethylene glycol at 80 °C, J/(kg K), and density, kg/m3. Handbooks, from memory. */
const PURE = { specificHeat: 2660, density: 1070 };
const FROM = 233.15;
const TO = 433.15;
const STEP = 1;
/** The correlations end at 100 °C. */
const HOT_END = 373;
const COLD_END = 273.15;

const made = new Map<number, Coolant>();

/**
 * Coolant of a strength, ethylene glycol.
 *
 * Melinder (2010) and Raoult with Margules, as in src/physics; straight beyond their ends, so that a car that boils or
 * freezes still has an answer.
 * @param fraction glycol by mass, 0 to 1; rounded to a hundredth
 */
export function coolantOf(fraction: number): Coolant {
  const rounded = Math.round(Math.min(1, Math.max(0, fraction)) * 100) / 100;
  const known = made.get(rounded);
  if (known) return known;
  const coolant = makeCoolant(rounded);
  made.set(rounded, coolant);
  return coolant;
}

function makeCoolant(fraction: number): Coolant {
  const weaker: Mixture = { glycol: 'ethylene', fraction: massFraction(Math.min(fraction, STRONGEST)) };
  const whole: Mixture = { glycol: 'ethylene', fraction: massFraction(fraction) };
  const share = Math.max(0, (fraction - STRONGEST) / (1 - STRONGEST));
  const toPure = (own: number, pure: number) => own + share * (pure - own);
  const hot = kelvin(353.15);
  const mild = kelvin(293.15);
  const coldEnd = Math.max(FROM, freezingPoint(weaker) + 0.1);
  const swells = tableOf((temperature) => {
    const inside = Math.min(HOT_END, Math.max(coldEnd, temperature));
    const slope =
      temperature > HOT_END
        ? (volumeRatio(weaker, mild, kelvin(HOT_END)) - volumeRatio(weaker, mild, kelvin(HOT_END - 5))) / 5
        : 0;
    return volumeRatio(weaker, mild, kelvin(inside)) + slope * (temperature - inside);
  });
  const vapour = tableOf((temperature) =>
    Math.log(mixtureVapourPressure(whole, kelvin(Math.max(COLD_END, temperature)))),
  );
  const density = toPure(mixtureDensity(weaker, mild), PURE.density + 43);
  return {
    heatPerVolume: density * toPure(mixtureSpecificHeat(weaker, hot), PURE.specificHeat),
    swells,
    vapourPressure: (temperature) => Math.exp(vapour(temperature)),
    boilsAt(pressure) {
      const wanted = Math.log(pressure);
      let [low, high] = [COLD_END, TO];
      for (let round = 0; round < 24; round++) {
        const middle = (low + high) / 2;
        if (vapour(middle) < wanted) low = middle;
        else high = middle;
      }
      return (low + high) / 2;
    },
  };
}

/** Straight between whole kelvins, the end values beyond. */
function tableOf(of: (temperature: number) => number): (temperature: number) => number {
  const values = Float64Array.from({ length: (TO - FROM) / STEP + 1 }, (_, at) => of(FROM + at * STEP));
  const last = values.length - 1;
  return (temperature) => {
    const at = Math.min(last, Math.max(0, (temperature - FROM) / STEP));
    const below = Math.floor(at);
    const low = values[below] ?? 0;
    return low + (at - below) * ((values[Math.min(last, below + 1)] ?? 0) - low);
  };
}
