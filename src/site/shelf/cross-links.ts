/** What points at what, read backwards: computed once for all pages. */
import type { Kind } from '../../model/kinds.ts';
import { asStep } from '../../model/step.ts';
import { shelf } from './shelf.ts';

/** `${kind}/${id}` of the target to the records that point at it, by kind, in shelf order. */
const incoming = new Map<string, Map<Kind, Set<string>>>();

function point(from: Kind, fromId: string, to: Kind, toId: string) {
  const key = `${to}/${toId}`;
  const byKind = incoming.get(key) ?? new Map<Kind, Set<string>>();
  incoming.set(key, byKind);
  const ids = byKind.get(from) ?? new Set<string>();
  byKind.set(from, ids);
  ids.add(fromId);
}

for (const { id, data } of shelf.records.symptom.values()) {
  for (const cause of Object.keys(data.causes)) point('symptom', id, 'cause', cause);
  for (const code of data.codes) point('symptom', id, 'code', code);
  point('symptom', id, 'procedure', data.verify);
  for (const other of data.related) point('symptom', id, 'symptom', other);
}
for (const { data } of shelf.records.tree.values()) {
  for (const step of Object.values(data.steps)) {
    if (step.test) point('symptom', data.symptom, 'test', step.test);
  }
}
for (const { id, data } of shelf.records.cause.values()) {
  if (data.confirm?.test) point('cause', id, 'test', data.confirm.test);
  for (const { test } of data.confirm?.or ?? []) point('cause', id, 'test', test);
  if (data.repair) point('cause', id, 'procedure', data.repair);
}
for (const { id, data } of shelf.records.test.values()) {
  for (const tool of data.tools) point('test', id, 'tool', tool);
  const cautions = [...data.cautions, ...data.steps.map((step) => asStep(step).caution ?? '')].filter(
    (each) => each !== '',
  );
  for (const caution of cautions) point('test', id, 'caution', caution);
  for (const cause of Object.keys(data.evidence)) point('test', id, 'cause', cause);
}
for (const { id, data } of shelf.records.procedure.values()) {
  for (const tool of data.tools) point('procedure', id, 'tool', tool);
  const cautions = [...data.cautions, ...data.steps.map((step) => step.caution ?? '')].filter(
    (each) => each !== '',
  );
  for (const caution of cautions) point('procedure', id, 'caution', caution);
  for (const next of data['followed-by']) point('procedure', id, 'procedure', next);
}
for (const { id, data } of shelf.records.tool.values()) {
  for (const caution of data.cautions) point('tool', id, 'caution', caution);
}
for (const { id, data } of shelf.records.code.values()) {
  for (const symptom of data.symptoms) point('code', id, 'symptom', symptom);
  for (const cause of data.causes) point('code', id, 'cause', cause);
  for (const check of data.first) if (typeof check !== 'string') point('code', id, 'test', check.test);
}
for (const { id, data } of shelf.records.note.values()) {
  for (const kind of ['vehicle', 'symptom', 'cause', 'procedure'] as const) {
    const target = data[kind];
    if (target) point('note', id, kind, target);
  }
}

/** Ids of the records of one kind that point at a record. */
export function pointingAt(kind: Kind, id: string, from: Kind): string[] {
  return [...(incoming.get(`${kind}/${id}`)?.get(from) ?? [])];
}
