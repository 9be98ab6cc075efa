import { workerData } from 'node:worker_threads';
import { type DeskSetup, fileNamesOf, ProjectDesk } from './project-files.ts';

/** The other end of `makeFilesAhead`. */
const setup: DeskSetup = workerData;
const desk = new ProjectDesk(setup);
for (const post of setup.library.posts.values()) {
  for (const name of fileNamesOf(post)) await desk.make(post, name);
}
