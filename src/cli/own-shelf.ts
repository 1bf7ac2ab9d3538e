/**
 * `npm run own-shelf`: makes the demonstration shelf your own: invented vehicles, notes and cases go, the workshop's file says
 * who you are.
 *
 *     npm run own-shelf                    asks
 *     npm run own-shelf -- --name "…" --units metric --currency EUR --rate 72 --repository https://git.example.org/us/shelf
 */
import { readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { type OwnShop, ownShelf } from '../library/own-shelf.ts';
import { readShelf, shownName } from '../library/read-shelf.ts';
import { shopSchema } from '../model/shop.ts';
import { ask, canAsk } from './ask.ts';
import { Refusal, readArguments, runCommand } from './command.ts';

const USE =
  'npm run own-shelf -- [--name "…"] [--units metric|US] [--currency EUR] [--rate 72] [--repository https://…] [--shelf folder]';

await runCommand(main);

async function main(): Promise<void> {
  const { values } = readArguments(
    USE,
    {
      allowPositionals: true,
      options: {
        name: { type: 'string' },
        units: { type: 'string' },
        currency: { type: 'string' },
        rate: { type: 'string' },
        repository: { type: 'string' },
        shelf: { type: 'string', default: 'content' },
      },
    },
    0,
  );
  const shopPath = join(values.shelf, 'shop.yaml');
  const shopText = await readFile(shopPath, 'utf8');
  const own = await ownShop(values);
  const { shelf } = await readShelf(values.shelf);
  const made = ownShelf(shelf, shownName(values.shelf), shopText, own);
  // The workshop's file last: as long as it says "invented", a run that broke off can be run again.
  for (const path of made.paths) await rm(join(values.shelf, path));
  await writeFile(shopPath, made.shop);
  process.stdout.write(
    `Removed: ${made.vehicles} invented vehicles, ${made.notes} notes, ${made.cases} cases told of them. Written: ${shownName(shopPath)}\n` +
      'Next: npm run new vehicle, or the form "A vehicle of yours" on the site; then npm run check\n',
  );
}

/** By the options; what they leave out is asked where somebody can answer. */
async function ownShop(values: Record<string, string | boolean | undefined>): Promise<OwnShop> {
  const { shape } = shopSchema;
  const read = async (
    option: string,
    question: string,
    wrong: (text: string) => string | undefined,
  ): Promise<string> => {
    const given = values[option];
    if (typeof given === 'string') {
      const says = wrong(given.trim());
      if (says !== undefined) throw new Refusal(`--${option} "${given}": ${says}`);
      return given.trim();
    }
    if (!canAsk()) throw new Refusal(`--${option} is missing; asking needs a terminal.\n${USE}`);
    return (await ask(question, (text) => wrong(text.trim()))).trim();
  };
  const name = await read('name', 'Name of the workshop: ', (text) => fault(shape.name, text));
  const units = await read('units', 'Units, metric or US: ', (text) =>
    shape.units.safeParse(text).success ? undefined : 'It is metric or US.',
  );
  const currency = await read('currency', 'Currency, three letters such as EUR: ', (text) =>
    fault(shape.currency, text),
  );
  const rate = await read('rate', `Labour an hour, in ${currency}: `, (text) =>
    fault(shape['labour-rate'], numberOf(text)),
  );
  const repository =
    values.repository === undefined && !canAsk()
      ? ''
      : await read(
          'repository',
          'Address of the repository, such as https://… (empty for none yet): ',
          (text) => (text === '' ? undefined : fault(shape.repository, text)),
        );
  return {
    name,
    units: shape.units.parse(units),
    currency,
    'labour-rate': numberOf(rate),
    ...(repository !== '' && { repository }),
  };
}

/** NaN for what is no number; a decimal comma is one. */
function numberOf(text: string): number {
  return /^\d+(?:[.,]\d{1,2})?$/.test(text) ? Number(text.replace(',', '.')) : Number.NaN;
}

function fault(
  schema: { safeParse(value: unknown): { error?: { issues: { message: string }[] } | undefined } },
  value: unknown,
): string | undefined {
  const [issue] = schema.safeParse(value).error?.issues ?? [];
  if (!issue) return undefined;
  return typeof value === 'number' ? 'A number above nothing, such as 72.' : issue.message;
}
