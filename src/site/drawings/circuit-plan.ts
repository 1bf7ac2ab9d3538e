/**
 * Where everything in the drawing of a circuit goes. One sheet, 380 units wide: radiator on the left, engine on the
 * right, heater behind the bulkhead at the top right, reservoir at the top left. Flow towards the radiator is the
 * upper line, suction the lower one.
 */
import type { Layout } from '../../model/layout.ts';
import { alsoOn } from './circuit-also.ts';
import {
  circuitPoints,
  closesByPass,
  hasByPass,
  type PlacedPoint,
  type PlaceName,
  regulatesAtOutlet,
} from './circuit-points.ts';
import { type Flow, type Hose, halfWidth } from './hoses.ts';
import type { Box, Point } from './svg.ts';
import { widthOf, wrapText } from './text-width.ts';

export type CircuitState = 'cold' | 'hot';

export const WIDTH = 380;
export const TEXT = 12;
const LINE = 14;

/** Heights of the two main lines. */
export const OUTLET = 196;
export const SUCTION = 314;

export const RADIATOR: Box = { x: 20, y: 186, width: 78, height: 138 };
/** Depth of a radiator tank. */
export const TANK_DEPTH = { 'cross-flow': 14, 'down-flow': 20 };
export const FAN = { x: 59, y: 252, radius: 25 };
export const ENGINE: Box = { x: 238, y: 176, width: 74, height: 168 };
export const HEAD_HEIGHT = 42;
export const COVER_TOP = 160;
export const SUMP_BOTTOM = 361;
export const PUMP = { x: 213, y: SUCTION, radius: 16 };
export const HEATER: Box = { x: 262, y: 34, width: 82, height: 42 };
export const HEADER_TANK: Box = { x: 128, y: 30, width: 70, height: 44 };
export const BOTTLE: Box = { x: 26, y: 50, width: 40, height: 54 };
export const CAP = { x: 84, y: RADIATOR.y };
export const THERMOSTAT_RADIUS = 12;
export const BY_PASS = 189;
const COLLECTOR = 362;
const BOTTOM_RUN = 396;
const HEATER_IN = 282;
const HEATER_OUT = 326;
/** Height of a valve or pump in the heater supply. */
export const HEATER_CONTROL: Point = { x: HEATER_IN, y: 138 };
/** Heights of both, where a heater has a valve and a pump. */
const TWO_CONTROLS = { valve: 126, pump: 148 };
export const BULKHEAD = 90;
/** Electric heater of a battery-electric vehicle. */
export const ELECTRIC_HEATER: Box = { x: 260, y: 116, width: 90, height: 24 };

export interface Label {
  lines: string[];
  x: number;
  /** First baseline. */
  y: number;
  /** The part it is written on, if it is. */
  on?: string;
}

export interface Mark extends Point {
  mark: string;
  by: PlacedPoint['by'];
}

/** A cooler or the turbocharger, fed from the engine, returning to the suction side. */
export interface SidePart {
  name: 'turbo' | 'egr-cooler' | 'oil-cooler';
  box: Box;
}

export interface CircuitPlan {
  layout: Layout;
  state: CircuitState;
  hoses: Hose[];
  bridges: { hose: Hose; from: Point; to: Point }[];
  thermostat: Point | undefined;
  sideParts: SidePart[];
  labels: Label[];
  marks: Mark[];
  /** Outlines a label may not touch. */
  parts: (Box & { name: string })[];
  /** Where the sheet of the circuit ends and what follows below it begins. */
  height: number;
}

/** The two states worth drawing, or one where nothing regulates the flow. */
export function circuitStates(layout: Layout): CircuitState[] {
  return hasByPass(layout) ? ['cold', 'hot'] : ['hot'];
}

