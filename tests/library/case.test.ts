import { describe, expect, test } from 'vitest';
import { compile } from '../../src/diagnosis/compiled.ts';
import { faultsOf } from '../../src/diagnosis/model.ts';
import { treeCost } from '../../src/diagnosis/tree-cost.ts';
import { caseOf, modelOf } from '../../src/library/case.ts';
import { checkFiles } from '../../src/library/check-files.ts';
import type { RawFile } from '../../src/library/source-file.ts';
import { soundShelf } from './shelves.ts';

function changed(...changes: [path: string, from: string, to: string][]): RawFile[] {
  return soundShelf().map((file) => {
    const text = changes
      .filter(([path]) => path === file.path)
      .reduce((whole, [, from, to]) => {
        if (!whole.includes(from)) throw new Error(`${file.path} has no ${from}`);
        return whole.replace(from, to);
      }, new TextDecoder().decode(file.bytes));
    return { path: file.path, bytes: new TextEncoder().encode(text) };
  });
}

function shelfOf(files: RawFile[]) {
  return checkFiles('content', files).shelf;
}

const { records } = shelfOf(soundShelf());

describe('the model of a complaint', () => {
  test('has weights, minutes and likelihoods of the records', () => {
    const model = modelOf(records, 'runs-cold', { thermostat: 'outlet side' });
    expect(faultsOf(model)).toEqual([]);
    const [open, low] = model.causes;
    expect(open).toMatchObject({ id: 'thermostat-open', weight: 27, proveMinutes: 60 });
    expect(low).toMatchObject({ id: 'sensor-low', weight: 9, proveMinutes: 50 });
    expect(low?.recheck).toEqual({ test: 'prove.sensor-low', outcome: 'proven' });
    expect(model.somethingElse).toBe(0.03);
    expect(model.passOnMinutes).toBe(240);
    const [watch] = model.tests;
    expect(watch).toMatchObject({ id: 'hose-watch', minutes: 5, outcomes: ['warm-early', 'warm-late'] });
    // nearly always .92, usually .83, otherwise usually .83 the other way.
    const [early = []] = watch?.likelihood ?? [];
    expect(early.map((value) => Math.round(value * 100) / 100)).toEqual([0.92, 0.17, 0.17]);
  });

  test('leaves out causes this layout cannot have, and keeps them while the layout is not known', () => {
    const ids = (thermostat?: string) =>
      modelOf(records, 'runs-cold', thermostat === undefined ? {} : { thermostat }).causes.map(
        ({ id }) => id,
      );
    expect(ids('none')).toEqual(['sensor-low']);
    expect(ids()).toEqual(['thermostat-open', 'sensor-low']);
  });

  test('leaves out tests this layout cannot have', () => {
    const { records: some } = shelfOf(
      changed([
        'tests/hose-watch.yaml',
        'engine: any',
        'engine: any\nlayout: { heater: [valve-controlled] }',
      ]),
    );
    const tests = (heater: string) =>
      modelOf(some, 'runs-cold', { heater }).tests.filter(({ isRecheck }) => !isRecheck);
    expect(tests('always flowing')).toEqual([]);
    expect(tests('valve-controlled')).toHaveLength(1);
  });

  /** Group by test, of hose-watch and copies of it that repeat others. */
  const groupsWith = (copies: Readonly<Record<string, string>>) => {
    const watch = soundShelf().find((file) => file.path === 'tests/hose-watch.yaml');
    const files = Object.entries(copies).map(([id, repeats]): RawFile => {
      const text = new TextDecoder().decode(watch?.bytes).replace('Hose watch', id);
      return {
        path: `tests/${id}.yaml`,
        bytes: new TextEncoder().encode(`${text}repeats: [${repeats}]\n`),
      };
    });
    const { records: more } = shelfOf([...soundShelf(), ...files]);
    return modelOf(more, 'runs-cold', {})
      .tests.filter(({ isRecheck }) => !isRecheck)
      .map(({ id, group }) => [id, group]);
  };

  test('puts tests that repeat each other into one group, whichever of them says so', () => {
    const groups = groupsWith({ 'a-touch': 'hose-watch', 'b-glance': 'a-touch', 'c-lone': '' });
    expect(groups).toEqual([
      ['a-touch', 'a-touch'],
      ['b-glance', 'a-touch'],
      ['c-lone', undefined],
      ['hose-watch', 'a-touch'],
    ]);
  });

  test('a test that repeats one of each of two groups makes them one', () => {
    const groups = groupsWith({ 'a-touch': '', 'b-glance': 'hose-watch', 'c-both': 'b-glance, a-touch' });
    expect(new Set(groups.map(([, group]) => group))).toEqual(new Set(['a-touch']));
    expect(groups).toHaveLength(4);
  });

  test('a test for some complaints only is left out of others, unless their tree asks it', () => {
    const withLimit = (id: string, symptoms: string[]) => {
      const watch = records.test.get('hose-watch');
      if (!watch) throw new Error('No hose-watch');
      const limited = { ...watch, id, data: { ...watch.data, 'only-for': symptoms } };
      return modelOf({ ...records, test: new Map(records.test).set(id, limited) }, 'runs-cold', {})
        .tests.filter(({ isRecheck }) => !isRecheck)
        .map((each) => each.id);
    };
    expect(withLimit('a-touch', ['runs-cold'])).toEqual(['hose-watch', 'a-touch']);
    expect(withLimit('a-touch', ['another'])).toEqual(['hose-watch']);
    expect(withLimit('hose-watch', ['another'])).toEqual(['hose-watch']);
  });

  test('says which record is missing', () => {
    expect(() => modelOf(records, 'no-such', {})).toThrow('The shelf has no symptom "no-such".');
  });
});

