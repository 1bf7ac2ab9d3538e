/** The recogniser of complaints, fetched with the first search; its data comes beside it. */
import { complaintFinder } from '../search/page/complaints.ts';
import '../search/page/open-complaints.ts';

globalThis.headertankFinder = complaintFinder;
