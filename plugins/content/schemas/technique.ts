import { z } from 'zod';
import { text, yesNo } from './fields.ts';

/** The frontmatter of `content/techniques/<id>.md`; the body teaches it. */
export const techniqueSchema = z.strictObject({
  name: text('the name of the technique').describe('The name of the technique.'),
  summary: text('a sentence or two').describe('One or two sentences, for lists and search engines.'),
  invented: yesNo().default(false).describe('Whether what is told is invented, as in a demonstration.'),
});
