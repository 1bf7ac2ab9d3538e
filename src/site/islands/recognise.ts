/** The recogniser of complaints, fetched with the first search; its data comes beside it. */
import { complaintParts } from '../search/page/complaint-list.ts';
import { complaintFinder } from '../search/page/complaints.ts';
import '../search/page/open-complaints.ts';

globalThis.headertankFinder = (data) => {
  const finder = complaintFinder(data);
  return (text, answers, answer) => complaintParts(finder.find(text, answers), answer);
};
