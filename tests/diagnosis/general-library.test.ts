import { type INetwork, inferences } from 'bayesjs';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compile } from '../../src/diagnosis/compiled.ts';
import { type Model, SOMETHING_ELSE } from '../../src/diagnosis/model.ts';
import { posterior } from '../../src/diagnosis/posterior.ts';
import { models, situations } from './make-model.ts';

/** The model as a general Bayesian network: one hidden node with all causes, a child for each test. */
function networkOf(model: Model): INetwork {
  const total = model.causes.reduce((sum, cause) => sum + cause.weight, 0);
  const causes = [...model.causes.map((cause) => cause.id), SOMETHING_ELSE];
  const network: INetwork = {
    cause: {
      id: 'cause',
      states: causes,
      parents: [],
      cpt: Object.fromEntries([
        ...model.causes.map(
          (cause) => [cause.id, (cause.weight / total) * (1 - model.somethingElse)] as const,
        ),
        [SOMETHING_ELSE, model.somethingElse] as const,
      ]),
    },
  };
  for (const one of model.tests)
    network[one.id] = {
      id: one.id,
      states: one.outcomes,
      parents: ['cause'],
      cpt: causes.map((cause, column) => ({
        when: { cause },
        // biome-ignore lint/suspicious/noThenProperty: the library calls it that
        then: Object.fromEntries(
          one.outcomes.map((outcome, row) => [outcome, one.likelihood[row]?.[column] ?? Number.NaN]),
        ),
      })),
    };
  return network;
}

// bayesjs 0.6.5, a general Bayesian network library: exact inference by two of its methods.
test.each(['variableElimination', 'junctionTree'] as const)('posteriors agree with bayesjs, %s', (method) => {
  fc.assert(
    fc.property(
      models({ causes: 5, tests: 4 }).chain((model) => fc.tuple(fc.constant(model), situations(model, 0.6))),
      ([model, { evidence }]) => {
        const network = networkOf(model);
        const given = Object.fromEntries(evidence.map((finding) => [finding.test, finding.outcome]));
        for (const { cause, share } of posterior(compile(model), { evidence }).ranked)
          expect(Math.abs(inferences[method].infer(network, { cause }, given) - share)).toBeLessThan(1e-9);
      },
    ),
    { numRuns: 40 },
  );
});
