import { isScalar, visit } from 'yaml';
import type { Fault } from '../finding.ts';
import type { TextRule } from '../rule.ts';

/** YAML reads 010 as ten and 0x10 as sixteen: a code, a page or a part number would lose its zeros in silence. */
export const leadingZero: TextRule = {
  id: 'leading-zero',
  level: 'error',
  on: 'text',
  check: ({ source, document }) => {
    // Going through every node costs more than the look; the day in a date begins no value.
    if (!/(?:^|[\s:,[{])[-+]?0[\dxo]/.test(source.text)) return [];
    const faults: Fault[] = [];
    visit(document, {
      Scalar: (_key, node) => {
        if (!isScalar(node) || typeof node.value !== 'number' || !node.range) return;
        const written = node.source ?? '';
        if (!/^[-+]?0[\dxo]/.test(written)) return;
        faults.push({
          at: { file: source.file, start: node.range[0], end: node.range[1] },
          found: `"${written}" is read as the number ${node.value}.`,
          expected: `Write "${written}" in quotes if it is a name, ${node.value} if it is a number.`,
          byHand: 'choose one of the two',
        });
      },
    });
    return faults;
  },
};
