/** The parts of a circuit, drawn with two pens: a heavy one for outlines, a thin one for what is inside. */
import type { Layout } from '../../model/layout.ts';
import {
  BOTTLE,
  BULKHEAD,
  BY_PASS,
  CAP,
  type CircuitPlan,
  COVER_TOP,
  ELECTRIC_HEATER,
  ENGINE,
  FAN,
  HEAD_HEIGHT,
  HEADER_TANK,
  HEATER,
  heaterControls,
  PUMP,
  RADIATOR,
  type SidePart,
  SUCTION,
  SUMP_BOTTOM,
  TANK_DEPTH,
  THERMOSTAT_RADIUS,
} from './circuit-plan.ts';
import { closesByPass, regulatesAtOutlet } from './circuit-points.ts';
import { at, type Box, coordinate, line, type Point } from './svg.ts';

/** What the pens draw: `outline` is heavy and hides what lies under it, `inside` thin, `thick` heavy without filling. */
interface PartLines {
  outline?: string;
  inside?: string;
  thick?: string;
  solid?: string;
}

/** All parts of a plan, ready to be laid over its hoses. */
export function drawParts(plan: CircuitPlan): string {
  const { layout } = plan;
  const electric = layout.power === 'battery electric';
  const drawn: PartLines[] = [
    radiator(layout),
    ...fan(layout),
    electric ? drive() : engine(),
    pump(),
    heater(),
    bulkhead(),
    layout.reservoir === 'header tank' ? headerTank() : recoveryBottle(),
    ...(electric ? [electricHeater()] : heaterControl(layout)),
    ...(layout['transmission-cooler'].startsWith('in the radiator') ? [transmissionCooler(layout)] : []),
    ...plan.sideParts.map(sidePart),
    ...(plan.thermostat ? [thermostat(plan.thermostat, plan)] : []),
  ];
  return drawn
    .map(
      ({ outline, inside, thick, solid }) =>
        pen('part', outline) + pen('thin', inside) + pen('heavy', thick) + pen('solid', solid),
    )
    .join('');
}

function pen(name: string, data: string | undefined): string {
  return data ? `<path class="${name}" d="${data}"/>` : '';
}

function box({ x, y, width, height }: Box, corner = 0): string {
  if (corner === 0) return `M${at(x, y)}h${width}v${height}h${-width}z`;
  const arc = (dx: number, dy: number) => `q${(dx > 0) === (dy > 0) ? `${dx} 0` : `0 ${dy}`} ${dx} ${dy}`;
  return (
    `M${at(x + corner, y)}h${width - 2 * corner}${arc(corner, corner)}v${height - 2 * corner}${arc(-corner, corner)}` +
    `h${2 * corner - width}${arc(-corner, -corner)}v${2 * corner - height}${arc(corner, -corner)}z`
  );
}

function circle({ x, y }: Point, r: number): string {
  return `M${at(x - r, y)}a${r} ${r} 0 1 1 ${2 * r} 0a${r} ${r} 0 1 1 ${-2 * r} 0z`;
}

/** Tubes run between the tanks; the fins between them are left to the eye. */
function radiator({ radiator }: Layout): PartLines {
  const { x, y, width, height } = RADIATOR;
  const depth = TANK_DEPTH[radiator];
  const tubes: string[] = [];
  if (radiator === 'cross-flow') {
    for (let down = 7; down < height; down += 7)
      tubes.push(line(x + depth, y + down, x + width - depth, y + down));
    return {
      outline:
        box(RADIATOR, 3) +
        line(x + depth, y, x + depth, y + height) +
        line(x + width - depth, y, x + width - depth, y + height),
      inside: tubes.join(''),
    };
  }
  for (let along = 6.5; along < width; along += 6.5)
    tubes.push(line(x + along, y + depth, x + along, y + height - depth));
  return {
    outline:
      box(RADIATOR, 3) +
      line(x, y + depth, x + width, y + depth) +
      line(x, y + height - depth, x + width, y + height - depth),
    inside: tubes.join(''),
  };
}

/** Four blades over the core; the hub tells what turns them. */
function fan(layout: Layout): PartLines[] {
  const { x, y, radius } = FAN;
  const blades = [
    [1, 0],
    [0, 1],
    [-1, 0],
    [0, -1],
  ].map(([a = 0, b = 0]) => {
    // Each blade a leaf from the hub to the tip, leaning the way it turns.
    const tip = at(x + a * radius, y + b * radius);
    const lead = at(x + a * radius * 0.75 + b * 15, y + b * radius * 0.75 - a * 15);
    const trail = at(x + a * radius * 0.6 - b * 3, y + b * radius * 0.6 + a * 3);
    return `M${at(x, y)}Q${lead} ${tip}Q${trail} ${at(x, y)}z`;
  });
  const hub: Record<Layout['fan'], string> = {
    'electric, one stage': box({ x: x - 6, y: y - 6, width: 12, height: 12 }, 2),
    'electric, two stages': box({ x: x - 6, y: y - 6, width: 12, height: 12 }, 2),
    'electric, pulse-width': box({ x: x - 6, y: y - 6, width: 12, height: 12 }, 2),
    'viscous clutch': circle({ x, y }, 8) + circle({ x, y }, 3.5),
    hydraulic: circle({ x, y }, 7) + line(x - 4, y + 4, x + 4, y - 4) + line(x - 4, y - 4, x + 4, y + 4),
  };
  return [{ outline: blades.join('') }, { outline: hub[layout.fan] }];
}