/** Parts, hoses and labels of a layout, placed, with what flows in this state. */
export function planCircuit(layout: Layout, state: CircuitState): CircuitPlan {
  const thermostat = thermostatPlace(layout);
  const sideParts = planSideParts(layout);
  const hoses = planHoses(layout, state, sideParts);
  const labels = planLabels(layout, sideParts);
  const also = alsoLabel(layout, bottomOf(labels));
  return {
    layout,
    state,
    hoses,
    bridges: planBridges(hoses),
    thermostat,
    sideParts,
    labels: [...labels, ...also],
    marks: planMarks(layout),
    parts: outlines(layout, thermostat, sideParts),
    height: bottomOf([...labels, ...also]),
  };
}

function bottomOf(labels: readonly Label[]): number {
  return Math.max(432, ...labels.map((label) => label.y + (label.lines.length - 1) * LINE + 12));
}

/** What has no place in the drawing, in words under it. */
function alsoLabel(layout: Layout, top: number): Label[] {
  const also = alsoOn(layout);
  if (also.length === 0) return [];
  return [{ lines: wrapText(`Not drawn: ${also.join('; ')}`, WIDTH - 30, TEXT), x: 12, y: top + 10 }];
}

function thermostatPlace(layout: Layout): Point | undefined {
  if (!hasByPass(layout)) return undefined;
  return regulatesAtOutlet(layout) ? { x: 160, y: OUTLET } : { x: 137, y: SUCTION };
}

/** Where the header tank’s return comes down: on the pump’s side of the thermostat, wherever that sits. */
function returnLine(layout: Layout): number {
  return regulatesAtOutlet(layout) && hasByPass(layout) ? 139 : 164;
}

function planHoses(layout: Layout, state: CircuitState, sideParts: readonly SidePart[]): Hose[] {
  const byPass = hasByPass(layout);
  const cold = byPass && state === 'cold';
  const through: Flow = cold ? 'still' : 'full';
  const toRadiator = RADIATOR.x + RADIATOR.width - 2;
  const hoses: Hose[] = [
    {
      name: 'hose to radiator',
      flow: through,
      points: points([cold ? BY_PASS : ENGINE.x, OUTLET], [toRadiator, OUTLET]),
    },
    { name: 'hose from radiator', flow: through, points: fromRadiator(layout) },
    ...heaterHoses(layout),
    ...reservoirHoses(layout, cold),
    ...sideHoses(layout, sideParts),
  ];
  if (byPass) {
    const shut = closesByPass(layout) ? 'still' : 'little';
    const down: [number, number] = [BY_PASS, SUCTION];
    // Cold, it is the only way out of the head, so that the hose turns down into it.
    hoses.push(
      cold
        ? { name: 'by-pass', flow: 'full', points: points([ENGINE.x, OUTLET], [BY_PASS, OUTLET], down) }
        : { name: 'by-pass', flow: shut, points: points([BY_PASS, OUTLET], down) },
    );
  }
  // The pump draws from the by-pass and the heater even while the radiator stands still.
  if (layout.power !== 'battery electric' || sideParts.length > 0) {
    hoses.push({
      name: 'pump suction',
      flow: 'full',
      points: points([BY_PASS, SUCTION], [PUMP.x - PUMP.radius, SUCTION]),
    });
  }
  return hoses;
}

function fromRadiator(layout: Layout): Point[] {
  const right = RADIATOR.x + RADIATOR.width;
  const pump: [number, number] = [PUMP.x - PUMP.radius, SUCTION];
  if (layout.radiator === 'down-flow') return points([right - 2, SUCTION], pump);
  const left = RADIATOR.x + TANK_DEPTH['cross-flow'] / 2;
  const bottom = RADIATOR.y + RADIATOR.height;
  return points([left, bottom - 2], [left, bottom + 22], [108, bottom + 22], [108, SUCTION], pump);
}

