/** Behind the vehicle's name in the top line: its page, another one, none, and the cards of this device. */
import { loadScript } from '../browser/load-script.ts';
import { jobs, openJobId } from '../job/page/job-store.ts';
import { jobTitle } from '../job/page/new-job.ts';
import { switchTo } from '../job/page/open-card.ts';
import '../browser/page-globals.ts';
import { button, element } from '../browser/element.ts';
import { vehicleAddress } from '../vehicle/own-id.ts';

/** Cards that are offered; all of them stand on the page of the job card. */
const MOST = 6;

class TopMenu extends HTMLElement {
  private readonly choice = document.createElement('ht-vehicle-choice');

  connectedCallback() {
    loadScript('vehicle-choice').catch(() => {
      this.choice.textContent = 'The vehicles cannot be fetched: there is no connection just now.';
    });
    this.addEventListener('headertank:chosen', () => this.menu?.querySelector('summary')?.focus());
    for (const change of ['headertank:change', 'headertank:job'] as const)
      document.addEventListener(change, () => this.show());
    document.addEventListener('keydown', ({ key }) => {
      if (key !== 'Escape' || !this.menu?.open) return;
      this.close();
      this.menu.querySelector('summary')?.focus();
    });
    // What was pressed may be gone from the menu by now; the way the press took is not.
    document.addEventListener('click', (event) => {
      if (this.menu && !event.composedPath().includes(this.menu)) this.close();
    });
    this.menu?.addEventListener('focusout', ({ relatedTarget }) => {
      if (relatedTarget instanceof Node && !this.menu?.contains(relatedTarget)) this.close();
    });
    this.menu?.addEventListener('toggle', () => this.show());
    jobs.whenChanged(() => this.show());
    void jobs.ready();
    this.show();
  }

  private get menu(): HTMLDetailsElement | null {
    return this.closest('details');
  }

  private close(): void {
    if (this.menu) this.menu.open = false;
  }

  private show(): void {
    const { vehicle, root } = window.headertank;
    const link = (address: string, text: string) => element('a', { href: new URL(address, root).href }, text);
    const remove = button(
      'Remove',
      () => {
        window.headertank.chooseVehicle(undefined);
        this.close();
      },
      'quiet',
    );
    if (vehicle) remove.setAttribute('aria-label', `Remove ${vehicle.title}: no vehicle chosen`);
    const open = openJobId();
    const cards = jobs.list().slice(0, MOST);
    this.replaceChildren(
      ...(vehicle
        ? [
            element(
              'p',
              {},
              link(vehicleAddress(vehicle.id), vehicle.title),
              ...(vehicle.own ? [' your own, not on the shelf '] : []),
              remove,
            ),
          ]
        : []),
      element('p', { class: 'soft' }, vehicle ? 'Another vehicle' : 'Choose the vehicle'),
      this.choice,
      ...(cards.length > 0 ? [element('p', { class: 'soft' }, 'Cards on this device')] : []),
      ...cards.map((job) => {
        const press = button(jobTitle(job), () => this.take(job.id), 'quiet');
        if (job.id === open) press.setAttribute('aria-current', 'true');
        return press;
      }),
    );
  }

  private take(id: string): void {
    this.close();
    switchTo(jobs.get(id));
  }
}

customElements.define('ht-top-menu', TopMenu);
