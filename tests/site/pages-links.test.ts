import { existsSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, it } from 'vitest';
import { builtPages } from './support/built-pages.ts';
import { connectBrowser, openPage } from './support/pages.ts';

interface ReadPage {
  readonly ids: readonly string[];
  /** Addresses of links and of everything the page loads, as absolute addresses. */
  readonly addresses: readonly string[];
  readonly canonical: string | null;
}

const folder = inject('siteFolder');
const site = inject('siteUrl');
const pages = new Map<string, ReadPage>();
let browser: Browser;

beforeAll(async () => {
  browser = await connectBrowser();
  const { page } = await openPage(browser, '/');
  for (const path of builtPages(folder)) {
    await page.goto(path);
    pages.set(
      path,
      await page.evaluate(() => ({
        ids: [...document.querySelectorAll('[id]')].map(({ id }) => id),
        addresses: [...document.querySelectorAll('[href], [src]')]
          .filter((element) => element.getAttribute('rel') !== 'canonical')
          .map((element) => element.getAttribute('href') ?? element.getAttribute('src') ?? '')
          .map((address) => new URL(address, location.href).href),
        canonical: document.querySelector('link[rel=canonical]')?.getAttribute('href') ?? null,
      })),
    );
  }
});
afterAll(() => browser.close());

const isFile = (path: string): boolean => existsSync(path) && statSync(path).isFile();

it('every link within the site leads to a page or file, and every fragment to a place on its page', () => {
  const broken: string[] = [];
  for (const [path, { addresses }] of pages) {
    for (const address of addresses.filter((each) => each.startsWith(`${site}/`))) {
      const { pathname, hash } = new URL(address);
      const target = decodeURIComponent(pathname);
      if (!pages.has(target) && !isFile(join(folder, target))) broken.push(`${path} -> ${target}`);
      const id = decodeURIComponent(hash.slice(1));
      if (id !== '' && pages.get(target)?.ids.includes(id) !== true) broken.push(`${path} -> ${target}${hash}`);
    }
  }
  expect(broken).toEqual([]);
});

it('no id stands twice on a page', () => {
  for (const [path, { ids }] of pages) {
    expect({ path, twice: ids.filter((id, index) => ids.indexOf(id) !== index) }).toEqual({ path, twice: [] });
  }
});

it('every page but the one for wrong addresses can be reached from the front by links', () => {
  const reached = new Set<string>();
  const walk = (path: string): void => {
    if (reached.has(path)) return;
    reached.add(path);
    for (const address of pages.get(path)?.addresses ?? []) {
      const { origin, pathname } = new URL(address);
      if (origin === site && pages.has(pathname)) walk(pathname);
    }
  };
  walk('/');
  expect([...pages.keys()].filter((path) => !reached.has(path))).toEqual(['/404.html']);
});

it('every page states its own address', () => {
  for (const [path, { canonical }] of pages) {
    expect(canonical).toBe(path === '/404.html' ? null : `https://saltmarsh-paper.example${path}`);
  }
});

it('supplies, techniques and folds lead to the projects that use them, and back', () => {
  const leadsTo = (from: string, to: string): boolean => pages.get(from)?.addresses.includes(`${site}${to}`) === true;
  for (const from of pages.keys()) {
    if (!/^\/projects\/.+\/$/.test(from)) continue;
    const used = [...pages.keys()].filter(
      (to) => /^\/(supplies|techniques|folds)\/.+\/$/.test(to) && leadsTo(from, to),
    );
    expect(used.length).toBeGreaterThan(0);
    for (const to of used)
      expect({ from: to, leadsTo: leadsTo(to, from) ? from : undefined }).toEqual({ from: to, leadsTo: from });
  }
});
