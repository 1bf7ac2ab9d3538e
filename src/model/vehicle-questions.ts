/** What the form of a vehicle and `npm run new vehicle` both ask in words, beside layout, figures and joints. */

export const LONG_TEXTS = [
  {
    name: 'access',
    label: 'Access',
    hint: 'One thing a line: what comes off first, which bolt hides',
  },
  { name: 'bleeding', label: 'Where air hides and where it is let out', hint: '' },
  { name: 'gauge', label: 'What the gauge or the lamp really shows', hint: '' },
] as const;

/** Where most of a record is from: the word of the record, and how it is asked. */
export const KNOWN_FROM = {
  manual: 'workshop manual we hold',
  measured: 'measured or seen here',
  published: 'published',
  'common practice': 'common practice',
  'from memory': 'from memory',
} as const;

export const ASKS_KNOWN = 'Where most of this is from';
export const ASKS_SOURCE = 'Which book and page; what car, when';
