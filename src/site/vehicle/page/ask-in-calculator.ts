/** A figure of the vehicle that was typed into a calculator is offered to be kept on the vehicle of this device. */
import '../../browser/page-globals.ts';
import { button, element } from '../../browser/element.ts';
import { keepFigure } from './keep-figure.ts';

/** @param target field that somebody has left, or the unit beside it */
export function askInCalculator(target: EventTarget | null): void {
  const { vehicle } = window.headertank;
  const part = target instanceof Element ? target.closest<HTMLElement>('[data-figure]') : null;
  if (!part || !vehicle?.own) return;
  const form = part.closest('form');
  form?.querySelector('.keep-own')?.remove();
  const path = part.dataset.figure ?? '';
  const typed = typedIn(part);
  if (typed === '' || vehicle.without.includes(path)) return;
  const offer = element('div', { class: 'keep-own' });
  const keep = () => {
    const fault = keepFigure(path, typedIn(part));
    const says = element(
      'p',
      { role: 'status', class: 'soft' },
      fault ?? `Kept as a figure of ${vehicle.title}.`,
    );
    offer.replaceChildren(says);
  };
  offer.append(button(`Keep ${typed} as a figure of ${vehicle.title}`, keep, 'quiet'));
  form?.append(offer);
}

/** Number and unit, as they stand there. */
function typedIn(part: HTMLElement): string {
  const number = part.querySelector<HTMLInputElement>('input')?.value.trim() ?? '';
  const beside = part.querySelector<HTMLElement>('[data-unit]');
  const unit = beside instanceof HTMLSelectElement ? beside.value : (beside?.textContent ?? '');
  return number === '' || /[a-z°%Ω]/i.test(number) ? number : `${number} ${unit}`.trim();
}
