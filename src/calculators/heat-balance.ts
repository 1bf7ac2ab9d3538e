/** Flow, heat and two temperatures of a radiator or heater: any one from the others. */
import { flowForHeat, heatGivenOff, NEAR_A_LIMIT, USUAL_DIFFERENCE, WARM } from '../physics/heat-balance.ts';
import { CORRELATION_HOT_END, freezingPoint } from '../physics/mixture-properties.ts';
import { cubicMetrePerSecond, kelvin, watt } from '../physics/units.ts';
import { CORRELATED_STRENGTH, GLYCOL, mixtureOf } from './coolant-inputs.ts';
import type { Answer, Calculator, QuantityFormatter, Refusal } from './declaration.ts';
import { refuse } from './refuse.ts';

type Place = keyof typeof USUAL_DIFFERENCE;

/** Below this two thermometers decide, not the coolant, K. */
const LEAST_APART = 1;
const LITRE_A_MINUTE = 1e-3 / 60;

export const heatBalance: Calculator = {
  id: 'heat-balance',
  title: 'Heat balance',
  settles:
    'flow or heat of a radiator or heater from its two hoses, and whether it is the flow or the air that fails',
  also: ['heater flow', 'radiator flow', 'delta T', 'heater hose temperatures', 'kilowatt', 'blocked core'],
  inputs: [
    {
      kind: 'choice',
      name: 'place',
      label: 'Over the',
      default: 'heater',
      options: [
        { value: 'heater', label: 'heater, blower on second speed' },
        { value: 'radiator', label: 'radiator, thermostat open' },
      ],
    },
    {
      kind: 'quantity',
      name: 'hot',
      label: 'Hose going in',
      hint: 'On the hose itself or a matt patch, both read the same way.',
      dimension: 'temperature',
      unit: '°C',
      default: '85 °C',
      limits: ['0 °C', '125 °C'],
      reading: true,
    },
    {
      kind: 'quantity',
      name: 'cold',
      label: 'Hose coming out',
      dimension: 'temperature',
      unit: '°C',
      default: '75 °C',
      limits: ['0 °C', '125 °C'],
      reading: true,
    },
    {
      kind: 'choice',
      name: 'known',
      label: 'Work out',
      default: 'flow',
      options: [
        { value: 'flow', label: 'the flow, from the heat' },
        { value: 'heat', label: 'the heat, from the flow' },
      ],
    },
    {
      kind: 'quantity',
      name: 'heat',
      label: 'Heat it gives off',
      hint: 'A car heater gives about 3 to 8 kW, less on low blower; common practice.',
      dimension: 'power',
      unit: 'kW',
      default: '5 kW',
      limits: ['0.1 kW', '500 kW'],
      when: { known: ['flow'] },
    },
    {
      kind: 'quantity',
      name: 'flow',
      label: 'Flow through it',
      dimension: 'flow',
      unit: 'l/min',
      default: '8 l/min',
      limits: ['0.1 l/min', '600 l/min'],
      when: { known: ['heat'] },
    },
    CORRELATED_STRENGTH,
    GLYCOL,
  ],
  answer(values, show): Answer | Refusal {
    const mixture = mixtureOf(values);
    const hot = kelvin(values.number('hot'));
    const cold = kelvin(values.number('cold'));
    const freezes = freezingPoint(mixture);
    if (cold > hot)
      return refuse(
        'cold',
        'It comes out hotter than it goes in. The hoses are the other way round, or one reading is off a shiny clamp.',
      );
    if (hot < WARM)
      return refuse(
        'hot',
        `Warm it up first: at ${show.quantity(hot, '°C', 0)} going in nothing can be judged, it takes ${show.quantity(WARM, '°C', 0)}. If this hose stays so cool on a warm engine, no flow gets to it.`,
      );
    if (cold < freezes)
      return refuse(
        'cold',
        `This mixture begins to freeze at ${show.quantity(freezes, '°C', 0)}. Read again, or correct the mixture.`,
      );
    if (hot - cold < LEAST_APART)
      return refuse(
        'cold',
        `Less than ${show.difference(LEAST_APART)} apart the thermometers decide, not the coolant. Turn the blower up or load the engine and read again.`,
      );
    if ((hot + cold) / 2 > CORRELATION_HOT_END)
      return refuse(
        'hot',
        `On average the two lie above ${show.quantity(CORRELATION_HOT_END, '°C', 0)}, where the data of coolant end. No figure is given there.`,
      );
    const between = { hot, cold };
    const flow =
      values.choice('known') === 'flow'
        ? flowForHeat(mixture, watt(values.number('heat')), between)
        : cubicMetrePerSecond(values.number('flow'));
    const heat = heatGivenOff(mixture, flow, between);
    const place: Place = values.choice('place') === 'radiator' ? 'radiator' : 'heater';
    const shownFlow = show.quantity(flow, 'l/min', flow < LITRE_A_MINUTE ? 2 : 1);
    const shownHeat = show.quantity(heat, 'kW', heat < 1e3 ? 2 : 1);
    const isTyped = values.choice('known') === 'flow' ? 'heat' : 'flow';
    const isDenied = deniedBy(place, hot - cold) === isTyped;
    const worked = isDenied
      ? `What was typed, ${isTyped === 'heat' ? shownHeat : shownFlow}, cannot be true then, so nothing is reckoned from it.`
      : values.choice('known') === 'flow'
        ? `That is a flow of ${shownFlow}.`
        : `That is ${shownHeat}.`;
    return {
      ...judge(place, hot - cold, worked, show),
      figures: [
        { label: 'Between the hoses', value: show.difference(hot - cold) },
        ...(isDenied
          ? []
          : [
              { label: 'Flow', value: shownFlow },
              { label: 'Heat given off', value: shownHeat },
            ]),
        {
          label: 'Usual between the hoses',
          value: usualText(place, show),
          note: 'common practice, no source',
        },
      ],
      notes: [
        'Belts, pulleys and a fan that starts by itself are near these hoses, and the hoses are hot. Read with the hands out of reach of the fan, and glove on.',
        'A hose reads a few degrees under the coolant inside; both do, so the difference holds.',
      ],
    };
  },
  method: {
    formula: 'heat = flow × density × specific heat × (hot − cold), both properties at the mean temperature',
    sources: [
      'Melinder (2010), density and specific heat of glycol mixtures',
      'ASHRAE Handbook – Fundamentals (2001), for comparison',
      'usual differences over radiator and heater: common practice, no source',
    ],
    valid: '0 to 57 % by volume, mean temperature from freezing to 100 °C',
    error:
      'properties within 2 %; two thermometers one degree apart on ten degrees make it 10 to 20 %, which decides',
  },
};