function heaterHoses(layout: Layout): Hose[] {
  const bottom = HEATER.y + HEATER.height;
  if (layout.power === 'battery electric') {
    return [
      {
        name: 'heater supply',
        flow: 'full',
        points: points([HEATER_IN, ELECTRIC_HEATER.y], [HEATER_IN, bottom]),
      },
      {
        name: 'heater return',
        flow: 'full',
        points: points([HEATER_OUT, bottom], [HEATER_OUT, ELECTRIC_HEATER.y]),
      },
    ];
  }
  return [
    { name: 'heater supply', flow: 'full', points: points([HEATER_IN, COVER_TOP + 2], [HEATER_IN, bottom]) },
    {
      name: 'heater return',
      flow: 'full',
      points: points(
        [HEATER_OUT, bottom],
        [HEATER_OUT, 124],
        [COLLECTOR, 124],
        [COLLECTOR, BOTTOM_RUN],
        [BY_PASS, BOTTOM_RUN],
        [BY_PASS, SUCTION],
      ),
    },
  ];
}

function reservoirHoses(layout: Layout, cold: boolean): Hose[] {
  if (layout.reservoir === 'recovery bottle') {
    const neck = CAP.y - 6;
    const middle = BOTTLE.x + BOTTLE.width / 2;
    return [
      {
        name: 'overflow line',
        flow: cold ? 'still' : 'little',
        thin: true,
        points: points(
          [CAP.x + 8, neck],
          [106, neck],
          [106, 122],
          [middle, 122],
          [middle, BOTTLE.y + BOTTLE.height - 2],
        ),
      },
    ];
  }
  const x = returnLine(layout);
  const right = HEADER_TANK.x + HEADER_TANK.width;
  return [
    {
      name: 'tank return',
      flow: 'little',
      points: points(
        [x, HEADER_TANK.y + HEADER_TANK.height - 2],
        [x, SUCTION],
        [PUMP.x - PUMP.radius, SUCTION],
      ),
    },
    {
      name: 'vent line',
      // A shut thermostat on the outlet side cuts the radiator off from the engine's pressure.
      flow: cold && regulatesAtOutlet(layout) ? 'still' : 'little',
      thin: true,
      points: points([90, RADIATOR.y + 2], [90, 52], [HEADER_TANK.x + 2, 52]),
    },
    {
      name: 'engine vent',
      flow: 'little',
      thin: true,
      points: points(
        [248, layout.power === 'battery electric' ? ENGINE.y + 2 : COVER_TOP + 2],
        [248, 44],
        [right - 2, 44],
      ),
    },
  ];
}

const SIDE_PARTS = ['turbo', 'egr-cooler', 'oil-cooler'] as const;

function planSideParts(layout: Layout): SidePart[] {
  return SIDE_PARTS.flatMap((name, slot) =>
    layout[name]?.startsWith('on the circuit')
      ? [{ name, box: { x: 319, y: 176 + slot * 58, width: 30, height: 22 } }]
      : [],
  );
}

function sideHoses(layout: Layout, sideParts: readonly SidePart[]): Hose[] {
  const hoses: Hose[] = sideParts.map(({ name, box }) => ({
    name,
    flow: 'full' as const,
    thin: true,
    points: points([ENGINE.x + ENGINE.width - 2, box.y + 11], [COLLECTOR, box.y + 11]),
  }));
  const first = sideParts[0];
  // A battery-electric drive has no heater return for them to run into.
  if (first && layout.power === 'battery electric') {
    hoses.push({
      name: 'collector',
      flow: 'full',
      thin: true,
      points: points(
        [COLLECTOR, first.box.y + 11],
        [COLLECTOR, BOTTOM_RUN],
        [BY_PASS, BOTTOM_RUN],
        [BY_PASS, SUCTION],
      ),
    });
  }
  return hoses;
}

/** The tank’s return passes over the hose to the radiator. */
function planBridges(hoses: readonly Hose[]): CircuitPlan['bridges'] {
  return hoses
    .filter((hose) => hose.name === 'tank return')
    .map((hose) => {
      const x = hose.points[0]?.x ?? 0;
      return { hose, from: { x, y: OUTLET - 11 }, to: { x, y: OUTLET + 11 } };
    });
}

