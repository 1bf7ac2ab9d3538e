/** Practice: a customer, a car with a hidden fault, tests that cost minutes, a cause to name. */
import '../browser/page-globals.ts';
import { asMostAre } from '../../model/layout.ts';
import { button, element } from '../browser/element.ts';
import { loadScript } from '../browser/load-script.ts';
import { codesIn, readList } from '../practice/case-codes.ts';
import { answerView } from '../practice/page/answer-view.ts';
import { forCar } from '../practice/page/for-car.ts';
import { keepPractice, keptPractice, today } from '../practice/page/kept.ts';
import { loadBench, loadIndex, loadVehicle } from '../practice/page/load.ts';
import { Round } from '../practice/page/round.ts';
import { type RoundHost, roundView } from '../practice/page/round-view.ts';
import { startView } from '../practice/page/start-view.ts';
import type { PracticeIndex } from '../practice/practice-data.ts';
import { withResult } from '../practice/results.ts';
import { withFigures } from '../vehicle/page/figures.ts';
import { WalkWords } from '../walk/page/walk-words.ts';

class PracticePage extends HTMLElement {
  private index: PracticeIndex | undefined;

  connectedCallback() {
    window.addEventListener('hashchange', () => void this.follow());
    void this.follow();
  }

  /** Shows what the address asks for. */
  private async follow(): Promise<void> {
    try {
      this.index ??= await loadIndex();
      const asked = new URLSearchParams(location.hash.slice(1));
      const [code, list] = [asked.get('case'), asked.get('list')];
      if (code !== null) await this.play(code);
      else if (list !== null) this.showList(list);
      else this.showStart();
    } catch {
      this.say('Part of the site cannot be fetched just now. Try again when there is a connection.');
    }
  }

  private say(text: string): void {
    this.replaceChildren(
      element('p', { role: 'status' }, text),
      button('To the beginning', () => this.go(''), 'quiet'),
    );
  }

  private go(hash: string): void {
    // Another case is a place to come back from; the address of the page has no fragment then.
    const [address = ''] = location.href.split('#');
    history.pushState(null, '', hash === '' ? address : `${address}#${hash}`);
    void this.follow();
  }

  private showStart(): void {
    if (this.index) this.replaceChildren(startView(this.index, (code) => this.go(`case=${code}`)));
  }

  /** The cases that a teacher has handed out. */
  private showList(text: string): void {
    const codes = readList(text);
    if (!codes || !this.index) {
      this.say('This address is not whole: ask for it again, and copy all of it.');
      return;
    }
    const { results } = keptPractice();
    const rows = codes.map((code, at) => {
      const result = results.findLast((each) => each.code === code);
      const [, title] = this.complaintOf(code) ?? [];
      const state = result ? (result.right ? 'right' : 'not right') : 'not answered';
      return element(
        'li',
        {},
        title === undefined
          ? `Case ${at + 1}: this shelf does not have it.`
          : button(`Case ${at + 1}: ${title}, ${state}`, () => this.go(`case=${code}&of=${text}`), 'quiet'),
      );
    });
    this.replaceChildren(
      element('h2', {}, `${codes.length} cases handed out`),
      element('ol', { class: 'practice-list' }, ...rows),
      button('To the beginning, and to your results', () => this.go(''), 'quiet'),
    );
  }

  private complaintOf(code: string): [id: string, title: string] | undefined {
    const found = this.index?.symptoms.find(([, , codes]) => codesIn(codes).includes(code));
    return found && [found[0], found[1]];
  }

  private async play(code: string): Promise<void> {
    const [symptom, title = ''] = this.complaintOf(code) ?? [];
    if (symptom === undefined) return this.say('This shelf has no such case.');
    const [bench] = await Promise.all([loadBench(symptom), loadScript('practice-car')]);
    const car = bench.cases.find((each) => each.code === code);
    const { practiceCar } = window.headertank;
    if (!car || !practiceCar) return this.say('This shelf has no such case.');
    const vehicle = await loadVehicle(car.vehicle);
    const { pack, texts, diagnoser } = bench;
    const likeIt = forCar(vehicle, car.diesel);
    const words = new WalkWords(pack.walk.causes, texts, (text) =>
      withFigures(text, texts.general, vehicle, window.headertank.habit),
    );
    const round = new Round(
      diagnoser,
      asMostAre(vehicle.layout),
      car,
      pack.sound,
      practiceCar.answersOf(car, likeIt),
    );
    const { open } = keptPractice();
    const tests = open?.code === code ? open.tests.filter((test) => round.offered.includes(test)) : [];
    const host: RoundHost = {
      bench,
      round,
      vehicle,
      words,
      title,
      tests,
      moves: practiceCar.knows(code, car.faults, likeIt),
      changed: () => keepPractice({ ...keptPractice(), open: { code, tests } }),
      name: (cause) => this.answer(host, symptom, cause),
      leave: () => this.back(),
    };
    this.replaceChildren(roundView(host));
  }

  /** Back to the list that the case came from. */
  private back(): void {
    const list = new URLSearchParams(location.hash.slice(1)).get('of');
    this.go(list === null ? '' : `list=${list}`);
  }

  private answer(host: RoundHost, symptom: string, named: string): void {
    const { round, words, tests, title } = host;
    const says = element('p', { role: 'status' });
    const view = answerView(
      host,
      named,
      (outcome) => {
        const result = {
          code: round.car.code,
          symptom,
          title,
          on: today(),
          did: tests.map((test) => words.test(test)),
          named: words.cause(named),
          ...outcome,
        };
        if (!keepPractice(withResult(keptPractice(), result)))
          says.textContent = 'This device keeps nothing just now: the result goes with the page.';
      },
      [button('On', () => this.back(), 'main')],
    );
    this.replaceChildren(view, says);
  }
}

customElements.define('ht-practice', PracticePage);
