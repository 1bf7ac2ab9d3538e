/** Cards off this device and onto it, fetched when somebody exports or takes in. */
import { mergedJobs } from '../job/page/merge-jobs.ts';
import { exported, imported, saveFinished } from '../job/page/transfer.ts';
import '../browser/page-globals.ts';

window.headertank.jobTransfer = { exported, imported, saveFinished, merged: mergedJobs };
