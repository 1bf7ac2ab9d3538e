/** Every rule of the shelf. A rule that is not here is not checked; a test holds that each has its faulty shelf. */
import type { Rule } from '../rule.ts';
import { alias } from './alias.ts';
import { badDate } from './bad-date.ts';
import { byteOrderMark } from './byte-order-mark.ts';
import { caseCannotBe } from './case-cannot-be.ts';
import { causeOnNoVehicle } from './cause-on-no-vehicle.ts';
import { causeWithoutEnd } from './cause-without-end.ts';
import { causeWithoutEvidence } from './cause-without-evidence.ts';
import { choiceLeftOpen } from './choice-left-open.ts';
import { claimWithoutWay } from './claim-without-way.ts';
import { codeAndSymptomApart } from './code-and-symptom-apart.ts';
import { complaintNotRecognised } from './complaint-not-recognised.ts';
import { correctedFigure } from './corrected-figure.ts';
import { countsContradictWord } from './counts-contradict-word.ts';
import { dearerThanBestFound } from './dearer-than-best-found.ts';
import { duplicateKey } from './duplicate-key.ts';
import { emptyFile } from './empty-file.ts';
import { endLeadsWithUnlikelyCause } from './end-leads-with-unlikely-cause.ts';
import { endNamesTooLittle } from './end-names-too-little.ts';
import { endWithoutProof } from './end-without-proof.ts';
import { endWithoutRepair } from './end-without-repair.ts';
import { evidenceContradictsItself } from './evidence-contradicts-itself.ts';
import { explainedWordUnused } from './explained-word-unused.ts';
import { figuresContradict } from './figures-contradict.ts';
import { guideHead } from './guide-head.ts';
import { guideRunsCode } from './guide-runs-code.ts';
import { guideWithoutPlace } from './guide-without-place.ts';
import { hiddenByEscape } from './hidden-by-escape.ts';
import { idNotKebab } from './id-not-kebab.ts';
import { idTwice } from './id-twice.ts';
import { imageInText } from './image-in-text.ts';
import { implausibleQuantity } from './implausible-quantity.ts';
import { layoutContradictsItself } from './layout-contradicts-itself.ts';
import { leadingZero } from './leading-zero.ts';
import { leftToWrite } from './left-to-write.ts';
import { linkInShelf } from './link-in-shelf.ts';
import { linkLeadsNowhere } from './link-leads-nowhere.ts';
import { missingField } from './missing-field.ts';
import { misspeltField } from './misspelt-field.ts';
import { movedReference } from './moved-reference.ts';
import { notUtf8 } from './not-utf-8.ts';
import { noteReview } from './note-review.ts';
import { ordinarySpelling } from './ordinary-spelling.ts';
import { outcomeWithoutWay } from './outcome-without-way.ts';
import { placeNotOnLayout } from './place-not-on-layout.ts';
import { proofNotOnLayout } from './proof-not-on-layout.ts';
import { proofSpeaksLess } from './proof-speaks-less.ts';
import { proofWithoutItsCause } from './proof-without-its-cause.ts';
import { rawHtml } from './raw-html.ts';
import { readingNamesOtherLimit } from './reading-names-other-limit.ts';
import { scaleNotTiled } from './scale-not-tiled.ts';
import { secondLimit } from './second-limit.ts';
import { shopMissing } from './shop-missing.ts';
import { stepAndEndAlike } from './step-and-end-alike.ts';
import { stepLeadsNowhere } from './step-leads-nowhere.ts';
import { stepLoops } from './step-loops.ts';
import { stepNeverReached } from './step-never-reached.ts';
import { tabIndent } from './tab-indent.ts';
import { testChangesNothing } from './test-changes-nothing.ts';
import { testOnWrongLayout } from './test-on-wrong-layout.ts';
import { textCutByColon } from './text-cut-by-colon.ts';
import { titleTwice } from './title-twice.ts';
import { toldEvidence } from './told-evidence.ts';
import { tooLarge } from './too-large.ts';
import { tooManyWays } from './too-many-ways.ts';
import { torqueImpossible } from './torque-impossible.ts';
import { treeAndSymptomApart } from './tree-and-symptom-apart.ts';
import { unexpectedFile } from './unexpected-file.ts';
import { unfitValue } from './unfit-value.ts';
import { unknownField } from './unknown-field.ts';
import { unknownFigure } from './unknown-figure.ts';
import { unknownOutcome } from './unknown-outcome.ts';
import { unknownReference } from './unknown-reference.ts';
import { unreadableQuantity } from './unreadable-quantity.ts';
import { unseenCharacter } from './unseen-character.ts';
import { unusedRecord } from './unused-record.ts';
import { windowsLineEnds } from './windows-line-ends.ts';
import { wordInWrongGroup } from './word-in-wrong-group.ts';
import { worseThanNoTests } from './worse-than-no-tests.ts';
import { wrongType } from './wrong-type.ts';
import { wrongUnit } from './wrong-unit.ts';
import { wrongWord } from './wrong-word.ts';
import { yamlSyntax } from './yaml-syntax.ts';

export const RULES: readonly Rule[] = [
  shopMissing,
  linkInShelf,
  unexpectedFile,
  tooLarge,
  notUtf8,
  unseenCharacter,
  guideHead,
  guideRunsCode,
  byteOrderMark,
  windowsLineEnds,
  tabIndent,
  emptyFile,
  alias,
  yamlSyntax,
  duplicateKey,
  layoutContradictsItself,
  leadingZero,
  misspeltField,
  unknownField,
  missingField,
  textCutByColon,
  wrongType,
  choiceLeftOpen,
  wrongWord,
  ordinarySpelling,
  wrongUnit,
  unreadableQuantity,
  implausibleQuantity,
  badDate,
  idNotKebab,
  unfitValue,
  hiddenByEscape,
  rawHtml,
  imageInText,
  unknownFigure,
  leftToWrite,
  idTwice,
  titleTwice,
  toldEvidence,
  unknownReference,
  movedReference,
  noteReview,
  linkLeadsNowhere,
  guideWithoutPlace,
  explainedWordUnused,
  torqueImpossible,
  figuresContradict,
  correctedFigure,
  countsContradictWord,
  unknownOutcome,
  scaleNotTiled,
  evidenceContradictsItself,
  treeAndSymptomApart,
  codeAndSymptomApart,
  stepLeadsNowhere,
  outcomeWithoutWay,
  stepAndEndAlike,
  stepLoops,
  stepNeverReached,
  endWithoutProof,
  endWithoutRepair,
  claimWithoutWay,
  caseCannotBe,
  causeOnNoVehicle,
  causeWithoutEnd,
  causeWithoutEvidence,
  placeNotOnLayout,
  proofNotOnLayout,
  proofSpeaksLess,
  proofWithoutItsCause,
  testOnWrongLayout,
  tooManyWays,
  testChangesNothing,
  endLeadsWithUnlikelyCause,
  endNamesTooLittle,
  worseThanNoTests,
  dearerThanBestFound,
  readingNamesOtherLimit,
  secondLimit,
  complaintNotRecognised,
  wordInWrongGroup,
  unusedRecord,
];
