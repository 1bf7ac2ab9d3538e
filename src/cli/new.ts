/**
 * `npm run new <kind>`: writes a new record that is whole and valid, with a line of help on every field.
 *
 *     npm run new cause                                   asks
 *     npm run new cause -- --title "Cap seal hardened"    asks nothing where nobody can answer
 *     npm run new vehicle                                 asks what the site's form asks, and invents nothing
 *     npm run new vehicle -- --title "…" --set engine.code=T16 --set body=van --set layout.thermostat="inlet side"
 *     npm run new vehicle -- --help                       every field that can be set, with its words
 *     npm run new test -- --title "…" --print             to the terminal, nothing is written
 */
import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { stdout } from 'node:process';
import { safeParse } from 'zod';
import type { $ZodType } from 'zod/v4/core';
import { checkVehicle } from '../library/check-vehicle.ts';
import { isOptional, takes } from '../library/field-tables.ts';
import { nearestOf } from '../library/nearest.ts';
import { proofsInOrder } from '../library/proofs-in-order.ts';
import { readShelf, shownName } from '../library/read-shelf.ts';
import { bare, metaOf, schemaAt } from '../library/schema-tree.ts';
import type { Shelf } from '../library/shelf.ts';
import { fieldsOf, sampleOf, skeleton } from '../library/skeleton.ts';
import { wantedBy } from '../library/wanted-by.ts';
import { dayText } from '../model/day.ts';
import { KIND_NAMES, KINDS, type Kind } from '../model/kinds.ts';
import { idFromTitle } from '../model/note-file.ts';
import { ID_FORM } from '../model/scalars.ts';
import { SCHEMAS } from '../model/schemas.ts';
import { ask, canAsk, Stopped } from './ask.ts';
import { askVehicle } from './ask-vehicle.ts';
import { Refusal, readArguments, runCommand, wordsFor } from './command.ts';

const USE = `npm run new <kind> [-- --title "…"] [--id …] [--set field=value] [--shelf folder] [--print]
Kinds: ${KIND_NAMES.join(', ')}`;

/** How it is called; with a kind named, what can be set on it too. */
function useFor(word: string | undefined): string {
  const kind = KIND_NAMES.find((each) => each === word);
  if (kind === undefined) return USE;
  return `${USE}\n\nFields of a ${KINDS[kind].one}, each as --set field=value:\n${settable(SCHEMAS[kind]).join('\n')}`;
}

/** Fields that a line can fill, those of a group by their path. */
function settable(schema: $ZodType, before = ''): string[] {
  return fieldsOf(schema).flatMap(([name, field]) => {
    const isGroup = bare(field)._zod.def.type === 'object' && name !== 'figures';
    if (isGroup) return settable(field, `${before}${name}.`);
    const isChoice = bare(field)._zod.def.type === 'enum';
    return [`  ${before}${name}: ${isChoice ? wantedBy(field) : takes(field)}`];
  });
}

interface Options {
  title: string | undefined;
  id: string | undefined;
  set: string[];
  shelf: string;
  print: boolean;
}

await runCommand(main);

async function main(): Promise<void> {
  const { values, positionals } = readArguments(useFor(process.argv[2]), {
    allowPositionals: true,
    options: {
      title: { type: 'string' },
      id: { type: 'string' },
      set: { type: 'string', multiple: true },
      shelf: { type: 'string' },
      print: { type: 'boolean' },
    },
  });
  const options: Options = {
    title: values.title,
    id: values.id,
    set: values.set ?? [],
    shelf: values.shelf ?? 'content',
    print: values.print ?? false,
  };
  const kind = kindOf(positionals[0]);
  const { shelf } = await readShelf(options.shelf);
  const files = await filesFor(kind, options, shelf);
  for (const [path, text] of files) {
    if (options.print) {
      stdout.write(`# ${path}\n${text}`);
      continue;
    }
    await mkdir(dirname(path), { recursive: true });
    await writeNew(path, text);
  }
  if (!options.print)
    stdout.write(
      `Written: ${[...files.keys()].map(shownName).join(', ')}\nNext: what stands there as "To write", npm run check, then a pull request\n`,
    );
}

