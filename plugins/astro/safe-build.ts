import { existsSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { takeLock } from './process-lock.mjs';
import { isWholeSite, MANIFEST_NAME, writeManifest } from './site-manifest.ts';

/*
 * A build that can be killed at any moment.
 *
 * Three folders lie side by side: DIST (what visitors see), STAGING (being built), PREVIOUS (what was in DIST). Each is
 * absent, part or whole; whole means that its manifest, written last, names the files that are there. A build goes
 * through these states, and may end after any of them:
 *
 *                     DIST      STAGING   PREVIOUS
 *   1 at rest         old       -         -           (or no DIST at all, before the first build)
 *   2 building        old       part      -
 *   3 built           old       whole     -
 *   4 between         -         whole     old
 *   5 swapped         new       -         old
 *   6 clearing        new       -         part
 *   1 at rest         new       -         -
 *
 * What repair does, which runs before anything reads or writes DIST:
 *
 *   DIST whole                      it stays; the other two go                       (2, 3, 5, 6)
 *   PREVIOUS whole                  it becomes DIST again; STAGING goes               (4)
 *   STAGING whole                   it becomes DIST: the only whole site there is     (3 or 4 with no whole old site)
 *   none whole                      DIST stays as it is, if only a stranger's folder; the parts go
 *
 * A folder goes only while a whole one stands in DIST, or when it is no whole site itself, so the only good copy is never
 * deleted; and each step leaves one of the states above, so a killed repair is repaired by the next.
 */

/** The moments after which a build may be cut short, in order; for tests. */
export type Moment = 'building' | 'built' | 'between' | 'swapped' | 'cleared';

export interface SafeBuild {
  /** The folder that visitors see. STAGING and PREVIOUS lie beside it. */
  readonly dist: string;
  /** Writes the whole site into an empty folder, or throws. */
  readonly build: (folder: string) => Promise<void>;
  /** Told which process is building or repairing, when we have to wait for it. */
  readonly whenBusy?: ((pid: number) => void) | undefined;
  readonly reached?: ((moment: Moment) => void) | undefined;
}

/**
 * Builds a site aside and swaps it in. When `build` throws, DIST is as it was and the error is thrown on.
 * Two builds of one DIST follow each other.
 */
export async function safeBuild({ dist, build, whenBusy, reached = () => {} }: SafeBuild): Promise<void> {
  const { staging, previous } = foldersBeside(dist);
  const lock = await lockOf(dist, whenBusy);
  try {
    putInOrder(dist);
    mkdirSync(staging, { recursive: true });
    reached('building');
    try {
      await build(staging);
      writeManifest(staging);
    } catch (error) {
      remove(staging);
      throw error;
    }
    reached('built');
    if (existsSync(dist)) renameSync(dist, previous);
    reached('between');
    renameSync(staging, dist);
    reached('swapped');
    remove(previous);
    reached('cleared');
  } finally {
    lock.release();
  }
}

/** What stands in DIST after a repair: a whole site, a folder that no build of ours has made, or nothing. */
export type Standing = 'whole' | 'unknown' | 'none';

/** Brings DIST into order after builds that were cut short. Waits for a build that is running. */
export async function repair(dist: string, whenBusy?: (pid: number) => void): Promise<Standing> {
  const lock = await lockOf(dist, whenBusy);
  try {
    return putInOrder(dist);
  } finally {
    lock.release();
  }
}

function putInOrder(dist: string): Standing {
  const { staging, previous } = foldersBeside(dist);
  if (!isWholeSite(dist)) {
    const rescue = [previous, staging].find(isWholeSite);
    if (rescue) {
      remove(dist);
      renameSync(rescue, dist);
    }
  }
  remove(staging);
  remove(previous);
  if (!existsSync(dist)) return 'none';
  return isWholeSite(dist) ? 'whole' : 'unknown';
}

function lockOf(dist: string, whenBusy?: (pid: number) => void) {
  return takeLock(join(dirname(dist), `.${basename(dist)}-lock`), whenBusy);
}

/** STAGING and PREVIOUS: on the same disk as DIST, so that a rename is one step. */
export function foldersBeside(dist: string): { staging: string; previous: string } {
  const [folder, name] = [dirname(dist), basename(dist)];
  return { staging: join(folder, `.staging-${name}`), previous: join(folder, `.${name}-previous`) };
}

/** The manifest goes first: what is being deleted must not pass for a whole site. */
function remove(folder: string): void {
  rmSync(join(folder, MANIFEST_NAME), { force: true });
  rmSync(folder, { recursive: true, force: true });
}
