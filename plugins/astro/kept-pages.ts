import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';

/** What Astro notes down of the pages it keeps, in its cache folder. */
const NOTES = 'incremental-build.json';

/**
 * Astro keeps finished pages, and takes them again while their key is the one it noted. It writes pages as it goes but its notes at the
 * end, so a build that is killed or fails between leaves pages that are newer than their notes, and a maker who takes her
 * change back would get it served. A mark stands while pages are being made; where one is found, the notes are thrown away.
 */
export class KeptPages {
  readonly #notes: string;
  readonly #mark: string;
  #making = false;

  /** @param cacheDir Astro's cache folder. */
  constructor(cacheDir: string) {
    this.#notes = path.join(cacheDir, NOTES);
    this.#mark = path.join(cacheDir, 'making-pages');
  }

  /** Before anything is built: forgets the pages of a build that did not come to its end. Then marks this one. */
  begin(): void {
    if (this.#making) return;
    this.#making = true;
    mkdirSync(path.dirname(this.#mark), { recursive: true });
    try {
      writeFileSync(this.#mark, '', { flag: 'wx' });
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
      rmSync(this.#notes, { force: true });
    }
  }

  /** Pages and notes are both on disk. */
  end(): void {
    this.#making = false;
    rmSync(this.#mark, { force: true });
  }
}
