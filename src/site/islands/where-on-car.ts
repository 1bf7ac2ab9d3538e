/** Under each question of a walk that is done at places of the circuit: where they are on the chosen vehicle. Fetched once one is chosen. */
import '../browser/page-globals.ts';
import { showWhere } from '../walk/page/where-on-car.ts';

const show = () => showWhere(document);
document.addEventListener('headertank:change', show);
document.addEventListener('headertank:added', show);
show();
