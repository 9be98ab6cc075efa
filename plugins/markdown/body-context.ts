import type { Marks, Problem } from '../engine/index.ts';

/** What the Markdown plugins need to know of the file whose text they work on, and where they put what they find wrong. */
export interface BodyContext {
  /** As shown in problems. */
  readonly file: string;
  /** Whether drawings and lists can be placed in the text: in posts, and nowhere else. */
  readonly placing: boolean;
  /** Keys of the post's cards in file order; undefined while its frontmatter cannot be read. */
  readonly cards: readonly string[] | undefined;
  /** The rulers that a measure in the text is rounded to. */
  readonly marks: Marks;
  /** The text's language writes `2,5` for two and a half. */
  readonly decimalComma: boolean;
  /** Filled by the plugins. */
  readonly problems: Problem[];
}

/** The part of unified's virtual file that the plugins use; as a string it is the whole source. */
export interface MarkdownFile {
  readonly data: object;
  toString(): string;
}

const KEY = 'bodyContext';

/** The context dressed as frontmatter, which is the one thing a Markdown renderer hands on to its plugins. */
export function asFrontmatter(context: BodyContext): Record<string, unknown> {
  return { [KEY]: context };
}

/** The context of the text being worked on; undefined for Markdown that does not come from `content/`. */
export function bodyContextOf(file: MarkdownFile): BodyContext | undefined {
  const data = file.data as { astro?: { frontmatter?: Record<string, unknown> } };
  return data.astro?.frontmatter?.[KEY] as BodyContext | undefined;
}
