/** Titles of what a verdict points to, written into the page when it is built. */
export interface TraceNames {
  /** Outcome labels by `test outcome`, tests by id. */
  outcomes: Record<string, string>;
  tests: Record<string, string>;
  symptoms: Record<string, string>;
  causes: Record<string, string>;
}