function engine(): PartLines {
  const { x, y, width, height } = ENGINE;
  const split = y + HEAD_HEIGHT;
  const cover = `M${at(x, y)}l5 ${COVER_TOP - y}h${width - 10}l5 ${y - COVER_TOP}z`;
  const sump = `M${at(x + 6, y + height)}l6 ${SUMP_BOTTOM - y - height}h${width - 24}l6 ${y + height - SUMP_BOTTOM}z`;
  const bores = [0, 1, 2].map((bore) => {
    const left = x + 9 + bore * 20;
    return (
      `M${at(left, split + 8)}h16v58h-16z` +
      line(left, split + 30, left + 16, split + 30) +
      line(left + 8, split + 30, left + 8, split + 54)
    );
  });
  // Coolant rises from the block into the head.
  const rise = [0, 1].map((gap) => {
    const middle = x + 27 + gap * 20;
    return `M${at(middle, split + 4)}v-9m-2.5 4l2.5 -4l2.5 4`;
  });
  return {
    outline: cover + sump + box(ENGINE) + line(x, split, x + width, split),
    inside: bores.join('') + rise.join(''),
  };
}

/** Power electronics above the drive motor. */
function drive(): PartLines {
  const { x, y, width, height } = ENGINE;
  const split = y + height / 2;
  return {
    outline: box({ x, y, width, height }, 4) + line(x, split, x + width, split),
    inside:
      circle({ x: x + width / 2, y: split + height / 4 - 8 }, 20) +
      circle({ x: x + width / 2, y: split + height / 4 - 8 }, 6),
  };
}

/** Casing with its outlet into the block, and the impeller’s vanes. */
function pump(): PartLines {
  const { x, y, radius: r } = PUMP;
  const casing = `M${at(ENGINE.x, y - r)}H${x}a${r} ${r} 0 1 0 ${r} ${r}l0 -4H${ENGINE.x}`;
  const vanes = [0, 1, 2, 3, 4].map((vane) => {
    const angle = (vane * 2 * Math.PI) / 5 - 0.3;
    const near = { x: x + 3 * Math.cos(angle), y: y + 3 * Math.sin(angle) };
    const far = { x: x + 10.5 * Math.cos(angle + 0.7), y: y + 10.5 * Math.sin(angle + 0.7) };
    const bow = { x: x + 8 * Math.cos(angle), y: y + 8 * Math.sin(angle) };
    return `M${at(near.x, near.y)}Q${at(bow.x, bow.y)} ${at(far.x, far.y)}`;
  });
  return { outline: casing, inside: vanes.join('') + circle({ x, y }, 3) + line(x, y + r, x, y + r + 37) };
}

function heater(): PartLines {
  const { x, y, width, height } = HEATER;
  const tubes: string[] = [];
  for (let along = 6; along < width; along += 5)
    tubes.push(line(x + along, y + 7, x + along, y + height - 7));
  return {
    outline:
      box(HEATER, 3) + line(x, y + 7, x + width, y + 7) + line(x, y + height - 7, x + width, y + height - 7),
    inside: tubes.join(''),
  };
}

function bulkhead(): PartLines {
  const dashes: string[] = [];
  for (const [from, to] of [
    [226, 240],
    [256, 271],
    [293, 315],
    [337, 376],
  ] as const)
    dashes.push(line(from, BULKHEAD, to, BULKHEAD), line(from, BULKHEAD + 3, to, BULKHEAD + 3));
  return { inside: dashes.join('') };
}

/** Tank with its cap on top and the two level marks on its side. */
function headerTank(): PartLines {
  const { x, y } = HEADER_TANK;
  return {
    outline: box({ x: x + 23, y: y - 7, width: 24, height: 8 }, 2) + box(HEADER_TANK, 8),
    inside: `M${at(x + 1, y + 26)}h16m32 0h20M${at(x + 4, y + 20)}h7M${at(x + 4, y + 34)}h7`,
  };
}

