/** What the work in hand quotes and the vehicle of this device has no figure of, asked there. Figures it cannot have are not asked. */
import '../../browser/page-globals.ts';
import { generalRange } from '../../../model/figure-lookup.ts';
import { quantityText } from '../../../model/show-quantity.ts';
import { element } from '../../browser/element.ts';
import { inSentence } from '../../text/in-sentence.ts';
import type { OwnSheet } from '../vehicle-sheet.ts';
import { keepFigure } from './keep-figure.ts';

/** More than these are folded before the work of a record; before the answers of a walk all are, or a phone would not show those. */
const MOST_OPEN = 2;
/** More than these are not named in the line that unfolds them. */
const MOST_NAMED = 3;

/** Where a figure is read off the car, for those that stand on it. Common practice, no source. */
const FOUND: Readonly<Record<string, string>> = {
  'thermostat.opens': 'The stamp on the thermostat?',
  'cap.opens': 'The stamp on the cap?',
  'fan.fuse': 'The number on the fuse?',
  'coolant.capacity': 'In the owner’s book?',
};

/** The questions of one page: shown where the work in hand wants a figure that this car has not, kept on the car when typed. */
export class OwnAsks {
  private place: HTMLElement | undefined;
  private asked = '';

  /** Asks anew where the page has moved on, or the vehicle has changed. */
  show(): void {
    const { vehicle } = window.headertank;
    const spot = vehicle?.own ? spotOnPage() : undefined;
    const paths = vehicle?.own && spot ? missingIn(spot.within, vehicle) : [];
    const asked = `${vehicle?.id} ${paths.join(' ')}`;
    if (
      this.place?.parentElement &&
      this.place.parentElement === spot?.before.parentElement &&
      asked === this.asked
    )
      return;
    // Whoever has just typed one goes on to the next.
    const wasIn = this.place?.contains(document.activeElement) === true;
    this.place?.remove();
    this.place = undefined;
    this.asked = asked;
    if (!spot || !vehicle || paths.length === 0) return;
    this.place = form(paths, vehicle.title, spot.within.matches('.step'));
    // Whoever is at it finds the rest of it open.
    if (wasIn && this.place instanceof HTMLDetailsElement) this.place.open = true;
    spot.before.before(this.place);
    if (wasIn) this.place.querySelector('input')?.focus();
  }
}

/** The question of a walk that is asked now, else the work of the page; before its answers or its steps. */
function spotOnPage(): { within: HTMLElement; before: Element } | undefined {
  const now = document.querySelector<HTMLElement>('ht-walk .step[data-now]');
  const within = now ?? document.querySelector<HTMLElement>('article.sheet');
  const before =
    now?.querySelector(':scope > ht-reading, :scope > .answers') ??
    now?.lastElementChild ??
    within?.querySelector('ol.work');
  return within && before ? { within, before } : undefined;
}

/** By the order in which they are quoted, each once. */
function missingIn(within: HTMLElement, vehicle: OwnSheet): string[] {
  const quoted = [...within.querySelectorAll<HTMLElement>('[data-fig]')]
    .filter((part) => part.closest('.not-this-vehicle') === null)
    .map((part) => part.dataset.fig ?? '');
  const inLimits = [...within.querySelectorAll<HTMLElement>('[data-scale]')].flatMap((part) =>
    [...(part.dataset.scale ?? '').matchAll(/\{([a-z0-9.-]+)\}/g)].map(([, path = '']) => path),
  );
  return [...new Set([...quoted, ...inLimits])].filter(
    (path) => !vehicle.figures[path] && !vehicle.without.includes(path) && generalRange(path),
  );
}

function form(paths: readonly string[], title: string, inWalk: boolean): HTMLElement {
  const fields = paths.map((path) => field(path));
  const asks = element(
    'form',
    { novalidate: true, autocomplete: 'off' },
    ...fields.map(({ row }) => row),
    element('p', {}, element('button', { class: 'quiet' }, 'Keep')),
  );
  asks.addEventListener('submit', (event) => {
    event.preventDefault();
    for (const { keep } of fields) keep();
  });
  const names = paths.slice(0, MOST_NAMED).map((path) => inSentence(generalRange(path)?.label ?? path));
  const more = paths.length > MOST_NAMED ? ` and ${paths.length - MOST_NAMED} more` : '';
  return element(
    'details',
    { class: 'own-asks no-print', open: !inWalk && paths.length <= MOST_OPEN },
    element('summary', {}, `Type what you know of ${title}: ${names.join(', ')}${more}`),
    asks,
  );
}

function field(path: string): { row: HTMLElement; keep: () => void } {
  const { label = path, quantity } = generalRange(path) ?? {};
  const id = `own-${path.replaceAll('.', '-')}`;
  const usual = quantity ? `usually ${quantityText(quantity, window.headertank.habit)}` : '';
  const hint = [FOUND[path], usual].filter((each) => each).join(' ');
  const input = element('input', { id, type: 'text', maxlength: '40', 'aria-describedby': `${id}-says` });
  const says = element('p', { id: `${id}-says`, class: 'soft' }, hint);
  const keep = () => {
    if (input.value.trim() === '') return;
    const fault = keepFigure(path, input.value);
    input.setAttribute('aria-invalid', String(fault !== undefined));
    says.textContent = fault ?? hint;
    if (fault !== undefined) input.focus();
  };
  return { row: element('div', {}, element('label', { for: id }, label), input, says), keep };
}
