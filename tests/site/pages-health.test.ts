import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { builtPages, KINDS_OF_PAGE } from './support/built-pages.ts';
import { axe, connectBrowser, openPage } from './support/pages.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await connectBrowser();
});
afterAll(() => browser.close());

const PAGES = builtPages(inject('siteFolder'));

/** The narrowest phone still in wide use has 360 CSS pixels (common practice, no source). */
const NARROW = 360;

it('the site has a page of each kind', () => {
  expect(PAGES).toEqual(expect.arrayContaining(Object.values(KINDS_OF_PAGE)));
});

describe.each(PAGES)('%s', (path) => {
  it('loads without a complaint in the console, and asks nothing of another host', async () => {
    const { page, problems, close } = await openPage(browser, path);
    await page.waitForLoadState('networkidle');
    expect(problems).toEqual([]);
    await close();
  });

  it('does not scroll sideways on a narrow phone, in either edition or both', async () => {
    const { page, close } = await openPage(browser, path, { width: NARROW });
    for (const name of ['Both', 'Inches', 'Millimetres']) {
      await page.getByRole('radio', { name, exact: true }).check();
      const wide = await page.evaluate(() =>
        [...document.querySelectorAll('body *')]
          .filter((element) => element.getBoundingClientRect().right > window.innerWidth + 0.5)
          .filter((element) => element.closest('.unseen, .measure-spoken, pre, .prose table') === null)
          .map((element) => element.outerHTML.slice(0, 80)),
      );
      expect(wide).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(NARROW);
    }
    await close();
  });

  it('has one main heading, a language, a description and its landmarks', async () => {
    const { page, close } = await openPage(browser, path);
    expect(await page.locator('h1').count()).toBe(1);
    expect(await page.locator('html').getAttribute('lang')).toBe('en');
    expect((await page.locator('meta[name=description]').getAttribute('content'))?.length).toBeGreaterThan(20);
    for (const role of ['banner', 'main', 'contentinfo'] as const) expect(await page.getByRole(role).count()).toBe(1);
    await close();
  });
});

describe.each(Object.entries(KINDS_OF_PAGE))('accessibility: %s', (_kind, path) => {
  it.each([
    { theme: 'light', screen: 'desktop', dark: false, width: 1280 },
    { theme: 'dark', screen: 'desktop', dark: true, width: 1280 },
    { theme: 'light', screen: 'phone', dark: false, width: 390 },
    { theme: 'dark', screen: 'phone', dark: true, width: 390 },
  ])('axe finds nothing: $theme, $screen', async ({ dark, width }) => {
    const { page, close } = await openPage(browser, path, { dark, width });
    await page.locator('details').evaluateAll((all) => {
      for (const details of all as HTMLDetailsElement[]) details.open = true;
    });
    expect(await axe(page)).toEqual([]);
    await close();
  });

  it('every link and control can be hit: 24 by 24 CSS pixels, but for links within a sentence (WCAG 2.2, 2.5.8)', async () => {
    const { page, close } = await openPage(browser, path, { width: 390 });
    const small = await page.locator('a, label, summary').evaluateAll((targets) =>
      targets
        .filter((target) => target.closest('p, li, dd, caption, td') === null || target.matches('.contents-name'))
        .filter((target) => !target.matches('.skip'))
        .map((target) => ({ box: target.getBoundingClientRect(), html: target.outerHTML.slice(0, 90) }))
        .filter(({ box }) => box.height > 0 && (box.height < 24 || box.width < 24))
        .map(({ html }) => html),
    );
    expect(small).toEqual([]);
    await close();
  });

  it('the skip link is the first stop of the keyboard, is seen there, and leads to the page', async () => {
    const { page, close } = await openPage(browser, path);
    await page.keyboard.press('Tab');
    const skip = page.locator('.skip');
    expect(await skip.evaluate((element) => element === document.activeElement)).toBe(true);
    expect((await skip.boundingBox())?.y).toBeGreaterThanOrEqual(0);
    await page.keyboard.press('Enter');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('main');
    await close();
  });
});
