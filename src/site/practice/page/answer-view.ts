/** After the cause was named: right or not, the minutes, and step by step what was known and what a master would have done. */
import '../../browser/page-globals.ts';
import { shareText } from '../../../diagnosis/reason.ts';
import { afterPaint } from '../../browser/after-paint.ts';
import { button, element } from '../../browser/element.ts';
import { loadScript } from '../../browser/load-script.ts';
import { Planner } from '../../walk/page/planner.ts';
import { causeLink, wayRow, waysTable } from './answer-rows.ts';
import { stepRow } from './answer-step.ts';
import { forCar } from './for-car.ts';
import { type OtherWay, sum } from './round.ts';
import type { RoundHost } from './round-view.ts';

/** What came of a case, for the device to keep. */
export interface CaseOutcome {
  right: boolean;
  shown: boolean;
  minutes: number;
  planner: number;
  tree: number;
}

type Host = Pick<RoundHost, 'bench' | 'round' | 'words' | 'tests' | 'vehicle' | 'moves'>;

/**
 * The answer, filled in bit by bit: the other ways through the car take a while on a phone.
 * @param done called once everything is worked out
 * @param next what can be done then
 */
export function answerView(
  host: Host,
  named: string,
  done: (outcome: CaseOutcome) => void,
  next: readonly HTMLElement[],
): HTMLElement {
  const { round, words, tests, bench } = host;
  const { right, shown } = round.judge(tests, named);
  const minutes = sum(round.minutes(tests));
  const heading = element('h2', { tabindex: '-1', class: 'answer-sentence' }, right ? 'Right' : 'Not right');
  const yours = wayRow(words, { who: 'You', minutes, count: tests.length, cause: named });
  const rows = element('tbody', {}, yours);
  const steps = element('ol', { class: 'practice-steps' });
  const move = element('div', { class: 'practice-move' });
  const view = element(
    'section',
    { class: 'practice-answer' },
    heading,
    element('p', {}, ...verdict(host, named)),
    element('p', {}, round.car.mechanism),
    waysTable(rows),
    move,
    element('h2', {}, 'Step by step'),
    steps,
    element('div', { class: 'begin' }, ...next),
  );
  const later = afterPaint();
  const planner = new Planner(bench.diagnoser, words);
  const ways: OtherWay[] = [];
  const go = (by: 'planner' | 'tree', who: string) => () => {
    const way = round.otherWay(by);
    ways.push(way);
    rows.append(wayRow(words, { ...way, who, count: way.tests.length }));
  };
  const tell = () => {
    const [best, tree] = ways;
    done({
      right,
      shown: shown !== 'by no test',
      minutes,
      planner: best?.minutes ?? 0,
      tree: tree?.minutes ?? 0,
    });
  };
  later(
    () => heading.focus(),
    go('planner', 'The planner'),
    go('tree', 'The tree'),
    tell,
    ...[...tests.keys(), tests.length].map((at) => () => steps.append(stepRow(host, planner, named, at))),
    () => offerMove(host, move),
  );
  return view;
}

const HOW = {
  'by a test': ', and a test of yours has shown it.',
  'only the recheck shows it': '. Only the recheck after the repair shows it; ',
  'by no test': '. None of your tests has shown it: ',
} as const;

function verdict({ round, words, tests }: Host, named: string): (Node | string)[] {
  const { right, shown, share } = round.judge(tests, named);
  const { faults } = round.car;
  const names = faults.flatMap((id, at) => [...(at > 0 ? [' and '] : []), causeLink(words, id)]);
  if (!right) return ['It is ', ...names, '. You named: ', causeLink(words, named), '.'];
  const believed = shown === 'by a test' ? '' : `by what you saw ${shareText(share)} of such cars have it.`;
  const two = faults.length > 1 ? [' There are two faults on this car; naming one counts.'] : [];
  return ['It is ', ...names, HOW[shown], believed, ...two];
}

/** Offers the car beside a sound one, where the simulated car knows the fault. */
function offerMove({ round, words, vehicle, moves }: Host, move: HTMLElement): void {
  if (!moves) return;
  const show = async () => {
    try {
      await loadScript('see-it-move');
      const isDrawn = window.headertank.moves?.(move, {
        title: words.cause(round.car.faults[0] ?? ''),
        code: round.car.code,
        faults: round.car.faults,
        vehicle: forCar(vehicle, round.car.diesel),
      });
      if (!isDrawn) move.replaceChildren('The simulated car does not know this fault.');
    } catch {
      move.replaceChildren('There is no connection just now.');
    }
  };
  move.replaceChildren(button('See it move: this car beside a sound one', show, 'quiet'));
}
