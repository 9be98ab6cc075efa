import { mkdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { projectSummaryJsonSchema } from '../content/index.ts';
import { fileNamesOf } from './project-files.ts';
import type { Reading } from './reading.ts';

/** Describes every field of `project.json`; stands at the root of the site. */
export const SCHEMA_FILE = 'project.schema.json';

/** Address of a project's folder, below the base of the site. */
const PROJECTS = 'projects';

/** Writes the files beside every project, and the schema of their summaries, into a built site. */
export async function writeDownloads(reading: Reading, site: string): Promise<number> {
  let count = 0;
  for (const post of reading.library.posts.values()) {
    const folder = path.join(site, PROJECTS, post.slug);
    await mkdir(folder, { recursive: true });
    const names = fileNamesOf(post);
    await Promise.all(
      names.map(async (name) => writeFile(path.join(folder, name), await reading.desk.make(post, name))),
    );
    count += names.length;
  }
  await writeFile(path.join(site, SCHEMA_FILE), schemaText());
  return count + 1;
}

/** The file at an address below the base of the site, the same bytes as in a build; undefined when it is none of ours. */
export async function downloadAt(reading: Reading, address: string): Promise<Uint8Array | string | undefined> {
  const parts = address.split('/').filter((part) => part !== '');
  if (parts.length === 1 && parts[0] === SCHEMA_FILE) return schemaText();
  const [folder, slug, name] = parts;
  const post = slug === undefined ? undefined : reading.library.posts.get(slug);
  if (parts.length !== 3 || folder !== PROJECTS || post === undefined || name === undefined) return undefined;
  return fileNamesOf(post).includes(name) ? reading.desk.make(post, name) : undefined;
}

export function contentTypeOf(name: string): string {
  return name.endsWith('.pdf') ? 'application/pdf' : 'application/json; charset=utf-8';
}

function schemaText(): string {
  return `${JSON.stringify(projectSummaryJsonSchema(), null, 2)}\n`;
}