function usualText(place: Place, show: QuantityFormatter): string {
  const [low, high] = USUAL_DIFFERENCE[place];
  return `${show.difference(low).replace(/\u00a0.*/, '')} to ${show.difference(high)}`;
}

/** What the verdict says is missing: who typed it as there is not answered with figures from it. */
function deniedBy(place: Place, difference: number): 'heat' | 'flow' | undefined {
  const [low, high] = USUAL_DIFFERENCE[place];
  if (difference > high + NEAR_A_LIMIT) return 'flow';
  return difference < low - NEAR_A_LIMIT ? 'heat' : undefined;
}

function judge(
  place: Place,
  difference: number,
  worked: string,
  show: QuantityFormatter,
): Pick<Answer, 'sentence' | 'tone'> {
  const [low, high] = USUAL_DIFFERENCE[place];
  // Close to a limit a whole degree would hide on which side it lies.
  const isNear = difference > high && difference <= high + NEAR_A_LIMIT;
  const isNearLow = difference < low && difference >= low - NEAR_A_LIMIT;
  const apart = show.difference(difference, isNear || isNearLow ? 1 : 0);
  if (isNear || isNearLow)
    return {
      sentence: `At the edge: ${apart} between the hoses, and ${usualText(place, show)} is usual. Two thermometers a degree out would make that: read both again with the same one on matt patches. ${isNear ? 'Wider, it is the flow' : 'Narrower, it is the air side'}. ${worked}`,
      tone: 'look',
    };
  if (difference > high)
    return {
      sentence:
        place === 'heater'
          ? `Too little flow: ${apart} between the hoses. Look for a blocked core, a half-shut valve, air in the core or a weak pump. ${worked}`
          : `Too little flow: ${apart} across the radiator. Look for a thermostat that opens half, a blocked core or a slipping pump. ${worked}`,
      tone: 'look',
    };
  if (difference < low)
    return {
      sentence:
        place === 'heater'
          ? `Flow is there and little heat leaves: only ${apart} between the hoses. Look at the air side: blower, cabin filter, blend door, fins. ${worked}`
          : `Flow is there and little heat leaves: only ${apart} across the radiator. Look at the air side: fan, shroud, fins; or the engine makes little heat now. ${worked}`,
      tone: 'look',
    };
  return {
    sentence: `Flow and air side do their work: ${apart} between the hoses is usual. ${worked}`,
    tone: 'fine',
  };
}
