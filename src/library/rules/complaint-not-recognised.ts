import { type PhrasingResult, rateOf, weakest } from '../../recogniser/proof.ts';
import type { DraftShelf } from '../draft.ts';
import type { Fault } from '../finding.ts';
import { proofOf } from '../recognition.ts';
import type { ShelfRule } from '../rule.ts';

/** Of all phrasings, those whose own complaint comes first, and those whose own is among the first three. */
const LEAST_FIRST = 0.85;
const LEAST_FIRST_THREE = 0.95;
/** Shares of fewer phrasings would say little. */
const LEAST_PHRASINGS = 100;
/** The worst of the weakest complaint; a list of all would be read by nobody. */
const MOST_SHOWN = 8;

/** Customers’ words lead to their complaint: each phrasing is left out in turn and looked for. */
export const complaintNotRecognised: ShelfRule = {
  id: 'complaint-not-recognised',
  level: 'error',
  on: 'shelf',
  check(shelf) {
    const tried = rememberedProof(shelf);
    const rate = rateOf(tried);
    if (rate.count < LEAST_PHRASINGS) return [];
    if (rate.first >= LEAST_FIRST && rate.firstThree >= LEAST_FIRST_THREE) return [];
    const [weak] = weakest(tried);
    const lost = tried
      .filter(({ complaint, before }) => complaint === weak?.complaint && before > 0)
      .sort((a, b) => b.before - a.before);
    const [worst] = lost;
    if (!worst) return [];
    const percent = (share: number): string => (share * 100).toFixed(1);
    return [
      {
        at: spotOf(worst, shelf),
        found: `The search does not recognise this complaint by its own words. Lost are ${lost.slice(0, MOST_SHOWN).map(inWords).join(', ')}.`,
        expected: `Each phrasing of the shelf is left out in turn and looked for: ${LEAST_FIRST * 100} of 100 have to lead to their own complaint first and ${LEAST_FIRST_THREE * 100} among the first three; now ${percent(rate.first)} and ${percent(rate.firstThree)} do, and this complaint is the weakest.`,
        byHand:
          'write more of what customers say under "heard", or put the words of the lost ones into their groups in words.yaml',
      },
    ];
  },
};

function inWords({ text, first }: PhrasingResult): string {
  return `"${text}" (to ${first})`;
}

/** A second's work for a shelf of a thousand phrasings, so it is done again only when a word of it has changed. */
function rememberedProof(shelf: DraftShelf): PhrasingResult[] {
  const { records, words, memory, faulty } = shelf;
  // A complaint or the words that cannot be read have been reported; the rest would be judged without them.
  if ([...faulty].some((file) => /(?:^|\/)(?:symptoms\/|words\.yaml$)/.test(file))) return [];
  const question = JSON.stringify(['recognition', words, textsOf(shelf)]);
  const known = memory.recall(question) as PhrasingResult[] | undefined;
  const tried = known ?? proofOf({ records, words });
  if (!known) memory.remember(question, tried);
  return tried;
}

function textsOf({ drafts }: DraftShelf): string[] {
  return drafts.filter(({ kind }) => kind !== 'note').flatMap(({ texts }) => texts.map(({ text }) => text));
}

function spotOf({ complaint, text }: PhrasingResult, { drafts, shopFile }: DraftShelf): Fault['at'] {
  const draft = drafts.find(({ kind, id }) => kind === 'symptom' && id === complaint);
  const path = draft?.texts.find((each) => each.text === text)?.path ?? [];
  return { file: draft?.file ?? shopFile, path };
}
