/** `npm run dev [-- --port N]`: the site while you write. */
import { parseArgs } from 'node:util';
import { dev } from 'astro';
import { repair } from '../astro/safe-build.ts';
import { DIST, PROJECT, sayBusy } from './support/project.ts';

const { values } = parseArgs({ options: { port: { type: 'string', default: '4321' } } });

await repair(DIST, sayBusy);
await dev({ root: PROJECT, server: { port: Number(values.port) } });
