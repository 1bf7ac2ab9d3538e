/** What is said and offered once a vehicle is chosen; fetched when the button is about to be pressed. */
import { jobs, setOpenJob } from '../job/job-store.ts';
import { jobTitle } from '../job/new-job.ts';
import { openCard } from '../job/open-card.ts';
import { cameFrom } from '../keep.ts';
import '../page-globals.ts';
import { element } from './element.ts';

window.headertank.sayChosen = (after, vehicle, stays) => {
  const says = element('p', { role: 'status' });
  const on = wayOn();
  after.after(element('div', { class: 'vehicle-chosen' }, says, element('p', {}, on)));
  // Words that come into a part that is there are said by a screen reader.
  says.textContent = `${stays ? 'Chosen. It stays chosen on this device.' : 'Chosen for this page; this device keeps nothing.'} ${toCard(vehicle)}`;
  on.focus({ preventScroll: true });
  on.scrollIntoView({ block: 'nearest' });
};

/** The open card takes the vehicle, or is closed when it is another's. @returns what became of it, a sentence or '' */
function toCard(vehicle: { id: string; title: string }): string {
  const open = openCard();
  if (!open || open.vehicle?.id === vehicle.id) return '';
  const { vehicle: other } = open;
  if (other) setOpenJob(undefined);
  else jobs.change(open.id, open, (job) => ({ ...job, vehicle }));
  document.dispatchEvent(new CustomEvent('headertank:job'));
  return other
    ? `The card “${jobTitle(open)}” is ${other.title}’s and is kept; what comes now begins a new one. `
    : `It stands on the card “${jobTitle(open)}”. `;
}

function wayOn(): HTMLAnchorElement {
  const { root } = window.headertank;
  const walk = cameFrom();
  return element(
    'a',
    { class: 'button main', href: new URL(walk?.address ?? 'index.html', root).href },
    walk ? `Back to: ${walk.title}` : 'What does the customer notice?',
  );
}
