/**
 * Running text, drawings and labels read aloud in the reader's units: what is there, and what comes later. Loaded only where
 * other units than metric are chosen, so that no other page weighs anything for it.
 */
import { textFor } from '../../model/reader-text.ts';
import { readersUnit } from '../../model/readers-unit.ts';
import { showNumber } from '../../model/show-quantity.ts';
import { findUnit, fromSI, toSI } from '../../model/units.ts';
import '../browser/page-globals.ts';

/** Stays as it was written: what somebody typed, a quotation, an address, a file. */
const AS_WRITTEN =
  'script, style, template, textarea, input, q, code, pre, blockquote, [data-as-written], [data-show], [data-fig]';
const SPOKEN = ['aria-label', 'title', 'placeholder'] as const;

/** What was written, and what of ours stands there now. */
interface TextPair {
  metric: string;
  shown: string;
}
const texts = new Map<Text, TextPair>();
const spoken = new Map<Element, Map<string, TextPair>>();

/** The metric text: what stood there before us, unless somebody else has written since. */
function metricOf(now: string, known: TextPair | undefined): string {
  return known?.shown === now ? known.metric : now;
}

function showText(node: Text): void {
  const parent = node.parentElement;
  if (!parent || parent.closest(AS_WRITTEN)) return;
  const metric = metricOf(node.data, texts.get(node));
  const shown = onAnAxis(parent, metric) ?? textFor(metric, window.headertank.habit);
  if (shown === metric) texts.delete(node);
  else texts.set(node, { metric, shown });
  if (shown !== node.data) node.data = shown;
}

const NUMBERS = /[-−]?\d+(?:\.\d+)?/g;

/** A number or a range on the scale of a drawing, or the name of its axis: the unit stands apart from the numbers. */
function onAnAxis(parent: Element, metric: string): string | undefined {
  const symbol = parent instanceof SVGElement ? parent.dataset.in : undefined;
  const written = symbol === undefined ? undefined : findUnit(symbol);
  if (symbol === undefined || !written) return undefined;
  const unit = readersUnit(symbol, window.headertank.habit);
  if (unit === written) return metric;
  const words = metric.replace(symbol, unit.symbol);
  return words !== metric
    ? words
    : metric.replace(NUMBERS, (number) => {
        const value = fromSI(toSI(Number(number.replace('\u2212', '-')), written), unit);
        return showNumber(value, Math.abs(value) >= 10 || Number.isInteger(value) ? 0 : 1);
      });
}

function showSpoken(part: Element): void {
  if (part.closest('[data-as-written]')) return;
  for (const name of SPOKEN) {
    const now = part.getAttribute(name);
    if (now === null) continue;
    const known = spoken.get(part) ?? new Map<string, TextPair>();
    const metric = metricOf(now, known.get(name));
    const shown = textFor(metric, window.headertank.habit);
    if (shown !== metric) spoken.set(part, known.set(name, { metric, shown }));
    if (shown !== now) part.setAttribute(name, shown);
  }
}

function showWithin(part: Node): void {
  if (part instanceof Text) showText(part);
  if (!(part instanceof Element)) return;
  const walker = document.createTreeWalker(part, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) if (node instanceof Text) showText(node);
  for (const each of [part, ...part.querySelectorAll(SPOKEN.map((name) => `[${name}]`).join())])
    showSpoken(each);
}

/** Everything anew: the units have changed. Nodes that are gone are forgotten. */
function showAll(): void {
  for (const node of texts.keys()) if (!node.isConnected) texts.delete(node);
  for (const part of spoken.keys()) if (!part.isConnected) spoken.delete(part);
  showWithin(document.body);
}

new MutationObserver((changes) => {
  for (const { type, target, addedNodes } of changes) {
    if (type === 'attributes' && target instanceof Element) showSpoken(target);
    else if (type === 'characterData') showWithin(target);
    for (const node of addedNodes) showWithin(node);
  }
}).observe(document.body, {
  subtree: true,
  childList: true,
  characterData: true,
  attributeFilter: [...SPOKEN],
});
document.addEventListener('headertank:change', showAll);
showAll();
