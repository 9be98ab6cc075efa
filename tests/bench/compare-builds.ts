import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { PROJECT } from '../../plugins/commands/support/project.ts';
import { environmentOfABuild, ProjectCopy } from '../support/project-copy.ts';
import type { GeneratedPost } from './generate-posts.ts';
import { PlainSite } from './plain-site.ts';

/** One build as a process of its own. */
export interface BuildTime {
  /** As a person waits. */
  readonly seconds: number;
  /** The processor's, over all threads: the same whatever else the machine does. */
  readonly cpu: number;
}

/** Medians over the rounds. */
export interface Pair {
  readonly ours: BuildTime;
  readonly plain: BuildTime;
}

const ASTRO = join(PROJECT, 'node_modules/astro/bin/astro.mjs');

/** Builds both sites as their commands do, cold and warm, in turn, so that whatever else the machine does falls on both. */
export async function compareBuilds(
  posts: readonly GeneratedPost[],
  rounds: number,
  say: (line: string) => void,
): Promise<{ cold: Pair; warm: Pair }> {
  const ours = new ProjectCopy(['blog.yaml', 'folds', 'supplies', 'techniques']);
  for (const { slug, text } of posts) ours.write(`content/posts/${slug}/index.md`, text);
  const plain = new PlainSite(posts);
  const times: Times = { plainCold: [], oursCold: [], plainWarm: [], oursWarm: [] };
  try {
    for (let round = 1; round <= rounds; round++) {
      for (const { folder } of [ours, plain]) {
        for (const name of ['.cache', '.astro', 'dist']) rmSync(join(folder, name), { recursive: true, force: true });
      }
      for (const heat of ['Cold', 'Warm'] as const) {
        times[`plain${heat}`].push(timeBuild(plain.folder, ASTRO, ['build']));
        times[`ours${heat}`].push(timeBuild(ours.folder, join(ours.folder, 'plugins/commands/run.mjs'), ['build']));
      }
      const last = Object.entries(times).map(([name, list]) => `${name} ${list.at(-1)?.seconds.toFixed(1)}`);
      say(`round ${round}: ${last.join(', ')} s`);
    }
  } finally {
    ours.discard();
    plain.discard();
  }
  return {
    cold: { ours: medianOf(times.oursCold), plain: medianOf(times.plainCold) },
    warm: { ours: medianOf(times.oursWarm), plain: medianOf(times.plainWarm) },
  };
}

type Times = Record<`${'ours' | 'plain'}${'Cold' | 'Warm'}`, BuildTime[]>;

function timeBuild(folder: string, script: string, args: readonly string[]): BuildTime {
  const cpu = mkdtempSync(join(folder, 'cpu-'));
  const begin = performance.now();
  const { status, signal, stdout, stderr } = spawnSync(process.execPath, [script, ...args], {
    cwd: folder,
    encoding: 'utf8',
    env: {
      ...environmentOfABuild(),
      ASTRO_TELEMETRY_DISABLED: '1',
      NODE_OPTIONS: `--import=${pathToFileURL(join(import.meta.dirname, 'report-cpu.ts')).href}`,
      BENCH_CPU: cpu,
    },
  });
  const seconds = (performance.now() - begin) / 1000;
  if (status !== 0) throw new Error(`${script} ended with ${signal ?? status}:\n${stdout}\n${stderr}`);
  const parts = readdirSync(cpu).map((name) => Number(readFileSync(join(cpu, name), 'utf8')));
  rmSync(cpu, { recursive: true });
  return { seconds, cpu: parts.reduce((sum, part) => sum + part, 0) };
}

function medianOf(times: readonly BuildTime[]): BuildTime {
  return { seconds: median(times.map(({ seconds }) => seconds)), cpu: median(times.map(({ cpu }) => cpu)) };
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}
