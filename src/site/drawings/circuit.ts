/** A drawn circuit for a layout, with the points to feel and to measure. */
import type { Layout } from '../../model/layout.ts';
import { alsoOn } from './circuit-also.ts';
import { drawKey, KEY_HEIGHT } from './circuit-key.ts';
import { drawParts } from './circuit-parts.ts';
import {
  type CircuitPlan,
  type CircuitState,
  circuitStates,
  type Label,
  type Mark,
  planCircuit,
  TEXT,
  WIDTH,
} from './circuit-plan.ts';
import { type CircuitPoint, circuitPoints, closesByPass, hasByPass } from './circuit-points.ts';
import { drawHoses } from './hoses.ts';
import { drawLowTemperatureLoop, LOOP_HEIGHT } from './low-temperature-loop.ts';
import { coordinate, escapeText, picture } from './svg.ts';

export { type CircuitPoint, type CircuitState, circuitStates };

export interface CircuitInput {
  /** Prefix of the ids; unique on the page. */
  id: string;
  layout: Layout;
  /** Cold: thermostat shut. Hot: open. Draw each of `circuitStates(layout)`. */
  state: CircuitState;
  /** Name of the picture; "Cooling circuit" and the state if left out. */
  title?: string;
}

export interface DrawnCircuit {
  svg: string;
  /** The numbered points in the drawing; the same in every state of a layout. */
  points: CircuitPoint[];
}

/** The circuit of a layout in one state. Draws any layout a vehicle record can hold. */
export function drawCircuit({ id, layout, state, title }: CircuitInput): DrawnCircuit {
  const plan = planCircuit(layout, state);
  const loop = layout.power === 'combustion' ? '' : drawLowTemperatureLoop(layout, plan.height + KEY_HEIGHT);
  const heading = stateHeading(layout, state);
  const svg = picture(
    {
      id,
      kind: 'circuit',
      title: title ?? `Cooling circuit. ${heading}`,
      description: describe(layout, state),
      width: WIDTH,
      height: plan.height + KEY_HEIGHT + (loop === '' ? 0 : LOOP_HEIGHT),
    },
    `<text class="strong" x="10" y="17">${escapeText(heading)}</text>` +
      drawHoses(plan.hoses, obstacles(plan), plan.bridges) +
      drawParts(plan) +
      plan.labels.map(drawLabel).join('') +
      plan.marks.map(drawMark).join('') +
      drawKey(plan.height) +
      loop,
  );
  return {
    svg,
    points: circuitPoints(layout).map(({ mark, by, name, tells }) => ({ mark, by, name, tells })),
  };
}

function stateHeading(layout: Layout, state: CircuitState): string {
  if (!hasByPass(layout)) return 'Coolant flows all the time';
  return state === 'cold' ? 'Cold: thermostat shut' : 'Hot: thermostat open';
}

function obstacles(plan: CircuitPlan): { x: number; y: number }[] {
  return [
    ...plan.marks,
    ...plan.parts
      .filter(({ width }) => width < 32)
      .map((part) => ({ x: part.x + part.width / 2, y: part.y + part.height / 2 })),
    ...plan.bridges.map(({ from, to }) => ({ x: from.x, y: (from.y + to.y) / 2 })),
  ];
}

/** Lines of words beside or on a part. */
export function drawLabel({ lines, x, y }: Label): string {
  const [first = '', ...rest] = lines;
  const more = rest.map((each) => `<tspan x="${coordinate(x)}" dy="14">${escapeText(each)}</tspan>`).join('');
  return `<text x="${coordinate(x)}" y="${coordinate(y)}">${escapeText(first)}${more}</text>`;
}

/** Felt points are black discs, measured ones white squares: told apart by shape as well as by letter. */
export function drawMark({ mark, by, x, y }: Mark): string {
  const shape =
    by === 'feel'
      ? `<circle class="solid" cx="${x}" cy="${y}" r="11"/>`
      : `<rect class="part" x="${x - 11}" y="${y - 10}" width="22" height="20" rx="2"/>`;
  return `${shape}<text class="mark ${by}" x="${x}" y="${y + TEXT / 3}">${mark}</text>`;
}

/** The way of the coolant in sentences. */
function describe(layout: Layout, state: CircuitState): string {
  const sentences: string[] = [];
  if (layout.power === 'battery electric') {
    sentences.push(
      'An electric pump sends coolant through drive motor and power electronics to the radiator and back. The heater has a loop of its own with an electric heater.',
    );
  } else {
    sentences.push(`The pump (${layout.pump}) sends coolant through block and head.`);
    if (!hasByPass(layout)) sentences.push('From the head it goes to the radiator and back to the pump.');
    else {
      const by = closesByPass(layout) ? 'the by-pass is shut off' : 'a little still takes the by-pass';
      const what =
        layout.thermostat === 'valve block'
          ? 'The valve block'
          : `The thermostat, on the ${layout.thermostat},`;
      sentences.push(
        state === 'cold'
          ? `${what} is shut: coolant returns to the pump by the by-pass and the radiator stands still.`
          : `${what} is open: coolant goes through the radiator, and ${by}.`,
      );
    }
    sentences.push(
      `The heater branch leaves the head and returns to the pump: ${[layout.heater, ...(layout['heater-pump'] === 'in a heater hose' ? ['with a pump of its own'] : [])].join(', ')}.`,
    );
  }
  sentences.push(
    `The radiator is ${layout.radiator}; fan: ${layout.fan}.`,
    layout.reservoir === 'header tank'
      ? 'A pressurised header tank takes the vent lines and feeds the pump’s suction.'
      : 'The cap is on the radiator, with a line to a recovery bottle.',
  );
  const also = [
    layout.turbo === 'on the circuit' ? 'turbocharger' : '',
    layout['egr-cooler'] === 'on the circuit' ? 'exhaust-gas cooler' : '',
    layout['oil-cooler'].startsWith('on the circuit') ? 'oil cooler' : '',
    layout['transmission-cooler'].startsWith('in the radiator') ? 'transmission cooler in the radiator' : '',
  ].filter((each) => each !== '');
  if (also.length > 0) sentences.push(`Also on the circuit: ${also.join(', ')}.`);
  const besides = alsoOn(layout);
  if (besides.length > 0) sentences.push(`Not drawn: ${besides.join('; ')}.`);
  if (layout.power !== 'combustion') {
    sentences.push('High-voltage parts lie beside the hoses: for trained people only.');
  }
  const points = circuitPoints(layout).map(({ mark, name }) => `${mark} ${name}`);
  sentences.push(`Points: ${points.join('; ')}.`);
  return sentences.join(' ');
}