/** The files of a new record by path: a complaint comes with its tree. */
async function filesFor(kind: Kind, options: Options, shelf: Shelf): Promise<Map<string, string>> {
  const answers = valuesFrom(kind, options.set);
  const asking = canAsk() && options.title === undefined;
  const title = asking ? await askTitle(kind) : options.title;
  if (title === undefined)
    throw new Refusal(`Give it a title: npm run new ${kind} -- --title "…". Asking needs a terminal.`);
  const id = options.id ?? idFromTitle(title);
  refuseTaken(kind, id, shelf);
  const today = dayText(new Date());
  const anyId = (wanted: Kind) => anyIdOf(shelf, wanted);
  const base = { anyId, today };
  if (asking) await askUntilStopped(kind, answers, base);
  const place = (of: Kind, name: string) => {
    const year = of === 'note' ? `${today.slice(0, 4)}/` : '';
    return join(options.shelf, KINDS[of].folder, `${year}${name}.yaml`);
  };
  const make = (of: Kind, values: Record<string, unknown>) => skeleton({ kind: of, values, ...base });
  if (kind === 'symptom') {
    refuseTaken('tree', id, shelf);
    const cause = anyId('cause');
    if (cause === undefined)
      throw new Refusal('A complaint needs a cause and the shelf has none yet. First: npm run new cause');
    const causes = { [cause]: 'commonest' as const };
    const tree = { title: `${title}, the walk`, symptom: id, ...proofsInOrder(causes) };
    return new Map([
      [place('symptom', id), make('symptom', { title, tree: id, causes, related: [], ...answers })],
      [place('tree', id), make('tree', tree)],
    ]);
  }
  if (kind === 'tree') {
    const symptom = shelf.records.symptom.get(String(answers.symptom));
    if (!symptom)
      throw new Refusal(
        'A tree belongs to a complaint. For a new one: npm run new symptom writes both. For one that is there: --set symptom=<id>',
      );
    refuseTaken('tree', symptom.data.tree, shelf);
    const proofs = proofsInOrder(symptom.data.causes);
    return new Map([[place('tree', symptom.data.tree), make('tree', { title, ...proofs, ...answers })]]);
  }
  return new Map([[place(kind, id), make(kind, { title, ...answers })]]);
}

function kindOf(word: string | undefined): Kind {
  if (word === undefined) throw new Refusal(USE);
  const found = KIND_NAMES.find((kind) => kind === word || KINDS[kind].folder === word);
  if (found) return found;
  const nearest = nearestOf(word, KIND_NAMES)?.word;
  throw new Refusal(
    `There is no kind of record "${word}".${nearest ? ` Nearest: "${nearest}".` : ''}\n${USE}`,
  );
}

function refuseTaken(kind: Kind, id: string, shelf: Shelf): void {
  if (!ID_FORM.test(id))
    throw new Refusal(
      `"${id}" cannot be an id. An id is lower-case trade words joined by hyphens. Give one: --id cap-seal-hardened`,
    );
  const taken = shelf.records[kind].get(id)?.file ?? movedFile(shelf, kind, id);
  if (taken !== undefined)
    throw new Refusal(`"${id}" is taken: ${taken}. Ids live for ever; give another: --id …`);
}

function movedFile(shelf: Shelf, kind: Kind, id: string): string | undefined {
  const moved = shelf.moved.find((each) => each.kind === kind && each.id === id);
  return moved && `it has moved to "${moved.to}"`;
}

/** An id to stand for now. Of the causes one that can be proven and repaired, so that a walk may end at it. */
function anyIdOf(shelf: Shelf, kind: Kind): string | undefined {
  if (kind !== 'cause') return shelf.records[kind].keys().next().value;
  const causes = [...shelf.records.cause.values()];
  const everywhere = causes.filter(({ data }) => data.confirm && data.repair && !data.layout);
  return (everywhere[0] ?? causes.find(({ data }) => data.confirm && data.repair) ?? causes[0])?.id;
}

