import { once } from 'node:events';
import { Worker } from 'node:worker_threads';
import type { DeskSetup, ProjectDesk } from './project-files.ts';

/**
 * Makes every project's files that are not kept yet, in a thread of its own while Astro renders the pages. They go into the cache
 * and nowhere else: one that could not be made here is missing there, and is made, or fails, where it is asked for.
 *
 * @returns waits until the thread has ended; to be called before the files are asked for
 */
export function makeFilesAhead(desk: ProjectDesk, setup: DeskSetup): () => Promise<void> {
  const started = start(desk, setup);
  return async () => {
    const thread = await started;
    thread?.worker.ref();
    await thread?.ended;
  };
}

async function start(desk: ProjectDesk, setup: DeskSetup) {
  if (!(await desk.lacksFiles())) return undefined;
  const worker = new Worker(new URL('files-worker.ts', import.meta.url), { workerData: setup });
  // A build that fails meanwhile must not wait for files.
  worker.unref();
  return { worker, ended: once(worker, 'exit').catch(() => undefined) };
}
