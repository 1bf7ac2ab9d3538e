/** The job done by keyboard alone, read by ear, at four times the size, and without motion. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { shelf } from '../shelf/shelf.ts';
import { openPage, SIZES } from './browser.ts';
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
    await page.waitForLoadState('networkidle');
    await page.evaluate(() => {
      for (const part of document.querySelectorAll('details')) part.open = true;
    });
    await page.waitForLoadState('networkidle');
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
