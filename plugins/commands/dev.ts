/** `npm run dev [-- --port N]`: the site while you write. */
import { parseArgs } from 'node:util';
import { dev } from 'astro';
import { repair } from '../astro/safe-build.ts';
import { astroSettings } from './support/astro-settings.ts';
import { DIST, sayBusy } from './support/project.ts';

const { values } = parseArgs({ options: { port: { type: 'string', default: '4321' } } });

await repair(DIST, sayBusy);
await dev({ ...astroSettings(), server: { port: Number(values.port) } });
