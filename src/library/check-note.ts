/** A note held against the same schema and the same rules as on the shelf, without the rest of the shelf. */
import { correctionSchema, noteSchema } from '../model/note.ts';
import { notePath } from '../model/note-file.ts';
import { correctionFault } from './correction-fault.ts';
import type { Draft } from './draft.ts';
import { fieldFaults } from './field-fault.ts';
import type { Fault, Path } from './finding.ts';
import type { RecordRule } from './rule.ts';
import { badDate } from './rules/bad-date.ts';
import { idNotKebab } from './rules/id-not-kebab.ts';
import { imageInText } from './rules/image-in-text.ts';
import { missingField } from './rules/missing-field.ts';
import { misspeltField } from './rules/misspelt-field.ts';
import { rawHtml } from './rules/raw-html.ts';
import { unfitValue } from './rules/unfit-value.ts';
import { unknownField } from './rules/unknown-field.ts';
import { unknownFigure } from './rules/unknown-figure.ts';
import { wrongType } from './rules/wrong-type.ts';
import { wrongWord } from './rules/wrong-word.ts';
import { textsIn } from './strings.ts';

/** Rules about one record by itself that a note can break. */
const RULES: readonly RecordRule[] = [
  misspeltField,
  unknownField,
  missingField,
  wrongType,
  wrongWord,
  badDate,
  idNotKebab,
  unfitValue,
  rawHtml,
  imageInText,
  unknownFigure,
];

export interface NoteFault {
  /** Way to the field. */
  path: Path;
  /** What is wrong and what would be right, in sentences. */
  says: string;
  /** Nothing stands there. */
  isMissing: boolean;
}

/**
 * @param id of the note, its file's name
 * @param raw the note as its file has it
 */
export function checkNote(id: string, raw: unknown): NoteFault[] {
  const parsed = noteSchema.safeParse(raw);
  const date = typeof raw === 'object' && raw !== null && 'date' in raw ? String(raw.date) : '';
  const draft: Draft = {
    kind: 'note',
    id,
    file: notePath(id, { date }),
    raw,
    schema: noteSchema,
    faults: parsed.success ? [] : fieldFaults(noteSchema, raw, parsed.error.issues),
    respelled: [],
    references: [],
    texts: textsIn(raw),
  };
  const faults = RULES.flatMap((rule) => rule.check(draft)).map(inSentences);
  const corrects = correctionSchema.safeParse(raw).data?.corrects;
  const correction = corrects && correctionFault(corrects);
  if (correction)
    faults.push({
      path: ['corrects', 'is'],
      says: `${correction.found} ${correction.expected}`,
      isMissing: false,
    });
  return faults;
}

function inSentences({ at, found, expected, isMissing = false }: Fault): NoteFault {
  return {
    path: 'path' in at ? at.path : [],
    // What a field is for stands beside its box.
    says: isMissing || expected === undefined ? found : `${found} ${expected}`,
    isMissing,
  };
}
