import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { PROJECT, TEST_SITE } from '../../../plugins/commands/support/project.ts';
import { environmentOfABuild, TEST_EPOCH } from '../../support/project-copy.ts';
import { launchBrowser } from './browser.ts';
import { serveFolder } from './static-server.ts';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Address of the built site, without a slash at its end. */
    siteUrl: string;
    /** The folder that holds the built site. */
    siteFolder: string;
    /** Where to reach the one browser of this run. */
    browserEndpoint: string;
  }
}

/** Builds the site, serves it, and starts one browser for all tests that look at it. */
export default async function setUp(project: TestProject): Promise<() => Promise<void>> {
  const command = join(PROJECT, 'plugins', 'commands', 'build.ts');
  const built = spawnSync(process.execPath, [command, '--quiet', '--out', TEST_SITE], {
    cwd: PROJECT,
    stdio: ['ignore', 'inherit', 'inherit'],
    env: { ...environmentOfABuild(), SOURCE_DATE_EPOCH: TEST_EPOCH },
  });
  if (built.status !== 0) throw new Error('The site does not build, so nothing on it can be tested.');
  const site = await serveFolder(TEST_SITE);
  const { server: browser } = await launchBrowser(join(PROJECT, '.cache'));
  project.provide('siteUrl', site.url);
  project.provide('siteFolder', TEST_SITE);
  project.provide('browserEndpoint', browser.wsEndpoint());
  return async () => {
    await browser.close();
    await site.close();
  };
}
