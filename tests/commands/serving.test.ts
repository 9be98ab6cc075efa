import { existsSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { foldersBeside } from '../../plugins/astro/safe-build.ts';
import { endOf, ProjectCopy } from '../support/project-copy.ts';
import { plantSite, versionIn } from './support/tiny-site.ts';

let copy: ProjectCopy;
beforeAll(() => {
  copy = new ProjectCopy(['blog.yaml', 'folds/side-fold.md']);
});
afterAll(() => copy?.discard());

/** A port that was free a moment ago. */
function freePort(): Promise<number> {
  return new Promise((resolve) => {
    const server = createServer().listen(0, () => {
      const address = server.address();
      server.close(() => resolve(typeof address === 'object' && address !== null ? address.port : 0));
    });
  });
}

/** Runs `dev` or `preview` until it has answered for a path; then asks it to stop. */
async function answerOf(command: string, path: string): Promise<string> {
  const port = await freePort();
  const child = copy.start(join(copy.folder, 'plugins/commands/run.mjs'), [command, '--port', `${port}`]);
  const ended = endOf(child);
  let running = true;
  void ended.then(() => {
    running = false;
  });
  for (;;) {
    try {
      const answer = await fetch(`http://localhost:${port}${path}`);
      const text = await answer.text();
      child.kill('SIGTERM');
      await ended;
      return text;
    } catch (error) {
      if (!running) throw new Error((await ended).said, { cause: error });
      await new Promise((resolve) => setTimeout(resolve, 200));
    }
  }
}

describe('preview', () => {
  test('says what to do when nothing is built', async () => {
    const run = copy.start(join(copy.folder, 'plugins/commands/run.mjs'), ['preview']);
    const { code, said } = await endOf(run);
    expect(code).toBe(1);
    expect(said).toContain('npm run build');
  });

  test('shows the last good site after a build that was killed between the renames', async () => {
    const { staging, previous } = foldersBeside(copy.dist);
    plantSite(previous, 'whole', 'old');
    plantSite(staging, 'whole', 'new');
    expect(await answerOf('preview', '/b.html')).toBe('b.html of old');
    expect([existsSync(staging), existsSync(previous)]).toEqual([false, false]);
  });
});

describe('dev', () => {
  test('shows the site as written, and puts the built one in order', async () => {
    const { previous } = foldersBeside(copy.dist);
    plantSite(previous, 'part', 'older');
    plantSite(copy.dist, 'whole', 'old');
    expect(await answerOf('dev', '/folds/side-fold/')).toContain('<h1');
    expect(existsSync(previous)).toBe(false);
    expect(versionIn(copy.dist)).toBe('old');
  });
});
