import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeEach, describe, expect, test } from 'vitest';
import { foldersBeside, type Moment, repair, safeBuild } from '../../plugins/astro/safe-build.ts';
import { type Folder, plantSite, tinySite, versionIn } from './support/tiny-site.ts';

const base = mkdtempSync(join(tmpdir(), 'safe-build-'));
let dist = '';
let count = 0;

beforeEach(() => {
  count += 1;
  dist = join(base, `${count}`, 'dist');
});
afterAll(() => rmSync(base, { recursive: true }));

const CHILD = join(import.meta.dirname, 'support', 'build-child.ts');

function buildInChild(version: string, killAt: Moment | 'never' = 'never', takes = 0) {
  const child = spawn(process.execPath, [CHILD, dist, version, killAt, `${takes}`], {
    stdio: ['ignore', 'inherit', 'inherit'],
  });
  return { child, ended: once(child, 'exit') as Promise<[number | null, string | null]> };
}

const write = (version: string) => async (folder: string) => {
  for (const [name, text] of Object.entries(tinySite(version))) writeFileSync(join(folder, name), text);
};

/** Everything beside DIST that a build or a lock might have left. */
const leftovers = () => readdirSync(join(dist, '..')).filter((name) => name.startsWith('.'));

describe('repair, in every state that three folders can be in', () => {
  const states: Folder[] = ['absent', 'part', 'whole'];
  const all = states.flatMap((d) => states.flatMap((s) => states.map((p) => [d, s, p] as const)));

  test.each(all)('dist %s, staging %s, previous %s', async (d, s, p) => {
    for (const lacks of ['manifest', 'file'] as const) {
      dist = join(base, `${count}-${lacks}`, 'dist');
      const { staging, previous } = foldersBeside(dist);
      plantSite(join(dist, '..', 'anything'), 'whole', 'other'); // a neighbour that is nobody's business
      plantSite(dist, d, 'dist', lacks);
      plantSite(staging, s, 'staging', lacks);
      plantSite(previous, p, 'previous', lacks);

      const standing = await repair(dist);

      const expected = d === 'whole' ? 'dist' : p === 'whole' ? 'previous' : s === 'whole' ? 'staging' : undefined;
      if (expected !== undefined) {
        expect([standing, versionIn(dist)]).toEqual(['whole', expected]);
      } else {
        expect(standing).toBe(d === 'absent' ? 'none' : 'unknown');
        expect(existsSync(dist)).toBe(d === 'part');
      }
      expect(leftovers()).toEqual([]);
      expect(versionIn(join(dist, '..', 'anything'))).toBe('other');
      expect(await repair(dist)).toBe(standing);
    }
  });
});

describe('a build killed by SIGKILL just after', () => {
  const after: readonly (readonly [Moment, string])[] = [
    ['building', 'old'],
    ['built', 'old'],
    ['between', 'old'],
    ['swapped', 'new'],
    ['cleared', 'new'],
  ];

  test.each(after)('%s leaves the %s site', async (moment, expected) => {
    await safeBuild({ dist, build: write('old') });
    const [, signal] = await buildInChild('new', moment).ended;
    expect(signal).toBe('SIGKILL');
    expect(await repair(dist)).toBe('whole');
    expect(versionIn(dist)).toBe(expected);
    expect(leftovers()).toEqual([]);
  });

  test.each([
    ['building', 'none'],
    ['built', 'new'],
    ['between', 'new'],
    ['swapped', 'new'],
  ] as const)('%s, when it was the first, leaves %s', async (moment, expected) => {
    await buildInChild('new', moment).ended;
    await repair(dist);
    expect(versionIn(dist)).toBe(expected);
  });

  test('between the renames leaves no dist at all until the repair: the window is real', async () => {
    await safeBuild({ dist, build: write('old') });
    await buildInChild('new', 'between').ended;
    expect(existsSync(dist)).toBe(false);
  });

  test('any moment, is made good by the next build', async () => {
    for (const [moment] of after) {
      await buildInChild('first', moment).ended;
      await safeBuild({ dist, build: write(`next after ${moment}`) });
      expect(versionIn(dist)).toBe(`next after ${moment}`);
      expect(leftovers()).toEqual([]);
    }
  });
});

test('a repair killed at random moments loses nothing', async () => {
  const script = `import { repair } from ${JSON.stringify(join(import.meta.dirname, '../../plugins/astro/safe-build.ts'))};
    process.stdout.write('.'); await repair(${JSON.stringify(dist)});`;
  for (let round = 0; round < 10; round++) {
    const { staging, previous } = foldersBeside(dist);
    rmSync(dist, { recursive: true, force: true });
    plantSite(previous, 'whole', 'old');
    plantSite(staging, 'whole', 'new');
    for (let i = 0; i < 300; i++) writeFileSync(join(staging, `.more-${i}`), '');
    const child = spawn(process.execPath, ['--input-type=module', '-e', script]);
    const exited = once(child, 'exit');
    await once(child.stdout, 'data');
    await new Promise((resolve) => setTimeout(resolve, round));
    child.kill('SIGKILL');
    await exited;
    expect(await repair(dist)).toBe('whole');
    expect(versionIn(dist)).toBe('old');
    expect(leftovers()).toEqual([]);
  }
});

describe('a build that fails', () => {
  test('leaves the last good site untouched and passes the error on', async () => {
    await safeBuild({ dist, build: write('old') });
    const failing = safeBuild({
      dist,
      build: async (folder) => {
        writeFileSync(join(folder, 'a.html'), 'half');
        throw new Error('the plugin broke');
      },
    });
    await expect(failing).rejects.toThrow('the plugin broke');
    expect(versionIn(dist)).toBe('old');
    expect(leftovers()).toEqual([]);
  });

  test('leaves nothing when there was nothing', async () => {
    await expect(safeBuild({ dist, build: () => Promise.reject(new Error('no')) })).rejects.toThrow('no');
    expect(existsSync(dist)).toBe(false);
  });
});

test('a folder of a stranger in the place of dist is replaced only by a whole site', async () => {
  plantSite(dist, 'part', 'stranger');
  await expect(safeBuild({ dist, build: () => Promise.reject(new Error('no')) })).rejects.toThrow();
  expect(versionIn(dist)).toBe('stranger');
  await buildInChild('new', 'between').ended;
  expect(await repair(dist)).toBe('whole');
  expect(versionIn(dist)).toBe('new');
});

test('builds at the same time follow each other, also when one is killed', async () => {
  await safeBuild({ dist, build: write('old') });
  const builds = [
    buildInChild('one', 'never', 200),
    buildInChild('two', 'built', 200),
    buildInChild('three', 'never', 200),
  ];
  await Promise.all(builds.map((build) => build.ended));
  const log = readFileSync(`${dist}.log`, 'utf8').trim().split('\n');
  expect(log).toHaveLength(6);
  for (let i = 0; i < log.length; i += 2) expect(log[i + 1]).toBe(log[i]?.replace('begin', 'end'));
  expect(await repair(dist)).toBe('whole');
  expect(['one', 'three']).toContain(versionIn(dist));
  expect(leftovers()).toEqual([]);
});
