import { join } from 'node:path';
import { takeLock } from '../../astro/process-lock.mjs';
import { type Moment, safeBuild } from '../../astro/safe-build.ts';
import { astroSettings } from './astro-settings.ts';
import { PROJECT, sayBusy } from './project.ts';

export interface SiteBuild {
  /** The finished site, full path. Until all is well it stays as it was. */
  readonly dist: string;
  /** Only warnings and errors. */
  readonly quiet?: boolean;
  readonly reached?: (moment: Moment) => void;
}

/**
 * Builds the project's site with Astro, aside, and swaps it in. Throws what Astro throws.
 * Builds into different folders follow each other too, since they share Astro's caches.
 */
export async function buildSite({ dist, quiet = false, reached }: SiteBuild): Promise<void> {
  const lock = await takeLock(join(PROJECT, '.cache', 'building'), sayBusy);
  try {
    await safeBuild({
      dist,
      reached,
      whenBusy: sayBusy,
      build: async (folder) => {
        const { build } = await import('astro');
        await build({ ...astroSettings(), outDir: folder, logLevel: quiet ? 'warn' : 'info' });
      },
    });
  } finally {
    lock.release();
  }
}
