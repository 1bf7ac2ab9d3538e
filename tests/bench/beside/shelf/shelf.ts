/**
 * An invented shelf of any size, sound by the project's own check: areas of a hundred records in about the proportions of
 * the demonstration shelf, each with complaints, causes, tests and trees that refer to each other.
 */
import type { Kind } from '../../../../src/model/kinds.ts';
import * as names from './names.ts';
import { list, phrase, saying, sentence, text } from './prose.ts';
import { Chance } from './random.ts';

/** One record as it will stand in its file: plain data, unparsed. */
export interface MadeRecord {
  kind: Kind;
  id: string;
  title: string;
  data: Readonly<Record<string, unknown>>;
}

/** Records of one area; a shelf is made of whole areas. */
export const AREA = 100;

/** Everything is reviewed on this day, so that a shelf is the same whenever it is made. */
const REVIEWED = '2026-11-01';
const GROUPS = 6;
const IN_GROUP = 3;

/**
 * @param count a multiple of 100, up to 10,000
 * @throws RangeError for any other count
 */
export function makeShelf(count: number, seed: number): MadeRecord[] {
  if (count <= 0 || count % AREA !== 0 || count / AREA > names.MOST_AREAS)
    throw new RangeError(
      `A shelf has a multiple of ${AREA} records, ${AREA} to ${AREA * names.MOST_AREAS}; not ${count}.`,
    );
  return Array.from({ length: count / AREA }, (_, area) => makeArea(area, new Chance(seed + area))).flat();
}

function makeArea(area: number, chance: Chance): MadeRecord[] {
  const made = new AreaMaker(area, chance);
  return [
    ...names.CAUTIONS.map((_, at) => made.caution(at)),
    ...names.TOOLS.map((_, at) => made.tool(at)),
    ...names.REPAIRS.map((_, at) => made.procedure(at)),
    ...names.GROUP_TESTS.map((_, at) => made.groupTest(at)),
    ...names.PROOFS.map((_, at) => made.proof(at)),
    ...names.FAULTS.map((_, at) => made.cause(at)),
    ...names.CODES.map((_, at) => made.code(at)),
    ...names.COMPLAINTS.flatMap((_, at) => [made.symptom(at), made.tree(at)]),
    ...names.COOLANTS.map((_, at) => made.coolant(at)),
    ...[0, 1, 2, 3].map((at) => made.vehicle(at)),
    ...[0, 1, 2, 3, 4, 5].map((at) => made.note(at)),
  ];
}

class AreaMaker {
  private readonly area: number;
  private readonly chance: Chance;
  private readonly spot: string;

  constructor(area: number, chance: Chance) {
    this.area = area;
    this.chance = chance;
    this.spot = names.spotOf(area);
  }

  caution(at: number): MadeRecord {
    const c = this.chance;
    return this.record(
      'caution',
      this.titled(names.CAUTIONS, at),
      {
        short: sentence(c),
        hurts: text(c, 2),
        avoid: list(c, 4),
        'if-it-happens': text(c, 2),
        defers: sentence(c),
      },
      this.cautionId(at),
    );
  }

  tool(at: number): MadeRecord {
    const c = this.chance;
    return this.record('tool', this.titled(names.TOOLS, at), {
      also: { trade: [`${this.spot} ${phrase(c)}`] },
      for: text(c, 2),
      accuracy: text(c, 2),
      use: list(c, 4),
      substitute: sentence(c),
      care: sentence(c),
      cautions: [this.cautionId(at)],
    });
  }

  procedure(at: number): MadeRecord {
    const c = this.chance;
    const caution = this.cautionId(at);
    return this.record('procedure', this.titled(names.REPAIRS, at), {
      summary: text(c, 2),
      minutes: c.whole(20, 90),
      cautions: [caution],
      tools: [this.id(names.TOOLS, at), this.id(names.TOOLS, at + 3)],
      parts: [phrase(c), phrase(c)],
      consumables: [phrase(c)],
      steps: Array.from({ length: 9 }, (_, step) => ({
        do: sentence(c),
        ...(step % 3 === 0 && { why: sentence(c) }),
        ...(step % 3 === 1 && { check: sentence(c) }),
        ...(step === 2 && { caution }),
      })),
      finish: list(c, 2),
    });
  }

