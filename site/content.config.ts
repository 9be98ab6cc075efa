import { defineCollection } from 'astro:content';
import { z } from 'astro/zod';
import { collectionLoader } from '../plugins/astro/loaders/index.ts';
import type { Blog, FoldKind, Post, Supply, Technique } from '../plugins/content/index.ts';

/*
 * The entries were read and checked by `plugins/content` before they come here, where each field is documented; the
 * schemas below only carry their types.
 */
export const collections = {
  blog: defineCollection({ loader: collectionLoader('blog'), schema: z.custom<Blog>() }),
  posts: defineCollection({ loader: collectionLoader('posts'), schema: z.custom<Post>() }),
  folds: defineCollection({ loader: collectionLoader('folds'), schema: z.custom<FoldKind>() }),
  supplies: defineCollection({ loader: collectionLoader('supplies'), schema: z.custom<Supply>() }),
  techniques: defineCollection({ loader: collectionLoader('techniques'), schema: z.custom<Technique>() }),
};
