import type { Glycol } from './glycol.ts';
import { within } from './out-of-range.ts';
import { type AbsolutePascal, absolutePascal, type Kelvin } from './units.ts';

/** Perry's Chemical Engineers' Handbook 8th ed., table 2-8: ln Pa = C1 + C2/T + C3 ln T + C4 T^C5, with its range in K. */
const PERRY = {
  ethylene: { c: [84.09, -10411, -8.1976, 1.6536e-18, 6], limits: [260.15, 720] },
  propylene: { c: [212.8, -15420, -28.109, 2.1564e-5, 2], limits: [213.15, 626] },
} as const;

/**
 * Vapour pressure of pure glycol.
 *
 * Perry 8th ed., table 2-8; sources differ by up to 2.5 % from 80 to 200 °C.
 * @param temperature 260.15 to 720 K (ethylene), 213.15 to 626 K (propylene)
 * @throws OutOfRange on temperature
 */
export function glycolVapourPressure(glycol: Glycol, temperature: Kelvin): AbsolutePascal {
  const { c, limits } = PERRY[glycol];
  const t = within('glycol temperature', temperature, limits[0], limits[1], 'K');
  return absolutePascal(Math.exp(c[0] + c[1] / t + c[2] * Math.log(t) + c[3] * t ** c[4]));
}