  /** A quick test that finds the three causes of one group. */
  groupTest(at: number): MadeRecord {
    const causes = Array.from({ length: IN_GROUP }, (_, one) => this.id(names.FAULTS, at * IN_GROUP + one));
    return this.test(names.GROUP_TESTS, at, {
      minutes: this.chance.whole(3, 5),
      outcomes: {
        shows: this.outcome('Seen'),
        faint: this.outcome('Faint'),
        nothing: this.outcome('Nothing'),
      },
      evidence: Object.fromEntries(causes.map((id) => [id, { shows: 'usually', faint: 0.1 }])),
      otherwise: { nothing: 'nearly always' },
    });
  }

  /** A slower test that proves one or two causes. */
  proof(at: number): MadeRecord {
    const causes = names.FAULTS.flatMap((_, cause) => (cause % names.PROOFS.length === at ? [cause] : []));
    return this.test(names.PROOFS, at, {
      minutes: this.chance.whole(15, 22),
      outcomes: { proves: this.outcome('Proven'), 'does-not': this.outcome('Not this') },
      evidence: Object.fromEntries(
        causes.map((cause) => [this.id(names.FAULTS, cause), { proves: 'always' }]),
      ),
      otherwise: { 'does-not': 'always' },
    });
  }

  cause(at: number): MadeRecord {
    const c = this.chance;
    return this.record('cause', this.titled(names.FAULTS, at), {
      also: { trade: [phrase(c), phrase(c)] },
      part: this.spot,
      system: 'thermostat',
      mechanism: text(c, 2),
      confirm: { test: this.id(names.PROOFS, at), outcome: 'proves' },
      'fooled-by': list(c, 3),
      repair: this.id(names.REPAIRS, at),
      parts: [phrase(c)],
      consumables: [phrase(c)],
      'while-open': list(c, 3),
      'comes-back': text(c, 2),
    });
  }

  code(at: number): MadeRecord {
    const c = this.chance;
    // Causes that the walk behind the code can find.
    const [first = '', , , fourth = ''] = this.causesOf(at % names.COMPLAINTS.length);
    const id = `p3${(this.area * names.CODES.length + at).toString(16).padStart(3, '0')}`;
    return this.record(
      'code',
      this.titled(names.CODES, at),
      {
        sets: text(c, 2),
        first: list(c, 3),
        misleads: text(c, 2),
        symptoms: [this.id(names.COMPLAINTS, at)],
        causes: [first, fourth],
      },
      id,
    );
  }

  symptom(at: number): MadeRecord {
    const c = this.chance;
    const weights = [
      'commonest',
      'common',
      'occasional',
      'common',
      'common',
      'occasional',
      'common',
      'occasional',
      'occasional',
    ];
    const complaint =
      `${names.COMPLAINTS[at % names.COMPLAINTS.length]}, ${this.spot} ${names.areaWord(this.area)}`.toLowerCase();
    const said = () => saying(c, complaint);
    return this.record('symptom', this.titled(names.COMPLAINTS, at), {
      also: { trade: [`${complaint}, ${phrase(c)}`], said: [said(), said(), said()] },
      group:
        (['gauge', 'heater', 'level', 'fans-electrics', 'level', 'hoses', 'noise', 'gauge'] as const)[at] ??
        'gauge',
      'noticed-at': ['dashboard'],
      summary: text(c, 4),
      said: [said(), said(), said(), said()],
      drive: { may: 'short and watched', because: text(c, 2) },
      ask: Array.from({ length: 4 }, () => ({ question: `${said()}?`, tells: sentence(c) })),
      verify: this.id(names.REPAIRS, names.REPAIRS.length - 1),
      codes: names.CODES.flatMap((_, code) =>
        code % names.COMPLAINTS.length === at
          ? [`p3${(this.area * names.CODES.length + code).toString(16).padStart(3, '0')}`]
          : [],
      ),
      causes: Object.fromEntries(this.causesOf(at).map((id, place) => [id, weights[place]])),
      'pass-on': 120,
      tree: this.treeId(at),
      related: [this.id(names.COMPLAINTS, at + 1), this.id(names.COMPLAINTS, at + 2)],
    });
  }

