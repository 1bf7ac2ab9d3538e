/** What README's "Make it your own" has a shop say: who it is, one car, one note. Invented. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { LAYOUT, LAYOUT_FEATURES } from '../../src/model/layout.ts';

export const WHO = [
  '--name',
  'Quay Street Garage',
  '--units',
  'metric',
  '--currency',
  'EUR',
  '--rate',
  '72,50',
];

/**
 * @param shelf folder of the records
 * @param run runs a command of the project on that shelf, and fails when it does
 */
export function writeOwnCar(shelf: string, run: (file: string, ...words: string[]) => void): void {
  const layout = LAYOUT_FEATURES.flatMap((feature) => ['--set', `layout.${feature}=${LAYOUT[feature][0]}`]);
  const said = [
    'maker=Heronby',
    'model=Sedge van',
    'body=van',
    'years=2015-2020',
    'engine.fuel=diesel',
    'engine.code=H20',
    'sources=common practice',
  ];
  run(
    'src/cli/new.ts',
    'vehicle',
    '--title',
    'Sedge van',
    ...layout,
    ...said.flatMap((each) => ['--set', each]),
  );
  const file = join(shelf, 'vehicles/sedge-van.yaml');
  writeFileSync(
    file,
    readFileSync(file, 'utf8')
      .replaceAll(/"?To write: (.*?)"?$/gm, 'Seen on one van.')
      .replace(
        /^figures:$/m,
        'figures:\n  thermostat.opens: { is: 88 °C, from: plate, page: 12, checked: 30.11.2026, sure: once }',
      ),
  );
  run('src/cli/new.ts', 'note', '--title', 'Stamp of the van', '--set', 'vehicle=sedge-van');
}
