/** The figures the guides quote, each computed where its arithmetic lives. A guide names one; a wrong name stops the build. */
import type { Quantity } from '../../model/quantity.ts';
import { atmosphericPressure } from '../../physics/atmosphere.ts';
import { boilingPoint, boilingPointUnderCap, mixtureVapourPressure } from '../../physics/boiling.ts';
import { proofLoad } from '../../physics/bolt.ts';
import { copperFactor } from '../../physics/cable.ts';
import { expansion } from '../../physics/expansion.ts';
import { strengthForFreezing } from '../../physics/freezing-range.ts';
import type { Glycol, Mixture } from '../../physics/glycol.ts';
import { infraredReading } from '../../physics/infrared.ts';
import { joint } from '../../physics/joint.ts';
import { freezingPoint, mixtureDensity, mixtureSpecificHeat } from '../../physics/mixture-properties.ts';
import { tightReading } from '../../physics/pressure-decay.ts';
import { strengthReadOnScaleOf } from '../../physics/refractive-index.ts';
import { toMassFraction, toVolumeFraction } from '../../physics/strength.ts';
import { parseThread, type Thread } from '../../physics/thread.ts';
import { clampLoad, tighteningTorque, torqueShares } from '../../physics/tightening.ts';
import { TORQUE_UNITS } from '../../physics/torque-units.ts';
import {
  ampere,
  fromCelsius,
  fromLitres,
  gaugePascal,
  massFraction,
  metre,
  newtonMetre,
  STANDARD_ATMOSPHERE,
  volt,
  volumeFraction,
} from '../../physics/units.ts';
import { wrenchSetting } from '../../physics/wrench-extension.ts';
import { BATTERY, chain, lostOn } from './drop-chain.ts';
import { single } from './quantities.ts';
import { BACK, lastBefore, OUT, STUCK_OPEN, warmUpLog } from './warm-up-example.ts';

/** The mixture most guides speak of, ethylene glycol. */
export const HALF_ETHYLENE = mixtureByVolume('ethylene', 0.5);
export const PLAIN_WATER: Mixture = { glycol: 'ethylene', fraction: massFraction(0) };
/** Altitude of the examples high up, m. */
const HIGH_UP = 2500;
/** The bolt of the torque guide. */
export const SMALL_BOLT = threadCalled('M6');
/** Of a thread: with oil on it, as it usually is, dry. As in torque-plausibility.ts. */
export const FRICTION = { oiled: 0.1, usual: 0.14, dry: 0.16 } as const;

const sound = warmUpLog();
const stuck = warmUpLog(STUCK_OPEN);
const celsius = (value: number) => single(fromCelsius(value), '°C', 0);
const share = (value: number) => single(value, '%', 0);

