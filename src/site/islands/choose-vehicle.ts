/** The button on a vehicle's page and in the list of vehicles; once chosen, the way back to the complaint. */
import { jobs, setOpenJob } from '../job/job-store.ts';
import { jobTitle } from '../job/new-job.ts';
import { openCard } from '../job/open-card.ts';
import { cameFrom } from '../keep.ts';
import '../page-globals.ts';
import { element } from './element.ts';

class ChooseVehicle extends HTMLElement {
  connectedCallback() {
    const button = this.querySelector('button');
    const { vehicle: id, title } = this.dataset;
    if (!button || !id || !title) return;
    button.hidden = false;
    button.onclick = () => {
      const stays = window.headertank.chooseVehicle(id);
      for (const old of document.querySelectorAll('.vehicle-chosen')) old.remove();
      for (const other of document.querySelectorAll<HTMLButtonElement>('ht-choose-vehicle button'))
        other.hidden = other === button;
      const says = element('p', { role: 'status' });
      const on = wayOn();
      this.after(element('div', { class: 'vehicle-chosen' }, says, element('p', {}, on)));
      // Words that come into a part that is there are said by a screen reader.
      says.textContent = `${stays ? 'Chosen. It stays chosen on this device.' : 'Chosen for this page; this device keeps nothing.'} ${toCard({ id, title })}`;
      on.focus({ preventScroll: true });
      on.scrollIntoView({ block: 'nearest' });
    };
  }
}

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

customElements.define('ht-choose-vehicle', ChooseVehicle);
