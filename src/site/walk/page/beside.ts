/** Under and beside the questions: answers so far, what fights, the quickest next step, what is known, the way onto the job card. */
import '../../browser/page-globals.ts';
import type { Action } from '../../../diagnosis/model.ts';
import { describeContradiction, shareText } from '../../../diagnosis/reason.ts';
import { element } from '../../browser/element.ts';
import type { WalkTexts } from '../walk-data.ts';
import { bookingFromHere } from './booking-from-here.ts';
import { KnownPart } from './known-part.ts';
import { OtherSeen } from './other-seen.ts';
import { type Diagnosis, Planner } from './planner.ts';
import { allAnswers } from './replay.ts';
import { ToldList } from './told-list.ts';
import { Trail } from './trail.ts';
import type { BesideHost, Shown, WalkBeside } from './walk-beside.ts';
import { showBooking, showEstimate, vehicleMinutes } from './walk-booking.ts';
import { handOver } from './walk-hand-over.ts';
import { likelyParts, nameOf } from './walk-likely.ts';
import type { WalkState } from './walk-state.ts';
import { WalkWords } from './walk-words.ts';

/** The rest of a walk, once it is wanted. */
export class Beside implements WalkBeside {
  readonly texts: WalkTexts;
  private readonly host: BesideHost;
  private readonly words: WalkWords;
  private readonly planner: Planner;
  private readonly trail: Trail;
  private readonly known: KnownPart;
  private readonly other: OtherSeen;
  private readonly told: ToldList;
  /** What the numbers say of a state is costly, so it is worked out when it is first wanted, and then once. */
  private readonly diagnoses = new WeakMap<WalkState, Diagnosis>();
  private state: WalkState | undefined;
  /** Under the ranking: what is quickest next. */
  private readonly numbers = element('div');

  constructor(host: BesideHost, texts: WalkTexts) {
    this.host = host;
    this.texts = texts;
    const { data } = host.diagnoser;
    this.words = new WalkWords(data.causes, texts, host.say);
    this.planner = new Planner(host.diagnoser, this.words);
    this.other = new OtherSeen(data.symptom, host.walk, (key, value) => host.answer(key, value));
    this.trail = new Trail(this.words, this.other, host.askAgain);
    this.known = new KnownPart(host, texts);
    this.told = new ToldList(host);
    this.place('.walk-foot').after(this.trail.root);
  }

  private place(selector: string): HTMLElement {
    const found = this.host.walk.querySelector<HTMLElement>(selector);
    if (!found) throw new Error(`The walk has no ${selector}`);
    return found;
  }

  private diagnose(state: WalkState): Diagnosis {
    const known = this.diagnoses.get(state);
    if (known) return known;
    const made = this.planner.diagnose(state.answers, state.layout, state.missing);
    this.diagnoses.set(state, made);
    return made;
  }

  /** What the planner would ask next, and why; worked out once for a state. */
  quickest(state: WalkState): { sentence: string; test?: string; cause?: string } {
    const { step, reason } = this.diagnose(state);
    const { action } = step.best;
    if (action.kind === 'pass-on')
      return {
        sentence:
          'Nothing left here is quicker than passing the car on, with this sheet and the likeliest causes in the list.',
      };
    const sentence = `The drawn path ends here; quickest by the numbers: ${reason.sentence}`;
    return action.kind === 'test' ? { sentence, test: action.test } : { sentence, cause: action.cause };
  }

  /** Asks what else was seen at a question. */
  askOther(key: string): void {
    this.other.ask(key);
  }

  /** The counter's questions take answers. */
  takeTold(): Promise<void> {
    return this.told.open();
  }

  /** @returns a line that says where the answers went */
  toJobCard(state: WalkState): Promise<HTMLElement> {
    return handOver(this.host.diagnoser.data.symptom, state, this.words, this.other, this.told);
  }

  /** Everything beside the question as it is in this state. */
  show(state: WalkState, { asked }: Shown): void {
    this.state = state;
    const { answers, layout, missing, trail, place } = state;
    this.trail.show(allAnswers(answers, trail));
    this.other.close();
    const diagnosis = this.diagnose(state);
    this.showConflicts(diagnosis);
    const { likeliest, next, isAsked } = this.comesTo(state, diagnosis, asked);
    const comesTo = `${likeliest} ${next}`.trim();
    // Before the first answer it says nothing that the page does not; what is asked already is before everybody's eyes.
    this.showLine(answers.size === 0 ? '' : isAsked ? likeliest : comesTo);
    this.known.show({ answers, missing, layout, comesTo });
    this.told.show(state, likeliest);
    this.numbers.replaceChildren(
      ...likelyParts(
        { diagnosis, isProven: place.standing.kind === 'proven', asked },
        this.words,
        (cause) => this.host.diagnoser.nextProof(cause, answers, layout, missing),
        this.host.ask,
      ),
    );
    document.querySelector('[data-start-ranking]')?.append(this.numbers);
    // Every way on from here is followed for it, so it waits until nothing else does.
    setTimeout(() => {
      if (this.state === state) this.showMinutes(state);
    }, 200);
  }

  /** Best cause and next act, a sentence each. */
  private comesTo(
    state: WalkState,
    { step }: Diagnosis,
    asked: string | undefined,
  ): { likeliest: string; next: string; isAsked: boolean } {
    const { standing, belief } = state.place;
    if (standing.kind === 'proven')
      return { likeliest: `Proven: ${this.words.cause(standing.cause)}.`, next: '', isAsked: false };
    const [best] = belief.ranked;
    const { action, own } = step.best;
    return {
      likeliest: best ? `Likeliest: ${this.words.cause(best.cause)}, ${shareText(best.share)}.` : '',
      next: `Next: ${nameOf(action, this.words)}, ${Math.round(own)} min.`,
      isAsked: this.testOf(action, state) === asked,
    };
  }

  private testOf(action: Action, { answers, layout, missing }: WalkState): string | undefined {
    if (action.kind === 'test') return action.test;
    return action.kind === 'prove'
      ? this.host.diagnoser.nextProof(action.cause, answers, layout, missing)
      : undefined;
  }

  /** Stays in view under the thumb. */
  private showLine(said: string): void {
    const line = this.place('.walk-line');
    if (line.textContent !== said) line.textContent = said;
  }

  private showConflicts({ conflicts }: Diagnosis): void {
    const wanted = conflicts.map((found) => describeContradiction(found, this.planner.titles));
    const place = this.place('.walk-fights');
    // What stands there already is not said again.
    if (place.dataset.says === wanted.join()) return;
    place.dataset.says = wanted.join();
    place.replaceChildren(
      ...wanted.map((text) =>
        element('p', { class: 'caution' }, element('b', {}, 'These findings conflict. '), text),
      ),
    );
  }

  private showMinutes(state: WalkState): void {
    const { data } = this.host.diagnoser;
    const { vehicle } = window.headertank;
    const fromStart = vehicleMinutes(data.symptom);
    const minutes =
      vehicle && state.answers.size > 0
        ? { ...bookingFromHere(this.host.diagnoser, state), for: `${vehicle.title}, from this question on` }
        : fromStart;
    showBooking(minutes, state.place.standing.kind === 'proven');
    showEstimate(state.place.belief.ranked, data.causes, vehicle?.repairs ?? this.texts.repairs, minutes);
  }
}
