import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { connectBrowser, openPage } from './support/pages.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await connectBrowser();
});
afterAll(() => browser.close());

async function at(path: string, look: (page: Page) => Promise<void>): Promise<void> {
  const { page, close } = await openPage(browser, path);
  await look(page);
  await close();
}

/** Rows of a table as its reader sees them, fractions written plainly; the second text of a figure is for the ear. */
function rows(table: Locator): Promise<string[][]> {
  return table.locator('tbody tr').evaluateAll((all) =>
    all.map((row) =>
      [...row.querySelectorAll('th, td')].map((cell) => {
        const copy = cell.cloneNode(true) as HTMLElement;
        for (const spoken of copy.querySelectorAll('.unseen')) spoken.remove();
        return (copy.textContent ?? '').replaceAll('\u2009', ' ').replaceAll('\u2044', '/').replace(/\s+/g, ' ').trim();
      }),
    ),
  );
}

describe('a project with one card', () => {
  const PATH = '/projects/curlew-at-low-water/';

  /* Half a US Letter sheet (ANSI/ASME Y14.1: 8 1/2 x 11 in) folded in the middle; half an A4 sheet (ISO 216: 210 x 297 mm),
     which is A5 with its long side across, folded to A6. */
  it('has its measurements in a table, each edition on its own sheet', () =>
    at(PATH, async (page) => {
      const table = page.locator('#measurements table').first();
      expect(await rows(table)).toEqual([
        ['Across, from the left edge'],
        ['front', '', '4 1/4', '', '105'],
        ['spine, valley', '4 1/4', '', '105', ''],
        ['back', '', '4 1/4', '', '105'],
      ]);
      const caption = ((await table.locator('caption').textContent()) ?? '')
        .replaceAll('\u2009', ' ')
        .replaceAll('\u2044', '/');
      expect(caption).toContain('8 1/2 × 5 1/2 in');
      expect(caption).toContain('210 × 148 mm');
    }));

  /* A mat 1/8 in smaller all round than a US A2 card (common practice) is 4 x 5 1/4 in. */
  it('says of a piece that nothing divides what it is cut to, without an empty table', () =>
    at(PATH, async (page) => {
      expect(await page.locator('#measurements table').count()).toBe(1);
      const said = ((await page.locator('#measurements .piece-plain').textContent()) ?? '').replaceAll('\u2009', ' ');
      expect(said.replaceAll('\u2044', '/')).toContain('Panel, cut to 4 × 5 1/4 in');
    }));

  it('says every fraction of the table in words to those who hear it', () =>
    at(PATH, async (page) => {
      const heard = await page.locator('#measurements td').evaluateAll((cells) =>
        cells.map((cell) =>
          [...cell.childNodes]
            .filter((node) => !(node instanceof HTMLElement) || node.getAttribute('aria-hidden') !== 'true')
            .map((node) => node.textContent?.trim())
            .join(''),
        ),
      );
      expect(heard).toContain('four and a quarter inches');
      expect(heard.join(' ')).not.toMatch(/[\u2044/]/);
    }));

  it('has a drawing of both pieces in each edition, named, described, and told in words below it', () =>
    at(PATH, async (page) => {
      const drawings = page.getByRole('img', { name: /cutting drawing/i });
      expect(await drawings.count()).toBe(4);
      await page.locator('figure.drawing summary').first().click();
      const words = page.locator('figure.drawing details').first().locator('li');
      const heard = (await words.allTextContents()).join(' ');
      expect(heard).toContain('eight and a half inches');
      expect(heard).toContain('four and a quarter inches');
      expect(await words.first().isVisible()).toBe(true);
    }));

  it('says of each finding, in a word, how it stands; what needs doing stands first', () =>
    at(PATH, async (page) => {
      for (const list of await page.locator('#dry-fit ul').all()) {
        const states = await list.locator('.finding-state').allTextContents();
        const order = states.map((state) =>
          ['Does not work', 'Look again', 'Not tested', 'Works'].findIndex((word) => state.startsWith(`${word}: `)),
        );
        expect(order.length).toBeGreaterThan(4);
        expect(order).not.toContain(-1);
        expect(order).toEqual([...order].sort());
      }
    }));

  it('links its two templates with sheet and edition, and says how to print them', () =>
    at(PATH, async (page) => {
      const part = page.locator('#template');
      const lines = (await part.getByRole('listitem').allTextContents()).map((line) =>
        line.replace(/\s+/g, ' ').trim(),
      );
      expect(lines[0]).toMatch(/^template-letter\.pdf Inch edition on US Letter/);
      expect(lines[1]).toMatch(/^template-a4\.pdf Metric edition on ISO A4/);
      expect(await part.textContent()).toMatch(/Print at 100\s%/);
      for (const name of ['template-letter.pdf', 'template-a4.pdf', 'project.json']) {
        const href = await page.getByRole('link', { name }).getAttribute('href');
        const answer = await page.request.get(href ?? '');
        expect([name, answer.status()]).toEqual([name, 200]);
      }
    }));

  it('says what pays beside the product it pays for', () =>
    at(PATH, async (page) => {
      const line = page.locator('#supplies li', { hasText: 'Ebb dye ink' });
      expect(await line.locator('.disclosure').textContent()).toMatch(/pays us/);
      const unpaid = page.locator('#supplies li', { hasText: 'Driftline kraft' });
      expect(await unpaid.locator('.disclosure').count()).toBe(0);
    }));
});

describe('a project with two cards', () => {
  const PATH = '/projects/two-cards-from-the-harbour/';

  it('shows each card where its author placed it, and names it in the tables', () =>
    at(PATH, async (page) => {
      expect(await page.locator('#drawing-the-harbour-gate figure').count()).toBe(2);
      expect(await page.locator('#drawing-the-short-jetty figure').count()).toBe(2);
      expect(await page.locator('#measurements h3').allTextContents()).toEqual(['The harbour gate', 'The short jetty']);
      expect(await page.locator('#measurements table').count()).toBe(2);
      const headings = await page
        .locator('main :is(h2, figure.drawing)')
        .evaluateAll((all) =>
          all.map((element) =>
            element.matches('h2') ? element.textContent : element.querySelector('figcaption span')?.textContent,
          ),
        );
      expect(headings.slice(0, 6)).toEqual([
        'The harbour gate',
        'The harbour gate',
        'The harbour gate',
        'The short jetty',
        'The short jetty',
        'The short jetty',
      ]);
    }));

  it('says what was given beside the product that was given', () =>
    at(PATH, async (page) => {
      const line = page.locator('#supplies li', { hasText: 'Tide-table pattern paper' });
      expect(await line.locator('.disclosure').textContent()).toMatch(/free of charge/);
    }));
});

describe('a project without a card', () => {
  const PATH = '/projects/kelp-background-papers/';

  it('is whole: supplies, text and data, and no empty part', () =>
    at(PATH, async (page) => {
      expect(await page.locator('#supplies li').count()).toBeGreaterThan(2);
      for (const part of ['drawing', 'measurements', 'layers', 'template', 'dry-fit'])
        expect(await page.locator(`#${part}`).count()).toBe(0);
      expect((await page.request.get(`${PATH}project.json`)).status()).toBe(200);
    }));
});
