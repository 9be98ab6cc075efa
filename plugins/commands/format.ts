/** `npm run format`: puts every file into the agreed format and makes the corrections that are safe. */
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { PROJECT } from './support/project.ts';

const biome = join(PROJECT, 'node_modules', '@biomejs', 'biome', 'bin', 'biome');
const { status } = spawnSync(process.execPath, [biome, 'check', '--write', '.'], { cwd: PROJECT, stdio: 'inherit' });
process.exitCode = status ?? 1;
