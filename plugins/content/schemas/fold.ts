import { z } from 'zod';
import { oneOf, text, yesNo } from './fields.ts';

/**
 * What the frontmatter of `content/folds/<kind>.md` says for readers. All its other keys are the fold language, which the
 * engine reads.
 */
export const foldSchema = z.strictObject({
  summary: text('a sentence or two').optional().describe('One or two sentences, for lists and search engines.'),
  difficulty: oneOf(['easy', 'moderate', 'hard']).optional().describe('How much practice it asks for.'),
  invented: yesNo().default(false).describe('Whether what is told is invented, as in a demonstration.'),
});

/** The keys of a fold file that are not the fold language. */
export const FOLD_PAGE_KEYS: readonly string[] = Object.keys(foldSchema.shape);
