import type { TraceNames } from '../trace-names.ts';

/** The names in this page. @throws Error when the page was built without them */
export function traceNames(): TraceNames {
  const source = document.querySelector('.trace-names')?.textContent;
  if (!source) throw new Error('The page holds no names for the trace reader');
  return JSON.parse(source);
}
