/** The circuit with the places where air stays, numbered. Common practice, no source. */
import { drawLabel } from '../drawings/circuit.ts';
import { drawParts } from '../drawings/circuit-parts.ts';
import { planCircuit, WIDTH } from '../drawings/circuit-plan.ts';
import { drawHoses } from '../drawings/hoses.ts';
import { picture } from '../drawings/svg.ts';
import { drawNumber, type NumberedPlace } from './numbered-place.ts';
import { PLAIN_LAYOUT } from './plain-layout.ts';

/** Each tells why air stays there, and what lets it out. */
const PLACES: readonly NumberedPlace[] = [
  {
    name: 'Header tank',
    tells:
      'The one place where air belongs: above the liquid, under the cap. Everything else should arrive here.',
    mark: { x: 163, y: 54 },
  },
  {
    name: 'Heater core and its hoses',
    tells:
      'Often the highest loop in the car, and far from any vent. Nose up, heater on hot, valve open, and flow: revs push the pocket down and out.',
    mark: { x: 303, y: 54 },
  },
  {
    name: 'Thermostat housing',
    tells:
      'A pocket under the shut disc keeps hot liquid off the wax, so it opens late or not at all. The air-bleed pin at twelve o’clock is there for this.',
    mark: { x: 164, y: 228 },
    means: { x: 160, y: 209 },
  },
  {
    name: 'Far end of the head',
    tells:
      'When the engine leans back, the end away from the outlet is the high one. A vent to the tank or a bleed screw sits there, if anything does.',
    mark: { x: 286, y: 199 },
  },
  {
    name: 'Top of the radiator',
    tells:
      'Air that cannot leave by the vent line stays in the upper tubes, and they cool nothing. On a recovery-bottle layout the radiator neck is the vent.',
    mark: { x: 46, y: 204 },
  },
  {
    name: 'Vent line and its nipple',
    tells:
      'A millimetre of bore, and scale closes it. Then the fill stops after two or three litres with the tank full.',
    mark: { x: 90, y: 118 },
  },
  {
    name: 'Turbocharger and other coolers',
    tells:
      'Small loops above or beside the engine hold the last tenth of a litre. It comes out in the first warm runs; top up cold after them.',
    mark: { x: 328, y: 157 },
    means: { x: 334, y: 175 },
  },
];

export const airPlaces: readonly NumberedPlace[] = PLACES;

/** The picture: the circuit as it stands while it is filled. @param id prefix of the ids */
export function drawAirPlaces(id: string): string {
  const plan = planCircuit({ ...PLAIN_LAYOUT, turbo: 'on the circuit' }, 'cold');
  const description = PLACES.map(({ name }, index) => `${index + 1} ${name}`).join('; ');
  return picture(
    {
      id,
      kind: 'circuit',
      title: 'Where air stays in the circuit',
      description: `Thermostat on the outlet side, header tank, turbocharger on the circuit. Numbered places: ${description}.`,
      width: WIDTH,
      height: plan.height,
    },
    drawHoses(
      plan.hoses,
      PLACES.map(({ mark }) => mark),
      plan.bridges,
    ) +
      drawParts(plan) +
      // Its number takes the place of the head’s name.
      plan.labels
        .filter(({ lines }) => lines[0] !== 'Head')
        .map(drawLabel)
        .join('') +
      PLACES.map(drawPlace).join(''),
  );
}

/** A number in a disc with three bubbles rising beside it. */
function drawPlace(place: NumberedPlace, index: number): string {
  const { x, y } = place.mark;
  const bubbles = [
    [15, -1, 2.6],
    [19, -8, 3.6],
    [14, -14, 2],
  ]
    .map(([dx = 0, dy = 0, r]) => `<circle class="bubble" cx="${x + dx}" cy="${y + dy}" r="${r}"/>`)
    .join('');
  return drawNumber(place, index + 1) + bubbles;
}