function planMarks(layout: Layout): Mark[] {
  const crossFlow = layout.radiator === 'cross-flow';
  const places: Record<PlaceName, Point> = {
    'hose to radiator': { x: 119, y: OUTLET },
    'hose from radiator': crossFlow ? { x: 66, y: 346 } : { x: 111, y: SUCTION },
    'heater supply': { x: HEATER_IN, y: 105 },
    'heater return': { x: HEATER_OUT, y: 105 },
    'by-pass': { x: BY_PASS, y: 256 },
    'vent line': { x: 90, y: 116 },
    sensor: { x: 255, y: OUTLET + 1 },
    'outlet hose': { x: 214, y: OUTLET },
    'radiator face': { x: FAN.x, y: 294 },
    'header tank': { x: HEADER_TANK.x + HEADER_TANK.width / 2, y: 54 },
    'recovery bottle': { x: BOTTLE.x + BOTTLE.width / 2, y: 82 },
    'fan switch': crossFlow ? { x: 27, y: 294 } : { x: 84, y: SUCTION },
  };
  return circuitPoints(layout).map(({ mark, by, place }) => ({ mark, by, ...places[place] }));
}

function planLabels(layout: Layout, sideParts: readonly SidePart[]): Label[] {
  const electric = layout.power === 'battery electric';
  const labels: Label[] = [
    { lines: ['Radiator:', layout.radiator], x: 12, y: 374 },
    electric
      ? { lines: ['Power', 'electronics'], x: 243, y: 204, on: 'engine' }
      : { lines: ['Head'], x: 272, y: 201, on: 'engine' },
    pumpLabel(layout),
    ...heaterLabels(layout),
    ...reservoirLabels(layout),
    ...sideParts.map(({ name, box }) => ({
      lines: { turbo: ['Turbo'], 'egr-cooler': ['EGR', 'cooler'], 'oil-cooler': ['Oil', 'cooler'] }[name],
      x: box.x - 3,
      y: box.y + box.height + 12,
    })),
  ];
  labels.push({ lines: wrapText(fanText(layout), 98, TEXT), x: 12, y: 407 });
  labels.push(
    electric
      ? { lines: ['Drive motor'], x: 243, y: 336, on: 'engine' }
      : { lines: ['Block'], x: 260, y: 330, on: 'engine' },
  );
  if (hasByPass(layout)) labels.push(thermostatLabel(layout));
  if (layout['transmission-cooler'].startsWith('in the radiator')) {
    const lines = ['transmission', 'oil'];
    labels.push(
      layout.radiator === 'cross-flow'
        ? { lines, x: 12, y: 147 }
        : { lines: ['transmission oil'], x: 12, y: 352 },
    );
  }
  return labels;
}

function pumpLabel(layout: Layout): Label {
  return { lines: [`Pump: ${layout.pump}`], x: 203, y: 380 };
}

function fanText(layout: Layout): string {
  const by = layout['fan-switched-by'];
  const switched = {
    'switch in the radiator': ', by a switch in the radiator',
    'engine controller': ', by the engine controller',
    none: '',
  };
  return `Fan: ${layout.fan}${switched[by]}`;
}

function heaterLabels(layout: Layout): Label[] {
  const text = 'Heater, behind the bulkhead';
  const labels: Label[] = [{ lines: [text], x: WIDTH - 4 - widthOf(text, TEXT), y: 26 }];
  if (layout.power === 'battery electric') {
    labels.push({ lines: ['electric heater'], x: 266, y: 132, on: 'electric heater' });
    return labels;
  }
  const valve = layout.heater === 'valve-controlled';
  if (valve && hasHeaterPump(layout)) labels.push({ lines: ['valve', 'and pump'], x: 297, y: 142 });
  else if (valve) labels.push({ lines: ['valve'], x: 297, y: 146 });
  else if (hasHeaterPump(layout)) labels.push({ lines: ['heater', 'pump'], x: 297, y: 142 });
  return labels;
}

function hasHeaterPump(layout: Layout): boolean {
  return layout['heater-pump'] === 'in a heater hose';
}