const FIGURES: Readonly<Record<string, () => Quantity>> = {
  // How the circuit regulates; reading a warm-up curve
  'sound on the road': () => celsius(lastBefore(sound, BACK).celsius),
  'sound on the road, open': () => share(lastBefore(sound, BACK).open),
  'stuck open in the bay': () => celsius(lastBefore(stuck, OUT).celsius),
  'stuck open on the road': () => celsius(lastBefore(stuck, BACK).celsius),
  'infrared on bare aluminium at 90': () =>
    single(
      infraredReading({ emissivity: 0.2, set: 0.95, surroundings: fromCelsius(25) }, fromCelsius(90)),
      '°C',
      0,
    ),

  // Where air hides
  'expansion of six litres': () =>
    single(expansion(HALF_ETHYLENE, fromLitres(6), fromCelsius(20), fromCelsius(90)), 'l', 2),

  // Mixture by volume and mass
  'half by volume, by mass': () => single(HALF_ETHYLENE.fraction, '%', 1),
  'half by mass, by volume': () => single(toVolumeFraction('ethylene', massFraction(0.5)), '%', 1),
  'volume for minus 20': () =>
    share(toVolumeFraction('ethylene', strengthForFreezing('ethylene', fromCelsius(-20)))),
  'propylene that shows minus 33': () =>
    single(
      freezingPoint({
        glycol: 'propylene',
        fraction: strengthReadOnScaleOf('ethylene', 'propylene', fromCelsius(-33)),
      }),
      '°C',
      0,
    ),
  'heat of half beside water': () => share(heatPerLitre(HALF_ETHYLENE) / heatPerLitre(PLAIN_WATER)),

  // Pressure and boiling
  'half boils open': () => single(boilingPoint(HALF_ETHYLENE, STANDARD_ATMOSPHERE), '°C', 0),
  'half boils under 1.4 bar': () => underCap(1.4),
  'half boils under 0.9 bar': () => underCap(0.9),
  'half boils open high up': () =>
    single(boilingPoint(HALF_ETHYLENE, atmosphericPressure(metre(HIGH_UP))), '°C', 0),
  'half boils under 1.4 bar high up': () => underCap(1.4, HIGH_UP),
  'water boils open high up': () =>
    single(boilingPoint(PLAIN_WATER, atmosphericPressure(metre(HIGH_UP))), '°C', 0),
  'vapour at 90': () => single(mixtureVapourPressure(HALF_ETHYLENE, fromCelsius(90)), 'kPa', 0),
  'tester after cooling': () =>
    single(
      tightReading(
        {
          mixture: HALF_ETHYLENE,
          liquid: fromLitres(6),
          air: fromLitres(1),
          outside: STANDARD_ATMOSPHERE,
        },
        { gauge: gaugePascal(100e3), temperature: fromCelsius(80) },
        fromCelsius(60),
      ),
      'kPa',
      0,
    ),

  // Voltage drop
  'holder resistance': () => single(joint(volt(0.4), ampere(30), 'connection').resistance, 'mΩ', 0),
  'holder heat': () => single(joint(volt(0.4), ampere(30), 'connection').heat, 'W', 0),
  'supply side lost': () => single(lostOn('supply'), 'V', 2),
  'both sides lost': () => single(lostOn(), 'V', 2),
  'burnt holder lost': () => single(burntHolder().volts, 'V', 2),
  'burnt holder heat': () => single(burntHolder().watts, 'W', 0),
  'copper at 80': () => share(copperFactor(fromCelsius(80)) - 1),
  'fan air power left': () => share(((BATTERY - lostOn()) / BATTERY) ** 3),

  // Why torque figures go wrong
  'torque into the clamp': () => share(torqueShares(SMALL_BOLT, FRICTION.usual).clamp),
  'torque into friction': () => share(1 - torqueShares(SMALL_BOLT, FRICTION.usual).clamp),
  'ten dry': () => clamp(10, FRICTION.dry),
  'ten oiled': () => clamp(10, FRICTION.oiled),
  'M6 limit': () => single(tighteningTorque(SMALL_BOLT, '8.8', FRICTION.dry), 'N·m', 0),
  'M6 strongest limit': () => single(tighteningTorque(SMALL_BOLT, '12.9', FRICTION.dry), 'N·m', 0),
  'M8 limit': () => single(tighteningTorque(threadCalled('M8'), '8.8', FRICTION.dry), 'N·m', 0),
  'setting with crow-foot': () =>
    single(wrenchSetting(newtonMetre(10), metre(0.25), metre(0.05), 0), 'N·m', 1),
  'ten pound-feet': () => single(10 * TORQUE_UNITS.lbf·ft, 'N·m', 1),
};

/** @throws Error when no figure has the name */
export function figureCalled(name: string): Quantity {
  const compute = FIGURES[name];
  if (!compute) throw new Error(`No figure of the guides is called "${name}".`);
  return compute();
}

export const figureNames: readonly string[] = Object.keys(FIGURES);

function mixtureByVolume(glycol: Glycol, part: number): Mixture {
  return { glycol, fraction: toMassFraction(glycol, volumeFraction(part)) };
}

function threadCalled(name: string): Thread {
  const thread = parseThread(name);
  if (!thread) throw new Error(`No thread is called ${name}`);
  return thread;
}

/** Half and half under a cap. @param bar gauge @param altitude m */
function underCap(bar: number, altitude = 0): Quantity {
  return single(boilingPointUnderCap(HALF_ETHYLENE, gaugePascal(bar * 1e5), metre(altitude)), '°C', 0);
}

/** Heat that a litre at 90 °C carries for each degree, beside that of water. */
function heatPerLitre(mixture: Mixture): number {
  const hot = fromCelsius(90);
  return mixtureDensity(mixture, hot) * mixtureSpecificHeat(mixture, hot);
}

function burntHolder() {
  const [first] = chain;
  if (!first) throw new Error('The chain of the voltage-drop guide is empty.');
  return first;
}

/** Clamp load of the small bolt, class 8.8, as a share of its proof load. */
function clamp(torque: number, friction: number): Quantity {
  return share(clampLoad(SMALL_BOLT, newtonMetre(torque), friction) / proofLoad(SMALL_BOLT, '8.8'));
}
