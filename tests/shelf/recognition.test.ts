/** Customers' words lead to their complaint, on our own shelf. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { z } from 'zod';
import { knowledgeOf, proofOf } from '../../src/library/recognition.ts';
import { rateOf } from '../../src/recogniser/proof.ts';
import { Recogniser } from '../../src/recogniser/recogniser.ts';
import { shelf } from './shelf.ts';

const recogniser = new Recogniser(knowledgeOf(shelf));

/** Written before the records' own phrasings, and not learnt from. */
const COMPLAINTS = z
  .object({ queries: z.record(z.string(), z.array(z.string())) })
  .parse(JSON.parse(readFileSync('tests/browser/complaints.json', 'utf8')));
const KNOWN = Object.entries(COMPLAINTS.queries).flatMap(([id, texts]) =>
  texts.map((said) => ({ said, symptom: [id] })),
);

/**
 * Written by somebody who had seen neither the phrasings nor the word groups. What is right beside the first is named too. When
 * it was read for the first time 91 of 100 were first and 98 among the first three.
 */
const UNSEEN = sentencesOf('tests/recogniser/unseen.json');

/** By another hand again, after the last change to words and groups; nothing was changed for it: 93 first, 98 among the first three. */
const UNSEEN_AGAIN = sentencesOf('tests/recogniser/unseen-2.json');

function sentencesOf(file: string): { said: string; symptom: string[] }[] {
  return z
    .array(z.object({ say: z.string(), symptom: z.string(), also: z.array(z.string()).default([]) }))
    .parse(JSON.parse(readFileSync(file, 'utf8')))
    .map(({ say, symptom, also }) => ({ said: say, symptom: [symptom, ...also] }));
}

/** Sentences by how many complaints come before the right one. */
function astray(sentences: typeof KNOWN, most: number): string[] {
  return sentences.flatMap(({ said, symptom }) => {
    const found = recogniser.recognise(said).complaints.slice(0, most);
    return found.some(({ id }) => symptom.includes(id)) ? [] : [`${said} → ${found.map(({ id }) => id)}`];
  });
}

test('each phrasing left out in turn: 85 of 100 first, 95 among the first three', () => {
  const rate = rateOf(proofOf(shelf));
  expect(rate.count).toBeGreaterThan(900);
  expect(rate.first).toBeGreaterThanOrEqual(0.85);
  expect(rate.firstThree).toBeGreaterThanOrEqual(0.95);
});

test.each([
  ['complaints of the repository', KNOWN, 90, 97],
  ['complaints of another hand', UNSEEN, 91, 98],
  ['complaints of a third hand', UNSEEN_AGAIN, 92, 97],
])('%s: so many first and among the first three', (_, sentences, first, firstThree) => {
  for (const [most, least] of [
    [1, first],
    [3, firstThree],
  ] as const) {
    const lost = astray(sentences, most);
    expect(100 - (lost.length / sentences.length) * 100, lost.join('\n')).toBeGreaterThanOrEqual(least);
  }
});

test.each([
  ['steam from hood', 'drip-or-puddle'],
  ['my temp gauge drops on the highway and heater is lukewarm', 'reads-low-at-cruise'],
  ['heater lukewarm when I stop at the lights', 'heat-only-when-revved'],
  ['car overheats at stop lights', 'hot-in-traffic'],
  ['fan stays on after switching off', 'fan-never-stops'],
  ['losing antifreeze, shop cannot find a leak', 'keeps-dropping-no-drip'],
  ['pouring out coolant under the hood', 'drip-or-puddle'],
  ['engine temp goes up when I step on the gas on the freeway', 'hot-under-load'],
  // What went to a wrong page when it was tried by hand.
  ['waterpump leaking', 'drip-or-puddle'],
  ['radiator burst', 'drip-or-puddle'],
  ['thermostat housing leaking', 'drip-or-puddle'],
  ['header tank leaking', 'drip-or-puddle'],
  ['heater lukewarm', 'heat-only-when-revved'],
  ['heater stuck on hot', 'heater-stuck-hot'],
  ['aircon only cold when driving', 'fan-never-runs'],
  ['stop-start not working', 'never-warms-up'],
  ['DPF light', 'never-warms-up'],
])('“%s” leads to %s', (said, id) => {
  expect(recogniser.recognise(said).complaints[0]?.id).toBe(id);
});

test.each(['P0128', '0128', 'p 0128', 'P128'])('“%s” is the code P0128', (typed) => {
  expect(recogniser.recognise(typed).codes).toEqual(['p0128']);
});

test('what is no cooling complaint sounds like none, mostly', () => {
  const others = [
    'my brakes grind when I stop',
    'clutch is slipping in third gear',
    'the wipers leave streaks',
    'need two new tyres',
    'headlamp bulb blown',
    'steering pulls to the left',
    'gearbox crunches into reverse',
    'door will not lock',
    'the radio cuts out',
    'how much for a service',
    'can I book for Tuesday',
    'exhaust is rattling',
    'airbag lamp is lit',
    'parking sensor beeps',
    'the boot will not open',
    'suspension knocks over bumps',
    'seat belt is jammed',
    'dent in my bumper',
    'what time do you close',
    'battery does not charge',
  ];
  const noticed = others.filter((said) => recogniser.recognise(said).isElsewhere);
  expect(noticed.length, others.filter((said) => !noticed.includes(said)).join('; ')).toBeGreaterThanOrEqual(
    16,
  );
  const doubted = KNOWN.filter(({ said }) => recogniser.recognise(said).isElsewhere);
  expect(doubted.length, doubted.map(({ said }) => said).join('; ')).toBeLessThanOrEqual(KNOWN.length * 0.07);
});
