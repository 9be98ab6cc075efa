import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { foldersBeside, repair } from '../../plugins/astro/safe-build.ts';
import { describeSite, type SiteManifest } from '../../plugins/astro/site-manifest.ts';
import { endOf, ProjectCopy } from '../support/project-copy.ts';
import { seeded } from './support/seeded.ts';

/*
 * Real builds of the real site, killed. The content changes from one build to the next, between two versions whose
 * finished sites are known file by file; whatever happened, the next command must find one of the two, whole.
 */

const KILLS = 20;
const SEED = 1_759_113;
/** After every so many kills the next command is a build, else the repair that every other command begins with. */
const BUILD_EVERY = 5;

type Version = 'ebb' | 'flood';

let copy: ProjectCopy;
const finished = new Map<Version, SiteManifest>();
let buildMs = 0;

function writeContent(version: Version): void {
  copy.write(
    'content/posts/tide-test/index.md',
    `---
title: A card for the ${version}
summary: Invented, for a test.
date: 2026-10-01
units: in
fold: { side-fold: { width: ${version === 'ebb' ? '4 1/4' : '5'}, height: 5 1/2 } }
---

Score at the middle, at ${version === 'ebb' ? '4 1/4 in' : '5 in'}.
`,
  );
}

beforeAll(async () => {
  copy = new ProjectCopy(['blog.yaml', 'folds/side-fold.md']);
  for (const version of ['flood', 'ebb'] as const) {
    writeContent(version);
    buildMs = await timed(() => copy.build()); // the second counts: it has warm caches, as those that will be killed
    finished.set(version, describeSite(copy.dist));
  }
});
afterAll(() => copy?.discard());

async function timed(work: () => Promise<unknown>): Promise<number> {
  const begin = performance.now();
  await work();
  return performance.now() - begin;
}

/** Which of the two versions a folder holds, whole and unmixed; else what is wrong with it. */
function standing(): Version | string {
  if (!existsSync(copy.dist)) return 'nothing';
  const found = JSON.stringify(describeSite(copy.dist));
  for (const [version, files] of finished) if (found === JSON.stringify(files)) return version;
  return `mixed: ${Object.keys(JSON.parse(found)).join(', ')}`;
}

const other = (version: Version): Version => (version === 'ebb' ? 'flood' : 'ebb');

function killGroup(pid: number | undefined): void {
  try {
    if (pid !== undefined) process.kill(-pid, 'SIGKILL');
  } catch {
    // It had ended by itself.
  }
}

test('the two versions differ, and each has its pages', () => {
  expect(JSON.stringify(finished.get('ebb'))).not.toBe(JSON.stringify(finished.get('flood')));
  expect(Object.keys(finished.get('ebb') ?? {})).toContain('projects/tide-test/index.html');
  expect(standing()).toBe('ebb');
});

test(`a build killed at ${KILLS} moments leaves the last good site or the new one`, async ({ signal: stop }) => {
  const random = seeded(SEED);
  let good: Version = 'ebb';
  let killed = 0;
  for (let round = 0; killed < KILLS; round++) {
    stop.throwIfAborted();
    expect(round, 'builds end before they can be killed').toBeLessThan(2 * KILLS);
    const next = other(good);
    writeContent(next);
    // One kill in each twentieth of a build, in a mixed order.
    const part = (((killed * 7) % KILLS) + random()) / KILLS;
    const at = `kill ${killed + 1} at ${Math.round(part * buildMs)} of ${Math.round(buildMs)} ms`;
    const build = copy.start(join(copy.folder, 'plugins/commands/build.ts'), ['--quiet']);
    const timer = setTimeout(() => killGroup(build.pid), part * buildMs);
    const ended = endOf(build);
    const ms = await timed(() => ended);
    clearTimeout(timer);
    const { code, signal, said } = await ended;
    if (signal === 'SIGKILL') {
      killed += 1;
    } else {
      expect(code, said).toBe(0);
      buildMs = ms; // the machine has become quicker
    }

    if (killed % BUILD_EVERY === 0) {
      buildMs = await timed(() => copy.build());
      expect(standing(), at).toBe(next);
    } else {
      expect(await repair(copy.dist), at).toBe('whole');
      expect([good, next], at).toContain(standing());
    }
    good = standing() as Version;
    const { staging, previous } = foldersBeside(copy.dist);
    expect([existsSync(staging), existsSync(previous)], at).toEqual([false, false]);
  }
}, 600_000);

describe('killed for certain', () => {
  test.each([
    ['built', 'last'],
    ['between', 'last'],
    ['swapped', 'new'],
  ])('when %s, the %s site stands after the next command', async (moment, expected) => {
    const good = standing() as Version;
    const next = other(good);
    writeContent(next);
    const { signal, said } = await endOf(
      copy.start(join(import.meta.dirname, 'support', 'killed-at.ts'), [copy.folder, moment]),
    );
    expect(signal, said).toBe('SIGKILL');
    if (moment === 'between') expect(standing()).toBe('nothing');
    expect(await repair(copy.dist)).toBe('whole');
    expect(standing()).toBe(expected === 'last' ? good : next);
  });

  test('between the renames, the next build finishes as if nothing had been', async () => {
    const next = other(standing() as Version);
    writeContent(next);
    await endOf(copy.start(join(import.meta.dirname, 'support', 'killed-at.ts'), [copy.folder, 'between']));
    await copy.build();
    expect(standing()).toBe(next);
  });
});
