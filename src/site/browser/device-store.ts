/**
 * Things of one kind that the device keeps, each under a name of its own.
 *
 * Every change reads what is kept now, changes that and writes it back at once, so two windows never write over each
 * other's whole. What cannot be written stays in this window, and the page says so.
 */
import { forget, keep, kept, keptNames, keptText } from './storage.ts';
import type { NameStart } from './storage-names.ts';

export interface Kept {
  id: string;
  /** A moment in ISO form. */
  changed: string;
}

/** Values of one kind on this device, each under its own key; what the device will not take stays here as long as the page. */
export class DeviceStore<T extends Kept> {
  private readonly prefix: NameStart;
  private readonly isValid: (value: unknown) => value is T;
  /** What the device would not take. */
  private readonly here = new Map<string, T>();

  /** @param prefix name under which the things are kept, with its point: `job.` */
  constructor(prefix: NameStart, isValid: (value: unknown) => value is T) {
    this.prefix = prefix;
    this.isValid = isValid;
  }

  get(id: string): T | undefined {
    return this.here.get(id) ?? kept(`${this.prefix}${id}`, this.isValid);
  }

  /** All, the last changed first. */
  list(): T[] {
    const ids = new Set([
      ...keptNames(this.prefix).map((name) => name.slice(this.prefix.length)),
      ...this.here.keys(),
    ]);
    return [...ids]
      .flatMap((id) => this.get(id) ?? [])
      .sort((a, b) => b.changed.localeCompare(a.changed) || a.id.localeCompare(b.id));
  }

  /**
   * @param change what is kept now -> what is to be kept
   * @returns whether the device took it
   */
  change(id: string, start: T, change: (now: T) => T): boolean {
    const next = { ...change(this.get(id) ?? start), changed: new Date().toISOString() };
    const stays = keep(`${this.prefix}${id}`, next);
    if (stays) this.here.delete(id);
    else this.here.set(id, next);
    return stays;
  }

  remove(id: string): void {
    this.here.delete(id);
    forget(`${this.prefix}${id}`);
  }

  /** Whether something is only in this window. */
  get hasUnkept(): boolean {
    return this.here.size > 0;
  }

  /** What lies on the device under this name and cannot be read as such, as it stands: kept for a rescue. */
  unreadable(): { id: string; text: string }[] {
    return keptNames(this.prefix).flatMap((name) => {
      const id = name.slice(this.prefix.length);
      const text = keptText(name);
      return text === undefined || kept(name, this.isValid) ? [] : [{ id, text }];
    });
  }
}

/** Whether a text is a moment that can be shown. */
export function isMoment(value: unknown): value is string {
  return typeof value === 'string' && !Number.isNaN(Date.parse(value));
}

/** Whether this device keeps anything here: storage may be blocked, full, or gone when a private window closes. */
export function keepsAnything(): boolean {
  const keeps = keep('probe', 'x'.repeat(200));
  forget('probe');
  return keeps;
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

/** A short name nobody else has: letters and digits that are hard to mix up. */
export function newId(start: string): string {
  const letters = '23456789abcdefghjkmnpqrstuvwxyz';
  const random = [...crypto.getRandomValues(new Uint8Array(8))].map((each) => letters[each % letters.length]);
  return `${start}-${random.join('')}`;
}
