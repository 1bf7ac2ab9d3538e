/** How walks end, by the evidence and by the case bank: for the page that says how far to trust the figures. */
import { figuresBySymptom, figuresOf, isHard, shareOf, walkBank } from '../../library/case-bank.ts';
import { entriesOf } from '../shelf/record-pages.ts';
import { shelf } from '../shelf/shelf.ts';
import { commonestCase } from '../walk/build/booking.ts';
import { walkFiguresOf } from '../walk/build/walk-figures-of.ts';

/** Shares of all walks of a complaint, 0 to 1, and minutes of questions. */
export interface WalkTrust {
  symptom: string;
  proven: number;
  first: number;
  named: number;
  missed: number;
  wronglyProven: number;
  /** Expected by the evidence. */
  minutes: number;
  /** Chance of the ways that were too rare to be followed. */
  notFollowed: number;
}

/** By the evidence, on the layout that most of the shelf's vehicles have. */
export function walksByEvidence(): WalkTrust[] {
  return entriesOf('symptom').map(({ id }) => {
    const { expectedMinutes, ...figures } = walkFiguresOf(commonestCase(id));
    const { proven, first, named, missed, wronglyProven, notFollowed } = figures;
    return {
      symptom: id,
      proven,
      first,
      named,
      missed,
      wronglyProven,
      minutes: expectedMinutes,
      notFollowed,
    };
  });
}

/** Walks of the bank's cars with one complaint; numbers of cars, and the median of their minutes. */
export interface BankTrust {
  /** Undefined for the sum of all complaints. */
  symptom: string | undefined;
  cases: number;
  provenOrFirst: number;
  named: number;
  missed: number;
  wronglyProven: number;
  medianMinutes: number;
}

export interface BankSummary {
  rows: BankTrust[];
  all: BankTrust;
  /** Share of all walks, 0 to 1. */
  shareLed: number;
  shareWrong: number;
  /** Cars that a person has settled as hard; they are not counted in the rows. */
  hard: number;
}

/** By the case bank; a complaint without a case is not there. */
export function walksByBank(): BankSummary {
  const every = walkBank(shelf);
  const walked = every.filter((each) => !isHard(each));
  const row = (symptom: string | undefined, figures: ReturnType<typeof figuresOf>): BankTrust => ({
    symptom,
    cases: figures.cases,
    provenOrFirst: figures.endings.proven + figures.endings.first,
    named: figures.endings.named,
    missed: figures.endings.missed,
    wronglyProven: figures.endings['wrongly proven'],
    medianMinutes: figures.medianMinutes,
  });
  const all = figuresOf(walked);
  return {
    rows: [...figuresBySymptom(walked)].map(([symptom, figures]) => row(symptom, figures)),
    all: row(undefined, all),
    shareLed: shareOf(all, 'proven', 'first'),
    shareWrong: shareOf(all, 'wrongly proven'),
    hard: every.length - walked.length,
  };
}
