/** The job done by keyboard alone, read by ear, in the sun, on a small screen, at four times the size, and without motion. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { shelf } from '../shelf/shelf.ts';
import { builtSite, folderRoot, openPage, SIZES, settled } from './browser.ts';
import { giveAnswer } from './give-answer.ts';
import { openSite } from './open-site.ts';
import { PAGE_KINDS } from './page-kinds.ts';
import { causeTitle, usualAnswers } from './usual-answers.ts';

const { browser, site } = await openSite();

/** Presses Tab until that has the focus, and sees that the eye can find it. */
async function tabTo(page: Page, selector: string, text = ''): Promise<void> {
  for (let pressed = 0; pressed < 120; pressed++) {
    const at = await page.evaluate(
      ([wanted, words]) => {
        const active = document.activeElement;
        if (!active?.matches(wanted) || !active.textContent?.includes(words)) return undefined;
        const { outlineStyle, outlineWidth } = getComputedStyle(active);
        return { outline: `${outlineStyle} ${outlineWidth}`, width: active.getBoundingClientRect().width };
      },
      [selector, text] as const,
    );
    if (at) {
      expect(at.width).toBeGreaterThan(0);
      expect(at.outline, `the focus on ${selector} ${text}`).toMatch(/^(?:solid|auto|dashed|double) (?!0px)/);
      return;
    }
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab does not lead to ${selector} ${text}`);
}

test('by keyboard alone: complaint, search, walk, end, job card, repair', async () => {
  const [symptom, cause, vehicle] = ['reads-low-at-cruise', 'thermostat-stuck-open', 'aldermoor-tarn-16'];
  const watched = await openPage(browser, site.root, { serviceWorkers: 'block', viewport: SIZES.tablet });
  const { page } = watched;
  await page.goto(`${site.root}index.html`);
  await tabTo(page, '#q');
  await page.keyboard.type('temp drops on the highway');
  await page.locator(`.search-results a[href*="symptoms/${symptom}.html"]`).waitFor();
  for (let pressed = 0; pressed < 10; pressed++) {
    await page.keyboard.press('ArrowDown');
    const at = await page.evaluate(() => document.activeElement?.getAttribute('href') ?? '');
    if (at.includes(`symptoms/${symptom}.html`)) break;
  }
  await page.keyboard.press('Enter');
  await page.waitForURL(`**/symptoms/${symptom}.html*`);
  await page.locator('ht-walk[data-live]').waitFor();
  const given = usualAnswers(symptom, cause, vehicle);
  for (const { key, value } of given) {
    await page.locator(`.step[data-now] .answer[data-key="${key}"]`).first().waitFor();
    await tabTo(page, `.step[data-now] .answer[data-key="${key}"][data-value="${value}"]`);
    await page.keyboard.press('Enter');
    await expect.poll(() => page.evaluate(() => location.hash)).toContain(encodeURIComponent(key));
    // What is read out next is the next question.
    await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe('H3');
  }
  await expect.poll(() => page.locator('.step[data-now]').textContent()).toContain(causeTitle(cause));
  await tabTo(page, '.walk-foot button', 'To the job card');
  await page.keyboard.press('Enter');
  await page.locator('.on-card a').waitFor();
  await tabTo(page, '.on-card a');
  await page.keyboard.press('Enter');
  await page.waitForURL('**/job.html#*');
  await page.locator('ht-job-card[data-live]').waitFor();
  expect(await page.locator('.complaint').textContent()).toContain(
    shelf.records.symptom.get(symptom)?.data.title,
  );
  expect(
    await page.locator('.answers-given li, .answers-given tr, .answers-given dt').count(),
  ).toBeGreaterThanOrEqual(given.length);
  // The browser's own key for it is the browser's; a driven one has none.
  await page.goBack({ waitUntil: 'commit' });
  const repair = shelf.records.cause.get(cause)?.data.repair ?? '';
  await page.locator(`.step[data-now] a[href*="procedures/${repair}.html"]`).first().waitFor();
  await tabTo(page, `.step[data-now] a[href*="procedures/${repair}.html"]`);
  await page.keyboard.press('Enter');
  await page.waitForURL(`**/procedures/${repair}.html*`);
  expect(await page.locator('h1').textContent()).toBe(shelf.records.procedure.get(repair)?.data.title);
  await watched.close();
});

test('by ear: a step of the walk says heading, question and answers, in this order, each by its name', async () => {
  const watched = await openPage(browser, site.root, { serviceWorkers: 'block' });
  const { page } = watched;
  const found = [...shelf.records.symptom].flatMap(([id, { data }]) => {
    const tree = shelf.records.tree.get(data.tree)?.data;
    const asked = shelf.records.test.get(tree?.steps[tree.start]?.test ?? '')?.data;
    return asked && !/[{*_]/.test(asked.question) ? [{ id, asked }] : [];
  })[0];
  if (!found) throw new Error('No walk begins with a test any more.');
  const { id, asked } = found;
  await page.goto(`${site.root}symptoms/${id}.html`);
  await page.locator('ht-walk[data-live]').waitFor();
  const said = async () =>
    (await page.locator('ht-walk').ariaSnapshot())
      .split('\n')
      .map((line) => line.trim().replace(/^- '/, '- '));
  const first = await said();
  const places = [
    '- heading "The walk" [level=2]',
    `- heading "${asked.question}" [level=3]`,
    ...Object.values(asked.outcomes).map(({ label }) => `- link "${label}`),
  ].map((wanted) => first.findIndex((line) => line.startsWith(wanted)));
  expect(places, first.join('\n')).not.toContain(-1);
  expect(places).toEqual([...places].sort((a, b) => a - b));
  // After an answer: the next question, the buttons under it, then what was said, with a way to change it.
  await giveAnswer(page, page.locator('.step[data-now] .answer').first());
  await expect.poll(said).toEqual(expect.arrayContaining(['- heading "Answers so far" [level=3]']));
  const second = await said();
  const after = [
    /^- heading (?!"Answers so far").*\[level=3\]/,
    /^- button "Back"/,
    /^- button "Can’t test that now"/,
    /^- heading "Answers so far"/,
    new RegExp(`^- button "Change: ${asked.question.replace(/[.?]/g, '\\$&')}"`),
  ].map((wanted) => second.findIndex((line) => wanted.test(line)));
  expect(after, second.join('\n')).not.toContain(-1);
  expect(after).toEqual([...after].sort((a, b) => a - b));
  // Nothing that can be pressed is without a name.
  expect(
    [...first, ...second].filter((line) => /^- (?:link|button|textbox|combobox|checkbox)(?::|$)/.test(line)),
  ).toEqual([]);
  await watched.close();
});

