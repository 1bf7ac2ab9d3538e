/** The line at the top of a printed page: whose figures stand on it, the day, and the open job. Written when it is printed. */
import '../browser/page-globals.ts';
import { dayText } from '../../model/day.ts';
import { openJob } from '../job/page/open-job.ts';

/** Number, name or plate of the open card; nothing if that card is another vehicle's than the one `of`. */
function jobOf(of: string | undefined): string | undefined {
  const job = openJob();
  if (!job || (job.vehicle !== undefined && job.vehicle !== of)) return undefined;
  return [job.name, job.plate].filter((each) => each !== undefined).join(', ') || undefined;
}

function write(): void {
  for (const line of document.querySelectorAll<HTMLElement>('.paper-line b')) {
    const of = line.dataset.of ?? window.headertank.vehicle?.title;
    const job = jobOf(of);
    line.textContent = [
      of === undefined ? 'General figures, no vehicle chosen' : `Figures of: ${of}`,
      `printed ${dayText(new Date())}`,
      ...(job === undefined ? [] : [`job ${job}`]),
    ].join(', ');
  }
  for (const place of document.querySelectorAll('.chosen-vehicle'))
    place.textContent = window.headertank.vehicle?.title ?? '';
}

window.addEventListener('beforeprint', write);
document.addEventListener('headertank:change', write);
write();