  /** A quick test for each of three groups of causes; in each the likeliest cause is proven first. */
  tree(at: number): MadeRecord {
    const c = this.chance;
    const [first = 0, second = 0, third = 0] = this.groupsOf(at);
    const [a1, a2, a3, b1, b2, b3, c1, c2, c3] = this.causesOf(at);
    const onLayout = at % 4 === 0;
    const end = (causes: (string | undefined)[]) => ({ causes, says: text(c, 2) });
    return this.record(
      'tree',
      `From ${this.titled(names.COMPLAINTS, at).toLowerCase()} to the cause`,
      {
        symptom: this.id(names.COMPLAINTS, at),
        start: 'first',
        steps: {
          first: {
            test: this.id(names.GROUP_TESTS, first),
            on: { shows: 'likeliest', faint: 'likeliest', nothing: onLayout ? 'which-tank' : 'second' },
          },
          likeliest: { prove: a1, otherwise: 'near-first' },
          ...(onLayout && {
            'which-tank': {
              layout: 'reservoir',
              on: { 'header tank': 'second', 'recovery bottle': 'bottle-first' },
            },
            'bottle-first': { prove: b1, otherwise: 'second' },
          }),
          second: {
            test: this.id(names.GROUP_TESTS, second),
            on: { shows: 'next', faint: 'next', nothing: 'third' },
          },
          next: { prove: b1, otherwise: 'near-second' },
          third: {
            test: this.id(names.GROUP_TESTS, third),
            on: { shows: 'last', faint: 'last', nothing: 'nothing-found' },
          },
          last: { prove: c1, otherwise: 'near-third' },
        },
        ends: {
          'near-first': end([a2, a3]),
          'near-second': end([b2, b3]),
          'near-third': end([c2, c3]),
          'nothing-found': end(['something-else']),
        },
      },
      this.treeId(at),
    );
  }

  coolant(at: number): MadeRecord {
    const c = this.chance;
    return this.record('coolant', this.titled(names.COOLANTS, at), {
      base: 'ethylene glycol',
      inhibitors: text(c, 2),
      life: sentence(c),
      suits: sentence(c),
      'mixes-with': [],
      'never-with': [this.id(names.COOLANTS, at + 1)],
      'when-mixed': text(c, 2),
      colour: sentence(c),
      test: phrase(c),
    });
  }

