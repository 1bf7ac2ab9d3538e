/** Two hours at ten readings a second in twenty columns, as a tool writes that logs everything. */
import { drive, makeCar } from './car.ts';
import { randomOf } from './random.ts';
import { driveOver } from './route.ts';

export function longLog(): string {
  const random = randomOf(11);
  const moments = driveOver(
    [
      { kind: 'stand', seconds: 400 },
      { kind: 'town', seconds: 1800 },
      { kind: 'road', seconds: 2400, speed: 85 },
      { kind: 'motorway', seconds: 1800, speed: 120 },
      { kind: 'stand', seconds: 800 },
    ],
    12,
    random,
  );
  const readings = drive(makeCar(randomOf(3), 'none'), moments, 12, random);
  const others = Array.from({ length: 14 }, (_, at) => `PID ${at + 30}`);
  const lines = [
    ['Time (s)', 'Coolant (°C)', 'Speed (km/h)', 'RPM', 'Intake air temp (°C)', 'Load (%)', ...others].join(
      ',',
    ),
  ];
  for (const reading of readings)
    for (let tenth = 0; tenth < 10; tenth++)
      lines.push(
        [
          (reading.time + tenth / 10).toFixed(1),
          (reading.coolant + 0.1 * random.normal()).toFixed(1),
          (reading.speed * 3.6).toFixed(1),
          reading.rpm.toFixed(0),
          reading.intake.toFixed(1),
          reading.load.toFixed(1),
          ...others.map((_, at) => (at * 7.31 + tenth).toFixed(2)),
        ].join(','),
      );
  return lines.join('\n');
}
