/** The circuit with the places where it leaks, numbered in the order of looking. Common practice, no source. */
import { drawLabel } from '../drawings/circuit.ts';
import { drawParts } from '../drawings/circuit-parts.ts';
import { planCircuit, WIDTH } from '../drawings/circuit-plan.ts';
import { drawHoses } from '../drawings/hoses.ts';
import { picture } from '../drawings/svg.ts';
import { drawNumber, type NumberedPlace } from './numbered-place.ts';
import { PLAIN_LAYOUT } from './plain-layout.ts';

/** Each tells what is looked at there and what it is taken for. */
export const leakPlaces: readonly NumberedPlace[] = [
  {
    name: 'Header tank and cap',
    tells:
      'Seam, neck, spigots, sensor port. A stain below the neck is the cap or an overfilling as often as a crack.',
    mark: { x: 163, y: 54 },
  },
  {
    name: 'Outlet flange and thermostat housing',
    tells:
      'Plastic cracks at a bolt ear or under the clip, and the clip is blamed. Turn the clip away and dry the neck.',
    mark: { x: 216, y: 174 },
    means: { x: 236, y: 193 },
  },
  {
    name: 'Hose ends and rubber',
    tells:
      'Paper on the rubber and paper at the clip say which of the two is wet first. Feel below and behind, where no lamp gets.',
    mark: { x: 116, y: 174 },
    means: { x: 122, y: 193 },
  },
  {
    name: 'Radiator seams',
    tells: 'Crimp of tank and core, tubes, drain. Fan wind dries it, so crust counts as a run.',
    mark: { x: 46, y: 204 },
  },
  {
    name: 'Turbocharger and coolers',
    tells: 'Banjo washers and short hoses beside the exhaust. They boil dry; look for crust, and hand-warm.',
    mark: { x: 328, y: 157 },
    means: { x: 334, y: 175 },
  },
  {
    name: 'Joints on the engine',
    tells:
      'Intake, filter housing, head joint. Water and oil side by side is the filter housing until it is shown otherwise.',
    mark: { x: 286, y: 199 },
  },
  {
    name: 'Hole under the pump',
    tells:
      'A wet trail or a fresh crust that begins at the hole. What runs down to it from above is another leak.',
    mark: { x: 213, y: 352 },
    means: { x: 213, y: 326 },
  },
  {
    name: 'Pipe and cups on the gearbox side',
    tells:
      'Steel pipe, its ring, core plugs. All three drip off the bell housing, with the rear oil seal. Mirror, card, overnight.',
    mark: { x: 286, y: 316 },
  },
  {
    name: 'Bulkhead, heater and carpet',
    tells:
      'Joints in front first, then cloth under the mat. Vans: both pipes to the rear heater along the floor as well.',
    mark: { x: 303, y: 54 },
  },
];

/** The picture. @param id prefix of the ids */
export function drawLeakPlaces(id: string): string {
  const plan = planCircuit({ ...PLAIN_LAYOUT, turbo: 'on the circuit' }, 'hot');
  const named = leakPlaces.map(({ name }, index) => `${index + 1} ${name}`).join('; ');
  return picture(
    {
      id,
      kind: 'circuit',
      title: 'Where the circuit leaks',
      description: `Thermostat on the outlet side, header tank, turbocharger on the circuit. Numbered in the order of looking: ${named}.`,
      width: WIDTH,
      height: plan.height,
    },
    drawHoses(
      plan.hoses,
      leakPlaces.map(({ mark }) => mark),
      plan.bridges,
    ) +
      drawParts(plan) +
      // Numbers take the place of these names.
      plan.labels
        .filter(({ lines }) => lines[0] !== 'Head' && lines[0] !== 'Block')
        .map(drawLabel)
        .join('') +
      leakPlaces.map((place, index) => drawNumber(place, index + 1)).join(''),
  );
}
