import { existsSync, rmSync, utimesSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { findRuntime, readsTypeScript } from '../../plugins/commands/start/runtime.mjs';
import { FreshProject } from './support/fresh-project.ts';

let project: FreshProject;
beforeEach(() => {
  project = new FreshProject();
});
afterEach(() => rmSync(project.folder, { recursive: true, force: true }));

const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

async function until(what: () => boolean): Promise<void> {
  while (!what()) await pause(20);
}

describe('installing', () => {
  test('happens once, by npm ci, and is quiet when there is nothing to do', async () => {
    const first = await project.start(['build', 'exit', '0']).ended;
    expect(first.code).toBe(0);
    expect(first.said).toContain('Installing the locked packages');
    const second = await project.start(['build', 'exit', '0']).ended;
    expect(second.said.trim().split('\n')).toHaveLength(1); // what the command itself prints
    expect(project.npmRuns()).toEqual({ begun: 1, ended: 1 });
  });

  test('an install that was killed is noticed and done again', async () => {
    const failed = await project.start(['build', 'exit', '0'], { FAKE_NPM_ENDS: 'half' }).ended;
    expect(failed.code).toBe(1);
    expect(failed.said).toContain('SIGKILL');
    expect((await project.start(['build', 'exit', '0']).ended).code).toBe(0);
    expect(project.npmRuns()).toEqual({ begun: 2, ended: 1 });
  });

  test('an install that fails runs nothing, and says so', async () => {
    const { code, said } = await project.start(['build', 'exit', '0'], { FAKE_NPM_ENDS: 'badly' }).ended;
    expect(code).toBe(1);
    expect(said).toContain('exit code 7');
    expect(said).not.toContain('argv0');
  });

  test.each<[string, (at: FreshProject) => void]>([
    ['a newer lockfile', (at) => at.writePackages({ paper: '1.0.1', [nodeName()]: '24.0.0' })],
    ['a package more', (at) => at.writePackages({ paper: '1.0.0', glue: '2.0.0', [nodeName()]: '24.0.0' })],
    ['a package less', (at) => at.writePackages({ [nodeName()]: '24.0.0' })],
    ['a folder that was deleted', (at) => rmSync(join(at.folder, 'node_modules/paper'), { recursive: true })],
    ['a lost record', (at) => rmSync(join(at.folder, 'node_modules/.package-lock.json'))],
  ])('%s is noticed', async (_, change) => {
    await project.start(['build', 'exit', '0']).ended;
    change(project);
    expect((await project.start(['build', 'exit', '0']).ended).code).toBe(0);
    expect(project.npmRuns()).toEqual({ begun: 2, ended: 2 });
    await project.start(['build', 'exit', '0']).ended;
    expect(project.npmRuns().begun).toBe(2);
  });

  test('a fresh date on an unchanged lockfile, and a package for another system, ask for nothing', async () => {
    project.writePackages({ paper: '1.0.0', elsewhere: '1.0.0', [nodeName()]: '24.0.0' });
    await project.start(['build', 'exit', '0']).ended;
    const later = new Date(Date.now() + 60_000);
    utimesSync(join(project.folder, 'package-lock.json'), later, later);
    await project.start(['build', 'exit', '0']).ended;
    expect(project.npmRuns().begun).toBe(1);
  });

  test('package.json and lockfile that disagree are not installed from', async () => {
    project.write('package.json', { dependencies: { paper: '3.0.0' } });
    const { code, said } = await project.start(['build']).ended;
    expect(code).toBe(1);
    expect(said).toContain('differ in paper');
    expect(said).toContain('npm install');
    expect(project.npmRuns().begun).toBe(0);
  });

  test('two runs at once install once', async () => {
    const runs = [1, 2, 3].map(() => project.start(['build', 'exit', '0'], { FAKE_NPM_TAKES: '600' }).ended);
    const results = await Promise.all(runs);
    expect(results.map(({ code }) => code)).toEqual([0, 0, 0]);
    expect(results.filter(({ said }) => said.includes('waiting for it'))).toHaveLength(2);
    expect(project.npmRuns()).toEqual({ begun: 1, ended: 1 });
  });

  test('a run that starts while an orphaned npm still works waits for it', async () => {
    const first = project.start(['build', 'exit', '0'], { FAKE_NPM_TAKES: '1500' });
    await until(() => existsSync(join(project.folder, '.cache/install/owner')) && project.npmRuns().begun === 1);
    await pause(100);
    first.child.kill('SIGKILL'); // npm goes on without us
    const second = await project.start(['build', 'exit', '0']).ended;
    expect(second.code).toBe(0);
    expect(project.npmRuns()).toEqual({ begun: 1, ended: 1 });
  });
});

describe('running', () => {
  beforeEach(async () => {
    await project.start(['build', 'exit', '0']).ended;
  });

  test('the packaged Node runs the command by its full path, and comes first on its PATH', async () => {
    const { said } = await project.start(['build', 'exit', '0', '--flag', 'two words']).ended;
    const told = JSON.parse(said) as { argv0: string; path: string; rest: string[] };
    expect(told.argv0).toBe(join(project.folder, 'node_modules', nodeName(), 'bin/node'));
    expect(told.path.split(':')[0]).toBe(join(project.folder, 'node_modules/.bin'));
    expect(told.rest).toEqual(['0', '--flag', 'two words']);
  });

  test('exit codes come through', async () => {
    expect((await project.start(['build', 'exit', '0']).ended).code).toBe(0);
    expect((await project.start(['build', 'exit', '42']).ended).code).toBe(42);
  });

  test('a command that died of a signal looks so from outside', async () => {
    expect((await project.start(['build', 'die']).ended).signal).toBe('SIGTERM');
  });

  test('a signal reaches the command, which may end in its own way', async () => {
    const run = project.start(['build', 'wait']);
    await new Promise((resolve) => run.child.stdout?.once('data', resolve));
    await pause(100);
    run.child.kill('SIGTERM');
    const { code, said } = await run.ended;
    expect(said).toContain('asked to stop');
    expect(code).toBe(5);
  });

  test('an unknown command names the nearest and lists all', async () => {
    const { code, said } = await project.start(['biuld']).ended;
    expect(code).toBe(2);
    expect(said).toContain('Did you mean `npm run build`?');
    expect(said).toContain('npm run dryfit');
    expect((await project.start(['zzzzzzzzzz']).ended).said).not.toContain('Did you mean');
    expect((await project.start(['constructor']).ended).code).toBe(2);
  });
});

describe('the Node that runs commands', () => {
  // nodejs.org, documentation of "Modules: TypeScript", history: on by default since v23.6.0 and v22.18.0.
  test.each([
    ['20.19.0', false],
    ['22.17.1', false],
    ['22.18.0', true],
    ['23.5.0', false],
    ['23.6.0', true],
    ['24.0.0', true],
  ])('%s reads TypeScript: %s', (version, reads) => {
    expect(readsTypeScript(version)).toBe(reads);
  });

  test('where none is packaged, the host must bring one, and is told which', () => {
    const host = { root: project.folder, platform: 'darwin', arch: 'arm64', execPath: '/usr/local/bin/node' };
    expect(findRuntime({ ...host, version: '22.18.0' })).toEqual({ node: host.execPath, packaged: false });
    const { needed } = findRuntime({ ...host, version: '20.19.0' }) as { needed: string };
    expect(needed).toContain('darwin arm64');
    expect(needed).toContain('22.18');
    expect(needed).toContain('20.19.0');
  });
});

function nodeName(): string {
  return `node-${process.platform === 'win32' ? 'win' : process.platform}-${process.arch}`;
}
