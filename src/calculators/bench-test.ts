/** Whether an open pot of water can show anything of a thermostat here. */
import { benchTest } from '../physics/bench-test.ts';
import { kelvin, toCelsius } from '../physics/units.ts';
import { ALTITUDE, altitudeOf } from './coolant-inputs.ts';
import type { Answer, Calculator } from './declaration.ts';

export const benchTestCalculator: Calculator = {
  id: 'bench-test',
  title: 'Thermostat in a pot',
  settles: 'whether an open pot of water gets hot enough here to show the thermostat opening',
  also: ['thermostat bench test', 'boil the thermostat', 'open pot', 'stove test'],
  inputs: [
    {
      kind: 'quantity',
      name: 'stamp',
      label: 'Stamped on the thermostat',
      hint: 'Opening temperature. An electrically heated one is stamped with the higher, unheated figure.',
      dimension: 'temperature',
      unit: '°C',
      default: '87 °C',
      limits: ['60 °C', '115 °C'],
      figure: { path: 'thermostat.opens', end: 'middle' },
    },
    ALTITUDE,
  ],
  answer(values, show): Answer {
    const stamp = kelvin(values.number('stamp'));
    const test = benchTest(stamp, altitudeOf(values));
    const boils = show.quantity(test.potBoilsAt, '°C', 1);
    const marked = show.quantity(stamp, '°C', 0);
    const starts = show.range(test.starts.lowest, test.starts.highest, '°C', 0);
    const full = show.range(test.fullyOpen.lowest, test.fullyOpen.highest, '°C', 0);
    const inCar = 'Judge it in the car instead: follow the hose to the radiator through the warm-up.';
    const { sentence, tone } = {
      'cannot open': {
        sentence: `Do not test it in a pot here: water boils at ${boils}, below what a ${marked} thermostat needs. Shut in the pot proves nothing. ${inCar}`,
        tone: 'stop' as const,
      },
      'may not open': {
        sentence: `A pot can mislead here: it boils at ${boils}, and a sound ${marked} thermostat may open as late as ${show.quantity(test.starts.highest, '°C', 0)}. If it opens, the start is proved; if it stays shut, nothing is. ${inCar}`,
        tone: 'look' as const,
      },
      'starts only': {
        sentence: `Watch for the start of opening, ${starts}, with a thermometer beside it. You will not see it fully open: that takes ${full} and the pot boils at ${boils}.`,
        tone: 'look' as const,
      },
      'starts, perhaps fully': {
        sentence: `Watch for the start, ${starts}. Fully open comes at ${full} by the word of trade and maker, and the pot ends at ${boils}: a small opening there is no fault yet.`,
        tone: 'look' as const,
      },
      'opens fully': {
        sentence: `A pot will do: it should start at ${starts} and be fully open by ${full}, and the water gets to ${boils}.`,
        tone: 'fine' as const,
      },
    }[test.verdict];
    return {
      sentence,
      tone,
      figures: [
        {
          label: 'Open pot of water boils at',
          value: boils,
          note: `weather moves it by about ${show.difference(0.6, 1)}`,
        },
        { label: 'Should start to open', value: starts },
        { label: 'Fully open', value: full, note: 'by trade and by maker' },
      ],
      notes: [
        'Hang it in the water by a wire, off the bottom, with the thermometer beside the wax, and stir: the bottom of a pot is hotter than the water.',
        'Boiling water and steam scald. Stand the pot where it cannot tip, handle the thermostat with tongs, and let it cool before touching it.',
      ],
      pictures: [
        {
          kind: 'ladder',
          title: 'What the pot can reach',
          rungs: [
            { id: 'stamp', label: 'Stamped: starts to open', celsius: toCelsius(stamp) },
            { id: 'full', label: 'Fully open at the latest', celsius: toCelsius(test.fullyOpen.highest) },
          ],
          reading: {
            celsius: toCelsius(test.potBoilsAt),
            label: 'The pot boils here',
            to: 'full',
            below: 'missing to fully open',
            above: 'to spare',
          },
        },
      ],
    };
  },
  method: {
    formula:
      'air pressure from altitude; boiling point of water under it; start = stamp ± 2 K; fully open = stamp + 10 to 20 K',
    sources: [
      'ISO 2533:1975 standard atmosphere',
      'IAPWS-IF97 region 4, boiling of water',
      'opening within 2 K and full opening 15 to 20 K above the stamp: a thermostat maker’s page; 10 to 15 K: common practice, no source',
    ],
    valid: 'plain water, wax thermostats of 60 to 115 °C, −400 to 5,500 m',
    error: 'boiling within 0.1 K of the published tables for standard air; weather adds 0.6 K',
  },
};
