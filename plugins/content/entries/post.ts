import type { MapNode, Problem } from '../../engine/index.ts';
import { readDocument } from '../document.ts';
import { idOfPath } from '../ids.ts';
import { postSchema } from '../schemas/post.ts';
import type { SourceFile } from '../source-file.ts';
import { cardsOf } from './cards.ts';
import { finish, readMap } from './read-map.ts';
import type { Post, ReadEntry } from './types.ts';
import { unitsOf } from './units-of.ts';

export function readPost(file: SourceFile): ReadEntry<Post> {
  const { tree, problems } = readDocument(file);
  const { map, value, problems: shape } = readMap(postSchema, tree, file.path);
  const { cards, problems: ofCards } = map === undefined ? noCards : cardsOf(map, unitsOf(map));
  const entry: Post | undefined = value && {
    slug: idOfPath(file.path),
    file: file.path,
    title: value.title,
    summary: value.summary,
    date: value.date,
    updated: value.updated,
    units: value.units,
    techniques: value.techniques,
    supplies: value.supplies.map((use) => ({ use: use.use, for: use.for, amount: use.amount })),
    tools: value.tools,
    cards,
    invented: value.invented,
  };
  return finish(entry, tree, [...problems, ...shape, ...ofCards]);
}

const noCards = { cards: [], problems: [] as readonly Problem[] };

/** Whether the frontmatter is that of a fold and not of a post: folds have `pieces`, or are made of others. */
export function looksLikeFold(map: MapNode): boolean {
  return map.entries.some(({ key }) => key.text === 'pieces' || key.text === 'use');
}
