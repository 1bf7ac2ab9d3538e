import { isAlias, visit } from 'yaml';
import type { Fault } from '../finding.ts';
import type { TextRule } from '../rule.ts';

/**
 * Anchors and aliases are refused outright: a record says everything where it stands, and a few lines of nested
 * aliases can unfold to more memory than there is.
 */
export const alias: TextRule = {
  id: 'alias',
  level: 'error',
  on: 'text',
  ends: true,
  check: ({ source, document, errors }) => {
    // Almost no text has one; going through every node of every record costs a third of the reading.
    if (!/[&*][^\s,[\]{}]/.test(source.text)) return [];
    const { file, text } = source;
    const faults: Fault[] = [];
    const report = (start: number): void => {
      const piece = /^[&*][^\s,[\]{}]+/.exec(text.slice(start))?.[0] ?? '';
      const sign = piece.slice(0, 1);
      faults.push({
        at: { file, start, end: start + piece.length },
        found: `"${piece}" is ${sign === '*' ? 'an alias' : 'an anchor'} in YAML; a record does without.`,
        expected: `A text that begins with "${sign}" goes in quotes.`,
        byHand:
          sign === '*'
            ? 'put the text in quotes, or write out what the alias stands for'
            : 'put the text in quotes, or take it out',
      });
    };
    visit(document, {
      Node: (_key, node) => {
        if (isAlias(node)) {
          if (node.range) report(node.range[0]);
        } else if ('anchor' in node && node.anchor && node.range) {
          // The node's own range begins behind its anchor.
          report(text.lastIndexOf(`&${node.anchor}`, node.range[0]));
        }
      },
    });
    if (faults.length === 0) for (const error of errors) if (error.code === 'BAD_ALIAS') report(error.pos[0]);
    return faults;
  },
};
