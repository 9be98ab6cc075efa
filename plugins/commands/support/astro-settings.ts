import { join } from 'node:path';
import type { AstroInlineConfig } from 'astro';
import { PROJECT } from './project.ts';

/**
 * What every command tells Astro besides astro.config.mjs. The bundler's cache lies with the others, not in node_modules,
 * so that deleting `.cache` forgets everything that a build could remember. Nothing is reported to anyone.
 */
export function astroSettings(): AstroInlineConfig {
  process.env.ASTRO_TELEMETRY_DISABLED = '1';
  return { root: PROJECT, vite: { cacheDir: join(PROJECT, '.cache', 'vite') } };
}
