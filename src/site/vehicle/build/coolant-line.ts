/** The coolant of a loop in a line: family by chemistry, and the number on the cap. */
import { LOOP_NAMES } from '../../../model/loops.ts';
import type { Vehicle } from '../../../model/vehicle.ts';
import { entryOf } from '../../shelf/record-pages.ts';

type StatedCoolant = NonNullable<NonNullable<Vehicle['loops']['engine']>['coolant']>;

/** "Si-OAT, G 40 on the cap, only as ready mix" */
export function coolantLine({ family, number, 'ready-mixed': ready }: StatedCoolant): string {
  const [name = ''] = entryOf('coolant', family).data.title.split(',');
  return [name, ...(number ? [`number ${number}`] : []), ...(ready ? ['only as ready mix'] : [])].join(', ');
}

/** By loop, those that state one. */
export function coolantsOf(loops: Vehicle['loops']): Record<string, string> {
  return Object.fromEntries(
    LOOP_NAMES.flatMap((name) => {
      const coolant = loops[name]?.coolant;
      return coolant ? [[name, coolantLine(coolant)]] : [];
    }),
  );
}
