/** Boxes at the steps of a procedure; what is ticked is kept on the open card. */
import { jobs } from '../job/page/job-store.ts';
import { jobTitle } from '../job/page/new-job.ts';
import { openCard } from '../job/page/open-card.ts';
import { tickStep } from '../job/page/steps.ts';
import '../browser/page-globals.ts';
import { element } from '../browser/element.ts';

class Steps extends HTMLElement {
  private readonly boxes = new Map<number, HTMLInputElement>();
  private readonly line = element('p', { class: 'soft no-print', role: 'status' });

  connectedCallback() {
    if (this.boxes.size > 0) return;
    this.prepend(this.line);
    const steps = [...this.querySelectorAll('.work li')].filter((step) => !step.closest('.calculator'));
    for (const [index, step] of steps.entries()) {
      const box = element('input', { type: 'checkbox' });
      const words = step.querySelector('p:not(.soft, .caution)')?.textContent?.trim() ?? '';
      box.addEventListener('change', () => this.tick(index + 1, words, box.checked));
      box.setAttribute('aria-label', `Done: ${words.slice(0, 60)}`);
      step.append(element('label', { class: 'tick no-print' }, box, 'Done'));
      this.boxes.set(index + 1, box);
    }
    document.addEventListener('headertank:job', () => this.show());
    jobs.whenChanged(() => this.show());
    void jobs.ready();
    this.show();
  }

  private show(): void {
    const { procedure = '' } = this.dataset;
    const card = openCard();
    const done = new Set(card?.steps?.[procedure]?.done.map(({ step }) => step));
    for (const [step, box] of this.boxes) {
      box.checked = done.has(step);
      box.disabled = card === undefined;
    }
    const { root } = window.headertank;
    this.line.replaceChildren(
      ...(card
        ? [
            `${done.size} of ${this.boxes.size} steps ticked on the card `,
            element('a', { href: new URL(`job.html#${card.id}`, root).href }, jobTitle(card)),
          ]
        : ['No job card is open, so ticks are not kept.']),
    );
  }

  private async tick(step: number, what: string, on: boolean): Promise<void> {
    const card = openCard();
    const { procedure = '', title = '' } = this.dataset;
    if (!card) return;
    const stays = await jobs.change(card.id, card, (job) =>
      tickStep(job, { id: procedure, title }, step, on ? what : undefined),
    );
    this.show();
    if (!stays)
      this.line.textContent =
        'This device keeps nothing here (storage full or blocked): the tick is lost when you leave.';
  }
}

customElements.define('ht-steps', Steps);
