/** What the forms share that keep every key on the device: fields follow another window, and a device that keeps nothing is said. */
import { element } from './element.ts';

/**
 * Fields that nobody is in take what another window has written.
 * @returns what was taken, by field
 */
export function followFields<Name extends string>(
  names: readonly Name[],
  fieldOf: (name: Name) => (HTMLElement & { value: string }) | null,
  now: Readonly<Record<Name, string>>,
): Map<Name, string> {
  const taken = new Map<Name, string>();
  for (const name of names) {
    const field = fieldOf(name);
    if (!field || field === document.activeElement) continue;
    field.value = now[name];
    taken.set(name, now[name]);
  }
  return taken;
}

/** @param rest what that means here, and what to do */
export function unkeptWarning(...rest: (Node | string)[]): HTMLParagraphElement {
  return element(
    'p',
    { class: 'caution' },
    element('b', {}, 'This device keeps nothing here. '),
    'Its storage is full or blocked, or this is a private window. ',
    ...rest,
  );
}
