/** The recogniser of complaints, fetched with the first search; its data comes beside it. */
import { complaintParts } from '../search/page/complaint-list.ts';
import { complaintFinder } from '../search/page/complaints.ts';
import '../search/page/open-complaints.ts';

globalThis.headertankFinder = (data) => {
  const finder = complaintFinder(data);
  return (text, answers, answer) => {
    const recognition = finder.find(text, answers);
    return {
      parts: complaintParts(recognition, answer),
      isSettled: recognition.isSure || recognition.pages.length > 0,
    };
  };
};
