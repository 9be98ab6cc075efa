import { deserialize, serialize } from 'node:v8';
import {
  type Blog,
  type ContentFiles,
  type Library,
  type ReadLibrary,
  readContent,
  readLibrary,
  type SourceFile,
} from '../content/index.ts';
import {
  DEFAULT_MARKS,
  hasErrors,
  type Length,
  type Marks,
  type Problem,
  readLength,
  type System,
} from '../engine/index.ts';
import { type Body, type BodyPress, renderBody } from './bodies.ts';
import { type Cache, digestOf } from './cache.ts';
import { ContentError } from './errors.ts';
import { missingImages } from './images.ts';
import type { CollectionName, StoredEntry } from './loaders/collections.ts';
import { type DeskSetup, ProjectDesk } from './project-files.ts';

/** What a reading needs from Astro and from the project's own settings. */
export interface ReadingTools extends Pick<BodyPress, 'root' | 'renderer' | 'code'> {
  readonly cache: Cache;
}

/** Everything below `content/`, read, checked and rendered in one go. */
export interface Reading {
  readonly library: Library;
  readonly entries: Readonly<Record<CollectionName, readonly StoredEntry[]>>;
  /** Where the files beside each project are made. */
  readonly desk: ProjectDesk;
  readonly setup: DeskSetup;
  readonly warnings: readonly Problem[];
}

/** Throws one `ContentError` with every problem of every file when any of them is an error. */
export async function readEverything(tools: ReadingTools): Promise<Reading> {
  const files = readContent(tools.root);
  const all = allOf(files);
  const { library, problems } = await readOnce(files, all, tools);
  const found = [...problems];
  const press: BodyPress = {
    ...tools,
    marks: marksOf(library?.blog),
    decimalComma: writesComma(library?.blog.language ?? 'en'),
  };
  const posts = new Map([...(library?.posts.values() ?? [])].map((post) => [post.file, post]));
  const bodies = new Map<string, Body>();
  for (const [file, isPost] of textsOf(files)) {
    const body = await renderBody(file, isPost, posts.get(file.path), press);
    bodies.set(file.path, body);
    found.push(...body.problems, ...missingImages(file, body.rendered?.metadata.imagePaths ?? [], tools.root));
  }
  if (library === undefined || hasErrors(found)) throw new ContentError(found);
  const setup: DeskSetup = { library, files: all, cache: tools.cache.folder, code: tools.code };
  const desk = new ProjectDesk(setup, tools.cache);
  return { library, entries: entriesOf(all, library, bodies, tools.code), desk, setup, warnings: found };
}

/** The library is the work of most of a reading, so a sound one is kept for as long as no file and no code changes. */
async function readOnce(
  files: ContentFiles,
  all: readonly SourceFile[],
  { cache, code }: ReadingTools,
): Promise<ReadLibrary> {
  const key = digestOf('library', code, ...all.flatMap(({ path, text }) => [path, text]));
  const kept = await cache.get(key);
  if (kept !== undefined) return deserialize(kept) as ReadLibrary;
  const read = readLibrary(files);
  if (!hasErrors(read.problems)) await cache.put(key, serialize(read));
  return read;
}

function* textsOf({ posts, folds, techniques }: ContentFiles): Iterable<readonly [SourceFile, boolean]> {
  for (const file of posts) yield [file, true];
  for (const file of [...folds, ...techniques]) yield [file, false];
}

function allOf({ blog, posts, folds, supplies, techniques }: ContentFiles): readonly SourceFile[] {
  return [...(blog === undefined ? [] : [blog]), ...posts, ...folds, ...supplies, ...techniques];
}

function entriesOf(
  files: readonly SourceFile[],
  library: Library,
  bodies: ReadonlyMap<string, Body>,
  code: string,
): Reading['entries'] {
  const texts = new Map(files.map((file) => [file.path, file.text]));
  const store = <T extends { readonly file: string }>(entries: Iterable<readonly [string, T]>): StoredEntry[] =>
    [...entries].map(([id, entry]) => {
      const rendered = bodies.get(entry.file)?.rendered;
      const made = rendered === undefined ? '' : JSON.stringify(rendered);
      const common = {
        id,
        data: entry as unknown as StoredEntry['data'],
        filePath: entry.file,
        digest: digestOf('entry', code, texts.get(entry.file) ?? '', made),
      };
      return rendered === undefined ? common : { ...common, rendered, assetImports: rendered.metadata.imagePaths };
    });
  return {
    blog: store([['blog', library.blog]]),
    posts: store(library.posts),
    folds: store(library.folds),
    supplies: store(library.supplies),
    techniques: store(library.techniques),
  };
}

/** The rulers of the blog; the usual ones while `blog.yaml` cannot be read. */
function marksOf(blog: Blog | undefined): Marks {
  const markOf = (system: System): Length => {
    const written = blog && readLength(blog.marks[system], { units: blog.units });
    return written?.value?.length ?? DEFAULT_MARKS[system];
  };
  return { inch: markOf('inch'), metric: markOf('metric') };
}

/** Whether a language writes decimals with a comma. */
function writesComma(language: string): boolean {
  const parts = new Intl.NumberFormat(language).formatToParts(1.5);
  return parts.some(({ type, value }) => type === 'decimal' && value === ',');
}
