/** The circuit of a vehicle drawn small, with the places of one test marked on it. */
import {
  type CircuitPlace,
  type DrawnPlace,
  hasPlace,
  isDrawn,
  placeName,
} from '../../model/circuit-places.ts';
import { isWhole, type Layout } from '../../model/layout.ts';
import { drawLabel } from './circuit.ts';
import { drawParts } from './circuit-parts.ts';
import {
  BOTTLE,
  BY_PASS,
  CAP,
  type CircuitPlan,
  FAN,
  HEADER_TANK,
  HEATER,
  heaterControls,
  OUTLET,
  PUMP,
  planCircuit,
  RADIATOR,
  SUCTION,
  TEXT,
  WIDTH,
} from './circuit-plan.ts';
import { regulatesAtOutlet } from './circuit-points.ts';
import { drawHoses } from './hoses.ts';
import { coordinate, type Point, picture, roundedLine } from './svg.ts';

/** Radius of the numbered disc. */
export const BADGE = 11;

interface Spot {
  /** Where the number stands. */
  badge: Point;
  /** What is meant, where the number stands beside it. */
  ring?: Point & { r: number };
  /** Name of the hose that is meant, in the plan. */
  hose?: string;
}

export interface DrawnPlaces {
  /** None where the drawing shows none of the places. */
  svg?: string;
  /** Numbers in the drawing, by place; none for what the drawing does not show. */
  marks: { readonly [P in CircuitPlace]?: number };
}

/** Draws the circuit of a vehicle with its parts named, and marks on it those of the places that it has. */
export type DrawPlaces = (
  /** Prefix of the ids, unique on the page. */
  id: string,
  /** Whose circuit it is. */
  title: string,
  layout: Partial<Layout>,
  places: readonly CircuitPlace[],
) => DrawnPlaces | undefined;

/** Undefined where not all of the layout is known. */
export const drawPlaces: DrawPlaces = (id, title, layout, places) => {
  if (!isWhole(layout)) return undefined;
  const plan = planCircuit(layout, 'hot');
  const marked = places
    .filter((place) => hasPlace(layout, place))
    .flatMap((place) => {
      const spot = spotOf(plan, place);
      return spot ? [{ place, ...spot }] : [];
    })
    .map((each, index) => ({ ...each, mark: index + 1 }));
  if (marked.length === 0) return { marks: {} };
  const hoses = marked.flatMap(({ hose }) => plan.hoses.filter(({ name }) => name === hose));
  const names = marked.map(({ mark, place }) => `${mark} ${placeName(layout, place)}`);
  const svg = picture(
    {
      id,
      kind: 'circuit drawing-places',
      title: `Cooling circuit of the ${title}`,
      description: `Marked on it: ${names.join('; ')}.`,
      width: WIDTH,
      height: plan.height,
    },
    drawHoses(plan.hoses, [], plan.bridges) +
      `<path class="here-hose" d="${hoses.map(({ points }) => roundedLine(points, 9)).join('')}"/>` +
      drawParts(plan) +
      plan.labels.map(drawLabel).join('') +
      marked.map(drawRing).join('') +
      marked.map(drawBadge).join(''),
  );
  return { svg, marks: Object.fromEntries(marked.map(({ place, mark }) => [place, mark])) };
};

function drawRing({ ring }: Spot): string {
  return ring ? `<circle class="here-ring" cx="${ring.x}" cy="${ring.y}" r="${ring.r}"/>` : '';
}

function drawBadge({ mark, badge: { x, y } }: Spot & { mark: number }): string {
  const [left, top] = [coordinate(x), coordinate(y)];
  return (
    `<circle class="here" cx="${left}" cy="${top}" r="${BADGE}"/>` +
    `<text class="mark here" x="${left}" y="${coordinate(y + TEXT / 3)}">${mark}</text>`
  );
}

/** Beside a part the number leaves its picture to be seen, with a ring round the part. */
function beside(part: Point, r: number, badge: Point): Spot {
  return { badge, ring: { ...part, r } };
}

