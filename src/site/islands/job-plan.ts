/** What a proven cause asks for and the torques of the vehicle: fetched once the card stands, with the tables they need. */
import { showTorques } from '../job/page/job-card-torques.ts';
import { cardPlanOf } from '../job/page/plan-for-card.ts';
import '../browser/page-globals.ts';

window.headertank.cardPlanOf = cardPlanOf;
window.headertank.showTorques = showTorques;
