/**
 * Lighthouse as it comes, its mobile setting, once for each page asked for and each time in a browser of its own. Run beside
 * its packages: node run.mjs '{"chromium":"/path","flags":[],"jobs":[{"address":"http://…","categories":["performance"]}]}'
 * Writes one list of what each run said into runs.json. Errors are reported to nobody: only Lighthouse's own command line does that.
 */
import { writeFile } from 'node:fs/promises';
import { launch } from 'chrome-launcher';
import lighthouse from 'lighthouse';

const { chromium, flags, jobs } = JSON.parse(process.argv[2]);
const runs = [];
for (const { address, categories } of jobs) {
  const chrome = await launch({ chromePath: chromium, chromeFlags: flags });
  try {
    const result = await lighthouse(address, {
      port: chrome.port,
      logLevel: 'silent',
      onlyCategories: categories,
      disableFullPageScreenshot: true,
    });
    runs.push(readable(result.lhr));
  } finally {
    chrome.kill();
  }
}
await writeFile('runs.json', JSON.stringify(runs));

/** Scores from 0 to 1, figures in milliseconds (the shift is a plain number), and the title of what cost a score something. */
function readable({ categories, audits, runtimeError }) {
  if (runtimeError) throw new Error(runtimeError.message);
  const all = Object.values(categories);
  return {
    scores: Object.fromEntries(all.map(({ id, score }) => [id, score])),
    figures: Object.fromEntries(
      Object.values(audits).flatMap(({ id, numericValue }) =>
        numericValue === undefined ? [] : [[id, numericValue]],
      ),
    ),
    lacking: all
      .filter(({ id }) => id !== 'performance')
      .flatMap(({ title, auditRefs }) =>
        auditRefs
          .filter(({ id, weight }) => weight > 0 && audits[id].score !== null && audits[id].score < 1)
          .map(({ id }) => `${title}: ${audits[id].title}`),
      ),
  };
}