const WHITE = 'rgb(255, 255, 255)';
const groundOf = (page: Page) => page.evaluate(() => getComputedStyle(document.body).backgroundColor);

test.each([
  ['hosted', site.root],
  ['from a folder', folderRoot(builtSite())],
])(
  'colours once chosen are there before the page, and are forgotten with everything: %s',
  async (_, root) => {
    const dark = { serviceWorkers: 'block', colorScheme: 'dark' } as const;
    const { page, close } = await openPage(browser, root, dark);
    // What the root says when the body begins: nothing is painted before that.
    await page.addInitScript(() => {
      new MutationObserver((_changes, watch) => {
        if (!document.body) return;
        watch.disconnect();
        sessionStorage.setItem('first', document.documentElement.dataset.colours ?? 'none');
      }).observe(document, { childList: true, subtree: true });
    });
    const first = () => page.evaluate(() => sessionStorage.getItem('first'));
    await page.goto(`${root}tools/drain-pan.html`);
    expect([await first(), await groundOf(page)]).toEqual(['none', 'rgb(32, 40, 42)']);
    await page.getByRole('link', { name: 'Colours: light, dark, sun' }).click();
    const choice = page.getByLabel('Colours');
    await expect
      .poll(() => choice.locator('option').allTextContents())
      .toEqual(['as the device', 'light', 'dark', 'sun']);
    await choice.selectOption('sun');
    await expect.poll(() => groundOf(page)).toBe(WHITE);
    // Back by the browser, from wherever it has kept the page, and on a page that comes anew.
    await page.goBack();
    await expect.poll(() => groundOf(page)).toBe(WHITE);
    await page.goto(`${root}about.html`);
    await expect.poll(() => groundOf(page)).toBe(WHITE);
    expect(await first()).toBe('sun');
    await expect.poll(() => choice.inputValue()).toBe('sun');
    await page.getByRole('button', { name: 'Forget everything on this device' }).click();
    await page.getByRole('button', { name: 'Forget it all' }).click();
    await expect.poll(() => groundOf(page)).toBe('rgb(32, 40, 42)');
    await expect.poll(() => choice.inputValue()).toBe('as the device');
    await close();
  },
);

