/** A radiator or heater by coolant and air: how far the air comes, and which of the two sides fails. */
import { USUAL_DIFFERENCE, WARM } from '../physics/heat-balance.ts';
import {
  AIR_COMES,
  airBehind,
  type ExchangerVerdict,
  exchanged,
  judgeExchanger,
  LEAST_TO_AIR,
} from '../physics/heat-exchanger.ts';
import { fromCelsius, kelvin } from '../physics/units.ts';
import type { Answer, Calculator, QuantityFormatter, QuantityInput, Refusal } from './declaration.ts';
import { refuse } from './refuse.ts';

const inPercent = (share: number) => Math.round(share * 100);

type Place = keyof typeof AIR_COMES;

/** A morning that a heater is judged for. */
const FROST = fromCelsius(0);

function temperature(name: string, label: string, hint: string, example: string): QuantityInput {
  return {
    kind: 'quantity',
    name,
    label,
    hint,
    dimension: 'temperature',
    unit: '°C',
    default: example,
    limits: ['-40 °C', '130 °C'],
    reading: true,
  };
}

export const radiatorAir: Calculator = {
  id: 'radiator-air',
  title: 'Radiator and heater against air',
  settles: 'whether coolant, air or the core itself fails, from two hoses and the air before and behind',
  also: [
    'vent temperature',
    'heater output',
    'effectiveness',
    'approach temperature',
    'radiator efficiency',
    'air through the radiator',
    'blend door leaks',
  ],
  inputs: [
    {
      kind: 'choice',
      name: 'place',
      label: 'Over the',
      default: 'heater',
      options: [
        { value: 'heater', label: 'heater, full hot, blower on second speed' },
        { value: 'radiator', label: 'radiator, thermostat open, fan running' },
      ],
    },
    temperature(
      'hot',
      'Hose going in',
      'On the hose itself or a matt patch, both read the same way.',
      '85 °C',
    ),
    temperature('cold', 'Hose coming out', '', '77 °C'),
    temperature(
      'air-in',
      'Air going in',
      'At the grille of the radiator, or at the intake of the blower; inside the car if it recirculates.',
      '10 °C',
    ),
    temperature(
      'air-out',
      'Air behind it',
      'Heater: thermometer in the middle vent. Radiator: a wired probe behind the core, hung in with the fan stopped.',
      '70 °C',
    ),
  ],
  answer(values, show): Answer | Refusal {
    const place: Place = values.choice('place') === 'radiator' ? 'radiator' : 'heater';
    const [hot, cold] = [kelvin(values.number('hot')), kelvin(values.number('cold'))];
    const [airIn, airOut] = [kelvin(values.number('air-in')), kelvin(values.number('air-out'))];
    const refused = cannotBe({ hot, cold, airIn, airOut }, show);
    if (refused) return refused;
    const readings = { hot, cold, airIn, airOut };
    const found = exchanged(readings);
    const { works, past } = AIR_COMES[place];
    const percent = (share: number) => show.quantity(share, '%', 0);
    const verdict = judgeExchanger(place, readings);
    // Close to a limit a whole degree would hide on which side it lies.
    const fall = show.difference(hot - cold, verdict === 'edge' || verdict === 'little air' ? 1 : 0);
    return {
      sentence: saying(verdict, place, percent(found.ofAir), fall),
      tone: verdict === 'works' ? 'fine' : 'look',
      figures: [
        {
          label: 'The air comes towards the coolant',
          value: percent(found.ofAir),
          note: `works from ${percent(works)}, past the core under ${percent(past)}; common practice`,
        },
        { label: 'Air still under the coolant', value: show.difference(found.approach) },
        {
          label: 'Between the hoses',
          value: show.difference(hot - cold, 1),
          note: `usual ${usualText(place, show)}; common practice`,
        },
        {
          label: 'The coolant’s stream carries',
          value: `${found.carries.toFixed(found.carries < 3 ? 1 : 0)} times the air’s`,
        },
        ...(place === 'heater' && airIn > FROST
          ? [
              {
                label: `Vent with air of ${show.quantity(FROST, '°C', 0)} going in`,
                value: show.quantity(airBehind(found.ofAir, hot, FROST), '°C', 0),
                note: 'hoses and blower as now',
              },
            ]
          : []),
      ],
      notes: [
        'Belts, pulleys and a fan that starts by itself are near these hoses, and the hoses are hot. Hang a probe in with the engine off and the fan’s fuse out; read from outside.',
        'Air conditioning off, doors on full hot, no window open: each of them makes a sound heater look weak.',
      ],
    };
  },
  method: {
    formula:
      'air comes = (behind − in) / (hose in − air in); approach = hose in − air behind; stream of coolant / stream of air = (behind − in) / (hose in − hose out)',
    sources: [
      'Kays and London, Compact Heat Exchangers; Incropera, Fundamentals of Heat and Mass Transfer, chapter 11: effectiveness (definitions; from memory)',
      `works from ${inPercent(AIR_COMES.heater.works)} % in a heater and ${inPercent(AIR_COMES.radiator.works)} % in a radiator, past the core under ${inPercent(AIR_COMES.heater.past)} and ${inPercent(AIR_COMES.radiator.past)} %: common practice, no source`,
      'usual differences between the hoses, as in the heat balance: common practice, no source',
    ],
    valid: `coolant from 70 °C, ${LEAST_TO_AIR} K and more over the air that goes in; cars at rest`,
    error:
      'thermometers good to a degree each, behind the core to two: a tenth of the way at 30 K over the air, a twentieth at 60 K',
  },
};

