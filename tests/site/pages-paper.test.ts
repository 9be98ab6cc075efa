import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, it } from 'vitest';
import { builtPages, KINDS_OF_PAGE } from './support/built-pages.ts';
import { connectBrowser, type OpenPage, openPage } from './support/pages.ts';

let browser: Browser;
let paper: OpenPage;
let unscripted: OpenPage;
beforeAll(async () => {
  browser = await connectBrowser();
  paper = await openPage(browser, '/', { dark: true });
  await paper.page.emulateMedia({ media: 'print' });
  unscripted = await openPage(browser, '/', { javascript: false });
});
afterAll(() => browser.close());

it.each(Object.entries(KINDS_OF_PAGE))(
  'on paper, from a dark screen: %s has no navigation, no switch and no coloured ground',
  async (_kind, path) => {
    const { page } = paper;
    await page.goto(path);
    for (const what of ['nav', '.unit-switch', '.skip', '.ruler']) {
      expect(await page.locator(what).count()).toBe(1);
      expect(await page.locator(what).isVisible()).toBe(false);
    }
    const { ground, ink } = await page.evaluate(() => ({
      ground: getComputedStyle(document.body).backgroundColor,
      ink: getComputedStyle(document.body).color,
    }));
    expect(ground).toBe('rgb(255, 255, 255)');
    expect(ink).toBe('rgb(0, 0, 0)');
    expect(await page.locator('h1').isVisible()).toBe(true);
  },
);

it('prints the words of every drawing, which on a screen are folded away', async () => {
  const { page, close } = await openPage(browser, '/projects/curlew-at-low-water/');
  const words = page.locator('figure.drawing details li').first();
  expect(await words.isVisible()).toBe(false);
  await page.emulateMedia({ media: 'print' });
  expect(await words.isVisible()).toBe(true);
  await close();
});

it('prints the edition that the reader has chosen', async () => {
  const { page, close } = await openPage(browser, '/projects/curlew-at-low-water/');
  await page.getByRole('radio', { name: 'Millimetres' }).check();
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('figure.drawing:visible').count()).toBe(2);
  expect(await page.locator('[data-edition=metric] figure.drawing:visible').count()).toBe(2);
  await close();
});

it.each(builtPages(inject('siteFolder')))(
  'without JavaScript: all of %s can be seen, or is folded away where it can be opened',
  async (path) => {
    const { page } = unscripted;
    await page.goto(path);
    const lost = await page.locator('main :is(p, li, td, th, dt, dd, figure, h1, h2, h3, a)').evaluateAll((all) =>
      all
        .filter((element) => element.closest('details:not([open]), .home-edition-first') === null)
        .filter((element) => element.textContent?.trim() !== '' && element.getClientRects().length === 0)
        .map((element) => element.outerHTML.slice(0, 90)),
    );
    expect(lost).toEqual([]);
  },
);
