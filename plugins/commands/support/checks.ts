import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { PROJECT } from './project.ts';

/** A tool that looks at the project's files and says what is wrong with them. */
export interface Check {
  readonly name: string;
  /** The tool's program below node_modules. */
  readonly tool: string;
  readonly args: readonly string[];
}

export const CHECKS: readonly Check[] = [
  { name: 'format and lint', tool: '@biomejs/biome/bin/biome', args: ['ci', '--error-on-warnings', '.'] },
  {
    name: 'types',
    tool: 'astro/bin/astro.mjs',
    args: ['check', '--minimumSeverity', 'warning', '--minimumFailingSeverity', 'warning'],
  },
  {
    name: 'layers',
    tool: 'dependency-cruiser/bin/dependency-cruiser.mjs',
    args: ['--config', '.dependency-cruiser.cjs', 'plugins', 'site', 'tests'],
  },
];

/** Runs one check in a project folder. `said` is all that the tool printed. */
export function runCheck(check: Check, project: string = PROJECT): { passed: boolean; said: string } {
  const program = join(project, 'node_modules', check.tool);
  const { status, stdout, stderr, error } = spawnSync(process.execPath, [program, ...check.args], {
    cwd: project,
    encoding: 'utf8',
    maxBuffer: 64 * 1024 * 1024,
    env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' },
  });
  return { passed: status === 0, said: [stdout, stderr, error?.message].filter(Boolean).join('\n').trim() };
}
