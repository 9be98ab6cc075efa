import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { connectBrowser, openPage } from './support/pages.ts';

const PROJECT = '/projects/curlew-at-low-water/';

let browser: Browser;
beforeAll(async () => {
  browser = await connectBrowser();
});
afterAll(() => browser.close());

/** Which editions a reader sees: the drawing, the columns of the table and the measures in the text agree, or it throws. */
async function seen(page: Page): Promise<string> {
  const shown = async (system: 'inch' | 'metric') => {
    const places = [`figure [role=img]`, 'td', '.findings'].map((what) =>
      page.locator(`[data-edition=${system}] ${what}, ${what}[data-edition=${system}]`).first().isVisible(),
    );
    const answers = new Set([
      ...(await Promise.all(places)),
      await page.locator(`.measure-${system}`).first().isVisible(),
    ]);
    if (answers.size !== 1) throw new Error(`part of the ${system} edition is shown and part is hidden`);
    return answers.has(true);
  };
  return [(await shown('inch')) && 'inch', (await shown('metric')) && 'metric'].filter(Boolean).join(' and ');
}

const radio = (page: Page, name: string) => page.getByRole('radio', { name, exact: true });

describe('the unit switch', () => {
  it('shows both editions to a reader who has not chosen', async () => {
    const { page, close } = await openPage(browser, PROJECT);
    expect(await seen(page)).toBe('inch and metric');
    expect(await radio(page, 'Both').isChecked()).toBe(true);
    await close();
  });

  it.each([
    ['Inches', 'inch'],
    ['Millimetres', 'metric'],
  ])('shows one edition: %s', async (name, system) => {
    const { page, problems, close } = await openPage(browser, PROJECT);
    await radio(page, name).check();
    expect(await seen(page)).toBe(system);
    await radio(page, 'Both').check();
    expect(await seen(page)).toBe('inch and metric');
    expect(problems).toEqual([]);
    await close();
  });

  it('is remembered after a reload and on another page', async () => {
    const { page, close } = await openPage(browser, PROJECT);
    await radio(page, 'Millimetres').check();
    await page.reload();
    expect(await seen(page)).toBe('metric');
    expect(await radio(page, 'Millimetres').isChecked()).toBe(true);
    await page.goto('/projects/two-cards-from-the-harbour/');
    expect(await seen(page)).toBe('metric');
    await page.goBack();
    expect(await seen(page)).toBe('metric');
    await close();
  });

  it('is applied before the page is first painted', async () => {
    const { page, close } = await openPage(browser, PROJECT);
    await radio(page, 'Inches').check();
    // The script has run, and the choice stands on the root, when the parser reaches the body.
    await page.addInitScript(() => {
      new MutationObserver((_changes, observer) => {
        if (document.body === null) return;
        sessionStorage.setItem('units-at-body', document.documentElement.dataset.units ?? 'not yet');
        observer.disconnect();
      }).observe(document, { childList: true, subtree: true });
    });
    await page.reload();
    expect(await page.evaluate(() => sessionStorage.getItem('units-at-body'))).toBe('inch');
    await close();
  });

  it('does not move the page: what stands above the fold keeps its place when scripts come in', async () => {
    const place = async (javascript: boolean) => {
      const { page, close } = await openPage(browser, PROJECT, { javascript });
      const box = await page.locator('h1').boundingBox();
      await close();
      return box?.x;
    };
    expect(await place(true)).toBe(await place(false));
    const { page, close } = await openPage(browser, PROJECT);
    const shift = await page.evaluate(
      () =>
        new Promise<number>((resolve) => {
          new PerformanceObserver((list) => {
            resolve(list.getEntries().reduce((sum, entry) => sum + (entry as unknown as { value: number }).value, 0));
          }).observe({ type: 'layout-shift', buffered: true });
          setTimeout(() => resolve(0), 500);
        }),
    );
    // 0.1 is the published limit of "good" for cumulative layout shift (web.dev, Core Web Vitals); ours is far below.
    expect(shift).toBeLessThan(0.02);
    await close();
  });

  it('works by keyboard alone', async () => {
    const { page, close } = await openPage(browser, PROJECT);
    for (let presses = 0; presses < 20; presses++) {
      await page.keyboard.press('Tab');
      if (await radio(page, 'Both').evaluate((element) => element === document.activeElement)) break;
    }
    expect(await radio(page, 'Both').evaluate((element) => element === document.activeElement)).toBe(true);
    await page.keyboard.press('ArrowLeft');
    expect(await seen(page)).toBe('metric');
    await page.keyboard.press('ArrowLeft');
    expect(await seen(page)).toBe('inch');
    await page.reload();
    expect(await seen(page)).toBe('inch');
    await close();
  });

  it('works for the page at hand when storage is blocked', async () => {
    const { page, problems, close } = await openPage(browser, PROJECT);
    await page.addInitScript(() => {
      Object.defineProperty(window, 'localStorage', {
        get() {
          throw new DOMException('The operation is insecure.', 'SecurityError');
        },
      });
    });
    await page.reload();
    expect(await seen(page)).toBe('inch and metric');
    await radio(page, 'Inches').check();
    expect(await seen(page)).toBe('inch');
    expect(problems).toEqual([]);
    await close();
  });

  it.each(['"cubits"', '', '__proto__', '<b>inch</b>'])('takes no notice of a stored %j', async (stored) => {
    const { page, close } = await openPage(browser, PROJECT);
    await page.evaluate((value) => localStorage.setItem('units', value), stored);
    await page.reload();
    expect(await seen(page)).toBe('inch and metric');
    expect(await page.locator('html').getAttribute('data-units')).toBe('both');
    await close();
  });

  it('follows a choice made in another tab', async () => {
    const { page, close } = await openPage(browser, PROJECT);
    const other = await page.context().newPage();
    await other.goto('/folds/gate/');
    await radio(other, 'Inches').check();
    await page.waitForFunction(() => document.documentElement.dataset.units === 'inch');
    expect(await seen(page)).toBe('inch');
    expect(await radio(page, 'Inches').isChecked()).toBe(true);
    await close();
  });
});

describe('without JavaScript', () => {
  it('both editions are shown, the home edition first, and there is no switch', async () => {
    const { page, close } = await openPage(browser, PROJECT, { javascript: false });
    await expect(seen(page)).resolves.toBe('inch and metric');
    expect(await page.locator('.unit-switch').isVisible()).toBe(false);
    const order = await page
      .locator('figure.drawing')
      .evaluateAll((figures) =>
        figures.map((figure) => figure.closest('[data-edition]')?.getAttribute('data-edition')),
      );
    expect(order).toEqual(['inch', 'inch', 'metric', 'metric']);
    await close();
  });
});
