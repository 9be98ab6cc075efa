/*
 * Stands in for npm: does what `npm ci` does to node_modules, as far as the start script can tell. Settings come in the
 * environment: FAKE_NPM_LOG (a line a run), FAKE_NPM_TAKES (milliseconds), FAKE_NPM_ENDS (`well`, `badly`, `half`).
 */
import { appendFileSync, cpSync, mkdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { setTimeout as delay } from 'node:timers/promises';

const { FAKE_NPM_LOG = '', FAKE_NPM_TAKES = '0', FAKE_NPM_ENDS = 'well' } = process.env;
appendFileSync(FAKE_NPM_LOG, `begin ${process.argv.slice(2).join(' ')}\n`);
rmSync('node_modules', { recursive: true, force: true });
const { packages } = JSON.parse(readFileSync('package-lock.json', 'utf8'));
const installed = Object.entries(packages).filter(([path, entry]) => path !== '' && !entry.notHere);
for (const [path] of installed) {
  mkdirSync(`${path}/bin`, { recursive: true });
  if (/node-(linux|win|darwin)-/.test(path)) symlinkSync(process.execPath, `${path}/bin/node`);
  await delay(Number(FAKE_NPM_TAKES) / installed.length);
  writeFileSync(`${path}/package.json`, '{}');
}
if (FAKE_NPM_ENDS === 'half') process.kill(process.pid, 'SIGKILL');
if (FAKE_NPM_ENDS === 'badly') process.exit(7);
cpSync('package-lock.json', 'node_modules/.package-lock.json');
writeFileSync('node_modules/.package-lock.json', JSON.stringify({ packages: Object.fromEntries(installed) }));
appendFileSync(FAKE_NPM_LOG, 'end\n');
