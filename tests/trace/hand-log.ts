/** Road tests written down by hand, point by point, as the trade tells them; straight lines between. */
export interface HandPoint {
  /** Minutes from the start. */
  at: number;
  /** °C. */
  coolant: number;
  /** km/h from here on. */
  speed: number;
  fan?: boolean;
  /** Outlet hose, °C. */
  hose?: number;
}

/** As a log of one reading each two seconds, whole degrees. */
export function handLog(points: readonly HandPoint[], outside: number): string {
  const withHose = points.some(({ hose }) => hose !== undefined);
  const lines = [
    `Time (s);Coolant temperature (°C);Vehicle speed (km/h);Engine speed (rpm);Intake air temperature (°C);Ambient air temperature (°C);Radiator fan${withHose ? ';Radiator outlet hose (°C)' : ''}`,
  ];
  const end = points.at(-1)?.at ?? 0;
  for (let second = 0; second <= end * 60; second += 2) {
    const minute = second / 60;
    const next = points.findIndex(({ at }) => at > minute);
    const [a, b] = next === -1 ? [points.at(-1), points.at(-1)] : [points[next - 1], points[next]];
    if (!a || !b) continue;
    const share = a === b ? 0 : (minute - a.at) / (b.at - a.at);
    const sway = a.speed > 0 ? 1.5 * Math.sin(second / 17) : 0;
    const hose = Math.round(
      (a.hose ?? outside) + share * ((b.hose ?? a.hose ?? outside) - (a.hose ?? outside)),
    );
    lines.push(
      [
        second,
        Math.round(a.coolant + share * (b.coolant - a.coolant)),
        Math.round(a.speed + sway),
        a.speed > 0 ? 2000 + Math.round(10 * sway) : 800,
        outside + (a.speed > 0 ? 3 : 2),
        outside,
        a.fan ? 'on' : 'off',
        ...(withHose ? [hose] : []),
      ].join(';'),
    );
  }
  return `${lines.join('\n')}\n`;
}

/** Common practice: idles to 85 °C, then 76 to 78 °C at steady speed; the thermostat is stamped 87 °C. */
export const OPENS_EARLY: readonly HandPoint[] = [
  { at: 0, coolant: 14, speed: 0 },
  { at: 6, coolant: 44, speed: 0 },
  { at: 14, coolant: 72, speed: 0 },
  { at: 22, coolant: 85, speed: 0 },
  { at: 22.2, coolant: 85, speed: 85 },
  { at: 25, coolant: 79, speed: 85 },
  { at: 28, coolant: 77, speed: 85 },
  { at: 31, coolant: 76, speed: 85 },
  { at: 34, coolant: 78, speed: 85 },
  { at: 37, coolant: 77, speed: 85 },
  { at: 37.2, coolant: 77, speed: 0 },
  { at: 40, coolant: 81, speed: 0 },
];

/** Common practice: hose cold at 84 to 86 °C, pause at 90, then 93, 94, the fan at 96, and it falls. Stamp 88 °C. */
export const SOUND_RUN: readonly HandPoint[] = [
  { at: 0, coolant: 15, speed: 0, hose: 15 },
  { at: 2, coolant: 27, speed: 50, hose: 15 },
  { at: 6, coolant: 62, speed: 60, hose: 16 },
  { at: 8.5, coolant: 85, speed: 60, hose: 17 },
  { at: 9.2, coolant: 90, speed: 60, hose: 20 },
  { at: 11, coolant: 90, speed: 80, hose: 45 },
  { at: 20, coolant: 90, speed: 80, hose: 55 },
  { at: 20.3, coolant: 90, speed: 0, hose: 56 },
  { at: 23, coolant: 93, speed: 0, hose: 82 },
  { at: 25, coolant: 94, speed: 0, hose: 90 },
  { at: 27, coolant: 96, speed: 0, fan: true, hose: 94 },
  { at: 29, coolant: 92, speed: 0, fan: false, hose: 86 },
  { at: 33, coolant: 96, speed: 0, fan: true, hose: 94 },
  { at: 35, coolant: 92, speed: 0, fan: false, hose: 86 },
  { at: 36, coolant: 93, speed: 0, hose: 88 },
];
