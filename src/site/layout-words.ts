/** A layout condition in words: "heater valve-controlled; reservoir header tank". */
import { LAYOUT_FEATURES, LAYOUT_LABELS, type LayoutCondition } from '../model/layout.ts';
import { inSentence } from './text/in-sentence.ts';

export function layoutWords(condition: LayoutCondition): string {
  return LAYOUT_FEATURES.flatMap((feature) => {
    const values = condition[feature];
    return values ? [`${inSentence(LAYOUT_LABELS[feature])} ${values.join(' or ')}`] : [];
  }).join('; ');
}
