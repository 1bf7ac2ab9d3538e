/** Titles of what a verdict points to, written into the page when it is built. */
export interface TraceNames {
  /** Outcome labels by `test outcome`, tests by id. */
  outcomes: Record<string, string>;
  tests: Record<string, string>;
  symptoms: Record<string, string>;
  causes: Record<string, string>;
}

/** The names in this page. @throws Error when the page was built without them */
export function traceNames(): TraceNames {
  const source = document.querySelector('.trace-names')?.textContent;
  if (!source) throw new Error('The page holds no names for the trace reader');
  return JSON.parse(source);
}
