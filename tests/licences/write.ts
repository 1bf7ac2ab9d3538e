/** Writes both lists of licences anew, after a package was added or brought up to date: `npm run licences`. */
import { writeFileSync } from 'node:fs';
import { INSTALLED_LIST, installed, installedText, SHIPPED_LIST, shipped, shippedText } from './licences.ts';

const all = installed();
const inScripts = await shipped();
writeFileSync(INSTALLED_LIST, installedText(all));
writeFileSync(SHIPPED_LIST, shippedText(inScripts));
process.stdout.write(
  `${all.length} packages installed; in the scripts of the site: ${inScripts.map(({ name }) => name).join(', ')}\n`,
);
