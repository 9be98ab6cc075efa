import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { PROJECT } from '../../plugins/commands/support/project.ts';
import { connectBrowser, openPage } from './support/pages.ts';

const CURLEW = '/projects/curlew-at-low-water/';
const POOL = '/projects/rock-pool-shaker/';

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

/** What a reader sees in each of some elements; the second text of a figure is for the ear. */
function seen(elements: Locator): Promise<string[]> {
  return elements.evaluateAll((all) =>
    all.map((element) => {
      const copy = element.cloneNode(true) as HTMLElement;
      for (const spoken of copy.querySelectorAll('.unseen')) spoken.remove();
      return (copy.textContent ?? '').replaceAll('\u2009', ' ').replaceAll('\u2044', '/').replace(/\s+/g, ' ').trim();
    }),
  );
}

/** Rows of the table of figures: label to what stands in the inch and in the metric column. */
async function figures(page: Page): Promise<Record<string, readonly string[]>> {
  const rows = page.locator('#layers .layer-figures tbody tr');
  const all = await Promise.all(
    Array.from({ length: await rows.count() }, async (_, i) => seen(rows.nth(i).locator('th, td'))),
  );
  return Object.fromEntries(all.map(([label = '', ...told]) => [label, told]));
}

interface WrittenCoat {
  readonly with: string;
  readonly through?: boolean;
  readonly and?: string;
  readonly note?: string;
}

/** The frontmatter of a post, read by the YAML library alone. */
function written(slug: string): { layers: { on?: string; lay?: WrittenCoat[] }[] } {
  const text = readFileSync(join(PROJECT, 'content', 'posts', slug, 'index.md'), 'utf8');
  return parse(text.split(/^---$/m)[1] ?? '');
}

function nameOf(supply: string): string {
  return parse(readFileSync(join(PROJECT, 'content', 'supplies', `${supply}.yaml`), 'utf8')).name;
}

/* 1 lb = 453.59237 g and 1 in = 25.4 mm (1959 agreement); pounds of cover are those of 500 sheets of 20 x 26 in. */
const COVER = 453.59237 / (500 * 20 * 26 * 0.0254 ** 2);
const SQUARE_INCH = 0.0254 ** 2;
const OUNCE = 453.59237 / 16;

describe('an inked and stencilled panel', () => {
  it('has its layers on the page in the order in which the post lays them down', () =>
    at(CURLEW, async (page) => {
      const laid = written('curlew-at-low-water').layers.flatMap(({ lay = [] }) => lay);
      expect(laid.map((coat) => coat.through ?? false)).toEqual([false, true, true]);
      const shown = await seen(page.locator('#layers li[data-layer=coat]'));
      expect(shown).toHaveLength(laid.length);
      for (const [i, coat] of laid.entries()) {
        const told = shown[i] ?? '';
        expect(told).toContain('on panel');
        expect(told).toContain(nameOf(coat.through ? (coat.and ?? '') : coat.with));
        if (coat.through) expect(told).toContain(`through ${nameOf(coat.with)}`);
        else expect(told).not.toContain('through');
        expect(told).toContain(coat.note);
      }
    }));

  it('has them in that order in its data as well', () =>
    at(CURLEW, async (page) => {
      const answer = await page.request.get(`${CURLEW}project.json`);
      const { cards } = await answer.json();
      const notes = written('curlew-at-low-water').layers.flatMap(({ lay = [] }) => lay.map(({ note }) => note));
      for (const system of ['inch', 'metric']) {
        const coats = cards[0].editions[system].layers.filter(({ is }: { is: string }) => is === 'coat');
        expect(coats.map(({ note }: { note: string }) => note)).toEqual(notes);
      }
    }));

  it('is taken up before it is inked, and inked before it is stuck down', () =>
    at(CURLEW, async (page) => {
      const order = await page
        .locator('#layers .layer-list > li')
        .evaluateAll((all) => all.map((line) => `${(line as HTMLElement).dataset.layer}`));
      expect(order).toEqual(['piece', 'coat', 'coat', 'coat', 'piece', 'join']);
    }));

  /* Base twice, 0.011 in as its packet measures it; a film of glue of 0.05 mm, assumed; the panel, 9.5 points of 0.001 in (a
     published guide for 80 lb cover). The grid of a caliper is 0.001 in or 0.01 mm. */
  it('comes to the sum of its layers, in both systems', () =>
    at(CURLEW, async (page) => {
      const mm = 2 * 0.011 * 25.4 + 0.05 + 9.5 * 0.0254;
      const told = await figures(page);
      expect(told.Thickest).toEqual([`${(mm / 25.4).toFixed(3)} in`, `${mm.toFixed(2)} mm`]);
      expect(told.Thinnest).toEqual(['0.022 in', '0.56 mm']);
    }));

  it('weighs what its areas weigh, in both systems', () =>
    at(CURLEW, async (page) => {
      const base = 8.5 * 5.5 * SQUARE_INCH * 100 * COVER;
      const panel = 4 * 5.25 * SQUARE_INCH * 80 * COVER;
      const glue = 4 * 5.25 * SQUARE_INCH * 50;
      const told = await figures(page);
      const ounces = (grams: number) => `${(grams / OUNCE).toFixed(2)} oz`;
      expect(told.Base?.[0]).toBe(ounces(base));
      expect(told.Panel?.[0]).toBe(ounces(panel));
      expect(told['All of it']?.[0]).toBe(ounces(base + panel + glue));
      // The metric card is half a sheet of A4 and a panel of its own: 210 x 148 and 98.5 x 141.5 mm.
      const metric = (210 * 148 * 100 * COVER + 98.5 * 141.5 * (80 * COVER + 50)) / 1e6;
      expect(told['All of it']?.[1]).toBe(`${metric.toFixed(1)} g`);
    }));
});

