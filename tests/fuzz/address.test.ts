/** What an address may hold: answers of a walk, the fields of a calculator, a search. Old, cut by a mail program, made up. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CALCULATORS } from '../../src/calculators/catalogue.ts';
import { workOut } from '../../src/calculators/work-out.ts';
import { METRIC, US } from '../../src/model/habit.ts';
import { answerDetail, answerSentence } from '../../src/site/calculator/calculator-answer.ts';
import { joinField, splitField } from '../../src/site/calculator/calculator-field.ts';
import { excerptOf } from '../../src/site/search/page/excerpt.ts';
import { find, type Index } from '../../src/site/search/page/find.ts';
import { matchedName } from '../../src/site/search/page/matched-name.ts';
import { sayFound } from '../../src/site/search/page/say-found.ts';
import { wordsOf } from '../../src/site/search/words.ts';
import { isReadingKey, OTHER, readAnswers, writeAnswers } from '../../src/site/walk/answers.ts';
import { walkViewOf } from '../../src/site/walk/build/walk-view.ts';
import { Diagnoser } from '../../src/site/walk/page/diagnose.ts';
import { knownIn } from '../../src/site/walk/page/known-answers.ts';
import { Planner } from '../../src/site/walk/page/planner.ts';
import { knownLayout, trailOf } from '../../src/site/walk/page/replay.ts';
import { WalkWords } from '../../src/site/walk/page/walk-words.ts';
import { absurdText, textOf } from '../calculators/ask.ts';
import { shelf } from '../shelf/shelf.ts';
import { escapes, HOSTILE, hostileText, LIMIT, runs, UNCLEAN } from './runs.ts';

/** Names every object has though nobody gave them. */
const INHERITED = ['constructor', '__proto__', 'toString', 'valueOf', 'hasOwnProperty'];

const walks = [...shelf.records.symptom.keys()].map((id) => {
  const { data, texts } = walkViewOf(id);
  const outcomes = Object.entries(texts.outcomes);
  const sound = [
    ...outcomes.flatMap(([test, titles]) => Object.keys(titles).map((outcome) => `${test}=${outcome}`)),
    ...data.model.causes.flatMap(({ id: cause }) => [`prove.${cause}=proven`, `prove.${cause}=not-it`]),
    ...outcomes.flatMap(([test]) => [`${test}=skipped`, `${test}=${OTHER}`, `reading.${test}=61 °C`]),
  ];
  const diagnoser = new Diagnoser(data);
  const planner = new Planner(diagnoser, new WalkWords(data.causes, texts, (text) => text));
  return { data, texts, sound, diagnoser, planner, known: knownIn(data) };
});

/** Pairs of this walk, of none, with names nobody gave, and text that is no pair at all. */
const fragment = fc.constantFrom(...walks).chain((walk) =>
  fc.tuple(
    fc.constant(walk),
    fc
      .array(
        fc.oneof(
          { weight: 6, arbitrary: fc.constantFrom(...walk.sound) },
          {
            weight: 2,
            arbitrary: fc
              .tuple(
                fc.constantFrom(
                  ...INHERITED,
                  'layout.thermostat',
                  'layout.constructor',
                  'prove.constructor',
                  ...walk.sound.map((pair) => pair.split('=')[0] ?? ''),
                ),
                fc.constantFrom(...INHERITED, 'skipped', 'proven', 'name', 'length'),
              )
              .map((pair) => pair.join('=')),
          },
          { weight: 1, arbitrary: hostileText },
        ),
        { maxLength: 8 },
      )
      .map((pairs) => `#${pairs.join('&')}`),
  ),
);

test('a walk: any fragment stands somewhere, ranked, with a reason in words', { timeout: LIMIT }, () => {
  fc.assert(
    fc.property(fragment, ([{ data, texts, diagnoser, planner, known }, text]) => {
      const answers = readAnswers(text, known);
      for (const [key, value] of answers) {
        if (key.startsWith('layout.') || key.startsWith('prove.') || isReadingKey(key)) continue;
        expect(Object.keys(texts.outcomes)).toContain(key);
        expect([...Object.keys(texts.outcomes[key] ?? {}), 'skipped', OTHER]).toContain(value);
      }
      // What is written back is read as the same.
      expect([...readAnswers(`#${writeAnswers(answers)}`, known)]).toEqual([...answers]);
      const place = diagnoser.place(answers, knownLayout({}, answers), new Set());
      const { standing } = place;
      const trail = trailOf(data.tree, place, answers, (cause) => diagnoser.proofsOf(cause), {});
      expect(trail.length).toBeLessThanOrEqual(Object.keys(data.tree.steps).length + 1);
      if (standing.kind === 'ask' && standing.step !== undefined)
        expect(Object.keys(data.tree.steps)).toContain(standing.step);
      if (standing.kind === 'proven') expect(Object.keys(data.causes)).toContain(standing.cause);
      const { reason, step } = planner.diagnose(answers, knownLayout({}, answers), new Set());
      expect(reason.sentence.length).toBeGreaterThan(5);
      expect(reason.sentence).not.toMatch(UNCLEAN);
      for (const { share } of step.ranked) expect(share >= 0 && share <= 1).toBe(true);
      expect(step.ranked.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 6);
    }),
    runs(300),
  );
});

