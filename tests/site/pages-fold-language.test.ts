import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { getReference } from '../../site/lib/reference/reference.ts';
import { connectBrowser, type OpenPage, openPage } from './support/pages.ts';

const LANGUAGE = '/fold-language/';
const PROBLEMS = '/fold-language/problems/';

const { chapters, slips, words } = getReference();
const steps = chapters.flatMap((chapter) => chapter.steps);

let browser: Browser;
let language: OpenPage;
let problems: OpenPage;
beforeAll(async () => {
  browser = await connectBrowser();
  language = await openPage(browser, LANGUAGE);
  problems = await openPage(browser, PROBLEMS);
});
afterAll(() => browser.close());

/** What stands on the page, with every space a plain one. */
const plain = (text: string | null): string => (text ?? '').replace(/\s+/gu, ' ').trim();

describe('the fold language', () => {
  it('shows every step under its heading, and its file as it is written', async () => {
    const shown = await language.page.locator('.step').evaluateAll((all) =>
      all.map((step) => ({
        id: step.id,
        title: step.querySelector('h3')?.textContent,
        file: step.querySelector('.written code')?.textContent ?? undefined,
      })),
    );
    expect(shown).toEqual(
      steps.map(({ step: { id, title, example } }) => ({ id, title, file: example && `${example.trimEnd()}\n` })),
    );
  });

  it('draws the pieces, each with its text', async () => {
    const drawings = language.page.locator('.step svg[role=img]');
    expect(await drawings.count()).toBeGreaterThan(50);
    for (const { step, worked } of steps) {
      const editions = step.editions ? 2 : 1;
      const pieces = worked?.editions.inch.card.pieces.filter(({ name }) => step.draws?.includes(name) ?? true) ?? [];
      expect({ step: step.id, drawings: await language.page.locator(`#${step.id} svg[role=img]`).count() }).toEqual({
        step: step.id,
        drawings: editions * pieces.length,
      });
    }
    expect(await language.page.locator('.step .drawing-words').count()).toBe(await drawings.count());
  });

  it('says what the dry fit finds', async () => {
    const found = plain(await language.page.locator('#wrong-sum .findings').textContent());
    expect(found).toContain('Does not work: Sum of the panels.');
    expect(found).toContain('its panels add up to');
  });

  it('lists every word, and leads to where it is explained', async () => {
    const listed = await language.page.locator('.words dt').allTextContents();
    expect(listed.map(plain)).toEqual(words.flatMap((group) => Object.keys(group.words)));
  });

  it('is led to from the folds and from the foot of every page', async () => {
    const { page, close } = await openPage(browser, '/folds/');
    expect(await page.getByRole('main').getByRole('link', { name: 'The fold language' }).count()).toBe(1);
    await page.getByRole('contentinfo').getByRole('link', { name: 'the fold language' }).click();
    expect(plain(await page.locator('h1').textContent())).toBe('The fold language');
    await close();
  });

  it('does not hide the editions of an example from a reader who has chosen the other', async () => {
    const { page, close } = await openPage(browser, LANGUAGE);
    await page.getByRole('radio', { name: 'Millimetres', exact: true }).check();
    expect(await page.locator('#half-fold svg[role=img]').isVisible()).toBe(true);
    expect(await page.locator('#two-editions svg[role=img]:visible').count()).toBe(1);
    await close();
  });

  it('breaks long lines of a file on a phone, further in than they begin, and loses nothing', async () => {
    const { page, close } = await openPage(browser, LANGUAGE, { width: 360 });
    const cut = await page
      .locator('.written-line')
      .evaluateAll((lines) =>
        lines.filter((line) => line.scrollWidth > line.clientWidth + 1).map((line) => line.textContent),
      );
    expect(cut).toEqual([]);
    const wrapped = await page.locator('.written-line').evaluateAll((lines) => {
      const rects = lines.map((line) => {
        const range = document.createRange();
        range.selectNodeContents(line);
        return [...range.getClientRects()].filter(({ width }) => width > 0);
      });
      return rects.filter((parts) => parts.length > 1).map((parts) => (parts[1]?.left ?? 0) - (parts[0]?.left ?? 0));
    });
    expect(wrapped.length).toBeGreaterThan(20);
    expect(Math.min(...wrapped)).toBeGreaterThan(8);
    await close();
  });
});

describe('the errors', () => {
  it('are all there, each with the three answers that were given', async () => {
    const shown = await problems.page.locator('.slip').evaluateAll((all) =>
      all.map((slip) => ({
        title: slip.querySelector('h3')?.textContent,
        answers: [...slip.querySelectorAll('dt')].map((dt) => dt.textContent),
      })),
    );
    const told = slips.flatMap((group) => group.slips);
    expect(shown).toEqual(
      told.map(({ slip }) => ({ title: slip.title, answers: ['You wrote', 'It takes', 'Do this'] })),
    );
  });

  it('have an address by their code', async () => {
    const ids = await problems.page.locator('.slip').evaluateAll((all) => all.map(({ id }) => id));
    const codes = slips.flatMap((group) => group.slips.map(({ slip }) => slip.code));
    for (const code of new Set(codes)) expect(ids).toContain(code);
  });

  it('mark the line at fault otherwise than by colour alone', async () => {
    const marked = problems.page.locator('#two-bands .written-slip');
    expect(plain(await marked.textContent())).toContain('back 4');
    expect(await marked.evaluate((line) => getComputedStyle(line).boxShadow)).not.toBe('none');
    expect(plain(await problems.page.locator('#two-bands .answers').textContent())).toContain(
      'Put valley or mountain between front and back, or make them one band.',
    );
  });
});
