import { execFileSync } from 'node:child_process';
import { chmodSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium } from 'playwright-core';
import { afterAll, describe, expect, test } from 'vitest';
import { launchBrowser } from '../site/support/browser.ts';
import { unpackBrowser } from '../site/support/packaged-browser.ts';

const folder = mkdtempSync(join(tmpdir(), 'browsers-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Unpacked apart from the usual cache: from the archives, as on a bare machine. */
const cache = join(folder, 'cache');

/** A program that starts the packaged browser, standing for one that a machine has. */
async function programFor(name: string): Promise<string> {
  const { path, env } = await unpackBrowser(cache);
  const file = join(folder, name, 'chromium');
  mkdirSync(join(folder, name), { recursive: true });
  const settings = Object.entries(env).map(([key, value]) => `export ${key}='${value}'`);
  writeFileSync(file, `#!/bin/sh\n${settings.join('\n')}\nexec '${path}' "$@"\n`);
  chmodSync(file, 0o755);
  return file;
}

async function readsAPage(endpoint: string): Promise<string | null> {
  const browser: Browser = await chromium.connect(endpoint);
  const page = await browser.newPage();
  await page.setContent('<p>5 ½ in</p>');
  const text = await page.evaluate(() => document.querySelector('p')?.textContent ?? null);
  await browser.close();
  return text;
}

describe('the browser for tests', () => {
  test('is that of CHROMIUM_PATH when it is set, whatever else there is', async () => {
    const env = { CHROMIUM_PATH: await programFor('chosen'), PATH: join(folder, 'nothing') };
    const { server, source } = await launchBrowser(cache, env);
    expect(source).toBe('CHROMIUM_PATH');
    expect(await readsAPage(server.wsEndpoint())).toBe('5 ½ in');
    await server.close();
  });

  test('is no other when that of CHROMIUM_PATH does not start', async () => {
    await expect(launchBrowser(cache, { CHROMIUM_PATH: join(folder, 'absent') })).rejects.toThrow();
  });

  test('is else the one on the PATH', async () => {
    await programFor('system');
    const { server, source } = await launchBrowser(cache, { PATH: `/nowhere:${join(folder, 'system')}` });
    expect(source).toBe('system');
    expect(await readsAPage(server.wsEndpoint())).toBe('5 ½ in');
    await server.close();
  });

  test('is else the packaged one, also when the one on the PATH does not start', async () => {
    const broken = join(folder, 'broken');
    mkdirSync(broken);
    writeFileSync(join(broken, 'chromium'), '#!/bin/sh\necho "cannot open shared object libnss3.so" >&2\nexit 127\n');
    chmodSync(join(broken, 'chromium'), 0o755);
    for (const PATH of ['', broken]) {
      const { server, source } = await launchBrowser(cache, { PATH });
      expect(source).toBe('packaged');
      expect(await readsAPage(server.wsEndpoint())).toBe('5 ½ in');
      await server.close();
    }
  });
});

describe('the packaged browser', () => {
  test('brings the libraries that a bare machine lacks', async () => {
    const { path, env } = await unpackBrowser(cache);
    const linked = execFileSync('ldd', [path], { env: { ...process.env, ...env }, encoding: 'utf8' });
    for (const library of ['libnss3.so', 'libnssutil3.so', 'libnspr4.so']) {
      expect(linked).toMatch(new RegExp(`${library} => ${cache}`));
    }
    expect(linked).not.toContain('not found');
  });

  test('is unpacked once for a version, and leaves no parts', async () => {
    await Promise.all([unpackBrowser(cache), unpackBrowser(cache)]);
    expect(readdirSync(cache).filter((name) => !/^browser-[\d.]+$/.test(name))).toEqual([]);
  });

  test('an unpacking that was cut short is done again', async () => {
    const apart = join(folder, 'apart');
    const [name = ''] = readdirSync(cache);
    mkdirSync(join(apart, `${name}.part`), { recursive: true });
    writeFileSync(join(apart, `${name}.part`, 'chromium'), 'half a browser');
    const { path } = await unpackBrowser(apart);
    expect(execFileSync('head', ['-c', '4', path]).toString('latin1')).toBe('\x7fELF');
    rmSync(apart, { recursive: true });
  });
});
