/** A car beside a sound one as both warm up, drawn by the simulated car: in a guide, and after a case of practice. */
import '../browser/page-globals.ts';
import { usualCar } from '../../car/car.ts';
import { FAULT_IDS, severityAt, withFault } from '../../car/faults.ts';
import { showMoves } from '../moves/page/show-moves.ts';
import { twoRuns } from '../moves/two-runs.ts';
import { simulatedCar } from '../practice/simulated.ts';

window.headertank.moves = (place, { title, code, faults, vehicle }) => {
  const car = simulatedCar(code, faults, vehicle);
  if (!car) return false;
  showMoves(place, `moves-${code}`, title, twoRuns(car));
  return true;
};

/** The same in a guide, where the still picture stands until somebody wants it to move. */
class SeeItMove extends HTMLElement {
  connectedCallback() {
    const { fault = '', title = '', severity = '' } = this.dataset;
    const known = FAULT_IDS.find((id) => id === fault);
    if (known === undefined) return;
    const car = withFault(usualCar(), known, severityAt(known, Number(severity)));
    showMoves(this, `moves-${fault}`, title, twoRuns(car));
  }
}

customElements.define('ht-see-it-move', SeeItMove);
