/** A stand-in for the browser's storage, its values as own properties, as Object.keys finds them there. */
export class Device {
  [name: string]: unknown;

  constructor(held: Readonly<Record<string, string>>) {
    for (const [name, value] of Object.entries(held))
      Object.defineProperty(this, name, { value, enumerable: true, configurable: true, writable: true });
  }

  getItem(name: string): string | null {
    const value = Object.hasOwn(this, name) ? this[name] : undefined;
    return typeof value === 'string' ? value : null;
  }

  setItem(name: string, value: string): void {
    Object.defineProperty(this, name, { value, enumerable: true, configurable: true, writable: true });
  }

  removeItem(name: string): void {
    delete this[name];
  }
}
