import type { ContentFiles, SourceFile } from '../../plugins/content/index.ts';
import { formatPlace, type Problem } from '../../plugins/engine/index.ts';

/** `file:line:column code`, one for each problem: where it is and what it is. */
export function placesAndCodes(problems: readonly Problem[]): string[] {
  return problems.map((problem) => `${formatPlace(problem.place)} ${problem.code}`);
}

/** The only problem of a code; fails the test when there is none or more than one. */
export function only(problems: readonly Problem[], code: string): Problem {
  const found = problems.filter((problem) => problem.code === code);
  const [first] = found;
  if (first === undefined || found.length > 1) {
    throw new Error(
      `expected one ${code}, found ${found.length} among ${placesAndCodes(problems).join(', ') || 'nothing'}`,
    );
  }
  return first;
}

export function file(path: string, text: string): SourceFile {
  return { path, text };
}

/** A Markdown file from its frontmatter. */
export function page(path: string, frontmatter: string, body = 'Text.\n'): SourceFile {
  return { path, text: `---\n${frontmatter.trim()}\n---\n\n${body}` };
}

export const BLOG = file(
  'content/blog.yaml',
  `title: Shingle Press
author: An invented studio
address: https://shingle-press.example
units: in
`,
);

/** A kind as small as one can be. */
export const SIDE_FOLD = page(
  'content/folds/side-fold.md',
  `name: Side fold
units: in
parameters:
  width: { default: 4 1/4, from: 2, to: 8 }
  height: { default: 5 1/2, from: 2, to: 11 }
pieces:
  base: { across: [front width, valley spine, back width], down: height }
same:
  - [base.front.width, base.back.width]
`,
);

export const SLATE_CARD = file(
  'content/supplies/slate-card.yaml',
  'name: Slate cardstock\ncategory: cardstock\nsheet: US Letter\n',
);

export const SCORING = page('content/techniques/scoring.md', 'name: Scoring\nsummary: Press a groove.');

/** The lines that every post needs. */
export const POST_HEAD = 'title: Ferry\nsummary: A card.\ndate: 2026-10-03\nunits: in';

export function post(slug: string, frontmatter: string, body?: string): SourceFile {
  return page(`content/posts/${slug}/index.md`, `${POST_HEAD}\n${frontmatter}`, body);
}

/** A small sound blog with these posts. */
export function contentOf(posts: readonly SourceFile[], more: Partial<ContentFiles> = {}): ContentFiles {
  return {
    blog: BLOG,
    folds: [SIDE_FOLD],
    supplies: [SLATE_CARD],
    techniques: [SCORING],
    posts,
    ...more,
  };
}