describe('the tree of a complaint for the engine', () => {
  const costed = (shelf: ReturnType<typeof shelfOf>, thermostat: string) => {
    const { model, tree } = caseOf(shelf, 'runs-cold', { thermostat });
    return { tree, cost: treeCost(compile(model), tree) };
  };

  test('has its layout branches resolved', () => {
    expect(costed({ ...shelfOf(soundShelf()) }, 'outlet side').tree.start).toBe('hose');
    const none = costed(shelfOf(soundShelf()), 'none');
    expect(none.tree.start).toBe('sensor');
    // What the layout cannot have, and something else, are no proofs.
    expect(none.tree.steps.sensor).toEqual({ kind: 'end', causes: ['sensor-low'] });
    expect(none.cost.ok).toBe(true);
  });

  test('at an end nothing is proven behind something else: there the car is passed on', () => {
    const shelf = shelfOf(
      changed([
        'trees/runs-cold.yaml',
        'sensor: { causes: [sensor-low, thermostat-open, something-else]',
        'sensor: { causes: [sensor-low, something-else, thermostat-open]',
      ]),
    );
    expect(costed(shelf, 'outlet side').tree.steps.sensor).toEqual({ kind: 'end', causes: ['sensor-low'] });
  });

  test('costs what it costs by hand', () => {
    // Nothing to ask: prove the sensor (50), and with the 3 % left pass the car on (240).
    const { cost } = costed(shelfOf(soundShelf()), 'none');
    expect(cost.ok && cost.report.expectedMinutes).toBeCloseTo(50 + 0.03 * 240, 9);
  });

  test('passes over the proof of a cause this layout cannot have', () => {
    const shelf = shelfOf(
      changed(
        ['trees/runs-cold.yaml', 'none: sensor', 'none: first'],
        ['trees/runs-cold.yaml', 'ends:', '  first: { prove: thermostat-open, otherwise: sensor }\nends:'],
      ),
    );
    expect(costed(shelf, 'none').tree.start).toBe('sensor');
  });

  test('joins the trees it goes on to', () => {
    const read = (path: string): string =>
      new TextDecoder().decode(soundShelf().find((file) => file.path === path)?.bytes);
    const write = (path: string, text: string): RawFile => ({ path, bytes: new TextEncoder().encode(text) });
    const shelf = shelfOf([
      ...changed(
        ['trees/runs-cold.yaml', 'warm-late: sensor', 'warm-late: other'],
        ['trees/runs-cold.yaml', 'ends:', '  other: { tree: no-heat }\nends:'],
      ),
      write(
        'symptoms/no-heat.yaml',
        read('symptoms/runs-cold.yaml').replace('tree: runs-cold', 'tree: no-heat'),
      ),
      write(
        'trees/no-heat.yaml',
        `title: No heat\nsymptom: no-heat\nstart: only\nsteps:\n  only: { prove: sensor-low, otherwise: gone }\nends:\n  gone: { causes: [thermostat-open], says: Left. }\nsources: [common practice]\nreviewed: 2026-11-25\n`,
      ),
    ]);
    const { tree, cost } = costed(shelf, 'outlet side');
    expect(tree.steps.hose).toMatchObject({ on: { 'warm-late': 'no-heat/only' } });
    expect(tree.steps['no-heat/only']).toEqual({
      kind: 'prove',
      cause: 'sensor-low',
      otherwise: 'no-heat/gone',
    });
    expect(cost.ok).toBe(true);
  });

  test('wants to know every feature it branches on', () => {
    expect(() => caseOf(shelfOf(soundShelf()), 'runs-cold', {})).toThrow(
      'The tree "runs-cold" asks for "thermostat" at step "where".',
    );
  });
});
