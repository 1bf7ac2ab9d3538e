/** Hoses as a pen draws them: two lines, clean at every join, an arrow where coolant moves. */
import { coordinate, distance, type Point, roundedLine, towards } from './svg.ts';

/** Full flow, a little, or standing still. */
export type Flow = 'full' | 'little' | 'still';

export interface Hose {
  name: string;
  /** Corners, in the direction of flow. */
  points: readonly Point[];
  flow: Flow;
  /** Vent and overflow lines are thinner. */
  thin?: boolean;
}

/** Half the width of a hose as drawn, with its outline. */
export function halfWidth(hose: Hose): number {
  return hose.thin ? 3 : 5.5;
}

const BEND = 9;
/** A run shorter than this has no arrow; a run longer than this has two. */
const ARROW_RUN = 26;
const TWO_ARROWS = 150;
/** Where on a run an arrow would like to be, as shares of it, best first. */
const ONE_PLACE = [[0.5, 0.35, 0.65, 0.25, 0.75]];
const TWO_PLACES = [
  [0.25, 0.35, 0.15],
  [0.75, 0.65, 0.85],
];
/** An arrow keeps this far from a mark or a part. */
const ARROW_CLEAR = 17;

/**
 * All hoses of a circuit. Outlines are laid down first and the insides over them, so that where hoses join the
 * outline opens by itself.
 * @param obstacles points an arrow keeps clear of
 * @param bridges where one hose passes over another: the hose and the stretch of it to lift
 */
export function drawHoses(
  hoses: readonly Hose[],
  obstacles: readonly Point[],
  bridges: readonly { hose: Hose; from: Point; to: Point }[],
): string {
  const runs = hoses.map((hose) => ({ hose, data: roundedLine(hose.points, hose.thin ? 6 : BEND) }));
  // Longer or shorter than the stretch by `more` at both ends.
  const stretch = (more: number) =>
    bridges.map(({ hose, from, to }) => ({
      hose,
      data: roundedLine([towards(from, to, -more), towards(to, from, -more)], 0),
    }));
  return (
    layer(runs, 'outline') +
    layer(runs, 'inside') +
    path(
      'hose-halo',
      stretch(-2)
        .map(({ data }) => data)
        .join(''),
    ) +
    // The inside goes a little further, or its ends would show as hairlines.
    layer(stretch(0), 'outline') +
    layer(stretch(1.5), 'inside') +
    path('hose-arrow', arrowsOf(hoses, obstacles).join(''))
  );
}

/** One path for all hoses that look alike; those that stand still first, so that flow is drawn over them. */
function layer(runs: readonly { hose: Hose; data: string }[], part: string): string {
  let drawn = '';
  for (const flow of ['still', 'little', 'full'] as const) {
    for (const thin of [false, true]) {
      const data = runs
        .filter(({ hose }) => hose.flow === flow && Boolean(hose.thin) === thin)
        .map((run) => run.data);
      drawn += path(`hose ${part} ${flow}${thin ? ' narrow' : ''}`, data.join(''));
    }
  }
  return drawn;
}

function path(classes: string, data: string): string {
  return data === '' ? '' : `<path class="${classes}" d="${data}"/>`;
}

/** Arrows on every run that has room, clear of the obstacles and of each other. */
function arrowsOf(hoses: readonly Hose[], obstacles: readonly Point[]): string[] {
  const taken = [...obstacles];
  const arrows: string[] = [];
  for (const { points, flow, thin } of hoses) {
    if (flow === 'still') continue;
    points.slice(1).forEach((to, index) => {
      const from = points[index];
      if (!from) return;
      const length = distance(from, to);
      if (length < ARROW_RUN) return;
      for (const shares of length > TWO_ARROWS ? TWO_PLACES : ONE_PLACE) {
        const free = shares
          .map((share) => towards(from, to, share * length))
          .find((place) => taken.every((each) => distance(each, place) >= ARROW_CLEAR));
        if (!free) continue;
        taken.push(free);
        arrows.push(chevron(free, from, to, thin ? 3 : 4.2));
      }
    });
  }
  return arrows;
}

/** A filled arrow head centred on a point, pointing along the run. */
function chevron(place: Point, from: Point, to: Point, size: number): string {
  const tip = towards(place, to, size);
  const back = towards(place, from, size);
  const side = {
    x: ((to.y - from.y) / distance(from, to)) * size,
    y: ((from.x - to.x) / distance(from, to)) * size,
  };
  const c = coordinate;
  return `M${c(tip.x)} ${c(tip.y)}L${c(back.x + side.x)} ${c(back.y + side.y)}L${c(back.x - side.x)} ${c(back.y - side.y)}z`;
}
