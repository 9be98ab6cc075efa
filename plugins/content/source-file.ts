/** A file of the maker's, as read from disk. */
export interface SourceFile {
  /** As shown in problems: relative to the project with `/`, or as it was given on the command line. */
  readonly path: string;
  readonly text: string;
}

/** Every file of `content/` that the project understands, sorted by path. */
export interface ContentFiles {
  /** `content/blog.yaml`, undefined when there is none. */
  readonly blog: SourceFile | undefined;
  readonly posts: readonly SourceFile[];
  readonly folds: readonly SourceFile[];
  readonly supplies: readonly SourceFile[];
  readonly techniques: readonly SourceFile[];
}
