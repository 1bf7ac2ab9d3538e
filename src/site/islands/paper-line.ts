/** The line at the top of a printed page: whose figures stand on it, the day, and the open job. Written when it is printed. */
import '../page-globals.ts';
import { dayText } from '../../model/day.ts';
import { kept } from '../keep.ts';

type Fields = Record<string, unknown>;

const isText = (value: unknown): value is string => typeof value === 'string' && value !== '';
const isFields = (value: unknown): value is Fields => typeof value === 'object' && value !== null;

/** Number, name or plate of the open card; nothing if that card is another vehicle's than the one `of`. */
function openJob(of: string | undefined): string | undefined {
  const job = kept(`job.${kept('job-open', isText)}`, isFields);
  if (!job) return undefined;
  if (isFields(job.vehicle) && job.vehicle.title !== of) return undefined;
  return [job.name, job.plate].filter(isText).join(', ') || undefined;
}

function write(): void {
  for (const line of document.querySelectorAll<HTMLElement>('.paper-line b')) {
    const of = line.dataset.of ?? window.headertank.vehicle?.title;
    const job = openJob(of);
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
