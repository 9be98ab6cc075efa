import { z } from 'astro/zod';
import { readYaml } from '../../../plugins/content/index.ts';
import { formatProblems, hasErrors, type SourceNode } from '../../../plugins/engine/index.ts';

const id = z.string().regex(/^[a-z]+(?:-[a-z0-9]+)*$/u);
const words = z.string().transform((text) => text.split(/\s+/u).filter((word) => word !== ''));

/** One thing to learn: a few sentences and, where there is something to write, a whole file. */
const step = z.strictObject({
  /** The place on the page; of an example, the name of its file as well. */
  id,
  title: z.string(),
  /** Markdown. */
  says: z.string(),
  /** The file, or a fold's or supply's lines without the hyphens round them. */
  example: z.string().optional(),
  is: z.enum(['fold', 'post', 'supply']).default('fold'),
  /** Pieces that are drawn: all, `none`, or those named. */
  draws: words.optional(),
  /** Checks of the dry fit whose findings are shown. */
  fits: words.default([]),
  /** Both editions are shown, not only that of the file's own unit. */
  editions: z
    .literal('yes')
    .optional()
    .transform((text) => text === 'yes'),
  /** The named sizes of both systems are shown. */
  table: z.literal('local-sizes').optional(),
  /** Markdown, after all that. */
  after: z.string().optional(),
});

const chapter = z.strictObject({ id, title: z.string(), says: z.string().optional(), steps: z.array(step) });

const slip = z.strictObject({
  title: z.string(),
  /** The code of the only problem there is. */
  code: id,
  /** The lines at fault. What a whole file needs beside them comes from `given`. */
  write: z.string(),
  is: z.enum(['fold', 'post']).default('fold'),
  /** Instead of what is given for the group. */
  given: z.string().optional(),
});

/** Slips that makers make while they do one thing. */
const slips = z.strictObject({
  id,
  title: z.string(),
  /** Markdown. */
  says: z.string().optional(),
  /** Lines of the file that no slip of the group needs to repeat. */
  given: z.string().default(''),
  slips: z.array(slip),
});

const wordGroup = z.strictObject({
  title: z.string(),
  /** The step where the words are explained, unless an entry names another. */
  see: id,
  words: z.record(z.string(), z.union([z.string(), z.strictObject({ means: z.string(), see: id })])),
});

export type Step = z.output<typeof step>;
export type Chapter = z.output<typeof chapter>;
export type Slip = z.output<typeof slip>;
export type Slips = z.output<typeof slips>;
export type WordGroup = z.output<typeof wordGroup>;

export const readChapter = (path: string, text: string): Chapter => read(chapter, path, text);
export const readSlips = (path: string, text: string): Slips => read(slips, path, text);
export const readWords = (path: string, text: string): readonly WordGroup[] => read(z.array(wordGroup), path, text);

/** Throws with the place of what is wrong: the data are part of the program. */
function read<S extends z.ZodType>(schema: S, path: string, text: string): z.output<S> {
  const { tree, problems } = readYaml(text, path);
  if (tree === undefined || hasErrors(problems)) throw new Error(formatProblems(problems) || `${path} is empty`);
  const result = schema.safeParse(plain(tree));
  if (!result.success) throw new Error(`${path}: ${z.prettifyError(result.error)}`);
  return result.data;
}

function plain(node: SourceNode): unknown {
  if (node.kind === 'text') return node.text;
  if (node.kind === 'list') return node.items.map(plain);
  return Object.fromEntries(node.entries.map(({ key, value }) => [key.text, plain(value)]));
}
