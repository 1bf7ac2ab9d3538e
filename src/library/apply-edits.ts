import type { Edit } from './finding.ts';

/**
 * Applies edits to a text.
 * @param edits offsets into the text as it is now; of two that overlap the later one is left for another run
 */
export function applyEdits(text: string, edits: readonly Edit[]): string {
  const inOrder = [...edits].sort((a, b) => a.start - b.start || a.end - b.end);
  let mended = '';
  let at = 0;
  for (const { start, end, text: right } of inOrder) {
    if (start < at) continue;
    mended += text.slice(at, start) + right;
    at = end;
  }
  return mended + text.slice(at);
}
