/** The causes named in a section of the walk, as this car can have them: what it cannot have is gone, the likeliest first. */
import type { CauseShare } from '../../../diagnosis/posterior.ts';
import { shareText } from '../../../diagnosis/reason.ts';
import { inSentence } from '../../text/in-sentence.ts';

/**
 * @param ranked all causes with their shares
 * @param cannotHave whether the layout rules a cause out
 * @param titles of the causes
 */
export function fitCauses(
  section: Element,
  ranked: readonly CauseShare[],
  cannotHave: (cause: string) => boolean,
  titles: Readonly<Record<string, string>>,
): void {
  const shares = new Map(ranked.map(({ cause, share }) => [cause, share]));
  for (const place of section.querySelectorAll<HTMLElement>('[data-share]')) {
    const share = shares.get(place.dataset.share ?? '') ?? 0;
    setText(place, share > 0 ? `${shareText(share)} of cars like this` : '');
  }
  const causes = [...section.querySelectorAll<HTMLElement>('[data-cause]')];
  for (const each of causes) each.hidden = cannotHave(each.dataset.cause ?? '');
  const inSight = causes.filter((each) => !each.hidden);
  const shareOf = (each: HTMLElement) => shares.get(each.dataset.cause ?? '') ?? 0;
  for (const rows of section.querySelectorAll('.seen tbody')) order(rows, shareOf);
  const acts = section.querySelector('.acts');
  if (!acts) return;
  const within = (act: Element) => inSight.filter((each) => act.contains(each));
  for (const act of acts.querySelectorAll<HTMLElement>('.act')) act.hidden = within(act).length === 0;
  order(acts, (act) => within(act).reduce((sum, each) => sum + shareOf(each), 0));
  const names = section.querySelector('h3[data-names]');
  if (names && inSight.length > 0)
    setText(
      names,
      inSight
        .sort((a, b) => shareOf(b) - shareOf(a))
        .map(({ dataset: { cause = '' } }) => titles[cause] ?? cause)
        .map((title, at) => (at === 0 ? title : inSentence(title)))
        .join(', or '),
    );
}

/** Text that is right already is not set again, so that the page need not be laid out for it. */
function setText(place: Element, text: string): void {
  if (place.textContent !== text) place.textContent = text;
}

/** The greatest first; what stands right is not moved, so that the page need not be laid out for it. */
function order(parent: Element, worth: (child: HTMLElement) => number): void {
  const children = [...parent.children].filter((each): each is HTMLElement => each instanceof HTMLElement);
  const wanted = [...children].sort((a, b) => worth(b) - worth(a));
  if (wanted.some((child, at) => child !== children[at])) parent.append(...wanted);
}
