import { workerData } from 'node:worker_threads';
import { type DeskSetup, ProjectDesk, TEMPLATES } from './project-files.ts';

/** The other end of `makeTemplatesAhead`. */
const setup: DeskSetup = workerData;
const desk = new ProjectDesk(setup);
for (const post of setup.library.posts.values()) {
  if (post.cards.length === 0) continue;
  for (const { name } of TEMPLATES) await desk.make(post, name);
}
