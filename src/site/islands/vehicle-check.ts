/** The shelf's own rules and drawings for a vehicle: loaded when somebody begins to write, since they weigh more than the form. */
import { checkVehicle } from '../../library/check-vehicle.ts';
import { isPlainObject } from '../../library/schema-tree.ts';
import { layoutSchema } from '../../model/layout-schema.ts';
import { type Vehicle, vehicleSchema } from '../../model/vehicle.ts';
import { type PlainData, vehicleText } from '../../model/vehicle-file.ts';
import '../browser/page-globals.ts';
import { drawCircuit } from '../drawings/circuit.ts';
import { drawLadder } from '../drawings/ladder.ts';
import { rungsOf } from '../vehicle/ladder-rungs.ts';

window.headertank.vehicleCheck = (id, typed) => {
  const { faults, readAs, value } = checkVehicle(id, typed);
  const fields = isPlainObject(value) ? value : {};
  const layout = layoutSchema.safeParse(fields.layout).data;
  return {
    faults,
    readAs,
    text: faults.length === 0 ? vehicleText(fields as Record<string, PlainData>) : undefined,
    ladder: drawLadder({
      id: 'form-ladder',
      title: 'Temperatures as typed so far',
      rungs: rungsOf({ figures: soundFigures(fields.figures), layout: layout ?? {} }),
      narrow: true,
    }),
    circuit: layout && drawCircuit({ id: 'form-circuit', layout, state: 'hot' }).svg,
  };
};

/** Those that can be read already. */
function soundFigures(figures: unknown): Vehicle['figures'] {
  const { shape } = vehicleSchema.shape.figures;
  const sound = Object.entries(isPlainObject(figures) ? figures : {}).filter(
    ([path, entry]) =>
      Object.hasOwn(shape, path) && shape[path as keyof typeof shape].safeParse(entry).success,
  );
  return vehicleSchema.shape.figures.safeParse(Object.fromEntries(sound)).data ?? {};
}
