/** Three ways a fan is fed and ordered. Invented, after common practice. */
import type { BoxPlan, PlanLine, PlanPart } from './box-plan.ts';

const BATTERY: PlanPart = { x: 10, y: 24, width: 80, height: 40, lines: ['Battery,', 'fuse'] };
const MOTOR: PlanPart = { x: 250, y: 24, width: 90, height: 40, lines: ['Fan motor'] };
const EARTH: PlanLine = {
  kind: 'load',
  points: [
    { x: 295, y: 64 },
    { x: 295, y: 112 },
  ],
};
const EARTH_NAME = { x: 258, y: 126, text: 'earth' };
const SIZE = { width: 350, height: 140 };

/** Each with the name that stands over it. */
export const fanCircuits: readonly { name: string; plan: BoxPlan }[] = [
  {
    name: 'Relay and switch',
    plan: {
      ...SIZE,
      title: 'Fan fed by a relay',
      description:
        'Battery and fuse feed the relay contact, the contact feeds the motor, the motor goes to earth. A thin wire from the switch in the radiator or from the controller pulls the relay.',
      parts: [
        BATTERY,
        { x: 125, y: 24, width: 90, height: 40, lines: ['Relay'] },
        MOTOR,
        { x: 125, y: 92, width: 90, height: 40, lines: ['Switch or', 'controller'] },
      ],
      lines: [
        {
          kind: 'load',
          points: [
            { x: 90, y: 44 },
            { x: 125, y: 44 },
          ],
        },
        {
          kind: 'load',
          points: [
            { x: 215, y: 44 },
            { x: 250, y: 44 },
          ],
        },
        {
          kind: 'order',
          points: [
            { x: 170, y: 64 },
            { x: 170, y: 92 },
          ],
        },
        EARTH,
      ],
      notes: [EARTH_NAME],
    },
  },
  {
    name: 'Two relays and a series resistor',
    plan: {
      ...SIZE,
      title: 'Fan with a slow stage through a resistor',
      description:
        'The slow relay feeds the motor through a resistor that loses several volts on purpose; the fast relay feeds it straight. Each relay has an order of its own.',
      parts: [
        BATTERY,
        { x: 105, y: 24, width: 62, height: 40, lines: ['Fast', 'relay'] },
        { x: 105, y: 92, width: 62, height: 40, lines: ['Slow', 'relay'] },
        { x: 182, y: 92, width: 66, height: 40, lines: ['Resistor'] },
        MOTOR,
      ],
      lines: [
        {
          kind: 'load',
          points: [
            { x: 90, y: 44 },
            { x: 105, y: 44 },
          ],
        },
        {
          kind: 'load',
          points: [
            { x: 50, y: 64 },
            { x: 50, y: 112 },
            { x: 105, y: 112 },
          ],
        },
        {
          kind: 'load',
          points: [
            { x: 167, y: 44 },
            { x: 250, y: 44 },
          ],
        },
        {
          kind: 'load',
          points: [
            { x: 167, y: 112 },
            { x: 182, y: 112 },
          ],
        },
        {
          kind: 'load',
          points: [
            { x: 215, y: 92 },
            { x: 215, y: 44 },
          ],
        },
        {
          kind: 'order',
          points: [
            { x: 136, y: 24 },
            { x: 136, y: 6 },
          ],
        },
        {
          kind: 'order',
          points: [
            { x: 136, y: 92 },
            { x: 136, y: 74 },
          ],
        },
        EARTH,
      ],
      notes: [EARTH_NAME, { x: 142, y: 14, text: 'order' }, { x: 142, y: 84, text: 'order' }],
    },
  },
  {
    name: 'Module with an order of its own',
    plan: {
      ...SIZE,
      title: 'Fan with a module',
      description:
        'A heavy feed goes to the module all the time or through one relay. The controller sends a pulsed order, or a word on a serial line, on a thin wire; the module feeds the motor by it.',
      parts: [
        BATTERY,
        { x: 125, y: 24, width: 90, height: 40, lines: ['Module'] },
        MOTOR,
        { x: 125, y: 92, width: 90, height: 40, lines: ['Controller'] },
      ],
      lines: [
        {
          kind: 'load',
          points: [
            { x: 90, y: 44 },
            { x: 125, y: 44 },
          ],
        },
        {
          kind: 'load',
          points: [
            { x: 215, y: 44 },
            { x: 250, y: 44 },
          ],
        },
        {
          kind: 'order',
          points: [
            { x: 170, y: 64 },
            { x: 170, y: 92 },
          ],
        },
        EARTH,
      ],
      notes: [EARTH_NAME, { x: 20, y: 116, text: 'pulse or bus' }],
    },
  },
];
