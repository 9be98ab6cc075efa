import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { builtPages, KINDS_OF_PAGE } from './support/built-pages.ts';
import { connectBrowser, openPage } from './support/pages.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await connectBrowser();
});
afterAll(() => browser.close());

describe.each(Object.entries(KINDS_OF_PAGE))('on paper: %s', (_kind, path) => {
  it('has no navigation, no switch and no coloured ground', async () => {
    const { page, close } = await openPage(browser, path, { dark: true });
    await page.emulateMedia({ media: 'print' });
    for (const what of ['nav', '.unit-switch', '.skip', '.ruler']) {
      expect(await page.locator(what).first().isVisible()).toBe(false);
    }
    const { ground, ink } = await page.evaluate(() => ({
      ground: getComputedStyle(document.body).backgroundColor,
      ink: getComputedStyle(document.body).color,
    }));
    expect(ground).toBe('rgb(255, 255, 255)');
    expect(ink).toBe('rgb(0, 0, 0)');
    expect(await page.locator('h1').isVisible()).toBe(true);
    await close();
  });
});

it('prints the edition that the reader has chosen', async () => {
  const { page, close } = await openPage(browser, '/projects/curlew-at-low-water/');
  await page.getByRole('radio', { name: 'Millimetres' }).check();
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('figure.drawing:visible').count()).toBe(1);
  expect(await page.locator('[data-edition=metric] figure.drawing').isVisible()).toBe(true);
  await close();
});

const POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; font-src 'self'; img-src 'self'";

describe('under a strict content security policy', () => {
  it.each(builtPages(inject('siteFolder')))('%s loses nothing', async (path) => {
    const { page, problems, close } = await openPage(browser, '/404.html');
    await page.route('**/*', async (route) => {
      const response = await route.fetch();
      await route.fulfill({ response, headers: { ...response.headers(), 'content-security-policy': POLICY } });
    });
    await page.goto(path, { waitUntil: 'networkidle' });
    expect(problems).toEqual([]);
    expect(await page.locator('style, [style], script:not([src])').count()).toBe(0);
    expect(await page.getByRole('radio', { name: 'Both', exact: true }).isVisible()).toBe(true);
    await close();
  });
});

describe.each(builtPages(inject('siteFolder')))('without JavaScript: %s', (path) => {
  it('everything that stands in the page can be seen, or is folded away where it can be opened', async () => {
    const { page, close } = await openPage(browser, path, { javascript: false });
    const lost = await page.locator('main :is(p, li, td, th, dt, dd, figure, h1, h2, h3, a)').evaluateAll((all) =>
      all
        .filter((element) => element.closest('details:not([open]), .home-edition-first') === null)
        .filter((element) => element.textContent?.trim() !== '' && element.getClientRects().length === 0)
        .map((element) => element.outerHTML.slice(0, 90)),
    );
    expect(lost).toEqual([]);
    await close();
  });
});
