/** Cautions stand in full where they are first met in a walk; at later questions of it their names are enough. */

/** Which caution was met at which question. */
export class Cautions {
  /** Of each caution, the section where it stood in full. */
  private readonly met = new Map<string, HTMLElement>();
  private now: HTMLElement | undefined;

  /** Names those met before; at the question where it was met, also on the way back, a caution stays in full. */
  show(section: HTMLElement): void {
    this.now = section;
    const all = cautionsOf(section);
    for (const caution of all) {
      const where = this.met.get(idOf(caution));
      caution.toggleAttribute('data-met', where !== undefined && where !== section);
    }
    // Those that are only named stand together, so that they take one line.
    const firstInFull = all.find((each) => !each.hasAttribute('data-met'));
    for (const caution of all)
      if (firstInFull && caution.hasAttribute('data-met') && all.indexOf(caution) > all.indexOf(firstInFull))
        firstInFull.before(caution);
  }

  /** The question that was shown is answered or passed: what it warned of has been met. */
  passed(): void {
    const { now } = this;
    if (!now) return;
    for (const caution of cautionsOf(now))
      if (!this.met.has(idOf(caution)) && caution.getClientRects().length > 0)
        this.met.set(idOf(caution), now);
  }

  /** A walk that starts again warns again. */
  forget(): void {
    this.met.clear();
  }
}

/** Those above the question; those at the steps of its work stay where the action is. */
function cautionsOf(section: HTMLElement): HTMLElement[] {
  return [...section.querySelectorAll<HTMLElement>(':scope > .caution')];
}

function idOf(caution: HTMLElement): string {
  return caution.querySelector('a')?.getAttribute('href') ?? '';
}
