import { z } from 'zod';
import { oneOf, oneOrPerEdition, text, yesNo } from './fields.ts';

/**
 * What the frontmatter of `content/folds/<kind>.md` says for readers. All its other keys are the fold language, which the
 * engine reads.
 */
export const foldSchema = z.strictObject({
  summary: text('a sentence or two').optional().describe('One or two sentences, for lists and search engines.'),
  difficulty: oneOf(['easy', 'moderate', 'hard']).optional().describe('How much practice it asks for.'),
  sheet: oneOrPerEdition('a sheet such as `12 x 12 in`, or a size')
    .optional()
    .describe('The sheet it is cut from at its defaults, where that is not the usual sheet of the blog.'),
  invented: yesNo().default(false).describe('Whether what is told is invented, as in a demonstration.'),
});

/** The keys of a fold file that are not the fold language. */
export const FOLD_PAGE_KEYS: readonly string[] = Object.keys(foldSchema.shape);