/** `--set engine.code=T16` as plain data, held against the schema of its field. */
function valuesFrom(kind: Kind, sets: readonly string[]): Record<string, unknown> {
  const values: Record<string, unknown> = {};
  for (const each of sets) {
    const [, name = '', text = ''] = /^([^=]+)=(.*)$/s.exec(each) ?? [];
    const path = name.split('.');
    const field = path.some((part) => part in Object.prototype)
      ? undefined
      : schemaAt(SCHEMAS[kind], path, {});
    if (!field)
      throw new Refusal(
        `A ${KINDS[kind].one} has no field "${name || each}". Fields: ${fieldsOf(SCHEMAS[kind])
          .map(([one]) => one)
          .join(', ')}`,
      );
    put(values, path, fitting(field, name, text));
  }
  return values;
}

/**
 * What was typed as the field's value. What is no number, no true and no false goes to the schema as it is, which refuses it:
 * a slip must not become 0 or false.
 * @throws Refusal when it does not fit
 */
function fitting(field: $ZodType, name: string, text: string): unknown {
  const { def } = bare(field)._zod;
  const value =
    def.type === 'number' && text.trim() !== ''
      ? Number(text)
      : def.type === 'boolean' && /^(?:true|false)$/.test(text)
        ? text === 'true'
        : def.type === 'array'
          ? text.split(',').map((each) => each.trim())
          : text;
  const parsed = safeParse(field, value);
  if (parsed.success) return value;
  throw new Refusal(`${name}: "${text}" does not fit. ${parsed.error.issues[0]?.message ?? ''}`);
}

function put(values: Record<string, unknown>, path: readonly string[], value: unknown): void {
  const [first = '', ...rest] = path;
  if (rest.length === 0) {
    values[first] = value;
    return;
  }
  const inner = (values[first] ?? {}) as Record<string, unknown>;
  values[first] = inner;
  put(inner, rest, value);
}

async function askTitle(kind: Kind): Promise<string> {
  return ask(`Title of the ${KINDS[kind].one}: `, (text) =>
    text.trim() === '' ? 'It needs a title.' : undefined,
  );
}

/** What was said before somebody stopped is kept: the file has the rest as still to write. */
async function askUntilStopped(
  kind: Kind,
  answers: Record<string, unknown>,
  base: Pick<Parameters<typeof skeleton>[0], 'anyId' | 'today'>,
): Promise<void> {
  try {
    if (kind !== 'vehicle') return await askFields(kind, answers, base);
    await askVehicle(answers, ask, base.today);
    for (const says of lookAgainAt(answers, base.today)) stdout.write(`Look again: ${says}\n`);
  } catch (error) {
    if (!(error instanceof Stopped)) throw error;
    stdout.write('\nStopped here. What was said is in the file; the rest stands there as still to write.\n');
  }
}

/** What only the whole record shows, such as a fan that stops above its start. */
function lookAgainAt(answers: Record<string, unknown>, today: string): string[] {
  const record = { title: 'Asked', invented: false, reviewed: today, ...answers };
  return checkVehicle('asked', record).faults.flatMap(({ path, says, isMissing }) =>
    isMissing ? [] : [`${path.join(' ')}: ${says}`],
  );
}

/** Asks for the short fields that must be there; the long ones are written in the file. */
async function askFields(
  kind: Kind,
  answers: Record<string, unknown>,
  base: Pick<Parameters<typeof skeleton>[0], 'anyId' | 'today'>,
): Promise<void> {
  for (const [name, field] of fieldsOf(SCHEMAS[kind])) {
    const { type } = bare(field)._zod.def;
    const { references, text } = metaOf(field);
    const short =
      references !== undefined || type === 'enum' || type === 'number' || (type === 'string' && !text);
    if (!short || name in answers || isOptional(field) || name === 'reviewed') continue;
    const usual = String(sampleOf(field, name, { kind, values: answers, ...base }));
    const says = metaOf(field).description ?? name;
    const answer = await ask(`${name}: ${says} [${usual}] `, (typed) => {
      if (typed.trim() === '') return undefined;
      try {
        fitting(field, name, typed.trim());
        return undefined;
      } catch (error) {
        return wordsFor(error);
      }
    });
    if (answer.trim() !== '') answers[name] = fitting(field, name, answer.trim());
  }
}

async function writeNew(path: string, text: string): Promise<void> {
  try {
    await writeFile(path, text, { flag: 'wx' });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST')
      throw new Refusal(`${shownName(path)} is there already and was left as it is. Give another id: --id …`);
    throw error;
  }
}
