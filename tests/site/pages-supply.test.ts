import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { connectBrowser, openPage } from './support/pages.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await connectBrowser();
});
afterAll(() => browser.close());

/** The facts beside the title: name to what stands there, fractions written plainly. */
async function facts(page: Page): Promise<Record<string, string>> {
  const lines = await page
    .locator('.facts > div')
    .evaluateAll((all) =>
      all.map(
        (line) => [line.querySelector('dt')?.textContent ?? '', line.querySelector('dd')?.textContent ?? ''] as const,
      ),
    );
  return Object.fromEntries(
    lines.map(([name, said]) => [
      name,
      said.replaceAll('\u2009', ' ').replaceAll('\u2044', '/').replace(/\s+/g, ' ').trim(),
    ]),
  );
}

it('states the properties that matter when looking for something like it, in both systems', async () => {
  const { page, close } = await openPage(browser, '/supplies/kraft-heavy/');
  /* Basis weight of cover: pounds of 500 sheets of 20 x 26 in (ASTM D646, from memory), with 0.45359237 kg to the pound and
     25.4 mm to the inch: 100 lb is 45.359237 kg on 167.7416 m², 270.4 g/m². */
  expect(await facts(page)).toEqual({
    Maker: 'Longshore Mill',
    Sheet: 'US Letter',
    Size: '8 1/2 × 11 in · 215.9 × 279.4 mm',
    Weight: '100 lb cover · 270 g/m²',
    'Thickness, measured': '0.011 in · 0.28 mm',
    Grain: 'along the long side',
  });
  await close();
});

it('lists everything made with it', async () => {
  const { page, close } = await openPage(browser, '/supplies/ebb-ink/');
  expect(await page.locator('#projects .contents-name').allTextContents()).toEqual([
    'Two cards from the harbour',
    'Curlew at low water',
    'Rock pool shaker',
    'Kelp background papers',
  ]);
  await close();
});

it('keeps what is no longer made, and says so', async () => {
  const { page, close } = await openPage(browser, '/supplies/oyster-envelope/');
  expect(await facts(page)).toMatchObject({ 'Still made': 'no' });
  expect(await page.locator('#shops').textContent()).toContain('no longer made');
  await page.goto('/supplies/');
  expect(await page.locator('li', { hasText: 'Oyster envelopes' }).textContent()).toContain('no longer made');
  await close();
});

it('marks a paid link as one, for readers beside it and for search engines on it; a plain link as none', async () => {
  const { page, close } = await openPage(browser, '/supplies/ebb-ink/');
  const paid = page.locator('#shops li');
  expect(await paid.locator('.disclosure').textContent()).toMatch(/pays us/);
  expect(await paid.getByRole('link').getAttribute('rel')).toContain('sponsored');
  await page.goto('/supplies/chalk-white/');
  expect(await paid.locator('.disclosure').count()).toBe(0);
  expect(await paid.getByRole('link').getAttribute('rel')).not.toContain('sponsored');
  await close();
});
