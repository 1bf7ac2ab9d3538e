/** The simulated car, for what the cases of practice do not say. */
import '../browser/page-globals.ts';
import { simulatedAnswers, simulatedCar } from '../practice/simulated.ts';

window.headertank.practiceCar = {
  answersOf: simulatedAnswers,
  knows: (code, faults, vehicle) => simulatedCar(code, faults, vehicle) !== undefined,
};
