/** One invented car for the cases that turn on its figures. */
import { type Car, type Fault, makeCar } from './car.ts';
import { randomOf } from './random.ts';

/** A car of 1,300 kg with a stamp of 87 °C, its fan at 97 °C. */
export function stampedCar(fault: Fault, more: Partial<Car> = {}): Car {
  return {
    ...makeCar(randomOf(4), fault),
    opens: 87,
    tolerance: 0.5,
    fanOn: 97,
    fanOff: 92,
    size: 1,
    idleHeat: 3200,
    mass: 1300,
    dragArea: 0.7,
    radiator: 1.1,
    heater: 0.2,
    ...more,
  };
}
