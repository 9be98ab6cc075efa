// @ts-check
/*
 * Starts every command: `node plugins/commands/run.mjs COMMAND [ARGUMENTS]`.
 *
 * Plain JavaScript with no packages, because it runs on the host's Node before anything is installed. It installs what
 * is locked when something is missing, then runs the command with a Node that reads TypeScript. That Node is started by
 * its full path: a shell that has run `node` once remembers where, whatever the PATH says later.
 */
import { existsSync } from 'node:fs';
import { delimiter, dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { COMMANDS, explainCommands } from './start/commands.mjs';
import { ensureInstalled } from './start/install.mjs';
import { runChild } from './start/run-child.mjs';
import { findRuntime, OLDEST_HOST_MAJOR } from './start/runtime.mjs';

const here = dirname(fileURLToPath(import.meta.url));
const root = dirname(dirname(here));
const [name, ...args] = process.argv.slice(2);

/** @param {string} line */
const say = (line) => process.stderr.write(`${line}\n`);

process.exitCode = await start();

async function start() {
  if (name === undefined || !Object.hasOwn(COMMANDS, name)) {
    say(explainCommands(name));
    return 2;
  }
  const { node: version } = process.versions;
  if (Number.parseInt(version, 10) < OLDEST_HOST_MAJOR) {
    say(`Node ${OLDEST_HOST_MAJOR} or newer is needed to start. This one is ${version}: ${process.execPath}`);
    return 1;
  }
  if (!(await ensureInstalled(root, say))) return 1;
  const runtime = findRuntime({
    root,
    version,
    platform: process.platform,
    arch: process.arch,
    execPath: process.execPath,
  });
  if ('needed' in runtime) {
    say(runtime.needed);
    return 1;
  }
  const command = join(here, `${name}.ts`);
  if (!existsSync(command)) {
    say(`The command \`${name}\` is missing its file ${command}`);
    return 1;
  }
  return run(runtime.node, ['--disable-warning=ExperimentalWarning', command, ...args]);
}

/** @param {string} node @param {string[]} nodeArgs */
async function run(node, nodeArgs) {
  const pathName = Object.keys(process.env).find((key) => key.toUpperCase() === 'PATH') ?? 'PATH';
  const path = [join(root, 'node_modules', '.bin'), process.env[pathName]].filter(Boolean).join(delimiter);
  const env = {
    // Compiled code is kept, by the text it was made from: a quarter of a small build goes into compiling its tools.
    NODE_COMPILE_CACHE: join(root, '.cache', 'node'),
    ...process.env,
    [pathName]: path,
    // The site and its tools ask nothing of the network, and tell it nothing.
    ASTRO_TELEMETRY_DISABLED: '1',
  };
  try {
    const { code, signal } = await runChild(node, nodeArgs, { stdio: 'inherit', env });
    if (signal) process.kill(process.pid, signal);
    return code ?? 1;
  } catch (error) {
    say(`${node} does not start here: ${error instanceof Error ? error.message : error}`);
    say(
      'Packaged Node needs Linux with glibc, or Windows. Elsewhere install with `npm ci --omit=optional` and Node 22.18.',
    );
    return 1;
  }
}
