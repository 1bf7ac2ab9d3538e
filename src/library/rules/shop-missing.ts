import type { ShelfRule } from '../rule.ts';

/** Name, units, currency and rate of the workshop are on every sheet; without its file the site would make them up. */
export const shopMissing: ShelfRule = {
  id: 'shop-missing',
  level: 'error',
  on: 'shelf',
  check: ({ files, shopFile }) =>
    files.has(shopFile)
      ? []
      : [
          {
            at: { file: shopFile, start: 0, end: 0 },
            found: 'The file that names the workshop is not there.',
            expected: 'Every shelf has one, with name, units, currency, labour rate and review interval.',
            byHand: 'put it back, or write it by the table of its fields in src/model/FIELDS.md',
          },
        ],
};