describe('a shaker', () => {
  it('has powder before beads, beads before film, film before frame', () =>
    at(POOL, async (page) => {
      const lines = await seen(page.locator('#layers .layer-list > li'));
      const places = [
        'Dry Sand powder pouch',
        'Fill the pool of walls',
        'Stick film onto walls',
        'Stick frame onto film',
      ];
      const order = places.map((what) => lines.findIndex((line) => line.includes(what)));
      expect(order).not.toContain(-1);
      expect(order).toEqual([...order].sort((a, b) => a - b));
    }));

  it('says how many layers of foam its walls are, and how high', () =>
    at(POOL, async (page) => {
      const walls = page.locator('#layers li[data-layer=piece]', { hasText: 'Walls' });
      expect(await seen(walls.locator('.layer-line, .layer-note'))).toEqual([
        'Walls: 2 layers of Groyne foam tape. 0.125 in · 3.18 mm',
        '1/16 in · 1.59 mm each.',
      ]);
      expect((await figures(page))['Of that, gives when pressed: foam']).toEqual(['0.125 in', '3.18 mm']);
    }));

  /* A third of a pool of 3 x 4 1/4 x 1/8 in, of beads that weigh 1.5 g to the cubic centimetre; on metric marks of
     73.5 x 116.5 mm, the foam being the same. */
  it('says what the beads weigh', () =>
    at(POOL, async (page) => {
      const inch = ((3 * 4.25 * 0.125 * 2.54 ** 3) / 3) * 1.5;
      const metric = ((7.35 * 11.65 * 0.3175) / 3) * 1.5;
      const [line] = await seen(page.locator('#layers li[data-layer=fill]'));
      expect(line).toContain(`${(inch / OUNCE).toFixed(2)} oz · ${metric.toFixed(1)} g`);
      expect((await figures(page)).Beads).toEqual([`${(inch / OUNCE).toFixed(2)} oz`, `${metric.toFixed(1)} g`]);
    }));

  it('says what is assumed, and how every other height is known', () =>
    at(POOL, async (page) => {
      expect(await page.locator('#layers li', { hasText: 'Stick frame onto film' }).textContent()).toContain('assumed');
      await page.locator('#layers summary').click();
      const sources = await seen(page.locator('#layers details ul li'));
      const said = (name: string) => sources.find((line) => line.startsWith(name));
      expect(said('Driftline kraft cardstock')).toMatch(/measured by the maker\.$/);
      expect(said('Chalk white cardstock')).toMatch(/published .* guide\.$/);
      expect(said('A film of glue')).toMatch(/assumed.*no source\.$/);
    }));

  it('tells its cautions beside the products, and leaves the last word to their labels', () =>
    at(POOL, async (page) => {
      const caution = (name: string) => page.locator('#supplies li', { hasText: name }).locator('.caution');
      expect(await caution('Spindrift seed beads').textContent()).toMatch(/children under three/);
      expect(await caution('Dry Sand powder pouch').textContent()).toMatch(/Fine powder/);
      expect(await caution('Driftline kraft').count()).toBe(0);
      expect(await page.locator('#supplies').textContent()).toContain('The labels on the products have the last word.');
      await page.goto('/supplies/spindrift-beads/');
      expect(await page.locator('.facts-note').textContent()).toMatch(/Take care.*last word/s);
    }));
});

describe('the layers of a page', () => {
  it.each([
    ['Inches', 'metric', / mm| g\b/],
    ['Millimetres', 'inch', / in\b| oz/],
  ])('follow the unit switch: %s', async (name, hidden, units) => {
    const { page, close } = await openPage(browser, POOL);
    const part = page.locator('#layers');
    expect(await part.locator(`[data-edition=${hidden}]:visible`).count()).toBeGreaterThan(10);
    await page.getByRole('radio', { name, exact: true }).check();
    expect(await part.locator(`[data-edition=${hidden}]:visible`).count()).toBe(0);
    const shown = await part.locator('.figure:visible').allTextContents();
    expect(shown.join('\n')).not.toMatch(units);
    await close();
  });

  it('say every figure in words to those who hear it', () =>
    at(POOL, async (page) => {
      const unspoken = await page
        .locator('#layers .figure')
        .evaluateAll((all) =>
          all
            .filter(
              (figure) =>
                figure.getAttribute('aria-hidden') !== 'true' || !figure.nextElementSibling?.matches('.unseen'),
            )
            .map((figure) => figure.textContent),
        );
      expect(unspoken).toEqual([]);
      const heard = await page.locator('#layers td .unseen').allTextContents();
      expect(heard).toContain('0.181 inches');
      expect(heard).toContain('3 grams');
    }));

  it('are printed whole, with what is folded away on a screen', async () => {
    const { page, close } = await openPage(browser, POOL, { dark: true });
    const folded = page.locator('#layers details li').first();
    expect(await folded.isVisible()).toBe(false);
    await page.emulateMedia({ media: 'print' });
    expect(await folded.isVisible()).toBe(true);
    const inks = await page
      .locator('#layers :is(li, td, th, p)')
      .evaluateAll((all) => [...new Set(all.map((element) => getComputedStyle(element).color))]);
    expect(inks.sort()).toEqual(['rgb(0, 0, 0)', 'rgb(51, 51, 51)']);
    await close();
  });

  it('need no JavaScript', async () => {
    const { page, close } = await openPage(browser, POOL, { javascript: false });
    expect(await page.locator('#layers .layer-list > li:visible').count()).toBe(15);
    await page.locator('#layers summary').click();
    expect(await page.locator('#layers details li').first().isVisible()).toBe(true);
    await close();
  });
});
