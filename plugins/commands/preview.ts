/** `npm run preview [-- --port N]`: serves the built site, so that links and downloads can be tried. */
import { parseArgs } from 'node:util';
import { preview } from 'astro';
import { repair } from '../astro/safe-build.ts';
import { astroSettings } from './support/astro-settings.ts';
import { DIST, sayBusy } from './support/project.ts';

const { values } = parseArgs({ options: { port: { type: 'string', default: '4321' } } });

const standing = await repair(DIST, sayBusy);
if (standing === 'none') {
  console.error('There is no built site yet. Run `npm run build` first.');
  process.exitCode = 1;
} else {
  if (standing === 'unknown') console.error('The folder dist is not a whole build. Run `npm run build` to replace it.');
  const server = await preview({ ...astroSettings(), server: { port: Number(values.port) } });
  await server.closed();
}
