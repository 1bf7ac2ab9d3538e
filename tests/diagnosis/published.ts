import { readFileSync } from 'node:fs';

/**
 * The worked examples of tests/published/troubleshooting.json. Every figure there carries its source and kind:
 * published, from memory, or computed by exhaustive enumeration with two programs independent of this one.
 */
export interface Entry<Inputs, Expected> {
  id: string;
  kind: string;
  source: string;
  inputs: Inputs;
  expected: Expected;
  tolerance: number;
}

interface Published {
  proposedScales: { likelihoodWords: Record<string, number>; priorWeights: Record<string, number> };
  entries: Entry<unknown, unknown>[];
}

const file = JSON.parse(
  readFileSync(new URL('../published/troubleshooting.json', import.meta.url), 'utf8'),
) as Published;

export const published = {
  proposedScales: file.proposedScales,
  entries: file.entries,
  /** One worked example by its id, with the shape the test reads it in. */
  entry<Inputs = unknown, Expected = Record<string, number>>(id: string): Entry<Inputs, Expected> {
    const found = file.entries.find((entry) => entry.id === id);
    if (!found) throw new Error(`No published example "${id}".`);
    return found as Entry<Inputs, Expected>;
  },
};
