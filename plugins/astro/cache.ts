import { createHash, randomUUID } from 'node:crypto';
import { access, mkdir, readdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import path from 'node:path';

/** A key that stands for these texts and no others. */
export function digestOf(...parts: readonly (string | Uint8Array)[]): string {
  const hash = createHash('sha256');
  for (const part of parts) {
    hash.update(`${part.length} `);
    hash.update(part);
  }
  return hash.digest('hex').slice(0, 40);
}

/**
 * Results kept on disk under keys that tell everything they were made from, so that an entry can be missing but never
 * stale. Entries are written aside and moved into place, so that a killed process leaves none half written.
 */
export class Cache {
  /** Where the entries lie. Need not exist yet. */
  readonly folder: string;
  readonly #used = new Set<string>();

  constructor(folder: string) {
    this.folder = folder;
  }

  async get(key: string): Promise<Uint8Array | undefined> {
    this.#used.add(key);
    try {
      return await readFile(path.join(this.folder, key));
    } catch {
      return undefined;
    }
  }

  async has(key: string): Promise<boolean> {
    return access(path.join(this.folder, key)).then(
      () => true,
      () => false,
    );
  }

  async put(key: string, value: string | Uint8Array): Promise<void> {
    this.#used.add(key);
    await mkdir(this.folder, { recursive: true });
    const aside = path.join(this.folder, `.${key}.${randomUUID()}`);
    await writeFile(aside, value);
    await rename(aside, path.join(this.folder, key));
  }

  /** As `get`, for what was put as JSON. An entry that cannot be read counts as missing. */
  async getJson<T>(key: string): Promise<T | undefined> {
    const bytes = await this.get(key);
    if (bytes === undefined) return undefined;
    try {
      return JSON.parse(Buffer.from(bytes).toString('utf8')) as T;
    } catch {
      return undefined;
    }
  }

  /** Takes out every entry that was neither asked for nor put since this cache was opened. */
  async prune(): Promise<void> {
    const names = await readdir(this.folder).catch(() => []);
    const unused = names.filter((name) => !this.#used.has(name));
    await Promise.all(unused.map((name) => rm(path.join(this.folder, name), { force: true })));
  }
}
