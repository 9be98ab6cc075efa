import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, renameSync, statSync, writeFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';

/** Written last into a built site: with it, the site is whole. A hidden file, so that no page can have its name. */
export const MANIFEST_NAME = '.built-files.json';

/** Each file of a site by its path with `/`, in code-point order. */
export type SiteManifest = Readonly<Record<string, { readonly bytes: number; readonly sha256: string }>>;

/** Reads every file of a folder but the manifest itself. */
export function describeSite(folder: string): SiteManifest {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .map((file) => ({ file, path: relative(folder, file).split(sep).join('/') }))
    .filter(({ path }) => path !== MANIFEST_NAME)
    .sort((a, b) => (a.path < b.path ? -1 : 1));
  return Object.fromEntries(
    files.map(({ file, path }) => {
      const content = readFileSync(file);
      return [path, { bytes: content.length, sha256: createHash('sha256').update(content).digest('hex') }];
    }),
  );
}

/** Marks a folder as a whole site. The manifest appears in one step, so it is never half written. */
export function writeManifest(folder: string): void {
  const aside = join(folder, `${MANIFEST_NAME}.new`);
  writeFileSync(aside, `${JSON.stringify(describeSite(folder), undefined, 1)}\n`);
  renameSync(aside, join(folder, MANIFEST_NAME));
}

/**
 * Whether a folder holds every file that its manifest names, in the size it names.
 *
 * Sizes and not hashes, because this runs before every command; what it must tell apart is a whole folder from one
 * whose copying or deleting was cut short.
 */
export function isWholeSite(folder: string): boolean {
  try {
    const manifest = JSON.parse(readFileSync(join(folder, MANIFEST_NAME), 'utf8')) as SiteManifest;
    return Object.entries(manifest).every(([path, { bytes }]) => statSync(join(folder, path)).size === bytes);
  } catch {
    return false;
  }
}
