/** What the reader's device keeps. Storage may be blocked or full: the page works on without it and says so once. */
import { siteName } from './site-name.ts';
import type { DatabaseStart, KeptName, NameStart } from './storage-names.ts';

/** What every name in the small storage starts with. */
export const prefix = () => `${siteName()}.`;

/** A kept value as it lies there, or undefined when there is none or storage is blocked. */
export function storedText(name: KeptName): string | undefined {
  try {
    return localStorage.getItem(prefix() + name) ?? undefined;
  } catch {
    return undefined;
  }
}

/** A kept value, or undefined when there is none or it cannot be read. */
export function kept<T>(name: KeptName, isValid: (value: unknown) => value is T): T | undefined {
  const text = storedText(name);
  if (text === undefined) return undefined;
  try {
    const value: unknown = JSON.parse(text);
    return isValid(value) ? value : undefined;
  } catch {
    return undefined;
  }
}

/** Keep a value. @returns whether it was kept; false when storage is blocked or full. */
export function keep(name: KeptName, value: unknown): boolean {
  try {
    localStorage.setItem(prefix() + name, JSON.stringify(value));
    return true;
  } catch {
    return false;
  }
}

/** Takes a kept value off the device; without storage it does nothing. */
export function forget(name: KeptName): void {
  try {
    localStorage.removeItem(prefix() + name);
  } catch {
    // Nothing was kept, so nothing is there to forget.
  }
}

/** All kept names that start so, without the prefix. */
export function keptNames<Start extends NameStart | DatabaseStart>(start: Start): `${Start}${string}`[] {
  try {
    const own = prefix();
    return Object.keys(localStorage)
      .filter((name) => name.startsWith(own + start))
      .map((name) => name.slice(own.length) as `${Start}${string}`);
  } catch {
    return [];
  }
}

/** The walk that was left last, if any. */
export function lastWalk(): { address: string; title: string } | undefined {
  const isPlace = (value: unknown): value is [string, string] =>
    Array.isArray(value) && value.length === 2 && value.every((each) => typeof each === 'string');
  const [address, title] = kept('came-from', isPlace) ?? [];
  return address?.startsWith('symptoms/') && title !== undefined ? { address, title } : undefined;
}