  vehicle(at: number): MadeRecord {
    const c = this.chance;
    const source = { from: 'measured here', checked: REVIEWED, sure: 'measured once' };
    const opens = c.whole(82, 92);
    const on = c.whole(96, 102);
    return this.record('vehicle', this.vehicleTitle(at), {
      invented: true,
      maker: 'Bench fleet',
      model: `Type ${this.area * 4 + at + 1}`,
      body: c.one(['hatchback', 'saloon', 'estate', 'van']),
      years: `${c.whole(2004, 2012)}-${c.whole(2013, 2020)}`,
      engine: { code: `BF${this.area}${at}`, size: `1.${c.whole(2, 9)} l`, cylinders: 4, fuel: 'petrol' },
      layout: {
        power: 'combustion',
        thermostat: c.one(['inlet side', 'outlet side']),
        'thermostat-kind': 'plain wax',
        heater: c.one(['always flowing', 'valve-controlled']),
        'heater-pump': c.one(['none', 'in a heater hose']),
        reservoir: c.one(['header tank', 'recovery bottle']),
        fan: 'electric, one stage',
        'fan-switched-by': 'switch in the radiator',
        pump: c.one(['accessory belt', 'timing belt', 'electric']),
        radiator: 'cross-flow',
        turbo: 'none',
        'egr-cooler': 'none',
        'oil-cooler': 'none',
        'transmission-cooler': 'none',
      },
      figures: {
        'thermostat.opens': { is: `${opens} °C`, ...source },
        'thermostat.fully-open': { is: `${opens + 14} °C`, ...source },
        'running.cruise': { is: `${opens} to ${opens + 7} °C`, ...source },
        'running.low-limit': { is: `${opens - 9} °C`, ...source },
        'warm-up.time': { is: `${c.whole(6, 11)} min`, ...source },
        'fan.on': { is: `${on} °C`, ...source },
        'fan.off': { is: `${on - 5} °C`, ...source },
        'fan.current': { is: `${c.whole(11, 19)} A`, ...source },
        'cap.opens': { is: `1.${c.whole(1, 5)} bar`, ...source },
        'coolant.capacity': { is: `${c.whole(5, 8)}.${c.whole(0, 9)} l`, ...source },
        'idle.speed': { is: `${c.whole(70, 85) * 10} rpm`, ...source },
      },
      torques: {
        'thermostat-housing': { is: '10 N·m', bolt: 'M6', class: '8.8', into: 'aluminium', ...source },
      },
      access: list(c, 3, 2),
      bleeding: text(c, 3),
      gauge: text(c, 2),
    });
  }

  note(at: number): MadeRecord {
    const c = this.chance;
    return this.record('note', `Seen on job ${this.area * 6 + at + 1}, ${this.spot}`, {
      by: 'KT',
      date: `2026-10-${String(c.whole(10, 28))}`,
      vehicle: names.idOf(this.vehicleTitle(at % 4)),
      symptom: this.id(names.COMPLAINTS, at),
      cause: this.causesOf(at)[at],
      text: text(c, 5),
      status: 'accepted',
      'reviewed-by': 'MB',
    });
  }

  private test(titles: readonly string[], at: number, rest: Record<string, unknown>): MadeRecord {
    const c = this.chance;
    const caution = this.cautionId(at);
    return this.record('test', this.titled(titles, at), {
      also: { trade: [phrase(c)] },
      settles: text(c, 2),
      question: `What does it show at the ${this.spot}?`,
      engine: 'any',
      tools: [this.id(names.TOOLS, at)],
      cautions: [caution],
      steps: [...list(c, 4, 2), { do: sentence(c), caution }],
      misleads: list(c, 3),
      ...rest,
    });
  }

  private outcome(label: string) {
    return { label, reading: sentence(this.chance) };
  }

  /** The three groups of causes a complaint may have, the likeliest first. */
  private groupsOf(complaint: number): number[] {
    return [0, 1, complaint < GROUPS ? 3 : 2].map((step) => (complaint + step) % GROUPS);
  }

  private causesOf(complaint: number): string[] {
    return this.groupsOf(complaint % names.COMPLAINTS.length).flatMap((group) =>
      Array.from({ length: IN_GROUP }, (_, one) => this.id(names.FAULTS, group * IN_GROUP + one)),
    );
  }

  private vehicleTitle(at: number): string {
    return `Bench fleet type ${this.area * 4 + at + 1}`;
  }

  private titled(titles: readonly string[], at: number): string {
    return `${titles[at % titles.length]}, ${this.spot}`;
  }

  private id(titles: readonly string[], at: number): string {
    return names.idOf(this.titled(titles, at));
  }

  private cautionId(at: number): string {
    const named = this.area === 0 ? names.NAMED_BY_PAGES[at % names.CAUTIONS.length] : undefined;
    return named ?? this.id(names.CAUTIONS, at);
  }

  private treeId(at: number): string {
    return `${this.id(names.COMPLAINTS, at)}-walk`;
  }

  private record(
    kind: Kind,
    title: string,
    data: Record<string, unknown>,
    id = names.idOf(title),
  ): MadeRecord {
    return { kind, id, title, data: { title, ...data, sources: ['from memory'], reviewed: REVIEWED } };
  }
}
