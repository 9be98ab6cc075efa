import { spawnSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { PROJECT } from '../../plugins/commands/support/project.ts';
import { environmentOfABuild, ProjectCopy } from '../support/project-copy.ts';
import type { GeneratedPost } from './generate-posts.ts';
import { PlainSite } from './plain-site.ts';

/** Seconds of a whole build as a process, median over the rounds. */
export interface Pair {
  readonly ours: number;
  readonly plain: number;
}

/** Builds both sites cold and warm in turn, so that whatever else the machine does falls on both. */
export async function compareBuilds(
  posts: readonly GeneratedPost[],
  rounds: number,
  say: (line: string) => void,
): Promise<{ cold: Pair; warm: Pair }> {
  const ours = new ProjectCopy(['blog.yaml', 'folds', 'supplies', 'techniques']);
  for (const { slug, text } of posts) ours.write(`content/posts/${slug}/index.md`, text);
  const plain = new PlainSite(posts);
  const times: Times = { oursCold: [], oursWarm: [], plainCold: [], plainWarm: [] };
  try {
    for (let round = 1; round <= rounds; round++) {
      for (const { folder } of [ours, plain]) {
        for (const name of ['.cache', '.astro', 'dist']) rmSync(join(folder, name), { recursive: true, force: true });
      }
      for (const heat of ['Cold', 'Warm'] as const) {
        times[`plain${heat}`].push(
          timeBuild(plain.folder, join(PROJECT, 'node_modules/astro/bin/astro.mjs'), ['build']),
        );
        times[`ours${heat}`].push(timeBuild(ours.folder, join(ours.folder, 'plugins/commands/build.ts'), []));
      }
      const last = Object.entries(times).map(([name, list]) => `${name} ${list.at(-1)?.toFixed(2)}`);
      say(`round ${round}: ${last.join(', ')} s`);
    }
  } finally {
    ours.discard();
    plain.discard();
  }
  return {
    cold: { ours: median(times.oursCold), plain: median(times.plainCold) },
    warm: { ours: median(times.oursWarm), plain: median(times.plainWarm) },
  };
}

type Times = Record<`${'ours' | 'plain'}${'Cold' | 'Warm'}`, number[]>;

function timeBuild(folder: string, script: string, args: readonly string[]): number {
  const begin = performance.now();
  const { status, stdout, stderr } = spawnSync(process.execPath, [script, ...args], {
    cwd: folder,
    encoding: 'utf8',
    env: { ...environmentOfABuild(), ASTRO_TELEMETRY_DISABLED: '1' },
  });
  if (status !== 0) throw new Error(`${script} ended with ${status}:\n${stdout}\n${stderr}`);
  return (performance.now() - begin) / 1000;
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}
