/** A vehicle held against the same schema and rules as on the shelf, without the rest of the shelf. */

import { NO_COUNTS } from '../model/counts.ts';
import { NO_LEARNING } from '../model/learning.ts';
import { type Vehicle, vehicleSchema } from '../model/vehicle.ts';
import { vehiclePath } from '../model/vehicle-file.ts';
import { NO_WORDS } from '../model/words.ts';
import type { Draft, DraftShelf } from './draft.ts';
import { fieldFaults } from './field-fault.ts';
import type { Fault, Path } from './finding.ts';
import { inOrdinarySpelling } from './ordinary-spelling.ts';
import type { RecordRule, ShelfRule } from './rule.ts';
import { badDate } from './rules/bad-date.ts';
import { choiceLeftOpen } from './rules/choice-left-open.ts';
import { figuresContradict } from './rules/figures-contradict.ts';
import { imageInText } from './rules/image-in-text.ts';
import { implausibleQuantity } from './rules/implausible-quantity.ts';
import { layoutContradictsItself } from './rules/layout-contradicts-itself.ts';
import { missingField } from './rules/missing-field.ts';
import { ordinarySpelling } from './rules/ordinary-spelling.ts';
import { rawHtml } from './rules/raw-html.ts';
import { torqueImpossible } from './rules/torque-impossible.ts';
import { unfitValue } from './rules/unfit-value.ts';
import { unknownField } from './rules/unknown-field.ts';
import { unreadableQuantity } from './rules/unreadable-quantity.ts';
import { wrongType } from './rules/wrong-type.ts';
import { wrongUnit } from './rules/wrong-unit.ts';
import { wrongWord } from './rules/wrong-word.ts';
import { emptyRecords } from './shelf.ts';
import { textsIn } from './strings.ts';

const ON_RECORD: readonly RecordRule[] = [
  unknownField,
  missingField,
  choiceLeftOpen,
  wrongType,
  wrongWord,
  wrongUnit,
  unreadableQuantity,
  implausibleQuantity,
  badDate,
  unfitValue,
  rawHtml,
  imageInText,
];
const ON_SHELF: readonly ShelfRule[] = [layoutContradictsItself, figuresContradict, torqueImpossible];

export interface VehicleFault {
  /** Way to the field. */
  path: Path;
  /** What is wrong and what would be right, in sentences. */
  says: string;
  /** Nothing stands there. */
  isMissing: boolean;
}

export interface CheckedVehicle {
  faults: VehicleFault[];
  /** What was read otherwise than it was typed. */
  readAs: VehicleFault[];
  /** What was typed, in the shelf's spelling. */
  value: unknown;
  /** The vehicle once it fits the schema. */
  vehicle: Vehicle | undefined;
}

/**
 * @param id of the vehicle, its file's name
 * @param typed the record as plain data
 */
export function checkVehicle(id: string, typed: unknown): CheckedVehicle {
  const { value, respelled } = inOrdinarySpelling(vehicleSchema, typed);
  const parsed = vehicleSchema.safeParse(value);
  const file = vehiclePath(id);
  const draft: Draft = {
    kind: 'vehicle',
    id,
    file,
    raw: value,
    schema: vehicleSchema,
    faults: parsed.success ? [] : fieldFaults(vehicleSchema, value, parsed.error.issues),
    respelled,
    references: [],
    texts: textsIn(value),
  };
  const faults = ON_RECORD.flatMap((rule) => rule.check(draft));
  if (parsed.success) {
    const records = emptyRecords();
    records.vehicle.set(id, { kind: 'vehicle', id, file, data: parsed.data });
    const shelf = shelfOf(draft, records);
    faults.push(...ON_SHELF.flatMap((rule) => rule.check(shelf)));
  }
  return {
    faults: faults.map(inSentences),
    readAs: ordinarySpelling.check(draft).map(inSentences),
    value,
    vehicle: parsed.success ? parsed.data : undefined,
  };
}

/** A shelf with nothing on it but this vehicle. */
function shelfOf(draft: Draft, records: DraftShelf['records']): DraftShelf {
  const none = new Set<string>();
  const ids: DraftShelf['ids'] = {
    symptom: none,
    cause: none,
    test: none,
    tree: none,
    procedure: none,
    tool: none,
    code: none,
    coolant: none,
    caution: none,
    vehicle: new Set([draft.id]),
    note: none,
    case: none,
  };
  return {
    files: new Map(),
    drafts: [draft],
    records,
    words: NO_WORDS,
    learning: NO_LEARNING,
    counts: NO_COUNTS,
    shopFile: 'shop.yaml',
    wordsFile: 'words.yaml',
    learningFile: 'learning.yaml',
    moved: [],
    guides: [],
    ids,
    memory: { recall: () => undefined, remember: () => undefined },
    faulty: none,
  };
}

function inSentences({ at, found, expected, isMissing = false }: Fault): VehicleFault {
  return {
    path: 'path' in at ? at.path : [],
    says: isMissing || expected === undefined ? found : `${found} ${expected}`,
    isMissing,
  };
}
