/** Causes with their shares, as the page drew them at build, drawn anew. */
import '../../browser/page-globals.ts';
import { SOMETHING_ELSE } from '../../../model/kinds.ts';
import { element } from '../../browser/element.ts';

/**
 * The list with its heading.
 * @param isStart no answer yet
 */
export function rankingParts(
  ranked: readonly { cause: string; share: number }[],
  isStart: boolean,
  titles: Record<string, string>,
): HTMLElement[] {
  return [
    element('h2', {}, isStart ? 'Likely at the start' : 'Likely now'),
    rankingList(ranked, titles, window.headertank.root),
  ];
}

const SVG = 'http://www.w3.org/2000/svg';

/** @param ranked the most likely first; what is under half a per cent is left out */
function rankingList(
  ranked: readonly { cause: string; share: number }[],
  titles: Record<string, string>,
  root: URL,
): HTMLElement {
  const lines = ranked
    .filter(({ share }) => share >= 0.005)
    .map(({ cause, share }) => {
      const percent = Math.round(share * 100);
      const title = titles[cause] ?? cause;
      const name =
        cause === SOMETHING_ELSE
          ? element('span', {}, title)
          : element('a', { href: new URL(`causes/${cause}.html`, root).href }, title);
      return element(
        'li',
        {},
        element(
          'span',
          { class: 'reading' },
          element('b', {}, percent < 1 ? '<1' : String(percent)),
          ' ',
          element('i', {}, '%'),
        ),
        name,
        bar(percent),
      );
    });
  return element('ol', { class: 'ranking' }, ...lines);
}

function bar(percent: number): SVGElement {
  const drawn = document.createElementNS(SVG, 'svg');
  drawn.setAttribute('class', 'bar');
  drawn.setAttribute('viewBox', '0 0 100 3');
  drawn.setAttribute('preserveAspectRatio', 'none');
  drawn.setAttribute('aria-hidden', 'true');
  const length = document.createElementNS(SVG, 'rect');
  length.setAttribute('width', String(percent));
  length.setAttribute('height', '3');
  drawn.append(length);
  return drawn;
}
