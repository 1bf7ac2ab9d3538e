/** After the cause was named: right or not, the minutes, and step by step what was known and what a master would have done. */
import '../../browser/page-globals.ts';
import { shareText } from '../../../diagnosis/reason.ts';
import { SOMETHING_ELSE } from '../../../model/kinds.ts';
import { afterPaint } from '../../browser/after-paint.ts';
import { button, element } from '../../browser/element.ts';
import { loadScript } from '../../browser/load-script.ts';
import { inSentence } from '../../text/in-sentence.ts';
import { Planner } from '../../walk/page/planner.ts';
import { forCar } from './for-car.ts';
import { type OtherWay, sum } from './round.ts';
import { type RoundHost, seenRow } from './round-view.ts';

/** What came of a case, for the device to keep. */
export interface CaseOutcome {
  right: boolean;
  shown: boolean;
  minutes: number;
  planner: number;
  tree: number;
}

const inWhole = (minutes: number) => `${Math.round(minutes)} min`;

/**
 * The answer, filled in bit by bit: the other ways through the car take a while on a phone.
 * @param done called once everything is worked out
 * @param next what can be done then
 */
export function answerView(
  host: Pick<RoundHost, 'bench' | 'round' | 'words' | 'tests' | 'vehicle' | 'moves'>,
  named: string,
  done: (outcome: CaseOutcome) => void,
  next: readonly HTMLElement[],
): HTMLElement {
  const { round, words, tests, bench } = host;
  const { right, shown, share } = round.judge(tests, named);
  const minutes = round.minutes(tests);
  const heading = element('h2', { tabindex: '-1', class: 'answer-sentence' }, right ? 'Right' : 'Not right');
  const rows = element('tbody', {}, wayRow('You', sum(minutes), tests.length, named));
  const steps = element('ol', { class: 'practice-steps' });
  const move = element('div', { class: 'practice-move' });
  const view = element(
    'section',
    { class: 'practice-answer' },
    heading,
    element('p', {}, ...verdict()),
    element('p', {}, round.car.mechanism),
    element(
      'table',
      {},
      element(
        'caption',
        {},
        'Minutes of tests, getting the car ready included; rechecks after the repair are not counted',
      ),
      element(
        'thead',
        {},
        element(
          'tr',
          {},
          ...['Who', 'Minutes', 'Tests', 'Ends at'].map((text) => element('th', { scope: 'col' }, text)),
        ),
      ),
      rows,
    ),
    move,
    element('h2', {}, 'Step by step'),
    steps,
    element('div', { class: 'begin' }, ...next),
  );
  const later = afterPaint();
  const planner = new Planner(bench.diagnoser, words);
  const ways: OtherWay[] = [];
  const go = (by: 'planner' | 'tree', name: string) => () => {
    const way = round.otherWay(by);
    ways.push(way);
    rows.append(wayRow(name, way.minutes, way.tests.length, way.cause, way.tests));
  };
  later(
    () => heading.focus(),
    go('planner', 'The planner'),
    go('tree', 'The tree'),
    () => {
      const [best, tree] = ways;
      done({
        right,
        shown: shown !== 'by no test',
        minutes: sum(minutes),
        planner: best?.minutes ?? 0,
        tree: tree?.minutes ?? 0,
      });
    },
    ...[...tests.keys(), tests.length].map((at) => () => steps.append(stepRow(at))),
    () => void offerMove(),
  );
  return view;

  function causeLink(id: string): Node {
    if (id === SOMETHING_ELSE) return document.createTextNode('something else');
    return element('a', { href: new URL(`causes/${id}.html`, window.headertank.root).href }, words.cause(id));
  }

  function verdict(): (Node | string)[] {
    const faults = round.car.faults.flatMap((id, at) => [...(at > 0 ? [' and '] : []), causeLink(id)]);
    const two = round.car.faults.length > 1;
    if (!right) return ['It is ', ...faults, '. You named: ', causeLink(named), '.'];
    const how =
      shown === 'by a test'
        ? ', and a test of yours has shown it.'
        : shown === 'only the recheck shows it'
          ? '. Only the recheck after the repair shows it; '
          : '. None of your tests has shown it: ';
    const believed = shown === 'by a test' ? '' : `by what you saw ${shareText(share)} of such cars have it.`;
    return [
      'It is ',
      ...faults,
      how,
      believed,
      ...(two ? [' There are two faults on this car; naming one counts.'] : []),
    ];
  }

  function wayRow(
    who: string,
    minutes: number,
    count: number,
    cause: string | undefined,
    way: readonly string[] = [],
  ): HTMLTableRowElement {
    const ends = cause === undefined ? document.createTextNode('no cause') : causeLink(cause);
    return element(
      'tr',
      {},
      element('th', { scope: 'row' }, who),
      element('td', { class: 'figure' }, inWhole(minutes)),
      element('td', { class: 'figure' }, String(count)),
      element(
        'td',
        {},
        ends,
        ...(way.length > 0
          ? [element('br'), element('small', {}, way.map((test) => words.test(test)).join(' › '))]
          : []),
      ),
    );
  }

  /** @param at tests done before this step; at the last of them the cause was named */
  function stepRow(at: number): HTMLLIElement {
    const before = tests.slice(0, at);
    const test = tests[at];
    const believed = round
      .belief(before)
      .map(
        ({ cause, share: each }) =>
          `${shareText(each)} ${cause === SOMETHING_ELSE ? 'something else' : inSentence(words.cause(cause))}`,
      )
      .join(', ');
    const { test: wise, why } = round.advice(before, planner);
    const would =
      wise === undefined ? why : wise === test ? `The same. ${why}` : `${words.test(wise)}. ${why}`;
    const line = (name: string, text: string) => [element('dt', {}, name), element('dd', {}, text)];
    const seen = test === undefined ? undefined : seenRow(host, test, minutes[at] ?? 0, at);
    seen?.removeAttribute('id');
    const because = test === undefined ? undefined : round.why(test);
    return element(
      'li',
      {},
      ...(seen ? [...seen.childNodes] : [element('b', {}, `You named: ${words.cause(named)}`)]),
      element(
        'dl',
        {},
        ...(because === undefined ? [] : line('Why it showed that', because)),
        ...line(at === 0 ? 'Believed at the start' : 'Believed before', believed),
        ...line('A master', would),
      ),
    );
  }

  /** The car beside a sound one, where the simulated car knows the fault. */
  async function offerMove(): Promise<void> {
    const open = button(
      'See it move: this car beside a sound one',
      async () => {
        try {
          await loadScript('see-it-move');
          const isDrawn = window.headertank.moves?.(move, {
            title: words.cause(round.car.faults[0] ?? ''),
            code: round.car.code,
            faults: round.car.faults,
            vehicle: forCar(host.vehicle, round.car.diesel),
          });
          if (!isDrawn) move.replaceChildren('The simulated car does not know this fault.');
        } catch {
          move.replaceChildren('There is no connection just now.');
        }
      },
      'quiet',
    );
    if (host.moves) move.replaceChildren(open);
  }
}
