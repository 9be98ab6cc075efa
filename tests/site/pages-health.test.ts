import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { builtPages, KINDS_OF_PAGE } from './support/built-pages.ts';
import { connectBrowser, type OpenPage, openPage } from './support/pages.ts';

/** The narrowest phone still in wide use has 360 CSS pixels (common practice, no source). */
const NARROW = 360;

/** Stricter than any host is likely to be: nothing written into a page, nothing from elsewhere. */
const POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; font-src 'self'; img-src 'self'";

const PAGES = builtPages(inject('siteFolder'));

let browser: Browser;
let open: OpenPage;
let strict: OpenPage;
beforeAll(async () => {
  browser = await connectBrowser();
  open = await openPage(browser, '/', { width: NARROW });
  strict = await openPage(browser, '/');
  await strict.page.route('**/*', async (route) => {
    const response = await route.fetch();
    await route.fulfill({ response, headers: { ...response.headers(), 'content-security-policy': POLICY } });
  });
});
afterAll(() => browser.close());

it('the site has a page of each kind', () => {
  expect(PAGES).toEqual(expect.arrayContaining(Object.values(KINDS_OF_PAGE)));
});

describe.each(PAGES)('%s', (path) => {
  it('on a narrow phone: no complaint in the console, no other host asked, no sideways scrolling in any units', async () => {
    const { page, problems } = open;
    await page.goto(path);
    await page.evaluate(() => document.fonts.ready);
    for (const name of ['Inches', 'Millimetres', 'Both']) {
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
    expect(problems).toEqual([]);
  });

  it('has one main heading, a language, a description and its landmarks', async () => {
    const { page } = open;
    await page.goto(path);
    expect(await page.locator('h1').count()).toBe(1);
    expect(await page.locator('html').getAttribute('lang')).toBe('en');
    expect((await page.locator('meta[name=description]').getAttribute('content'))?.length).toBeGreaterThan(20);
    for (const role of ['banner', 'main', 'contentinfo'] as const) expect(await page.getByRole(role).count()).toBe(1);
  });

  it('loses nothing under a strict content security policy', async () => {
    const { page, problems } = strict;
    await page.goto(path);
    await page.evaluate(() => document.fonts.ready);
    expect(problems).toEqual([]);
    expect(await page.locator('style, [style], script:not([src])').count()).toBe(0);
    expect(await page.getByRole('radio', { name: 'Both', exact: true }).isVisible()).toBe(true);
    expect(await page.evaluate(() => document.fonts.check('1rem Alegreya'))).toBe(true);
  });
});
