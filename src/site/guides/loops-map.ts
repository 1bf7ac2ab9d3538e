/** The loops a car of today may have, and which of them this shop opens. Invented, after common practice. */
import type { BoxPlan } from './box-plan.ts';

export const loopsMap: BoxPlan = {
  title: 'Loops of a car of today',
  description:
    'Four loops one under the other. Engine: block, heater core, radiator, header tank. Charge air: small pump, charge-air cooler, its own radiator. Drive: 12 V pump, inverter and motor, low-temperature radiator. Battery and cabin of an electric car: pump, valve, battery, chiller to the refrigerant. The first two are opened here; inverter, battery, chiller and high-voltage heater are not.',
  width: 350,
  height: 420,
  parts: [
    { x: 10, y: 30, width: 74, height: 40, lines: ['Radiator'] },
    { x: 138, y: 30, width: 74, height: 40, lines: ['Engine'] },
    { x: 266, y: 30, width: 74, height: 40, lines: ['Heater', 'core'] },
    { x: 10, y: 128, width: 74, height: 40, lines: ['Front', 'radiator'] },
    { x: 138, y: 128, width: 74, height: 40, lines: ['12 V pump'] },
    { x: 266, y: 128, width: 74, height: 40, lines: ['Charge-air', 'cooler'] },
    { x: 10, y: 226, width: 74, height: 40, lines: ['Front', 'radiator'] },
    { x: 138, y: 226, width: 74, height: 40, lines: ['12 V pump'] },
    { x: 266, y: 226, width: 74, height: 40, lines: ['Inverter,', 'motor'], closed: true },
    { x: 10, y: 324, width: 74, height: 40, lines: ['Chiller'], closed: true },
    { x: 138, y: 324, width: 74, height: 40, lines: ['Valve,', 'pump'], closed: true },
    { x: 266, y: 324, width: 74, height: 40, lines: ['Battery'], closed: true },
  ],
  lines: [30, 128, 226, 324].flatMap((y) => [
    {
      kind: 'way' as const,
      points: [
        { x: 84, y: y + 20 },
        { x: 138, y: y + 20 },
      ],
    },
    {
      kind: 'way' as const,
      points: [
        { x: 212, y: y + 20 },
        { x: 266, y: y + 20 },
      ],
    },
    {
      kind: 'way' as const,
      points: [
        { x: 303, y: y + 40 },
        { x: 303, y: y + 54 },
        { x: 47, y: y + 54 },
        { x: 47, y: y + 40 },
      ],
    },
  ]),
  notes: [
    { x: 10, y: 20, text: 'Engine, 80 to 105 °C: ours' },
    { x: 10, y: 118, text: 'Charge air, a few kelvin over the air: ours' },
    { x: 10, y: 216, text: 'Drive, under some 65 °C: looked at, not opened' },
    { x: 10, y: 314, text: 'Battery, 15 to 40 °C: looked at, not opened' },
    { x: 10, y: 406, text: 'Broken edge: for people trained for high voltage' },
  ],
};
