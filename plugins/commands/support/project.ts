import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder that holds package.json. */
export const PROJECT = dirname(dirname(dirname(dirname(fileURLToPath(import.meta.url)))));

/** The built site, as visitors see it. */
export const DIST = join(PROJECT, 'dist');

/** The site that tests look at: built apart, so that a test run never changes what is published. */
export const TEST_SITE = join(PROJECT, '.cache', 'test-site', 'dist');

/** Says that another process is at work on the site. */
export function sayBusy(pid: number): void {
  console.error(`Process ${pid} is working on the site; waiting for it.`);
}
