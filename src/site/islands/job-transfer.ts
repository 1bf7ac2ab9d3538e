/** Cards off this device and onto it, fetched when somebody exports or takes in. */
import { mergedJobs } from '../job/page/merge-jobs.ts';
import { exported, finishedForCounts, imported } from '../job/page/transfer.ts';
import '../browser/page-globals.ts';

window.headertank.jobTransfer = { exported, finishedForCounts, imported, merged: mergedJobs };
