/** The kinds of record on the shelf: the folder in content/ that holds each, and what people call it. */
export const KINDS = {
  symptom: { folder: 'symptoms', one: 'symptom', many: 'Symptoms' },
  cause: { folder: 'causes', one: 'cause', many: 'Causes' },
  test: { folder: 'tests', one: 'test', many: 'Tests' },
  tree: { folder: 'trees', one: 'tree', many: 'Trees' },
  procedure: { folder: 'procedures', one: 'procedure', many: 'Procedures' },
  tool: { folder: 'tools', one: 'tool', many: 'Tools' },
  code: { folder: 'codes', one: 'trouble code', many: 'Trouble codes' },
  coolant: { folder: 'coolants', one: 'coolant', many: 'Coolants' },
  caution: { folder: 'cautions', one: 'caution', many: 'Cautions' },
  vehicle: { folder: 'vehicles', one: 'vehicle', many: 'Vehicles' },
  note: { folder: 'notes', one: 'shop note', many: 'Shop notes' },
  case: { folder: 'cases', one: 'case', many: 'Cases' },
} as const;

export type Kind = keyof typeof KINDS;

/** Kinds with a page for each record; a case is read by the tests and has none. */
export const PAGE_KINDS = (Object.keys(KINDS) as Kind[]).filter((kind) => kind !== 'case');

export const KIND_NAMES = Object.keys(KINDS) as Kind[];

/** The id that stands in causes and ends for a fault the symptom does not list. No record has it. */
export { SOMETHING_ELSE } from '../diagnosis/model.ts';
