import type { Glycol } from './glycol.ts';
import { CORRELATION_ENDS } from './glycol.ts';
import { mixtureDensity } from './mixture-properties.ts';
import { within } from './out-of-range.ts';
import { findWhere } from './root.ts';
import { type Kelvin, type MassFraction, massFraction, ZERO_CELSIUS } from './units.ts';

/** Inhibited coolants are heavier than neat glycol and water of the same strength: ASHRAE's against Melinder's at 20 °C, 20 to 60 % by volume. */
const HEAVIER = 0.005;

/** Strengths a density may belong to, by mass: lowest for an inhibited coolant, highest for neat glycol. */
export interface StrengthByDensity {
  readonly lowest: MassFraction;
  readonly highest: MassFraction;
}

/**
 * Strength of a mixture from its density.
 *
 * Melinder (2010) turned round; the lower end for ASHRAE's inhibited fluids. Handbooks differ by 3 to 5 points.
 * @param density kg/m3, of plain water up to 60 % by mass at that temperature
 * @param sample temperature of the sample, 273.15 to 333.15 K; hotter, propylene glycol has two strengths to a density
 * @throws OutOfRange on either
 */
export function strengthForDensity(glycol: Glycol, density: number, sample: Kelvin): StrengthByDensity {
  const t = within('sample temperature', sample, ZERO_CELSIUS, ZERO_CELSIUS + 60, 'K') as Kelvin;
  const at = (fraction: number) => mixtureDensity({ glycol, fraction: massFraction(fraction) }, t);
  const read = within('density', density, at(0) * (1 - HEAVIER), at(CORRELATION_ENDS), 'kg/m3');
  const strength = (wanted: number) =>
    massFraction(wanted <= at(0) ? 0 : findWhere(at, wanted, 0, CORRELATION_ENDS));
  return { lowest: strength(read / (1 + HEAVIER)), highest: strength(read) };
}
