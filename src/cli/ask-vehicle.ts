/** What `npm run new vehicle` asks: what only somebody at the car can say. */
import { type KnownLayout, LAYOUT, LAYOUT_FEATURES, layoutIsPossible } from '../model/layout.ts';
import { layoutQuestion } from '../model/layout-questions.ts';
import { vehicleSchema } from '../model/vehicle.ts';
import { ASKS_KNOWN, ASKS_SOURCE, KNOWN_FROM, LONG_TEXTS } from '../model/vehicle-questions.ts';
import { type Ask, askChoice, askText, type Choice, OPEN } from './ask-field.ts';
import { askFigures } from './ask-figures.ts';

/**
 * Asks for what is not known yet and puts it into the values.
 * @param values fields of a vehicle, as plain data
 * @param today as 2026-11-30
 */
export async function askVehicle(values: Record<string, unknown>, ask: Ask, today: string): Promise<void> {
  const { shape } = vehicleSchema;
  const { shape: engine } = shape.engine;
  const engineValues = groupOf(values, 'engine');
  await putText(values, 'maker', 'Maker: ', ask);
  await putText(values, 'model', 'Model: ', ask);
  await putChoice(values, 'body', { asks: 'Body', words: shape.body.options }, ask);
  await putText(values, 'years', 'Years, such as 2009-2014: ', ask, (text) => firstFault(shape.years, text));
  await putText(engineValues, 'code', 'Engine code, as on the plate: ', ask);
  await putText(
    engineValues,
    'size',
    `Engine size with its unit, such as 1.6 l (${OPEN} without): `,
    ask,
    (text) => firstFault(engine.size, text),
  );
  await putChoice(engineValues, 'fuel', { asks: 'Fuel', words: engine.fuel.options }, ask);
  await askLayout(groupOf(values, 'layout'), ask);
  await askFigures(values, ask, today);
  await askWords(values, ask);
}

async function askLayout(layout: Record<string, unknown>, ask: Ask): Promise<void> {
  for (const feature of LAYOUT_FEATURES) {
    if (layout[feature] !== undefined) continue;
    const known = layout as KnownLayout;
    const words = LAYOUT[feature].filter((value) => layoutIsPossible({ ...known, [feature]: value }));
    const [only, another] = words;
    // Follows from an answer that was given, such as what switches a fan on a clutch.
    if (only !== undefined && another === undefined) layout[feature] = only;
    else await putChoice(layout, feature, { ...layoutQuestion(feature), words }, ask);
  }
}

async function askWords(values: Record<string, unknown>, ask: Ask): Promise<void> {
  for (const { name, label, hint } of LONG_TEXTS) {
    if (name !== 'access') await putText(values, name, `${label} (${OPEN} not known): `, ask);
    else if (values.access === undefined) {
      const lines = await askLines(`${label}. ${hint} (${OPEN} none): `, ask);
      if (lines.length > 0) values.access = lines;
    }
  }
  if (values.sources !== undefined) return;
  const words = Object.keys(KNOWN_FROM);
  const known = await askChoice({ asks: ASKS_KNOWN, words, tell: KNOWN_FROM }, ask);
  if (known === undefined) return;
  if (known === 'common practice' || known === 'from memory') values.sources = [known];
  else {
    const source = await askText(`${ASKS_SOURCE} (${OPEN} not known): `, ask);
    if (source !== undefined) values.sources = [{ [known]: source }];
  }
}

async function askLines(question: string, ask: Ask): Promise<string[]> {
  const lines: string[] = [];
  for (;;) {
    const line = await askText(lines.length > 0 ? `Another (${OPEN} no more): ` : question, ask);
    if (line === undefined) return lines;
    lines.push(line);
  }
}

function groupOf(values: Record<string, unknown>, name: string): Record<string, unknown> {
  const group = (values[name] ?? {}) as Record<string, unknown>;
  values[name] = group;
  return group;
}

async function putText(
  values: Record<string, unknown>,
  name: string,
  question: string,
  ask: Ask,
  fault?: (text: string) => string | undefined,
): Promise<void> {
  if (values[name] !== undefined) return;
  const said = await askText(question, ask, fault);
  if (said !== undefined) values[name] = said;
}

async function putChoice(
  values: Record<string, unknown>,
  name: string,
  choice: Choice,
  ask: Ask,
): Promise<void> {
  if (values[name] !== undefined) return;
  const word = await askChoice(choice, ask);
  if (word !== undefined) values[name] = word;
}

function firstFault(
  schema: {
    safeParse(value: unknown): { success: boolean; error?: { issues: { message: string }[] } | undefined };
  },
  text: string,
): string | undefined {
  return schema.safeParse(text).error?.issues[0]?.message;
}
