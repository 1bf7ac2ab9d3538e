/** The way onto the job card, for a page where few take it: loaded when it is taken. */
import { putOnJobCard } from '../job/page/hand-over.ts';
import { jobs } from '../job/page/job-store.ts';
import { litreSums } from '../job/page/litres.ts';
import { openCard } from '../job/page/open-card.ts';
import '../browser/page-globals.ts';

window.headertank.putOnJobCard = putOnJobCard;
window.headertank.litresOnCard = async () => {
  await jobs.ready();
  const card = openCard();
  return card && litreSums(card.litres);
};
