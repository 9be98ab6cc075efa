import { type ChildProcess, spawn } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { PROJECT } from '../../plugins/commands/support/project.ts';

/** What a build needs besides content. */
const PARTS = ['plugins', 'site', 'public', 'astro.config.mjs', 'package.json', 'package-lock.json', 'tsconfig.json'];

/** All seconds since 1970 in builds for tests: 1 October 2026. */
export const TEST_EPOCH = '1790812800';

/**
 * The project again in a temporary folder, sharing only the installed packages, so that tests can change its content,
 * delete its caches and kill its builds.
 */
export class ProjectCopy {
  readonly folder: string;
  readonly dist: string;

  /** @param content parts of `content/` to bring along, as `folds` or `posts/lantern` */
  constructor(content: readonly string[]) {
    this.folder = mkdtempSync(join(tmpdir(), 'project-'));
    this.dist = join(this.folder, 'dist');
    for (const part of [...PARTS, ...content.map((name) => `content/${name}`)]) {
      if (existsSync(join(PROJECT, part))) cpSync(join(PROJECT, part), join(this.folder, part), { recursive: true });
    }
    symlinkSync(join(PROJECT, 'node_modules'), join(this.folder, 'node_modules'), 'dir');
  }

  write(file: string, text: string): void {
    mkdirSync(dirname(join(this.folder, file)), { recursive: true });
    writeFileSync(join(this.folder, file), text);
  }

  /** Starts a Node script of the project, in a process group of its own, so that all it starts can be killed with it. */
  start(script: string, args: readonly string[] = [], env: NodeJS.ProcessEnv = {}): ChildProcess {
    return spawn(process.execPath, [script, ...args], {
      cwd: this.folder,
      detached: true,
      stdio: ['ignore', 'pipe', 'pipe'],
      env: { ...environmentOfABuild(), SOURCE_DATE_EPOCH: TEST_EPOCH, ...env },
    });
  }

  /** Runs a script to its end. Throws with all it printed when it fails. */
  async run(script: string, args: readonly string[] = []): Promise<void> {
    const { code, said } = await endOf(this.start(script, args));
    if (code !== 0) throw new Error(`${script} ended with ${code}:\n${said}`);
  }

  build(): Promise<void> {
    return this.run(join(this.folder, 'plugins/commands/build.ts'), ['--quiet']);
  }

  forgetCaches(): void {
    for (const name of ['.cache', '.astro']) rmSync(join(this.folder, name), { recursive: true, force: true });
  }

  discard(): void {
    rmSync(this.folder, { recursive: true, force: true });
  }
}

/** Waits for a process to end, and for all it printed. */
export function endOf(child: ChildProcess): Promise<{ code: number | null; signal: string | null; said: string }> {
  let said = '';
  child.stdout?.on('data', (part: Buffer) => {
    said += part;
  });
  child.stderr?.on('data', (part: Buffer) => {
    said += part;
  });
  return new Promise((resolve, reject) => {
    child.on('error', reject);
    child.on('close', (code, signal) => resolve({ code, signal, said }));
  });
}

/** As from a terminal: the test runner's own settings would make it a build for tests. */
export function environmentOfABuild(): NodeJS.ProcessEnv {
  const foreign = /^(NODE_COMPILE_CACHE$|VITE|NODE_ENV$|MODE$|TEST$|DEV$|PROD$|SSR$|BASE_URL$)/;
  return Object.fromEntries(Object.entries(process.env).filter(([name]) => !foreign.test(name)));
}
