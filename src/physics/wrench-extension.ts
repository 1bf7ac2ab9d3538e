import { within } from './out-of-range.ts';
import { type Metre, type NewtonMetre, newtonMetre } from './units.ts';

/**
 * What to set on a click wrench so that the bolt gets the torque wanted, with a crow-foot or extension on its drive.
 *
 * Lever rule, M L/(L + E cos angle): the value is pulled at the grip, the bolt sits further away. A crow-foot at a
 * right angle changes nothing; pointing back to the hand it makes the setting higher. A straight extension upwards
 * along the bolt changes nothing either and is not what is asked here.
 * @param wanted at the bolt, 0 to 2,000 N·m
 * @param wrench from the middle of the grip to the drive, 0.05 to 2 m
 * @param extension from the drive to the bolt, 0 to 1 m
 * @param angle between extension and wrench, 0 in line, pi pointing back to the hand, radians
 * @throws OutOfRange on any of them, and when the bolt comes to sit under the hand
 */
export function wrenchSetting(
  wanted: NewtonMetre,
  wrench: Metre,
  extension: Metre,
  angle: number,
): NewtonMetre {
  const torque = within('torque', wanted, 0, 2000, 'N·m');
  const lever = within('wrench length', wrench, 0.05, 2, 'm');
  const added = within('extension length', extension, 0, 1, 'm');
  const turned = within('extension angle', angle, -Math.PI, Math.PI, 'rad');
  // Nearer than a quarter of the wrench the hand's own width decides more than the formula.
  const reach = within(
    'distance from hand to bolt',
    lever + added * Math.cos(turned),
    lever / 4,
    Infinity,
    'm',
  );
  return newtonMetre((torque * lever) / reach);
}
