/** The collections of `astro:content`. `blog` has one entry, named `blog`. */
export const COLLECTIONS = ['blog', 'posts', 'folds', 'supplies', 'techniques'] as const;

export type CollectionName = (typeof COLLECTIONS)[number];

/** An entry as Astro's store takes it. */
export interface StoredEntry {
  readonly id: string;
  readonly data: Record<string, unknown>;
  readonly digest: string;
  /** Relative to the root of the project. */
  readonly filePath: string;
  readonly body?: string;
  readonly rendered?: RenderedBody;
  readonly assetImports?: string[];
}

/** A text as HTML, with what Astro wants to know of it. */
export interface RenderedBody {
  readonly html: string;
  readonly metadata: {
    readonly headings: { depth: number; slug: string; text: string }[];
    readonly imagePaths: string[];
  };
}

/** Gives each collection its entries. One reading of the files serves all collections. */
export interface ContentSource {
  /**
   * The entries of a collection as the files stand now. Rejects with a `ContentError` when anything in any file is wrong;
   * in development it gives the entries of the last good reading instead, or undefined when there was none.
   */
  entriesOf(collection: CollectionName): Promise<readonly StoredEntry[] | undefined>;
}

/** Name of the integration, and of the hook by which it hands its source to the loaders. */
export const INTEGRATION = 'creasewright';
export const SOURCE_HOOK = 'creasewright:source';

declare global {
  namespace Astro {
    interface IntegrationHooks {
      [SOURCE_HOOK]: () => ContentSource;
    }
  }
}
