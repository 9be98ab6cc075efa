import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { type Browser, chromium, type Page } from 'playwright-core';
import { inject } from 'vitest';

export interface PageOptions {
  /** Width of the window in CSS pixels; 1280 unless told. A phone has 390. */
  readonly width?: number;
  readonly height?: number;
  readonly dark?: boolean;
  /** False: scripts are off, as with a reader who blocks them. */
  readonly javascript?: boolean;
  readonly reducedMotion?: boolean;
}

/** A page with all that went wrong on it. */
export interface OpenPage {
  readonly page: Page;
  /** Console errors and warnings, exceptions, answers of 400 and above, and requests that left the site; grows. */
  readonly problems: readonly string[];
  close(): Promise<void>;
}

/** The browser that all tests of a run share. Disconnect with `close()` when the file's tests are over. */
export function connectBrowser(): Promise<Browser> {
  return chromium.connect(inject('browserEndpoint'));
}

/** Opens a page of the built site by its path, as a new visitor with nothing stored. */
export async function openPage(browser: Browser, path: string, options: PageOptions = {}): Promise<OpenPage> {
  const { width = 1280, height = 900, dark = false, javascript = true, reducedMotion = false } = options;
  const site = inject('siteUrl');
  const context = await browser.newContext({
    baseURL: site,
    viewport: { width, height },
    colorScheme: dark ? 'dark' : 'light',
    reducedMotion: reducedMotion ? 'reduce' : 'no-preference',
    javaScriptEnabled: javascript,
  });
  const problems: string[] = [];
  await context.route(
    (url) => !url.href.startsWith(site),
    async (route) => {
      problems.push(`asked ${route.request().url()}, which is not on this site`);
      await route.abort();
    },
  );
  const page = await context.newPage();
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning')
      problems.push(`${message.type()}: ${message.text()}`);
  });
  page.on('pageerror', (error) => problems.push(`exception: ${error.message}`));
  page.on('response', (response) => {
    if (response.status() >= 400) problems.push(`${response.status()} for ${response.url()}`);
  });
  await page.goto(path, { waitUntil: 'load' });
  return { page, problems, close: () => context.close() };
}

/** What axe-core finds on a page: one text for each violation, with the elements it names. Empty when clean. */
export async function axe(page: Page): Promise<string[]> {
  const source = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
  await page.evaluate(source);
  return page.evaluate(async () => {
    const { axe: checker } = globalThis as unknown as { axe: typeof import('axe-core') };
    const { violations } = await checker.run(document, { resultTypes: ['violations'] });
    return violations.map(
      (violation) => `${violation.id}: ${violation.help} (${violation.nodes.map((node) => node.target).join(' | ')})`,
    );
  });
}
