/** From a caller's words to what is shown first: a guide, codes, names, complaints, and the question that parts them. */
import { unpack } from '../../../recogniser/packed.ts';
import { type Complaint, Recogniser } from '../../../recogniser/recogniser.ts';
import { stemOf } from '../../../recogniser/stem.ts';
import { clausesOf, isSmall } from '../../../recogniser/words.ts';
import type { ComplaintCard, ComplaintData, PageLink, PartingQuestion } from '../complaint-data.ts';

export interface ShownComplaint extends ComplaintCard, Complaint {
  address: string;
}

export interface Recognition {
  /** Pages that come before any complaint: a guide for who is stranded, a code, what is called just so. */
  pages: readonly PageLink[];
  /** The likeliest first, three at most. */
  complaints: readonly ShownComplaint[];
  /** The first stands alone, as the words or the answers make it. */
  isSure: boolean;
  /** It sounds like none of them. */
  isElsewhere: boolean;
  /** Parts two of those that are shown; answered before, it is not asked again. */
  question: PartingQuestion | undefined;
  mended: readonly { from: string; to: string }[];
}

/** What somebody has answered: the question, and the complaint the answer means. */
export type Answers = ReadonlyMap<string, string>;

export interface ComplaintFinder {
  /** @param text as typed */
  find(text: string, answers: Answers): Recognition;
}

/** An answer counts as much as words that say the same ten times. */
const PARTED = 0.1;
/** As sure as the recogniser's own words have to be (src/recogniser/sureness.ts). */
const SURE = 0.9;
const MOST_PAGES = 3;
/** A name answers when more than this share of its words was typed. */
const LEAST_OF_NAME = 0.5;

/** Takes a tenth of a second; each answer after that a fraction of a millisecond. */
export function complaintFinder(data: ComplaintData): ComplaintFinder {
  const recogniser = new Recogniser(unpack(data.knowledge));
  const names = data.pages.map((page) => ({ page, stems: new Set(tellingStems(page.title)) }));
  const guides = data.guides.flatMap(({ address, phrases }) => {
    const page = data.pages.find((each) => each.address === address);
    return page ? [{ page, phrases: phrases.map(stemsOf) }] : [];
  });
  // The first call of everything is its slowest, and nobody waits for this one.
  recogniser.recognise('the nedle goes up at the lights');
  return {
    find(text, answers) {
      const { codes, complaints, isSure, isElsewhere, mended } = recogniser.recognise(text);
      const stems = stemsOf(text);
      const urgent = guides.flatMap(({ page, phrases }) =>
        phrases.some((phrase) => holds(stems, phrase)) ? [page] : [],
      );
      const ofCodes = codes.flatMap((code) =>
        data.pages.filter(({ address }) => address === `codes/${code}.html`),
      );
      const named = namedBy(tellingStems(text), names);
      const parted = afterAnswers(complaints, data.questions, answers);
      const answered = parted !== complaints;
      return {
        pages: [...new Set([...urgent, ...ofCodes, ...named])].slice(0, MOST_PAGES),
        complaints: parted.flatMap((complaint) => {
          const card = data.cards[complaint.id];
          return card ? [{ ...card, ...complaint, address: `symptoms/${complaint.id}.html` }] : [];
        }),
        // What is called just so is what was meant.
        isSure: named.length === 0 && ((isSure && !answered) || (answered && (parted[0]?.share ?? 0) > SURE)),
        isElsewhere: isElsewhere && !answered,
        question: questionFor(parted, data.questions, answers),
        mended,
      };
    },
  };
}

function stemsOf(text: string): string[] {
  return clausesOf(text)
    .flat()
    .map(({ word }) => stemOf(word));
}

function tellingStems(text: string): string[] {
  return clausesOf(text)
    .flat()
    .flatMap(({ word }) => (isSmall(word) ? [] : [stemOf(word)]));
}

function holds(stems: readonly string[], phrase: readonly string[]): boolean {
  return stems.some((_, at) => phrase.every((stem, next) => stems[at + next] === stem));
}

/** Pages in whose name every word stands, and little else; the shortest name first. */
function namedBy(
  stems: readonly string[],
  names: readonly { page: PageLink; stems: ReadonlySet<string> }[],
): PageLink[] {
  if (stems.length === 0) return [];
  return names
    .filter(
      (name) =>
        stems.every((stem) => name.stems.has(stem)) && new Set(stems).size > LEAST_OF_NAME * name.stems.size,
    )
    .sort((a, b) => a.stems.size - b.stems.size)
    .map(({ page }) => page);
}

/** The complaints with what was answered reckoned in; as they were when nothing was answered about them. */
function afterAnswers(
  complaints: readonly Complaint[],
  questions: readonly PartingQuestion[],
  answers: Answers,
): readonly Complaint[] {
  let parted = complaints;
  for (const question of questions) {
    const meant = answers.get(question.ask);
    const said = question.answers.find(({ means }) => means === meant);
    if (!said || !isBetween(question, parted)) continue;
    const others = question.answers.filter((each) => each !== said).map(({ means }) => means);
    parted = parted.map((each) =>
      others.includes(each.id) ? { ...each, share: each.share * PARTED } : each,
    );
  }
  if (parted === complaints) return complaints;
  const whole = parted.reduce((sum, { share }) => sum + share, 0);
  return parted.map((each) => ({ ...each, share: each.share / whole })).sort((a, b) => b.share - a.share);
}

/** The question that parts the likeliest two that any question parts. */
function questionFor(
  complaints: readonly Complaint[],
  questions: readonly PartingQuestion[],
  answers: Answers,
): PartingQuestion | undefined {
  const place = (id: string): number => complaints.findIndex((complaint) => complaint.id === id);
  const likelihood = ({ answers: both }: PartingQuestion): number =>
    both.reduce((sum, { means }) => sum + place(means), 0);
  return questions
    .filter((question) => !answers.has(question.ask) && isBetween(question, complaints))
    .sort((a, b) => likelihood(a) - likelihood(b))[0];
}

function isBetween({ answers }: PartingQuestion, complaints: readonly Complaint[]): boolean {
  return answers.every(({ means }) => complaints.some(({ id }) => id === means));
}
