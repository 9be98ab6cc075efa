import { getCollection, getEntry, render } from 'astro:content';
import { createHash } from 'node:crypto';
import {
  type Blog,
  computeProject,
  type FoldKind,
  type Library,
  type Project,
  type Supply,
  type Technique,
} from '../../plugins/content/index.ts';

export { type BodyPart, type PlaceName, splitPlaces } from './places.ts';

/** Collections whose entries have a text in Markdown. */
export type TextCollection = 'posts' | 'folds' | 'techniques';

/** A text ready to stand in a page: `<Content />`, and its headings for a table of contents. */
export type Body = Awaited<ReturnType<typeof render>>;

interface Shelf {
  readonly library: Library;
  readonly projects: ReadonlyMap<string, Project>;
  readonly keys: ReadonlyMap<string, string>;
}

/** Every post as a project, newest first; posts of one day by slug. A post without a card is a project with no cards. */
export async function getProjects(): Promise<readonly Project[]> {
  return [...(await shelf()).projects.values()];
}

export async function getProject(slug: string): Promise<Project | undefined> {
  return (await shelf()).projects.get(slug);
}

/**
 * Stands for all content that the page of a project is made from: its own post, and everything that is not a post. While neither
 * that nor the code of the page changes, a build may take the page of the build before.
 */
export async function pageKeyOf(slug: string): Promise<string> {
  return (await shelf()).keys.get(slug) ?? '';
}

/** Every fold kind, by name. */
export async function getKinds(): Promise<readonly FoldKind[]> {
  return byName((await shelf()).library.folds.values());
}

/** Every supply, by name. */
export async function getSupplies(): Promise<readonly Supply[]> {
  return byName((await shelf()).library.supplies.values());
}

/** Every technique, by name. */
export async function getTechniques(): Promise<readonly Technique[]> {
  return byName((await shelf()).library.techniques.values());
}

export async function getBlog(): Promise<Blog> {
  return (await shelf()).library.blog;
}

/** Everything there is, for looking things up by id. */
export async function getLibrary(): Promise<Library> {
  return (await shelf()).library;
}

/** The text of a post, fold kind or technique; undefined when there is no such entry. */
export async function getBody(collection: TextCollection, id: string): Promise<Body | undefined> {
  const entry = await getEntry(collection, id);
  return entry === undefined ? undefined : render(entry);
}

async function readShelf(): Promise<Shelf> {
  const [blog] = await getCollection('blog');
  if (blog === undefined) throw new Error('The collections are empty: the content could not be read.');
  const [posts, folds, supplies, techniques] = [
    await getCollection('posts'),
    await getCollection('folds'),
    await getCollection('supplies'),
    await getCollection('techniques'),
  ];
  const library: Library = {
    blog: blog.data,
    posts: mapOf(posts),
    folds: mapOf(folds),
    supplies: mapOf(supplies),
    techniques: mapOf(techniques),
  };
  const shared = digestsOf([blog, ...folds, ...supplies, ...techniques]);
  const newestFirst = [...library.posts].sort(
    ([slugA, a], [slugB, b]) => compare(b.date, a.date) || compare(slugA, slugB),
  );
  const projects = newestFirst.map(([slug, post]) => [slug, computeProject(library, post).project] as const);
  const keys = posts.map((post) => [post.id, hashOf(`${shared} ${digestsOf([post])}`)] as const);
  return { library, projects: new Map(projects), keys: new Map(keys) };
}

/** The digest of an entry is the loader's: its text, what was made from it, and the code that made it. */
function digestsOf(
  entries: readonly { readonly id: string; readonly collection: string; readonly digest?: string | number }[],
): string {
  const said = entries.map(({ collection, id, digest }) => {
    if (digest === undefined) throw new Error(`The entry ${collection}/${id} was stored without its digest.`);
    return `${collection}/${id} ${digest}`;
  });
  return hashOf(said.sort().join('\n'));
}

function hashOf(text: string): string {
  return createHash('sha256').update(text).digest('hex');
}

/*
 * While a site is built the collections cannot change, so they are read once. In development they can change between two
 * requests, so nothing is kept.
 */
const shelf = import.meta.env.DEV ? readShelf : once(readShelf);

function once<T>(make: () => Promise<T>): () => Promise<T> {
  let made: Promise<T> | undefined;
  return () => {
    made ??= make();
    return made;
  };
}

function mapOf<T>(entries: readonly { readonly id: string; readonly data: T }[]): Map<string, T> {
  return new Map(entries.map((entry) => [entry.id, entry.data] as const).sort(([a], [b]) => compare(a, b)));
}

function byName<T extends { readonly name: string }>(entries: Iterable<T>): readonly T[] {
  return [...entries].sort((a, b) => compare(a.name, b.name));
}

function compare(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}
