/** A sound value with something in it replaced, left out or put in: what an older version, a merge or a hand leaves. */
import fc from 'fast-check';
import { hostileText } from './runs.ts';

const anyValue: fc.Arbitrary<unknown> = fc.oneof(
  hostileText,
  fc.constantFrom(null, undefined, true, 0, -1, 1e308, [], {}, [null], [[]], ''),
  fc.double(),
  fc.jsonValue({ maxDepth: 2 }),
);

type Way = readonly [where: number, how: 'replace' | 'text' | 'drop' | 'add', value: unknown, name: string];

const way: fc.Arbitrary<Way> = fc.tuple(
  fc.nat(),
  fc.constantFrom('replace', 'text', 'drop', 'add'),
  anyValue,
  fc.oneof(hostileText, fc.constantFrom('__proto__', 'constructor', 'id', 'at')),
);

/** Every place in a value, as the object it is in and its name there. */
function placesIn(value: unknown): { within: Record<string, unknown>; name: string }[] {
  if (typeof value !== 'object' || value === null) return [];
  const within = value as Record<string, unknown>;
  return Object.keys(within).flatMap((name) => [{ within, name }, ...placesIn(within[name])]);
}

function put(within: Record<string, unknown>, name: string, value: unknown): void {
  // Also for __proto__, as JSON.parse does.
  Object.defineProperty(within, name, { value, enumerable: true, configurable: true, writable: true });
}

/** @param sound a value that JSON can hold */
export function spoilt(sound: unknown): fc.Arbitrary<unknown> {
  return fc.array(way, { maxLength: 4 }).map((ways) => {
    const copy: { whole: unknown } = { whole: structuredClone(sound) };
    for (const [where, how, given, name] of ways) {
      // Its own each time: what is put in twice must not become one thing that holds itself.
      const value = structuredClone(given);
      const places = placesIn(copy);
      const place = places[where % places.length];
      if (!place) continue;
      const now = place.within[place.name];
      if (how === 'drop') delete place.within[place.name];
      else if (how === 'add' && typeof now === 'object' && now !== null)
        put(now as Record<string, unknown>, name, value);
      else if (how === 'text' && typeof now === 'string') put(place.within, place.name, name);
      else put(place.within, place.name, value);
    }
    return copy.whole;
  });
}

/** The same as text: mostly JSON, now and then cut off or none at all. */
export function spoiltText(sound: unknown): fc.Arbitrary<string> {
  return fc.oneof(
    { weight: 8, arbitrary: spoilt(sound).map((value) => JSON.stringify(value) ?? 'undefined') },
    {
      weight: 1,
      arbitrary: fc.tuple(spoilt(sound), fc.double({ min: 0, max: 1, noNaN: true })).map(([value, share]) => {
        const text = JSON.stringify(value) ?? '';
        return text.slice(0, text.length * share);
      }),
    },
    { weight: 1, arbitrary: hostileText },
  );
}
