/** Fuses, relays, sensors and plugs of a vehicle as lines at their places of the circuit. */
import type { CircuitPlace } from '../../../model/circuit-places.ts';
import {
  LOOK_UP_NAMES,
  LOOK_UPS,
  type LookUpName,
  PLUG_NAMES,
  PLUGS,
  type PlugName,
} from '../../../model/look-ups.ts';
import type { Vehicle } from '../../../model/vehicle.ts';
import type { OwnWords } from '../vehicle-sheet.ts';

/** Look-ups of a place; part numbers are wanted with the repair and not at a test. */
const PLACE_OF_LOOK_UP: { readonly [N in LookUpName]?: CircuitPlace } = {
  'fan-fuse': 'fan-fuse',
  'fan-relay': 'fan-relay',
  'pump-fuse': 'pump-plug',
  'heater-pump-fuse': 'heater-pump',
  'coolant-sensor': 'coolant-sensor',
  'second-sensor': 'second-sensor',
  'cap-thread': 'cap',
};
const PLACE_OF_PLUG: Record<PlugName, CircuitPlace> = {
  fan: 'fan-plug',
  'fan-switch': 'fan-switch',
  'coolant-sensor': 'coolant-sensor',
  'second-sensor': 'second-sensor',
  thermostat: 'thermostat-plug',
  pump: 'pump-plug',
  'heater-pump': 'heater-pump',
  'after-run-pump': 'after-run-pump',
  'level-sensor': 'level-sensor',
};

/** What a record says of where things sit, in the order of the vehicle's page. */
export function whereItSits(data: Pick<Vehicle, 'look-ups' | 'plugs'>): OwnWords[] {
  return [
    ...LOOK_UP_NAMES.flatMap((name) => {
      const entry = data['look-ups'][name];
      const place = PLACE_OF_LOOK_UP[name];
      return entry && place ? [{ is: `${LOOK_UPS[name].label}: ${entry.is}`, at: [place] }] : [];
    }),
    ...PLUG_NAMES.flatMap((name) => {
      const pins = data.plugs[name]?.pins.map(({ pin, wire, does }) =>
        [`pin ${pin}`, wire, does].filter((part) => part !== undefined).join(', '),
      );
      return pins
        ? [{ is: `Plug, ${PLUGS[name].label}: ${pins.join('; ')}`, at: [PLACE_OF_PLUG[name]] }]
        : [];
    }),
  ];
}
