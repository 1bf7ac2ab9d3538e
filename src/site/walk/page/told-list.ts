/** The counter's questions on a complaint's page, with answers to tap: each moves the causes a little, and goes onto the card. */
import '../../browser/page-globals.ts';
import { type ToldFactors, toldTogether } from '../../../diagnosis/told.ts';
import type { Job } from '../../../model/job.ts';
import { button, element } from '../../browser/element.ts';
import { loadScript } from '../../browser/load-script.ts';
import { notFetched } from '../../browser/not-fetched.ts';
import { type Answers, isToldKey, toldKey, toldOnCard } from '../answers.ts';
import type { CallQuestions } from '../call-questions.ts';
import type { BesideHost } from './walk-beside.ts';
import type { WalkState } from './walk-state.ts';

interface Question {
  asked: string;
  /** What each answer says of the causes, by its words. */
  answers: ReadonlyMap<string, ToldFactors>;
}

/** The questions of one complaint, fetched when somebody takes their answers or has taken some before. */
export class ToldList {
  private readonly host: BesideHost;
  private readonly symptom: string;
  private readonly line = element('p', { role: 'status', class: 'told-line no-print' });
  private readonly buttons = new Map<string, Map<string, HTMLButtonElement>>();
  /** By their keys in the walk's answers. */
  private readonly questions = new Map<string, Question>();
  private opening: Promise<void> | undefined;

  constructor(host: BesideHost) {
    this.host = host;
    this.symptom = host.diagnoser.data.symptom;
  }

  /** Puts the answers under their questions. */
  open(): Promise<void> {
    this.opening ??= this.fetch().catch(() => {
      this.opening = undefined;
      document.querySelector('.take-told')?.append(' ', notFetched('The answers'));
    });
    return this.opening;
  }

  /** @param likeliest what all answers come to, in a sentence */
  show({ answers }: WalkState, likeliest: string): void {
    const given = [...answers].filter(([key]) => isToldKey(key));
    if (given.length > 0) void this.open();
    for (const [key, row] of this.buttons)
      for (const [answer, each] of row) each.ariaPressed = String(answers.get(key) === answer);
    const says = given.length > 0 ? likeliest : '';
    if (this.line.textContent !== says) this.line.textContent = says;
    const link = document.querySelector<HTMLAnchorElement>('a[href*="#call="]');
    if (link) link.hash = new URLSearchParams([['call', this.symptom], ...given]).toString();
  }

  /** What the customer has answered, as the job card keeps it. */
  onCard(answers: Answers): NonNullable<Job['told']> {
    return this.given(answers).map(({ key, asked, answer }) => ({ key: toldOnCard(key), asked, answer }));
  }

  /** An address may hold anything: only answers of these questions count. */
  private given(answers: Answers): { key: string; asked: string; answer: string; factors: ToldFactors }[] {
    return [...answers].flatMap(([key, answer]) => {
      const question = this.questions.get(key);
      const factors = question?.answers.get(answer);
      return question && factors ? [{ key, asked: question.asked, answer, factors }] : [];
    });
  }

  private async fetch(): Promise<void> {
    const list = document.querySelector<HTMLElement>('.ask');
    if (!list) return;
    let call: CallQuestions | undefined;
    window.headertank.receiveCall = (received) => {
      call = received;
    };
    await loadScript(`../data/calls/${this.symptom}`);
    const terms = [...list.querySelectorAll('dt')];
    for (const [at, { id, question, answers }] of call?.ask.entries() ?? []) {
      if (id === undefined || answers === undefined) continue;
      const key = toldKey(this.symptom, id);
      this.questions.set(key, {
        asked: question,
        answers: new Map(answers.map(({ is, factors }) => [is, factors])),
      });
      terms[at]?.after(
        this.row(
          key,
          question,
          answers.map(({ is }) => is),
        ),
      );
    }
    this.host.diagnoser.told = (given) => toldTogether(this.given(given).map(({ factors }) => factors));
    list.after(this.line);
    const taker = document.querySelector('.take-told');
    const isAsked = taker?.contains(document.activeElement) === true;
    taker?.remove();
    if (isAsked) list.querySelector('button')?.focus();
    this.host.again();
  }

  private row(key: string, question: string, answers: readonly string[]): HTMLElement {
    const row = new Map(
      answers.map((answer) => [
        answer,
        button(
          answer,
          () => {
            const isTaken = row.get(answer)?.ariaPressed === 'true';
            this.host.give(key, isTaken ? undefined : answer);
          },
          'tap',
        ),
      ]),
    );
    this.buttons.set(key, row);
    return element('dd', { class: 'told no-print', role: 'group', 'aria-label': question }, ...row.values());
  }
}
