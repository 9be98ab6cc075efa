import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { KINDS_OF_PAGE } from './support/built-pages.ts';
import { axe, connectBrowser, type OpenPage, openPage } from './support/pages.ts';

const SETTINGS = [
  { name: 'light, desktop', colorScheme: 'light', width: 1280 },
  { name: 'dark, desktop', colorScheme: 'dark', width: 1280 },
  { name: 'light, phone', colorScheme: 'light', width: 390 },
  { name: 'dark, phone', colorScheme: 'dark', width: 390 },
] as const;

let browser: Browser;
let open: OpenPage;
beforeAll(async () => {
  browser = await connectBrowser();
  open = await openPage(browser, '/');
});
afterAll(() => browser.close());

describe.each(Object.entries(KINDS_OF_PAGE))('%s', (_kind, path) => {
  it.each(SETTINGS)('axe finds nothing: $name', async ({ colorScheme, width }) => {
    const { page } = open;
    await page.setViewportSize({ width, height: 900 });
    await page.emulateMedia({ colorScheme });
    await page.goto(path);
    await page.locator('details').evaluateAll((all) => {
      for (const details of all as HTMLDetailsElement[]) details.open = true;
    });
    expect(await axe(page)).toEqual([]);
  });

  it('every link and control can be hit: 24 by 24 CSS pixels, but for links within a sentence (WCAG 2.2, 2.5.8)', async () => {
    const { page } = open;
    await page.setViewportSize({ width: 390, height: 900 });
    await page.goto(path);
    const small = await page.locator('a, label, summary').evaluateAll((targets) =>
      targets
        .filter((target) => target.closest('p, li, dd, caption, td') === null || target.matches('.contents-name'))
        .filter((target) => !target.matches('.skip'))
        .map((target) => ({ box: target.getBoundingClientRect(), html: target.outerHTML.slice(0, 90) }))
        .filter(({ box }) => box.height > 0 && (box.height < 24 || box.width < 24))
        .map(({ html }) => html),
    );
    expect(small).toEqual([]);
  });

  it('the skip link is the first stop of the keyboard, is seen there, and leads to the page', async () => {
    const { page } = open;
    await page.goto(path);
    await page.keyboard.press('Tab');
    const skip = page.locator('.skip');
    expect(await skip.evaluate((element) => element === document.activeElement)).toBe(true);
    expect((await skip.boundingBox())?.y).toBeGreaterThanOrEqual(0);
    await page.keyboard.press('Enter');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('main');
  });
});
