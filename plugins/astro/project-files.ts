import { computeProject, type Library, type Post, type Project, type SourceFile, summarise } from '../content/index.ts';
import { Cache, digestOf } from './cache.ts';
import { templatePdf } from './template-pdf.ts';

/**
 * The files beside a project's page. One template holds all cards of the post in their order: the inch edition on
 * US Letter, the metric edition on ISO A4. A post without a card has only its summary.
 */
export const TEMPLATES = [
  { name: 'template-letter.pdf', sheet: 'letter' },
  { name: 'template-a4.pdf', sheet: 'a4' },
] as const;

export const SUMMARY = 'project.json';

export function fileNamesOf(post: Post): readonly string[] {
  return [...(post.cards.length === 0 ? [] : TEMPLATES.map(({ name }) => name)), SUMMARY];
}

/** What a desk is set up from: plain data, which can be handed to another thread. */
export interface DeskSetup {
  readonly library: Library;
  readonly files: readonly SourceFile[];
  /** Folder of the cache. */
  readonly cache: string;
  /** Digest of all code. */
  readonly code: string;
}

/** Where the files of projects are made. Nothing is made twice for the same content and code. */
export class ProjectDesk {
  readonly #library: Library;
  readonly #cache: Cache;
  readonly #code: string;
  readonly #texts: ReadonlyMap<string, string>;
  /** Stands for every file that is no post: a project may draw on any of them. */
  readonly #shared: string;
  readonly #projects = new Map<string, Project>();

  /** @param cache a cache that is open already, in place of the folder */
  constructor({ library, files, cache: folder, code }: DeskSetup, cache = new Cache(folder)) {
    this.#library = library;
    this.#cache = cache;
    // The date in a template follows the environment when that sets one.
    const { SOURCE_DATE_EPOCH = '' } = process.env;
    this.#code = digestOf(code, SOURCE_DATE_EPOCH);
    this.#texts = new Map(files.map(({ path, text }) => [path, text]));
    const posts = new Set([...library.posts.values()].map(({ file }) => file));
    this.#shared = digestOf(...files.filter(({ path }) => !posts.has(path)).flatMap(({ path, text }) => [path, text]));
  }

  /** The bytes of one of `fileNamesOf(post)`. */
  async make(post: Post, name: string): Promise<Uint8Array> {
    const key = await this.#contentKeyOf(post, name);
    const kept = await this.#cache.get(key);
    if (kept !== undefined) return kept;
    const made = await this.#make(this.#compute(post), name);
    await this.#cache.put(key, made);
    return made;
  }

  /** Whether any file of any project would have to be made. */
  async lacksFiles(): Promise<boolean> {
    for (const post of this.#library.posts.values()) {
      for (const name of fileNamesOf(post)) {
        const key = await this.#cache.getJson<string>(this.#keyOf(name, post));
        if (key === undefined || !(await this.#cache.has(key))) return true;
      }
    }
    return false;
  }

  async #make(project: Project, name: string): Promise<Uint8Array> {
    const template = TEMPLATES.find((each) => each.name === name);
    if (template === undefined) return Buffer.from(`${JSON.stringify(summarise(project), null, 2)}\n`);
    return templatePdf({ project, blog: this.#library.blog, sheet: template.sheet });
  }

  /**
   * The key of a file by what the file shows, so that a change of the prose or of another supply leaves a template as it
   * is. To find it the project must be computed; so it is itself kept, by what was written.
   */
  async #contentKeyOf(post: Post, name: string): Promise<string> {
    const written = this.#keyOf(name, post);
    const kept = await this.#cache.getJson<string>(written);
    if (kept !== undefined) return kept;
    const shown = digestOf(name, this.#code, plainText(this.#compute(post)), plainText(this.#library.blog));
    await this.#cache.put(written, JSON.stringify(shown));
    return shown;
  }

  #compute(post: Post): Project {
    const project = this.#projects.get(post.slug) ?? computeProject(this.#library, post).project;
    this.#projects.set(post.slug, project);
    return project;
  }

  #keyOf(what: string, post: Post): string {
    return digestOf(what, this.#code, post.file, this.#texts.get(post.file) ?? '', this.#shared);
  }
}

/** Any value as a text, whole numbers of any size and maps included; for digests. */
function plainText(value: unknown): string {
  return JSON.stringify(value, (_key, part: unknown) => {
    if (typeof part === 'bigint') return `${part}n`;
    return part instanceof Map ? [...part] : part;
  });
}
