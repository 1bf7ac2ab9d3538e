/** The air's way through the heater box. Invented, after common practice. */
import type { BoxPlan } from './box-plan.ts';

export const heaterBox: BoxPlan = {
  title: 'The way of the air through a heater box',
  description:
    'Air comes from outside or from the cabin through a flap, then cabin filter, blower and evaporator. A temperature flap sends it through the heater core and the extra heater, or past them. Behind, flaps share it between screen, face and feet.',
  width: 350,
  height: 380,
  parts: [
    { x: 10, y: 10, width: 100, height: 40, lines: ['Outside air'] },
    { x: 240, y: 10, width: 100, height: 40, lines: ['Cabin air'] },
    { x: 125, y: 10, width: 100, height: 40, lines: ['1 Intake flap'] },
    { x: 125, y: 70, width: 100, height: 34, lines: ['2 Cabin filter'] },
    { x: 125, y: 122, width: 100, height: 34, lines: ['3 Blower'] },
    { x: 125, y: 174, width: 100, height: 34, lines: ['4 Evaporator'] },
    { x: 10, y: 226, width: 100, height: 50, lines: ['5 Heater core,', 'extra heat'] },
    { x: 125, y: 226, width: 100, height: 50, lines: ['6 Temperature', 'flap'] },
    { x: 240, y: 226, width: 100, height: 50, lines: ['Past it, cold'] },
    { x: 125, y: 298, width: 100, height: 34, lines: ['7 Outlet flaps'] },
    { x: 10, y: 340, width: 100, height: 30, lines: ['Screen'] },
    { x: 125, y: 340, width: 100, height: 30, lines: ['Face'] },
    { x: 240, y: 340, width: 100, height: 30, lines: ['Feet'] },
  ],
  lines: [
    {
      kind: 'way',
      points: [
        { x: 110, y: 30 },
        { x: 125, y: 30 },
      ],
    },
    {
      kind: 'way',
      points: [
        { x: 240, y: 30 },
        { x: 225, y: 30 },
      ],
    },
    {
      kind: 'way',
      points: [
        { x: 175, y: 50 },
        { x: 175, y: 226 },
      ],
    },
    {
      kind: 'way',
      points: [
        { x: 125, y: 251 },
        { x: 110, y: 251 },
      ],
    },
    {
      kind: 'way',
      points: [
        { x: 225, y: 251 },
        { x: 240, y: 251 },
      ],
    },
    {
      kind: 'way',
      points: [
        { x: 60, y: 276 },
        { x: 60, y: 315 },
        { x: 125, y: 315 },
      ],
    },
    {
      kind: 'way',
      points: [
        { x: 290, y: 276 },
        { x: 290, y: 315 },
        { x: 225, y: 315 },
      ],
    },
    {
      kind: 'way',
      points: [
        { x: 175, y: 332 },
        { x: 175, y: 340 },
      ],
    },
    {
      kind: 'way',
      points: [
        { x: 140, y: 332 },
        { x: 100, y: 340 },
      ],
    },
    {
      kind: 'way',
      points: [
        { x: 210, y: 332 },
        { x: 250, y: 340 },
      ],
    },
  ],
  notes: [],
};
