/** A complaint's take-in sheet, filled in from the open card. */

import { jobs } from '../job/page/job-store.ts';
import { fillTakeIn } from '../job/page/take-in-filled.ts';

document.addEventListener('headertank:job', fillTakeIn);
jobs.whenChanged(fillTakeIn);
void jobs.ready();
fillTakeIn();