/** Readings that no core makes. */
function cannotBe(
  { hot, cold, airIn, airOut }: Record<'hot' | 'cold' | 'airIn' | 'airOut', number>,
  show: QuantityFormatter,
): Refusal | undefined {
  const degrees = (value: number) => show.quantity(value, '°C', 0);
  if (cold > hot)
    return refuse(
      'cold',
      'It comes out hotter than it goes in. The hoses are the other way round, or one reading is off a shiny clamp.',
    );
  if (hot < WARM)
    return refuse(
      'hot',
      `Warm it up first: at ${degrees(hot)} going in nothing can be judged, it takes ${degrees(WARM)}. If this hose stays so cool on a warm engine, no flow gets to it.`,
    );
  if (hot - airIn < LEAST_TO_AIR)
    return refuse(
      'air-in',
      `The air that goes in is hardly colder than the coolant; under ${show.difference(LEAST_TO_AIR)} apart the thermometers decide. Is it hot air from behind that comes round again? Measure in fresh air.`,
    );
  if (cold < airIn)
    return refuse(
      'cold',
      `The hose coming out would be colder than the air, ${degrees(airIn)}, which cannot cool it further. One of the two is read wrong.`,
    );
  if (airOut > hot)
    return refuse(
      'air-out',
      'The air behind would be hotter than the coolant that heats it. Read it again out of the sun, away from exhaust and engine.',
    );
  if (airOut < airIn)
    return refuse(
      'air-out',
      'The air comes out colder than it went in. Switch the air conditioning off, or the two are swapped.',
    );
  if (hot - cold < 0.1)
    return refuse(
      'cold',
      `Nothing falls between the hoses. Turn the blower up or let the fan run, and read again with a thermometer that shows tenths.`,
    );
  return undefined;
}

function usualText(place: Place, show: QuantityFormatter): string {
  const [low, high] = USUAL_DIFFERENCE[place];
  return `${show.difference(low).replace(/\u00a0.*/, '')} to ${show.difference(high)}`;
}

function saying(verdict: ExchangerVerdict, place: Place, comes: string, fall: string): string {
  const isHeater = place === 'heater';
  return {
    works: isHeater
      ? `The heater does its work: the air comes ${comes} of the way to the coolant, with ${fall} between the hoses. If it stays cold in the car, the air goes elsewhere: ducts, flaps, an open window.`
      : `The radiator does its work: the air comes ${comes} of the way to the coolant, with ${fall} between the hoses. If the engine runs hot all the same, look at the flow at speed and at the heat it makes.`,
    edge: `At the edge: the air comes ${comes} of the way, with ${fall} between the hoses. A degree or two in each reading makes that: read all four again, both hoses with the same thermometer.`,
    'little coolant': isHeater
      ? `Too little coolant goes through: ${fall} between the hoses. Look for a blocked core, a half-shut valve, air in the core or a weak pump; the air side is not judged before.`
      : `Too little coolant goes through: ${fall} across the radiator. Look for a thermostat that opens half, a blocked core or a slipping pump; the air side is not judged before.`,
    'little air': isHeater
      ? `Too little air: what comes is hot, ${comes} of the way, with only ${fall} between the hoses. Cabin filter, blower and its stages, leaves on the core.`
      : `Too little air: what comes through is hot, ${comes} of the way, with only ${fall} between the hoses. Does the fan turn the right way and at full speed? Fins of radiator and condenser, a shutter that stays shut. Or the engine makes little heat now: load it and read again.`,
    'air past it': isHeater
      ? `Hot coolant goes through and the air does not take its heat: it comes only ${comes} of the way. A blend door that stands open to cold, a core without its foam, or tubes lined with sludge. Door first: it should end with a thud at full hot.`
      : `Hot coolant goes through and the air does not take its heat: it comes only ${comes} of the way. Air gets past the core: shroud, side plates, foam. Then fins that are loose or rotten, and tubes lined inside.`,
  }[verdict];
}
