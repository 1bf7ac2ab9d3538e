/** What `npm run new vehicle` asks: what only somebody at the car can say. Nothing has an answer that stands there already. */

import { type KnownLayout, LAYOUT, LAYOUT_FEATURES, layoutIsPossible } from '../model/layout.ts';
import { layoutQuestion } from '../model/layout-questions.ts';
import { vehicleSchema } from '../model/vehicle.ts';
import { wordMeant } from '../model/word-aliases.ts';

/** Asks until nothing is wrong with the answer. */
export type Ask = (question: string, wrong: (answer: string) => string | undefined) => Promise<string>;

/** Somebody cannot say: the file then has it as still to write. */
const OPEN = '-';

/**
 * Asks for what is not known yet and puts it into the values.
 * @param values fields of a vehicle, as plain data
 */
export async function askVehicle(values: Record<string, unknown>, ask: Ask): Promise<void> {
  const { shape } = vehicleSchema;
  const { shape: engine } = shape.engine;
  const engineValues = groupOf(values, 'engine');
  await askLine(values, 'maker', 'Maker: ', ask);
  await askLine(values, 'model', 'Model: ', ask);
  await askWord(values, 'body', { asks: 'Body', words: shape.body.options }, ask);
  await askLine(values, 'years', 'Years, such as 2009-2014: ', ask, (text) => firstFault(shape.years, text));
  await askLine(engineValues, 'code', 'Engine code, as on the plate: ', ask);
  await askLine(
    engineValues,
    'size',
    `Engine size with its unit, such as 1.6 l (${OPEN} without): `,
    ask,
    (text) => firstFault(engine.size, text),
  );
  await askWord(engineValues, 'fuel', { asks: 'Fuel', words: engine.fuel.options }, ask);
  await askLayout(groupOf(values, 'layout'), ask);
}

async function askLayout(layout: Record<string, unknown>, ask: Ask): Promise<void> {
  for (const feature of LAYOUT_FEATURES) {
    if (layout[feature] !== undefined) continue;
    const known = layout as KnownLayout;
    const words = LAYOUT[feature].filter((value) => layoutIsPossible({ ...known, [feature]: value }));
    const [only, another] = words;
    // Follows from an answer that was given, such as what switches a fan on a clutch.
    if (only !== undefined && another === undefined) layout[feature] = only;
    else await askWord(layout, feature, { ...layoutQuestion(feature), words }, ask);
  }
}

function groupOf(values: Record<string, unknown>, name: string): Record<string, unknown> {
  const group = (values[name] ?? {}) as Record<string, unknown>;
  values[name] = group;
  return group;
}

async function askLine(
  values: Record<string, unknown>,
  name: string,
  question: string,
  ask: Ask,
  fault: (text: string) => string | undefined = () => undefined,
): Promise<void> {
  if (values[name] !== undefined) return;
  const answer = await ask(question, (typed) => {
    const text = typed.trim();
    if (text === '') return `Type it, or ${OPEN} to leave it open.`;
    return text === OPEN ? undefined : fault(text);
  });
  if (answer.trim() !== OPEN) values[name] = answer.trim();
}

interface Choice {
  asks: string;
  words: readonly string[];
  tell?: Readonly<Record<string, string>>;
}

async function askWord(
  values: Record<string, unknown>,
  name: string,
  { asks, words, tell = {} }: Choice,
  ask: Ask,
): Promise<void> {
  if (values[name] !== undefined) return;
  const widest = Math.max(...words.map((word) => word.length));
  const lines = words.map((word, at) => `  ${at + 1}  ${word.padEnd(widest)}  ${tell[word] ?? ''}`.trimEnd());
  const question = `${asks}\n${lines.join('\n')}\nNumber or word, ${OPEN} if you cannot say: `;
  const answer = await ask(question, (typed) =>
    typed.trim() === OPEN || chosen(words, typed) !== undefined
      ? undefined
      : `Nothing is taken for granted here: a number from 1 to ${words.length}, or ${OPEN} to leave it open.`,
  );
  const word = chosen(words, answer);
  if (word !== undefined) values[name] = word;
}

function chosen(words: readonly string[], typed: string): string | undefined {
  const text = typed.trim();
  if (/^\d+$/.test(text)) return words[Number(text) - 1];
  return words.includes(text) ? text : wordMeant(text, words);
}

function firstFault(
  schema: {
    safeParse(value: unknown): { success: boolean; error?: { issues: { message: string }[] } | undefined };
  },
  text: string,
): string | undefined {
  return schema.safeParse(text).error?.issues[0]?.message;
}
