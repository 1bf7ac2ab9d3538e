/** As replaceChildren, but what stays is not taken out and put in again. */
export function reconcileChildren(place: HTMLElement, wanted: readonly Node[]): void {
  for (const child of [...place.childNodes]) if (!wanted.includes(child)) child.remove();
  for (const [at, child] of wanted.entries()) {
    const there = place.childNodes[at];
    if (there !== child) place.insertBefore(child, there ?? null);
  }
}