/** Where a place is in the drawing of this layout; undefined where the drawing does not show it. */
function spotOf(plan: CircuitPlan, place: CircuitPlace): Spot | undefined {
  const { layout } = plan;
  const crossFlow = layout.radiator === 'cross-flow';
  const bottom = RADIATOR.y + RADIATOR.height;
  const on = (x: number, y: number, hose?: string): Spot => ({ badge: { x, y }, ...(hose && { hose }) });
  const side = (name: string) => {
    const found = plan.sideParts.find((part) => part.name === name)?.box;
    return found && on(found.x + found.width / 2, found.y + found.height / 2);
  };
  const control = (name: string) => {
    const found = heaterControls(layout).find((each) => each.name === name)?.at;
    return found && beside(found, 13, { x: found.x - 21, y: found.y });
  };
  const regulator = () => {
    const { thermostat } = plan;
    if (!thermostat) return undefined;
    const down = regulatesAtOutlet(layout) ? 1 : -1;
    return beside(thermostat, 16, { x: thermostat.x, y: thermostat.y + down * 27 });
  };
  const pump = () => beside(PUMP, 20, { x: PUMP.x + 9, y: PUMP.y - 27 });
  const neck = () => on(CAP.x, CAP.y - 10);
  const spots: Record<DrawnPlace, () => Spot | undefined> = {
    'hose-to-radiator': () => on(119, OUTLET, 'hose to radiator'),
    'hose-from-radiator': () =>
      crossFlow ? on(70, 346, 'hose from radiator') : on(111, SUCTION, 'hose from radiator'),
    'engine-outlet-hose': () => on(214, OUTLET),
    'by-pass': () => on(BY_PASS, 256, 'by-pass'),
    'heater-feed': () => on(282, 105, 'heater supply'),
    'heater-return': () => on(326, 105, 'heater return'),
    'heater-core': () => on(HEATER.x + HEATER.width / 2, HEATER.y + HEATER.height / 2),
    'heater-valve': () => control('heater valve'),
    'heater-pump': () => control('heater pump'),
    'vent-line': () => on(90, 122, 'vent line'),
    'engine-vent-line': () => on(248, 112, 'engine vent'),
    'header-tank': () => on(HEADER_TANK.x + 20, HEADER_TANK.y + 24),
    'recovery-bottle': () => on(BOTTLE.x + BOTTLE.width / 2, 82),
    'level-sensor': () =>
      layout.reservoir === 'header tank'
        ? on(HEADER_TANK.x + HEADER_TANK.width - 14, HEADER_TANK.y + 32)
        : on(BOTTLE.x + BOTTLE.width + 2, BOTTLE.y + 44),
    cap: () => {
      const usual = layout.reservoir === 'header tank' ? 'on the tank' : 'on the radiator';
      // Elsewhere it is said in words.
      if ((layout['cap-place'] ?? usual) !== usual) return undefined;
      return usual === 'on the tank' ? on(HEADER_TANK.x + 35, HEADER_TANK.y - 10) : neck();
    },
    'radiator-neck': neck,
    'radiator-core': () => on(FAN.x, 296),
    'radiator-drain': () => on(crossFlow ? RADIATOR.x + RADIATOR.width - 8 : RADIATOR.x + 8, bottom - 10),
    fan: () => on(FAN.x, FAN.y),
    'fan-plug': () => on(FAN.x, FAN.y),
    'fan-switch': () => (crossFlow ? on(27, 294) : on(84, SUCTION)),
    'fan-clutch': () => on(FAN.x, FAN.y),
    'coolant-sensor': () => on(255, OUTLET + 1),
    'second-sensor': () => (crossFlow ? on(36, 346) : on(RADIATOR.x + RADIATOR.width - 12, SUCTION)),
    thermostat: regulator,
    'thermostat-plug': regulator,
    pump,
    'pump-plug': pump,
    'pump-weep-hole': () => on(PUMP.x + 2, PUMP.y + 23),
    'pump-pulley': () => on(PUMP.x, PUMP.y + 46),
    cylinders: () => on(255, 250),
    'core-plugs': () => on(298, 318),
    'oil-filler': () => on(301, 168),
    sump: () => on(275, 354),
    turbo: () => side('turbo'),
    'egr-cooler': () => side('egr-cooler'),
    'oil-cooler': () => side('oil-cooler'),
    'transmission-cooler': () => (crossFlow ? on(RADIATOR.x + 7, RADIATOR.y + 34) : on(45, SUCTION)),
  };
  return isDrawn(place) ? spots[place]() : undefined;
}