describe('a calculator', () => {
  const typed = fc
    .constantFrom(...CALCULATORS)
    .chain((calculator) =>
      fc.tuple(
        fc.constant(calculator),
        fc.array(
          fc.tuple(
            fc.constantFrom(...calculator.inputs.map(({ name }) => name), ...INHERITED),
            fc.oneof(
              absurdText,
              hostileText,
              fc.double().map(String),
              fc.constantFrom('5', '20 °C', '1.1 bar', '50 %'),
            ),
          ),
          { maxLength: 6 },
        ),
      ),
    );
  /** Elements of an answer and of the pictures in it. */
  const ANSWER =
    'ul li dl dt dd b i small p svg title desc g path line rect circle polygon polyline text tspan defs linearGradient stop clipPath use figure figcaption'.split(
      ' ',
    );

  test('any state of any of them: an answer or messages, clean and inert', { timeout: LIMIT }, () => {
    fc.assert(
      fc.property(typed, fc.constantFrom(METRIC, US), ([calculator, pairs], habit) => {
        // As the page writes it into the address and reads it back.
        const state = new URLSearchParams(new URLSearchParams(pairs).toString());
        const values: Record<string, string> = {};
        for (const input of calculator.inputs) {
          const text = state.get(input.name)?.slice(0, 60);
          if (text === undefined) continue;
          values[input.name] =
            input.kind === 'quantity' ? joinField(splitField(text, input, input.unit)) : text;
        }
        const outcome = workOut(calculator, values, habit);
        const markup = answerDetail(calculator, outcome, 'x', habit);
        expect(escapes(markup, ANSWER)).toEqual([]);
        expect(answerSentence(outcome).length).toBeGreaterThan(5);
        let said = textOf(outcome);
        for (const text of Object.values(values)) said = said.replaceAll(text.trim(), '');
        expect(said).not.toMatch(/\bNaN\b|\[object |\bInfinity\b/);
      }),
      runs(1500),
    );
  });
});

describe('a search', () => {
  const names = ['heater', 'thermostat', 'coolant', 'constructor-less', 'p0128'];
  const hit = { id: 'a', score: 1, fields: ['said', 'title'], locations: [0, 3] };
  const index: Index = {
    size: 5,
    kindOf: () => 'symptom',
    exactly: async (word) => (names.includes(word) ? [hit] : []),
    beginning: async (word) => (names.some((name) => name.startsWith(word)) ? [hit] : []),
    names,
  };
  const query = fc.oneof(
    {
      weight: 3,
      arbitrary: fc
        .array(
          fc.constantFrom(
            'heater',
            'heeter',
            'blows',
            'cold',
            'P 0128',
            '87 °C',
            '1,4',
            "won't",
            ...INHERITED,
            ...HOSTILE,
          ),
          { maxLength: 8 },
        )
        .map((all) => all.join(' ')),
    },
    { weight: 1, arbitrary: hostileText },
    { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 500 }) },
  );

  test('any query is answered in a sentence, and its excerpts are texts', { timeout: LIMIT }, async () => {
    await fc.assert(
      fc.asyncProperty(query, hostileText, async (text, content) => {
        const asked = new URLSearchParams(`?${new URLSearchParams({ q: text })}`).get('q') ?? '';
        const found = await find(asked, index);
        const said = sayFound({ ...found, count: found.hits.length }, found.hits.length);
        expect(said.length).toBeGreaterThan(5);
        for (const { score } of found.hits) expect(Number.isFinite(score)).toBe(true);
        for (const run of excerptOf(content, [0, 1, 7], content)) expect(typeof run.text).toBe('string');
        matchedName({ title: content, said: text }, ['said'], wordsOf(asked));
      }),
      runs(1000),
    );
  });
});
