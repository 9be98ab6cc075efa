import type { Blog, Post } from '../../plugins/content/index.ts';
import { type System, systemOf } from '../../plugins/engine/index.ts';

/** The system a post was written in, else the blog's: that edition is shown first. */
export function homeOf(blog: Blog, post?: Post): System {
  return systemOf(post?.units ?? blog.units);
}
