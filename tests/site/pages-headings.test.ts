import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { connectBrowser, openPage } from './support/pages.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await connectBrowser();
});
afterAll(() => browser.close());

it.each([1280, 390])('no heading of a project is covered by what follows it, at %d pixels', async (width) => {
  const { page, close } = await openPage(browser, '/projects/two-cards-from-the-harbour/', {
    width,
    height: 12_000, // the whole page at once, so that nothing has to be scrolled
  });
  const covered = await page.locator('h1, h2').evaluateAll((headings) =>
    headings
      .filter((heading) => {
        const range = document.createRange();
        range.selectNodeContents(heading);
        const { left, top, width, height } = range.getBoundingClientRect();
        const seen = document.elementFromPoint(left + width / 2, top + height / 2);
        return seen !== heading && !heading.contains(seen);
      })
      .map((heading) => heading.textContent),
  );
  expect(await page.locator('h2').count()).toBeGreaterThan(4);
  expect(covered).toEqual([]);
  await close();
});
