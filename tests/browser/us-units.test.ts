/**
 * A reader in the United States: no metric figure is seen, heard or printed on a page of any kind, on a phone, until metric units
 * are chosen; and that choice holds against the region.
 */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openPage, SIZES } from './browser.ts';
import { answerRow, giveAnswer } from './give-answer.ts';
import { openSite } from './open-site.ts';

const { browser, site } = await openSite();

const PAGES = [
  'symptoms/reads-low-at-cruise.html',
  'trees/no-cabin-heat.html',
  'walks/fan-never-stops.html',
  'causes/thermostat-opens-late.html',
  'causes/index.html',
  'tests/compare-readings.html',
  'tests/pressure-test-cold.html',
  'procedures/thermostat-replace.html',
  'procedures/gravity-fill-and-bleed.html',
  'tools/pressure-tester.html',
  'codes/p0128.html',
  'cautions/scald.html',
  'vehicles/aldermoor-tarn-16.html',
  'notes/index.html',
  'guides/reading-a-warm-up-curve.html',
  'guides/pressure-and-boiling.html',
  'guides/where-air-hides.html',
  'calculators/torque.html',
  'calculators/pressure-decay.html',
  'calculators/heat-balance.html',
  'calculators/level.html',
  'sheets/specs/aldermoor-tarn-16.html',
  'sheets/take-in/reads-low-at-cruise.html',
  'road-test.html',
  'job.html',
];

/** Metric by the name of a thing, such as the word kelvin among those the glossary explains, or a question of units itself: an engine, the head of a bolt, a log of either unit. */
const STAYS = /, kelvin, |1\.6 l petrol|10 mm heads?|°C or °F|°C; km\/h/;

/** Every metric figure that a reader sees or hears on the page, with a few words around it. */
async function metricOn(page: Page): Promise<string[]> {
  const found = await page.evaluate(() => {
    const metric =
      /(?<![\p{L}])[\d.,]+[ \u00a0\u2009-]?(?:°C|K|bar|mbar|kPa|N·m|Nm|km\/h|km|mm|cm|m|ml|l|l\/min|ml\/min)(?![\p{L}\d·²³])|°C|\b(?:litres?|kelvin|millimetres?|kilometres?|metres?|millilitres?)\b/gu;
    const inline = 'b, i, span, small, em, strong, a, tspan, abbr, text';
    const asWritten = 'script, style, template, textarea, select, q, code, pre, [data-as-written]';
    const texts = new Map<Element, string>();
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      let part = node.parentElement;
      if (!part || part.closest(asWritten) || !part.checkVisibility({ visibilityProperty: true })) continue;
      while (part.matches(inline) && part.parentElement) part = part.parentElement;
      texts.set(part, `${texts.get(part) ?? ''}${node.textContent}`);
    }
    const spoken = ['aria-label', 'title', 'placeholder'].flatMap((name) =>
      [...document.querySelectorAll(`[${name}]:not([data-as-written] *)`)].map(
        (part) => part.getAttribute(name) ?? '',
      ),
    );
    return [...texts.values(), ...spoken].flatMap((text) =>
      [...text.replace(/\s+/g, ' ').matchAll(metric)].map(({ index, 0: figure }) =>
        text.replace(/\s+/g, ' ').slice(Math.max(0, index - 30), index + figure.length + 20),
      ),
    );
  });
  return found.filter((text) => !STAYS.test(text));
}

async function everythingOpen(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const each of document.querySelectorAll<HTMLDetailsElement>('main details')) each.open = true;
  });
}

test('by the region alone, no page of any kind shows a metric figure', async () => {
  const options = { serviceWorkers: 'block', viewport: SIZES.phone, locale: 'en-US' } as const;
  const { page, close } = await openPage(browser, site.root, options);
  const left: Record<string, string[]> = {};
  for (const name of PAGES) {
    await page.goto(site.root + name);
    await page.locator('ht-units [aria-pressed="true"]', { hasText: '°F' }).waitFor();
    await everythingOpen(page);
    await expect
      .poll(() => metricOn(page), { message: name, timeout: 5000 })
      .toEqual([])
      .catch(async () => {
        left[name] = await metricOn(page);
      });
  }
  expect(left).toEqual({});
  await close();
});

test('a walk asks and ranks in US units; metric, once chosen, stands where the region says otherwise', async () => {
  const options = { serviceWorkers: 'block', viewport: SIZES.phone, locale: 'en-US' } as const;
  const { page, close } = await openPage(browser, site.root, options);
  await page.goto(`${site.root}symptoms/reads-low-at-cruise.html`);
  await giveAnswer(page, answerRow(page, { key: 'level-cold', value: 'at-mark' }));
  await expect.poll(() => metricOn(page)).toEqual([]);

  await page.goto(`${site.root}cautions/scald.html`);
  const text = page.locator('main');
  await expect.poll(() => text.textContent()).toContain('140\u00a0°F');
  await page.getByRole('button', { name: 'metric units' }).click();
  await expect.poll(() => text.textContent()).toContain('60 °C');
  expect(await text.textContent()).not.toContain('°F');
  await page.reload();
  await page.locator('ht-units [aria-pressed="true"]', { hasText: '°C' }).waitFor();
  expect(await text.textContent()).toContain('60 °C');
  await close();
});
