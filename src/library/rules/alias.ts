import { isAlias, visit } from 'yaml';
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
    const starts: number[] = [];
    visit(document, {
      Node: (_key, node) => {
        if (!node.range) return;
        if (isAlias(node)) starts.push(node.range[0]);
        // The node's own range begins behind its anchor.
        else if ('anchor' in node && node.anchor)
          starts.push(text.lastIndexOf(`&${node.anchor}`, node.range[0]));
      },
    });
    // An alias without its anchor is no node: the text was meant otherwise.
    for (const error of errors) if (error.code === 'BAD_ALIAS') starts.push(error.pos[0]);
    const [start] = starts.sort((a, b) => a - b);
    if (start === undefined) return [];
    const piece = /^[&*][^\s,[\]{}]+/.exec(text.slice(start))?.[0] ?? '';
    const sign = piece.slice(0, 1);
    return [
      {
        at: { file, start, end: start + piece.length },
        found: `"${piece}" is ${sign === '*' ? 'an alias' : 'an anchor'} in YAML; a record does without.`,
        expected: `A text that begins with "${sign}" goes in quotes.`,
        byHand: 'put the text in quotes, or write out everything where it stands',
      },
    ];
  },
};
