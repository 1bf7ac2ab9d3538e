/** Work that nobody waits for is done once the page has been painted. */

/** @returns a function that runs the last work it was given, after the next picture is on the screen */
export function afterPaint(): (work: () => void) => void {
  let wanted: (() => void) | undefined;
  let frame = 0;
  const run = () => {
    const work = wanted;
    wanted = undefined;
    work?.();
  };
  return (work) => {
    wanted = work;
    cancelAnimationFrame(frame);
    // A frame's callback runs before its picture; the timer after it.
    frame = requestAnimationFrame(() => setTimeout(run));
  };
}