test('a device that asks for contrast gets it without scripts, and paper is black on white in any colours', async () => {
  const asks = { serviceWorkers: 'block', contrast: 'more', javaScriptEnabled: false } as const;
  const { page, close } = await openPage(browser, site.root, asks);
  await page.goto(`${site.root}tools/drain-pan.html`);
  expect(await groundOf(page)).toBe(WHITE);
  await close();
  const chosen = await openPage(browser, site.root, { serviceWorkers: 'block' });
  await chosen.page.goto(`${site.root}about.html`);
  await chosen.page.getByLabel('Colours').selectOption('dark');
  expect(await groundOf(chosen.page)).toBe('rgb(32, 40, 42)');
  await chosen.page.emulateMedia({ media: 'print' });
  expect(await groundOf(chosen.page)).toBe(WHITE);
  await chosen.close();
});

test('a proof run passes nothing that cannot pass, and what is cleared comes back', async () => {
  const { page, close } = await openPage(browser, site.root, { serviceWorkers: 'block' });
  await page.goto(`${site.root}road-test.html`);
  const field = page.locator('#proof-holds');
  const word = page.locator('li', { has: field }).locator('.passed');
  const give = async (text: string) => {
    await field.fill(text);
    await field.blur();
    return word.textContent();
  };
  expect(await give('85')).toBe('Pass');
  const { describes, before } = await field.evaluate((input) => ({
    describes: (input.getAttribute('aria-describedby') ?? '')
      .split(' ')
      .map((id) => document.getElementById(id)?.textContent ?? `nothing is called ${id}`),
    before: document.querySelector('ht-proof-run .answer-sentence')?.textContent,
  }));
  expect(describes).toEqual([expect.stringMatching(/^passes: \d/), '']);
  expect(before).toContain('1 of 10');
  await page.getByRole('button', { name: /^Clear/ }).click();
  expect(await word.textContent()).toBe('To do');
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Undo');
  await page.keyboard.press('Enter');
  expect([await word.textContent(), await field.inputValue()]).toEqual(['Pass', '85']);
  for (const wrong of ['185', 'abc']) {
    expect(await give(wrong)).toBe('To do');
    expect(await field.getAttribute('aria-invalid')).toBe('true');
    expect(await page.locator('ht-proof-run .answer-sentence').textContent()).toBe('Nothing entered yet.');
  }
  await close();
});

test('on a phone a long reading leaves its name room, and what is removed is said, with the focus on the way back', async () => {
  const { page, close } = await openPage(browser, site.root, {
    serviceWorkers: 'block',
    viewport: SIZES.phone,
  });
  await page.goto(`${site.root}job.html`);
  await page.locator('ht-job-card[data-live]').waitFor();
  await page
    .locator('details', { has: page.locator('.reading-what') })
    .locator('summary')
    .click();
  await page.locator('.reading-what').fill('Fill account');
  await page
    .locator('.reading-value')
    .fill(`${'3.4 l went in of the 3.6 l that came out, '.repeat(4)}0.2 l are air still.`);
  await page.getByRole('button', { name: 'Add reading' }).click();
  const name = page.locator('.readings li > span').first();
  for (const width of [390, 320]) {
    await page.setViewportSize({ width, height: 700 });
    const box = await name.boundingBox();
    expect(box?.width).toBeGreaterThan(80);
    expect(box?.height).toBeLessThan(60);
  }
  await page.getByRole('button', { name: /^Remove: Fill account/ }).click();
  await expect
    .poll(() => page.evaluate(() => document.activeElement?.ariaLabel))
    .toMatch(/^Undo: Removed: Fill/);
  await page.keyboard.press('Enter');
  await name.waitFor();
  await close();
});

