import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';
import { type BrowserServer, chromium } from 'playwright-core';
import { type BrowserProgram, unpackBrowser } from './packaged-browser.ts';

/** Names under which systems install the browser. */
const SYSTEM_NAMES = ['chromium', 'chromium-browser', 'chrome'];

/** Quiet and alone: no sandbox (containers), no graphics card, and nothing asked of the network by the browser itself. */
const FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-default-apps',
  '--disable-domain-reliability',
  '--disable-sync',
  '--no-first-run',
  '--no-pings',
  '--metrics-recording-only',
];

export type BrowserSource = 'CHROMIUM_PATH' | 'system' | 'packaged';

/**
 * Starts the browser for tests: that of CHROMIUM_PATH if it is set (and no other, if that one does not start), else the
 * system's, else the packaged one. A system's browser that lacks a library does not start; then the packaged one serves.
 *
 * @param env the environment to look in; PATH and CHROMIUM_PATH are read
 */
export async function launchBrowser(
  cache: string,
  env: NodeJS.ProcessEnv = process.env,
): Promise<{ server: BrowserServer; source: BrowserSource }> {
  if (env.CHROMIUM_PATH) return { server: await launch({ path: env.CHROMIUM_PATH, env: {} }), source: 'CHROMIUM_PATH' };
  const path = findOnPath(env.PATH ?? '');
  if (path !== undefined) {
    try {
      return { server: await launch({ path, env: {} }), source: 'system' };
    } catch (error) {
      console.warn(`${path} does not start, so the packaged browser is used:\n${itsLastWords(error)}`);
    }
  }
  return { server: await launch(await unpackBrowser(cache)), source: 'packaged' };
}

function launch(program: BrowserProgram): Promise<BrowserServer> {
  return chromium.launchServer({
    executablePath: program.path,
    args: FLAGS,
    env: { ...process.env, ...program.env },
    timeout: 60_000,
  });
}

function findOnPath(path: string): string | undefined {
  const folders = path.split(delimiter).filter((folder) => folder !== '');
  return SYSTEM_NAMES.flatMap((name) => folders.map((folder) => join(folder, name))).find(isExecutable);
}

function isExecutable(file: string): boolean {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** What the program itself printed before it died, without the long line of flags. */
function itsLastWords(error: unknown): string {
  const said = error instanceof Error ? error.message : String(error);
  const printed = said.split('\n').filter((line) => line.includes('[err]'));
  return printed.length > 0 ? printed.join('\n') : (said.split('\n')[0] ?? '');
}
