import { readdirSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { digestOf } from './cache.ts';

/** The folder that holds this project's code: every plugin, whatever it is called. */
const PLUGINS = fileURLToPath(new URL('..', import.meta.url));

/** What else decides about the bytes of a page or file, below the root of the project. */
const ALSO = ['astro.config.mjs', 'package-lock.json', 'site/content.config.ts'];

/**
 * A digest of all code that texts and files are made with. It is part of every cache key, so that a change of any plugin,
 * helper or library makes everything anew.
 *
 * @param root of the project
 * @param planted plugins given as options, whose source is not below `plugins/`
 */
export function codeDigest(root: string, planted: readonly unknown[]): string {
  const parts = [process.version];
  for (const file of [...filesBelow(PLUGINS), ...ALSO.map((name) => path.join(root, name))]) {
    if (statSync(file, { throwIfNoEntry: false }) === undefined) continue;
    parts.push(path.relative(root, file), readFileSync(file, 'utf8'));
  }
  return digestOf(...parts, ...planted.flat().map(sourceOf));
}

function filesBelow(folder: string): string[] {
  const entries = readdirSync(folder, { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) => path.join(entry.parentPath, entry.name))
    .sort();
}

function sourceOf(option: unknown): string {
  if (typeof option === 'function') return option.toString();
  return JSON.stringify(option) ?? '';
}