function recoveryBottle(): PartLines {
  const { x, y, width, height } = BOTTLE;
  return {
    outline:
      `M${at(x + 12, y - 6)}h16v6l8 8q4 3 4 8v${height - 20}q0 4 -4 4h${8 - width}q-4 0 -4 -4v${20 - height}q0 -5 4 -8l8 -8z` +
      box({ x: CAP.x - 8, y: CAP.y - 9, width: 16, height: 10 }) +
      box({ x: CAP.x - 11, y: CAP.y - 14, width: 22, height: 6 }, 2),
    inside: `M${at(x + 3, y + 16)}h7m-7 30h7`,
  };
}

/** A valve, a pump of its own, both or nothing in the supply. */
function heaterControl(layout: Layout): PartLines[] {
  return heaterControls(layout).map(({ name, at: { x, y } }) =>
    name === 'heater valve'
      ? { outline: `M${at(x - 7, y - 9)}h14l-14 18h14z`, thick: `M${at(x, y)}h9m0 -4v8` }
      : { outline: circle({ x, y }, 9), solid: `M${at(x, y - 6)}l5 9h-10z` },
  );
}

function electricHeater(): PartLines {
  return { outline: box(ELECTRIC_HEATER, 3) };
}

/** Oil lines into the tank on the cool side of the radiator, and the cooler inside it. */
function transmissionCooler({ radiator }: Layout): PartLines {
  if (radiator === 'cross-flow') {
    const { x, y } = RADIATOR;
    return {
      inside: `M${at(x + 4, 168)}V${y + 44}h6V168`,
      thick: `M${at(x + 4, y + 10)}v34h6v-34`,
    };
  }
  const bottom = RADIATOR.y + RADIATOR.height;
  return {
    inside: `M${at(28, bottom + 16)}V${SUCTION + 3}M${at(62, bottom + 16)}V${SUCTION + 3}`,
    thick: `M${at(28, SUCTION + 3)}v-6h34v6`,
  };
}

function sidePart({ name, box: place }: SidePart): PartLines {
  const { x, y, width, height } = place;
  if (name === 'turbo') {
    // Turbine and compressor on one shaft.
    const middle = y + height / 2;
    return {
      outline: circle({ x: x + 7, y: middle }, 7) + circle({ x: x + width - 7, y: middle }, 7),
      inside:
        circle({ x: x + 7, y: middle }, 3) +
        circle({ x: x + width - 7, y: middle }, 3) +
        line(x + 10, middle, x + width - 10, middle),
    };
  }
  const plates: string[] = [];
  if (name === 'oil-cooler')
    for (let down = 4.4; down < height; down += 4.4) plates.push(line(x, y + down, x + width, y + down));
  else
    for (let along = 5; along < width; along += 5)
      plates.push(line(x + along, y + 4, x + along, y + height - 4));
  return { outline: box(place, 3), inside: plates.join('') };
}

/** A seat, and a disc on it or lifted off it; its spring on the engine’s side. */
function thermostat({ x, y }: Point, { layout, state }: CircuitPlan): PartLines {
  const r = THERMOSTAT_RADIUS;
  const reach = r - 1;
  const open = state === 'hot';
  // The element sits in the engine’s coolant: to the right of the seat on either line.
  const disc = open ? x + 5 : x - 1;
  const seat = line(x - 1, y - reach, x - 1, y - 5) + line(x - 1, y + 5, x - 1, y + reach);
  const coil = coordinate((x + r - 1.5 - disc) / 4);
  const spring = `M${at(disc, y)}l${coil} -4l${coil} 8l${coil} -8l${coil} 4`;
  const heated = layout['thermostat-kind'] === 'map-controlled';
  const valve = layout['thermostat-kind'] === 'electric valve';
  // The plug or motor is on the side away from the label.
  const outlet = regulatesAtOutlet(layout);
  const plug = outlet ? y + r - 1 : y - r - 6;
  const shutsByPass = open && closesByPass(layout);
  const bar = outlet ? y + 15 : y - 15;
  return {
    outline:
      circle({ x, y }, r) +
      (heated ? box({ x: x - 4, y: plug, width: 8, height: 7 }) : '') +
      (valve ? box({ x: x - 8, y: outlet ? plug : plug - 3, width: 16, height: 10 }, 2) : ''),
    inside: valve ? '' : spring,
    thick:
      seat +
      line(disc, y - 5.5, disc, y + 5.5) +
      (shutsByPass ? line(BY_PASS - 6, bar, BY_PASS + 6, bar) : ''),
  };
}

/** Writes a box’s outline as path data for the loop below a hybrid’s circuit. */
export function loopBox(place: Box): string {
  return box(place, 4);
}

/** A loop of its own as a circle of SVG, in units of the drawing. */
export function loopCircle(centre: Point, radius: number): string {
  return circle({ x: Number(coordinate(centre.x)), y: centre.y }, radius);
}
