/** Journeys of the second maker: what a workshop drives to try a car, and what a customer drives. A second each. */
import type { Random } from '../random.ts';
import type { Second } from './engine.ts';

type Piece = 'idle' | 'queue' | 'street' | 'road' | 'motorway' | 'hill';

const KMH = 1 / 3.6;

/** A standard try-out: from cold, street, ten minutes of road, then idling until the fan should have come. */
export function tryOut(random: Random): [Piece, number][] {
  return [
    ['idle', random.between(20, 120)],
    ['street', random.between(240, 600)],
    [random.chance(0.5) ? 'road' : 'motorway', random.between(540, 1100)],
    ['idle', random.between(500, 1100)],
  ];
}

/** A customer's day. */
export function everyday(random: Random): [Piece, number][] {
  const pieces: [Piece, number][] = [];
  if (random.chance(0.4)) pieces.push(['idle', random.between(30, 500)]);
  const count = 2 + Math.floor(random.between(0, 4));
  for (let at = 0; at < count; at++)
    pieces.push([
      random.pick(['queue', 'street', 'road', 'motorway', 'motorway', 'hill', 'idle'] as const),
      random.between(150, 1300),
    ]);
  return pieces;
}

/** Twelve minutes in the street and no more. */
export function streetOnly(random: Random): [Piece, number][] {
  return [
    ['idle', random.between(20, 200)],
    ['street', random.between(400, 900)],
    ['queue', random.between(100, 300)],
  ];
}

export function journeyOf(
  pieces: readonly [Piece, number][],
  outside: number,
  heater: number,
  random: Random,
): Second[] {
  const seconds: Second[] = [];
  let speed = 0;
  for (const [piece, lasts] of pieces) {
    const cruise = random.between(62, 95) * KMH;
    const fast = random.between(105, 130) * KMH;
    const steep = piece === 'hill' ? random.between(0.03, 0.06) : 0;
    let wanted = 0;
    let until = 0;
    for (let at = 0; at < lasts; at++) {
      if (at >= until) {
        const pause = random.chance(0.45);
        [wanted, until] = {
          idle: (): [number, number] => [0, lasts],
          queue: (): [number, number] =>
            pause
              ? [0, at + random.between(10, 60)]
              : [random.between(5, 18) * KMH, at + random.between(6, 25)],
          street: (): [number, number] =>
            pause && wanted > 0
              ? [0, at + random.between(5, 35)]
              : [random.between(30, 52) * KMH, at + random.between(15, 80)],
          // A steady foot: minutes at one speed, as people drive.
          road: (): [number, number] => [cruise + random.between(-4, 4) * KMH, at + random.between(120, 700)],
          motorway: (): [number, number] => [
            fast + random.between(-3, 3) * KMH,
            at + random.between(200, 1200),
          ],
          hill: (): [number, number] => [random.between(50, 80) * KMH, at + random.between(60, 300)],
        }[piece]();
      }
      speed = Math.max(0, speed + Math.max(-1.8, Math.min(1.2, wanted - speed)));
      if (wanted === 0 && speed < 0.4) speed = 0;
      seconds.push({ speed, slope: steep, outside, heater, running: true });
    }
  }
  return seconds;
}
