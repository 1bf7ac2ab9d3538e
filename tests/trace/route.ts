/** Made-up drives: standing, town, country road, motorway, in any order and of any length. */
import type { Moment } from './car.ts';
import type { Random } from './random.ts';

export type Leg = { kind: 'stand' | 'town' | 'road' | 'motorway'; seconds: number; speed?: number };

export function randomLegs(random: Random): Leg[] {
  const legs: Leg[] = [];
  if (random.chance(0.7))
    legs.push({ kind: 'stand', seconds: random.between(20, 900) * (random.chance(0.3) ? 1.6 : 0.5) });
  const count = Math.floor(random.between(1, 5));
  for (let at = 0; at < count; at++)
    legs.push({
      kind: random.pick(['town', 'road', 'road', 'motorway', 'stand'] as const),
      seconds: random.between(90, 900),
    });
  if (random.chance(0.5)) legs.push({ kind: 'stand', seconds: random.between(60, 900) });
  return legs;
}

/** One moment a second. */
export function driveOver(legs: readonly Leg[], outside: number, random: Random): Moment[] {
  const moments: Moment[] = [];
  let speed = 0;
  let time = 0;
  for (const leg of legs) {
    const base =
      leg.speed ??
      {
        stand: 0,
        town: random.between(35, 55),
        road: random.between(65, 100),
        motorway: random.between(100, 140),
      }[leg.kind];
    let wanted = base / 3.6;
    let change = random.between(20, 60);
    for (let second = 0; second < leg.seconds; second++) {
      if (leg.kind === 'town' && --change < 0) {
        wanted = wanted > 0 ? 0 : base / 3.6;
        change = wanted > 0 ? random.between(20, 80) : random.between(5, 40);
      }
      const sway = leg.kind === 'stand' ? 0 : 0.5 * Math.sin(time / 23) + 0.2 * random.normal();
      const step = Math.max(-2.5, Math.min(1.6, wanted + sway - speed));
      speed = Math.max(0, leg.kind === 'stand' && speed + step < 0.3 ? 0 : speed + step);
      moments.push({ time, speed, outside, runs: true });
      time++;
    }
  }
  return moments;
}