/** The valve and the pump in the heater supply, where they are. */
export function heaterControls(layout: Layout): { name: 'heater valve' | 'heater pump'; at: Point }[] {
  const valve = layout.heater === 'valve-controlled';
  const pump = hasHeaterPump(layout);
  const both = valve && pump;
  const { x, y } = HEATER_CONTROL;
  return [
    ...(valve ? [{ name: 'heater valve' as const, at: { x, y: both ? TWO_CONTROLS.valve : y } }] : []),
    ...(pump ? [{ name: 'heater pump' as const, at: { x, y: both ? TWO_CONTROLS.pump : y } }] : []),
  ];
}

function reservoirLabels(layout: Layout): Label[] {
  if (layout.reservoir === 'header tank') return [{ lines: ['Header tank,', 'pressure cap'], x: 10, y: 48 }];
  return [
    { lines: ['Recovery', 'bottle'], x: BOTTLE.x + BOTTLE.width + 7, y: 74 },
    { lines: ['Cap'], x: 48, y: 180 },
  ];
}

function thermostatLabel(layout: Layout): Label {
  const kind = layout['thermostat-kind'];
  const words = kind === 'none' ? [] : wrapText(kind, 66, TEXT);
  const lines = layout.thermostat === 'valve block' ? ['Valve block'] : ['Thermostat', ...words];
  return regulatesAtOutlet(layout)
    ? { lines, x: 150, y: 178 - (lines.length - 1) * LINE }
    : { lines, x: 117, y: 343 };
}

/** The space a label takes. */
export function labelBox({ lines, x, y }: Label): Box {
  return {
    x,
    y: y - 10,
    width: Math.max(...lines.map((each) => widthOf(each, TEXT))),
    height: 10 + (lines.length - 1) * LINE + 3,
  };
}

/** The boxes a hose fills, run by run. */
export function hoseBoxes(hose: Hose): (Box & { name: string })[] {
  const half = halfWidth(hose);
  return hose.points.slice(1).flatMap((to, index) => {
    const from = hose.points[index];
    if (!from) return [];
    return [
      {
        name: hose.name,
        x: Math.min(from.x, to.x) - (from.x === to.x ? half : 0),
        y: Math.min(from.y, to.y) - (from.y === to.y ? half : 0),
        width: Math.abs(from.x - to.x) + (from.x === to.x ? 2 * half : 0),
        height: Math.abs(from.y - to.y) + (from.y === to.y ? 2 * half : 0),
      },
    ];
  });
}

function outlines(
  layout: Layout,
  thermostat: Point | undefined,
  sideParts: readonly SidePart[],
): CircuitPlan['parts'] {
  const round = (name: string, { x, y }: Point, r: number) => ({
    name,
    x: x - r,
    y: y - r,
    width: 2 * r,
    height: 2 * r,
  });
  const parts = [
    { name: 'radiator', ...RADIATOR },
    layout.power === 'battery electric'
      ? { name: 'engine', ...ENGINE }
      : { name: 'engine', ...ENGINE, y: COVER_TOP, height: SUMP_BOTTOM - COVER_TOP },
    { name: 'heater', ...HEATER },
    round('pump', PUMP, PUMP.radius),
    ...sideParts.map(({ name, box }) => ({ name, ...box })),
    layout.reservoir === 'header tank'
      ? { name: 'header tank', ...HEADER_TANK, y: HEADER_TANK.y - 7, height: HEADER_TANK.height + 7 }
      : { name: 'recovery bottle', ...BOTTLE, y: BOTTLE.y - 6, height: BOTTLE.height + 6 },
  ];
  if (layout.reservoir === 'recovery bottle')
    parts.push({ name: 'cap', x: CAP.x - 11, y: CAP.y - 14, width: 22, height: 14 });
  if (thermostat) parts.push(round('thermostat', thermostat, THERMOSTAT_RADIUS));
  if (layout.power === 'battery electric') parts.push({ name: 'electric heater', ...ELECTRIC_HEATER });
  else for (const { name, at } of heaterControls(layout)) parts.push(round(name, at, 9));
  return parts;
}

function points(...pairs: [number, number][]): Point[] {
  return pairs.map(([x, y]) => ({ x, y }));
}
