/**
 * Things of one kind that the device keeps, each under a name of its own.
 *
 * A window reads them once and hears of every change another window makes. Every change is one transaction on what is kept at
 * that moment, so two windows never write over each other's. What the device does not take stays in this window, and the page
 * says so.
 */
import './page-globals.ts';
import type { KnownItems } from './known.ts';
import { keeper } from './open-keeper.ts';
import { siteName } from './site-name.ts';
import type { DatabaseName, DatabaseStart } from './storage-names.ts';

export interface StoredItem {
  id: string;
  /** A moment in ISO form. */
  changed: string;
}

/** Values of one kind on this device, each under its own key; what the device will not take stays here as long as the page. */
export class DeviceStore<T extends StoredItem> {
  private readonly start: DatabaseStart;
  private readonly isValid: (value: unknown) => value is T;
  private readonly known: KnownItems;

  /**
   * @param start name under which the things are kept, with its point: `job.`
   * @param known what this window knows already; the page's own unless given
   */
  constructor(
    start: DatabaseStart,
    isValid: (value: unknown) => value is T,
    known: KnownItems = knownOnPage(start),
  ) {
    this.start = start;
    this.isValid = isValid;
    this.known = known;
  }

  /** Reads what is kept, once; until then nothing is known of it. */
  ready(): Promise<void> {
    this.known.loaded ??= this.reload().then(() => this.listen());
    return this.known.loaded;
  }

  /** Reads again what is kept, where something was changed behind this store. */
  async reload(): Promise<void> {
    await this.load();
    for (const call of this.known.whenChanged) call();
  }

  /** One of them as this window knows it. */
  get(id: string): T | undefined {
    return this.valid(this.known.here.get(id)) ?? this.valid(this.known.kept.get(id));
  }

  /** All, the last changed first. */
  list(): T[] {
    const ids = new Set([...this.known.kept.keys(), ...this.known.here.keys()]);
    return [...ids]
      .flatMap((id) => this.get(id) ?? [])
      .sort((a, b) => b.changed.localeCompare(a.changed) || a.id.localeCompare(b.id));
  }

  /**
   * Changes one, or keeps it for the first time.
   * @param change what is kept now -> what is to be kept
   * @param others of other kinds, kept in the same transaction
   * @returns whether the device took it
   */
  async change(
    id: string,
    start: T,
    change: (now: T) => T,
    others?: ReadonlyMap<DatabaseName, unknown>,
  ): Promise<boolean> {
    await this.ready();
    const { kept, here } = this.known;
    let made: T | undefined;
    const make = (now: unknown) => {
      const from = this.valid(here.get(id)) ?? this.valid(now) ?? start;
      made = { ...change(from), changed: new Date().toISOString() };
      return made;
    };
    const stays = await this.write(id, make, others);
    // A device that does not even open never asked what the change makes of it.
    const next = made ?? make(kept.get(id));
    if (stays) {
      kept.set(id, next);
      here.delete(id);
    } else here.set(id, next);
    this.tell(id);
    return stays;
  }

  /** Takes one off the device, with others that hang on it. */
  async remove(id: string, others: readonly DatabaseName[] = []): Promise<boolean> {
    await this.ready();
    const { kept, here } = this.known;
    const gone = await this.write(id, () => undefined, new Map(others.map((name) => [name, undefined])));
    here.delete(id);
    if (gone) kept.delete(id);
    this.tell(id);
    return gone;
  }

  /** Whether something is only in this window. */
  get hasUnkept(): boolean {
    return this.known.here.size > 0;
  }

  /** What lies on the device under this name and cannot be read as such, as it stands: kept for a rescue. */
  unreadable(): { id: string; text: string }[] {
    return [...this.known.kept].flatMap(([id, value]) =>
      this.isValid(value) ? [] : [{ id, text: typeof value === 'string' ? value : JSON.stringify(value) }],
    );
  }

  /** Takes off the device what cannot be read. @returns the way back */
  async removeUnreadable(id: string): Promise<() => Promise<void>> {
    const value = this.known.kept.get(id);
    await this.remove(id);
    return async () => {
      if (await this.write(id, () => value)) this.known.kept.set(id, value);
      this.tell(id);
    };
  }

  /** Calls back when they are read, and after every change, this window's and another's. */
  whenChanged(call: () => void): void {
    this.known.whenChanged.add(call);
  }

  private valid(value: unknown): T | undefined {
    return this.isValid(value) ? value : undefined;
  }

  private async write(
    id: string,
    make: (now: unknown) => unknown,
    others?: ReadonlyMap<DatabaseName, unknown>,
  ): Promise<boolean> {
    try {
      await (await keeper()).change(`${this.start}${id}`, make, others);
      return true;
    } catch {
      return false;
    }
  }

  private async load(): Promise<void> {
    const all = await (await keeper()).all(this.start).catch(() => []);
    this.known.kept = new Map(all.map(([name, value]) => [name.slice(this.start.length), value]));
  }

  private tell(id: string): void {
    tellWindows([this.start + id]);
    for (const call of this.known.whenChanged) call();
  }

  private listen(): void {
    channel()?.addEventListener('message', async ({ data }) => {
      if (typeof data !== 'string' || !data.startsWith(this.start)) return;
      const id = data.slice(this.start.length);
      const value = await (await keeper()).get(`${this.start}${id}`).catch(() => undefined);
      if (value === undefined) this.known.kept.delete(id);
      else this.known.kept.set(id, value);
      for (const call of this.known.whenChanged) call();
    });
    // A page that the browser took out of its cache has heard of nothing meanwhile.
    if (typeof window !== 'undefined')
      window.addEventListener('pageshow', ({ persisted }) => {
        if (persisted) void this.reload();
      });
  }
}

function knownOnPage(start: DatabaseStart): KnownItems {
  const fresh: KnownItems = { kept: new Map(), here: new Map(), loaded: undefined, whenChanged: new Set() };
  if (typeof window === 'undefined') return fresh;
  const all = window.headertank.known ?? new Map<string, KnownItems>();
  window.headertank.known = all;
  const there = all.get(start) ?? fresh;
  all.set(start, there);
  return there;
}

/** Tells the other windows of this site that these were changed or are gone. */
export function tellWindows(names: readonly string[]): void {
  for (const name of names) channel()?.postMessage(name);
}

let shared: BroadcastChannel | undefined;

/** By which the windows of this site tell each other; none where the browser has no such thing. */
function channel(): BroadcastChannel | undefined {
  if (typeof BroadcastChannel === 'undefined') return undefined;
  shared ??= new BroadcastChannel(siteName());
  return shared;
}

/** Whether a text is a moment that can be shown. */
export function isMoment(value: unknown): value is string {
  return typeof value === 'string' && !Number.isNaN(Date.parse(value));
}

/**
 * What a field holds after somebody typed in it, when another window may have written there since.
 * @param seen what this window last saw kept
 * @param now what is kept
 * @param typed what stands in the field
 * @returns the text to keep, and the other window's words when they would be lost by it
 */
export function merged(seen: string, now: string, typed: string): { text: string; other?: string } {
  return now === seen || now === typed || now === '' ? { text: typed } : { text: typed, other: now };
}
