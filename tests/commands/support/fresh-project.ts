import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PROJECT } from '../../../plugins/commands/support/project.ts';

const PLATFORM = process.platform === 'win32' ? 'win' : process.platform;
const NODE = `node-${PLATFORM}-${process.arch}`;

export interface Run {
  readonly child: ChildProcess;
  readonly ended: Promise<{ code: number | null; signal: string | null; said: string }>;
}

/**
 * A project with the real start script, two small packages, nothing installed, a stand-in for npm, and for a command
 * `build` that prints where it runs and does as its first argument says.
 */
export class FreshProject {
  readonly folder = mkdtempSync(join(tmpdir(), 'fresh-project-'));
  readonly log = join(this.folder, 'npm.log');

  constructor() {
    const commands = join(this.folder, 'plugins', 'commands');
    cpSync(join(PROJECT, 'plugins/commands/run.mjs'), join(commands, 'run.mjs'));
    cpSync(join(PROJECT, 'plugins/commands/start'), join(commands, 'start'), { recursive: true });
    mkdirSync(join(this.folder, 'plugins/astro'), { recursive: true });
    cpSync(join(PROJECT, 'plugins/astro/process-lock.mjs'), join(this.folder, 'plugins/astro/process-lock.mjs'));
    cpSync(join(import.meta.dirname, 'fake-npm.mjs'), join(this.folder, 'npm-cli.js'));
    writeFileSync(
      join(commands, 'build.ts'),
      `const [does, ...rest]: string[] = process.argv.slice(2);
       console.log(JSON.stringify({ argv0: process.argv0, path: process.env.PATH, rest }));
       if (does === 'exit') process.exit(Number(rest[0]));
       if (does === 'die') process.kill(process.pid, 'SIGTERM');
       if (does === 'wait') { process.on('SIGTERM', () => { console.log('asked to stop'); process.exit(5); }); setInterval(() => {}, 1000); }`,
    );
    this.writePackages({ paper: '1.0.0', [NODE]: '24.0.0' });
  }

  /** Writes package.json and its lockfile; a package named `elsewhere` is one for another system. */
  writePackages(versions: Record<string, string>): void {
    const entries = Object.entries(versions).map(([name, version]) => [
      `node_modules/${name}`,
      {
        version,
        integrity: `sha512-${name}-${version}`,
        ...(name === 'elsewhere' ? { optional: true, notHere: true } : {}),
      },
    ]);
    this.write('package.json', { type: 'module', dependencies: versions });
    this.write('package-lock.json', { packages: { '': { dependencies: versions }, ...Object.fromEntries(entries) } });
  }

  write(file: string, value: unknown): void {
    writeFileSync(join(this.folder, file), JSON.stringify(value));
  }

  start(args: readonly string[], env: NodeJS.ProcessEnv = {}): Run {
    const child = spawn(process.execPath, [join(this.folder, 'plugins/commands/run.mjs'), ...args], {
      cwd: tmpdir(),
      env: { ...process.env, npm_execpath: join(this.folder, 'npm-cli.js'), FAKE_NPM_LOG: this.log, ...env },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let said = '';
    child.stdout?.on('data', (part: Buffer) => (said += part));
    child.stderr?.on('data', (part: Buffer) => (said += part));
    const ended = once(child, 'close').then(([code, signal]) => ({ code, signal, said }));
    return { child, ended };
  }

  /** How often npm was started, and how often it came to its end. */
  npmRuns(): { begun: number; ended: number } {
    const lines = existsSync(this.log) ? readFileSync(this.log, 'utf8').split('\n') : [];
    return {
      begun: lines.filter((line) => line.startsWith('begin')).length,
      ended: lines.filter((line) => line === 'end').length,
    };
  }
}
