import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { writeManifest } from '../../../plugins/astro/site-manifest.ts';

/** Four files that name their version, so that a mixed site shows. */
export function tinySite(version: string): Record<string, string> {
  return Object.fromEntries(['a.html', 'b.html', 'c.html', 'd.html'].map((name) => [name, `${name} of ${version}`]));
}

export type Folder = 'absent' | 'part' | 'whole';

/** Puts a site there in one of the three states: a part lacks its last file or its manifest. */
export function plantSite(
  folder: string,
  state: Folder,
  version: string,
  lacks: 'file' | 'manifest' = 'manifest',
): void {
  if (state === 'absent') return;
  mkdirSync(folder, { recursive: true });
  for (const [name, text] of Object.entries(tinySite(version))) writeFileSync(join(folder, name), text);
  if (state === 'whole') writeManifest(folder);
  else if (lacks === 'file') {
    writeManifest(folder);
    writeFileSync(join(folder, 'd.html'), '');
  }
}

/** The version whose files, all four and no others, stand in a folder; `none` when it is empty or absent, else `mixed`. */
export function versionIn(folder: string): string {
  let names: string[];
  try {
    names = readdirSync(folder).filter((name) => !name.startsWith('.'));
  } catch {
    return 'none';
  }
  if (names.length === 0) return 'none';
  const versions = new Set(names.map((name) => readFileSync(join(folder, name), 'utf8').split(' of ')[1]));
  const [version] = versions;
  return names.length === 4 && versions.size === 1 && version !== undefined ? version : 'mixed';
}
