/** All calculators that are declared, in the order of the list. Adding one: its id in model/calculator-ids.ts, its file, this line. */
import type { Calculator } from './declaration.ts';
import { fillAccount } from './fill-account.ts';

export const CALCULATORS: readonly Calculator[] = [fillAccount];

export function calculatorOf(id: string): Calculator {
  const found = CALCULATORS.find((calculator) => calculator.id === id);
  if (!found) throw new Error(`No calculator is called ${id}`);
  return found;
}