test('with the keyboard up, or on a slow line, the answer is on the screen', async () => {
  // A phone of 390 by 844 of which a keyboard and the browser's bars leave 400.
  const small = { serviceWorkers: 'block', viewport: { width: 390, height: 400 } } as const;
  const { page, close } = await openPage(browser, site.root, small);
  await page.goto(`${site.root}index.html`);
  await page.locator('#q').click();
  await page.keyboard.type('blows cold');
  const found = page.locator('ht-search a:visible').first();
  await found.waitFor();
  await expect.poll(async () => (await found.boundingBox())?.y).toBeLessThan(360);
  await page.goto(`${site.root}calculators/mixture.html`);
  const field = page.locator('ht-calculator input:visible').last();
  await field.fill('7');
  const answer = await page.locator('.answer-sentence').boundingBox();
  const typed = await field.boundingBox();
  expect((answer?.y ?? -1) >= 0 && (answer?.y ?? 0) + (answer?.height ?? 400) <= (typed?.y ?? 0)).toBe(true);
  // The questions never come: what is awaited is said at the answer that was pressed.
  await page.route('**/walks/*.html', () => undefined);
  await page.goto(`${site.root}symptoms/reads-low-at-cruise.html`);
  await page.locator('ht-walk[data-live]').waitFor();
  await page.locator('.step[data-now] .answer').first().click();
  const line = page.getByRole('status').filter({ hasText: 'Fetching the questions.' });
  await line.waitFor();
  expect(await line.evaluate((part) => part.previousElementSibling?.className)).toBe('answer');
  await expect.poll(async () => (await line.boundingBox())?.y).toBeGreaterThan(0);
  expect((await line.boundingBox())?.y).toBeLessThan(400);
  await close();
});

/** What is cut off at the edge of the screen or of its own box, and cannot be scrolled to. */
async function cutOff(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const scrolls = (part: Element) => /auto|scroll/.test(getComputedStyle(part).overflowX);
    const name = (part: Element) =>
      `${part.tagName.toLowerCase()}.${part.getAttribute('class') ?? ''} “${part.textContent?.trim().slice(0, 40)}”`;
    const found: string[] = [];
    if (document.documentElement.scrollWidth > innerWidth)
      found.push(`the page is ${document.documentElement.scrollWidth} wide`);
    for (const part of document.body.querySelectorAll<HTMLElement>('*')) {
      if (!part.checkVisibility() || part.closest('svg, .out-of-sight, .skip, datalist, option')) continue;
      const hasText = [...part.childNodes].some(
        (node) => node.nodeType === Node.TEXT_NODE && node.textContent?.trim(),
      );
      if (!hasText) continue;
      const { overflowX, overflowY } = getComputedStyle(part);
      const clips = (how: string) => how === 'hidden' || how === 'clip';
      if (clips(overflowX) && part.scrollWidth > part.clientWidth + 1)
        found.push(`cut off inside: ${name(part)}`);
      if (clips(overflowY) && part.scrollHeight > part.clientHeight + 1)
        found.push(`cut off below: ${name(part)}`);
      let scroller: Element | null = part;
      while (scroller && !scrolls(scroller)) scroller = scroller.parentElement;
      if (!scroller && part.getBoundingClientRect().right > innerWidth + 1)
        found.push(`over the edge: ${name(part)}`);
    }
    return found;
  });
}

test.each(PAGE_KINDS)(
  '%s at four times the size: nothing to scroll sideways, nothing cut off, nothing in motion',
  async (address) => {
    // 1280 by 1024 at 400 %, as WCAG 2.2 has it under 1.4.10.
    const watched = await openPage(browser, site.root, {
      serviceWorkers: 'block',
      viewport: { width: 320, height: 256 },
      reducedMotion: 'reduce',
    });
    const { page } = watched;
    await page.goto(site.root + address);
    await settled(page);
    await page.evaluate(() => {
      for (const part of document.querySelectorAll('details')) part.open = true;
    });
    await settled(page);
    expect(await cutOff(page)).toEqual([]);
    const moving = await page.evaluate(() => [
      ...document.getAnimations().map((animation) => `animation ${animation.id}`),
      ...[document.documentElement, ...document.body.querySelectorAll('*')].flatMap((part) => {
        const { scrollBehavior, transitionDuration, animationName } = getComputedStyle(part);
        return scrollBehavior === 'smooth' || /[1-9]/.test(transitionDuration) || animationName !== 'none'
          ? [part.tagName]
          : [];
      }),
    ]);
    expect(moving).toEqual([]);
    await watched.close();
  },
);
