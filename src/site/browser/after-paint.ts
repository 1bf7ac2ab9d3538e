/** Work that nobody waits for is done once the page has been painted. */

type Work = () => void;

/**
 * @returns a function that does the last works it was given after the next picture is on the screen, each in a turn of its
 *   own, so that a touch or a key never waits for all of them
 */
export function afterPaint(): (...works: readonly Work[]) => void {
  let round = 0;
  return (...works) => {
    const own = ++round;
    const waiting = [...works];
    const next = () => {
      if (own !== round) return;
      waiting.shift()?.();
      if (waiting.length > 0) setTimeout(next);
    };
    // A frame's callback runs before its picture; the timer after it.
    requestAnimationFrame(() => setTimeout(next));
  };
}
