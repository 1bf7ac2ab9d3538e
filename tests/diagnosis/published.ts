import { readFileSync } from 'node:fs';

/**
 * The worked examples of tests/published/troubleshooting.json. Every figure there carries its source and kind:
 * published, from memory, or computed by exhaustive enumeration with two programs independent of this one.
 */
export interface Entry {
  id: string;
  kind: string;
  source: string;
  // biome-ignore lint/suspicious/noExplicitAny: each example has its own shape; the tests read what they name
  inputs: any;
  // biome-ignore lint/suspicious/noExplicitAny: as above
  expected: any;
  tolerance: number;
}

interface Published {
  proposedScales: { likelihoodWords: Record<string, number>; priorWeights: Record<string, number> };
  entries: Entry[];
}

const file = JSON.parse(
  readFileSync(new URL('../published/troubleshooting.json', import.meta.url), 'utf8'),
) as Published;

const used = new Set<string>();

export const published = {
  proposedScales: file.proposedScales,
  ids: file.entries.map((entry) => entry.id),
  used,
  /** One worked example by its id. */
  entry(id: string): Entry {
    const found = file.entries.find((entry) => entry.id === id);
    if (!found) throw new Error(`No published example "${id}".`);
    used.add(id);
    return found;
  },
};
