import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { makeFilesAhead } from '../../plugins/astro/files-ahead.ts';
import { type DeskSetup, fileNamesOf, ProjectDesk } from '../../plugins/astro/project-files.ts';
import { readContent, readLibrary } from '../../plugins/content/index.ts';
import { makeSmallSite } from './small-site.ts';

const folders: string[] = [];
afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
});

function setUp(): DeskSetup {
  const site = makeSmallSite();
  const content = readContent(site.root);
  site.discard();
  const { library } = readLibrary(content);
  if (library === undefined) throw new Error('the small site cannot be read');
  const folder = mkdtempSync(path.join(tmpdir(), 'creasewright-'));
  folders.push(folder);
  const files = [...content.posts, ...content.folds, ...content.supplies, ...content.techniques];
  return { library, files, cache: folder, code: 'code' };
}

test('the thread makes every file, with the bytes that would have been made here', async () => {
  const setup = setUp();
  const desk = new ProjectDesk(setup);
  expect(await desk.lacksFiles()).toBe(true);
  await makeFilesAhead(desk, setup)();
  expect(await desk.lacksFiles()).toBe(false);
  const elsewhere = new ProjectDesk({ ...setup, cache: `${setup.cache}/elsewhere` });
  for (const post of setup.library.posts.values()) {
    for (const name of fileNamesOf(post)) {
      expect(Buffer.from(await desk.make(post, name)).equals(Buffer.from(await elsewhere.make(post, name)))).toBe(true);
    }
  }
});

test('other code makes other files', async () => {
  const setup = setUp();
  const desk = new ProjectDesk(setup);
  await makeFilesAhead(desk, setup)();
  expect(await new ProjectDesk({ ...setup, code: 'changed' }).lacksFiles()).toBe(true);
});
