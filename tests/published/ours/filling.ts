import { correctMixture } from '../../../src/physics/correct-mixture.ts';
import { expansion, levelAboveColdMark, volumeRatio } from '../../../src/physics/expansion.ts';
import type { Mixture } from '../../../src/physics/glycol.ts';
import { tightReading } from '../../../src/physics/pressure-decay.ts';
import {
  fromCelsius,
  fromLitres,
  gaugePascal,
  STANDARD_ATMOSPHERE,
  squareMetre,
  volumeFraction,
} from '../../../src/physics/units.ts';
import type { Ours, OursByTable } from '../compare.ts';
import { number, text } from '../tables.ts';
import { byMass, byVolume, half } from './mixtures.ts';

const FROM = fromCelsius(20);
const TO = fromCelsius(90);
const SYSTEM = fromLitres(6);

const growth =
  (mixture: Mixture): Ours =>
  (row) =>
    100 * (volumeRatio(mixture, FROM, fromCelsius(number(row, '°C'))) - 1);

const growthTo90: Ours = (row) =>
  100 * (volumeRatio(half(text(row, 'glycol') === 'ethylene' ? 'ethylene' : 'propylene'), FROM, TO) - 1);

const millimetres: Ours = () =>
  1000 *
  levelAboveColdMark(
    { mixture: half('ethylene'), volume: SYSTEM, coldAt: FROM, bottleArea: squareMetre(0.01) },
    TO,
  );

const litresToDrain: Ours = (row) => {
  const answer = correctMixture({
    capacity: fromLitres(number(row, 'system l')),
    is: volumeFraction(number(row, 'is')),
    wanted: volumeFraction(number(row, 'target')),
    adding: volumeFraction(number(row, 'adding')),
  });
  return answer.verdict === 'drain and add' ? answer.drain * 1000 : Number.NaN;
};

const tight: Ours = (row) =>
  tightReading(
    {
      mixture: half('ethylene'),
      liquid: SYSTEM,
      air: fromLitres(number(row, 'air l')),
      outside: STANDARD_ATMOSPHERE,
    },
    { gauge: gaugePascal(100e3), temperature: fromCelsius(number(row, 'from °C')) },
    fromCelsius(number(row, 'to °C')),
  ) / 1000;

export const FILLING: OursByTable = {
  'coolant-expansion': {
    'EG 40 % vol': growth(byVolume('ethylene', 0.4)),
    'EG 50 % vol': growth(half('ethylene')),
    'EG 60 % mass': growth(byMass('ethylene', 0.6)),
    'PG 50 % vol': growth(half('propylene')),
  },
  'expansion-ashrae': { ASHRAE: growthTo90 },
  'level-rise': { litres: () => 1000 * expansion(half('ethylene'), SYSTEM, FROM, TO), mm: millimetres },
  'correct-mixture': { l: litresToDrain },
  'tight-reading': { 'kPa gauge': tight },
};
