/** A drive written down the way some logger would: its own columns, units, clock, decimal mark, noise, gaps. */
import type { Reading } from './car.ts';
import type { Random } from './random.ts';

export interface LogStyle {
  delimiter: ',' | ';' | '\t';
  comma: boolean;
  fahrenheit: boolean;
  mph: boolean;
  clock: 'seconds' | 'milliseconds' | 'time of day' | 'iso' | 'epoch';
  every: number;
  /** K. */
  noise: number;
  resolution: number;
  irregular: boolean;
  columns: {
    speed: boolean;
    rpm: boolean;
    intake: boolean;
    ambient: boolean;
    fan: boolean;
    outlet: boolean;
    load: boolean;
  };
  /** Share of lines lost, doubled or spoilt. */
  dirt: number;
}

export function randomStyle(random: Random): LogStyle {
  const comma = random.chance(0.3);
  return {
    delimiter: comma ? random.pick([';', '\t'] as const) : random.pick([',', ',', ';', '\t'] as const),
    comma,
    fahrenheit: random.chance(0.15),
    mph: random.chance(0.15),
    clock: random.pick(['seconds', 'seconds', 'milliseconds', 'time of day', 'iso', 'epoch'] as const),
    every: random.pick([0.2, 0.5, 1, 1, 1, 2, 5]),
    noise: random.between(0.05, 0.5),
    resolution: random.pick([1, 1, 0.1]),
    irregular: random.chance(0.5),
    columns: {
      speed: random.chance(0.92),
      rpm: random.chance(0.6),
      intake: random.chance(0.6),
      ambient: random.chance(0.5),
      fan: random.chance(0.4),
      outlet: random.chance(0.15),
      load: random.chance(0.4),
    },
    dirt: random.chance(0.4) ? random.between(0, 0.02) : 0,
  };
}

export function writeLog(readings: readonly Reading[], style: LogStyle, random: Random): string {
  const { columns, fahrenheit, mph, delimiter } = style;
  const degrees = fahrenheit ? 'F' : 'C';
  const header = [
    {
      seconds: 'Time (s)',
      milliseconds: 'Time (ms)',
      'time of day': 'Time',
      iso: 'Timestamp',
      epoch: 'Unix time',
    }[style.clock],
    `Engine coolant temperature (°${degrees})`,
    ...(columns.speed ? [`Vehicle speed (${mph ? 'mph' : 'km/h'})`] : []),
    ...(columns.rpm ? ['Engine speed (rpm)'] : []),
    ...(columns.load ? ['Calculated load (%)'] : []),
    ...(columns.intake ? [`Intake air temperature (°${degrees})`] : []),
    ...(columns.ambient ? [`Ambient air temperature (°${degrees})`] : []),
    ...(columns.fan ? ['Radiator fan'] : []),
    ...(columns.outlet ? [`Radiator outlet temperature (°${degrees})`] : []),
  ];
  const write = (value: number, step: number) => {
    const decimals = step < 1 ? 1 : 0;
    const text = (Math.round(value / step) * step).toFixed(decimals);
    return style.comma ? text.replace('.', ',') : text;
  };
  const heat = (celsius: number) => write(fahrenheit ? celsius * 1.8 + 32 : celsius, style.resolution);
  const lines = [header.join(delimiter)];
  let next = 0;
  for (let at = 0; at < readings.length; at++) {
    const now = readings[at];
    if (!now) continue;
    // Faster than the simulation: the same second, several lines.
    while (next <= now.time) {
      const time = next;
      next += style.every * (style.irregular ? random.between(0.6, 1.4) : 1);
      if (random.chance(style.dirt)) {
        const line = random.pick(['', 'no data', '---', 'gap']);
        if (line === 'gap') next += random.between(2, 40);
        else lines.push(line);
        continue;
      }
      const before = readings[at - 1] ?? now;
      const share = before === now ? 1 : Math.min(1, Math.max(0, time - before.time));
      const between = (key: 'coolant' | 'speed' | 'outlet') => before[key] + share * (now[key] - before[key]);
      const jumped = Math.abs(now.coolant - before.coolant) > 5;
      const coolant =
        (jumped ? now.coolant : between('coolant')) +
        (now.coolant === before.coolant ? 0 : style.noise * random.normal());
      lines.push(
        [
          clock(time, style),
          heat(coolant),
          ...(columns.speed ? [write(between('speed') * (mph ? 2.23694 : 3.6), 1)] : []),
          ...(columns.rpm ? [write(now.rpm, 1)] : []),
          ...(columns.load ? [write(now.load, 1)] : []),
          ...(columns.intake ? [heat(now.intake)] : []),
          ...(columns.ambient ? [heat(now.outside)] : []),
          ...(columns.fan ? [now.fan ? 'on' : 'off'] : []),
          ...(columns.outlet ? [heat(between('outlet'))] : []),
        ].join(delimiter),
      );
    }
  }
  return `${lines.join('\n')}\n`;
}

function clock(time: number, { clock: kind, comma }: LogStyle): string {
  const decimals = (value: number, digits: number) =>
    comma ? value.toFixed(digits).replace('.', ',') : value.toFixed(digits);
  switch (kind) {
    case 'seconds':
      return decimals(time, 2);
    case 'milliseconds':
      return String(Math.round(time * 1000));
    case 'epoch':
      return decimals(1_765_000_000 + time, 2);
    case 'iso':
      return new Date((1_765_000_000 + time) * 1000).toISOString();
    case 'time of day': {
      const of = 43_000 + time;
      const two = (value: number) => String(Math.floor(value)).padStart(2, '0');
      return `${two(of / 3600)}:${two((of % 3600) / 60)}:${(of % 60).toFixed(2).padStart(5, '0')}`;
    }
  }
}
