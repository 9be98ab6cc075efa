import { z } from 'zod';
import { editionsSchema } from './summary.ts';

/** Raised whenever a field changes its meaning or goes away; new fields alone do not raise it. */
export const DRY_FIT_VERSION = 1;

const problem = z
  .strictObject({
    code: z.string().describe('Stable name of the problem.'),
    severity: z
      .enum(['error', 'warning'])
      .describe('An error keeps the file from being folded; a warning is a question.'),
    file: z.string().describe('The file.'),
    line: z.int().min(1).describe('Line, from 1.'),
    column: z.int().min(1).describe('Column, from 1.'),
    path: z.string().describe('Path in the frontmatter; empty where there is none.'),
    wrote: z.string().describe('What was written.'),
    takes: z.string().describe('What is understood there.'),
    remedy: z.string().describe('What to do.'),
  })
  .meta({ id: 'problem', description: 'Something that could not be read or understood.' });

const foldedFile = z
  .strictObject({
    file: z.string().describe('The file, as given or relative to the project.'),
    type: z.enum(['post', 'fold']).describe('A fold file is folded at its defaults.'),
    id: z.string().describe('Id of the post or fold kind.'),
    title: z.string().describe('Title of the post, or name of the fold.'),
    cards: z
      .array(
        z.strictObject({
          key: z.string().describe('Name of the card in addresses.'),
          name: z.string().describe('The card, for people.'),
          editions: editionsSchema.describe('The card in both ways of measuring, with every finding.'),
        }),
      )
      .describe('None for a post without a card.'),
  })
  .meta({ id: 'folded-file', description: 'A file and its cards, folded.' });

/** What `npm run dryfit -- --json` prints. */
export const dryFitReportSchema = z
  .strictObject({
    schemaVersion: z.literal(DRY_FIT_VERSION).describe('Version of this description.'),
    counts: z
      .strictObject({
        pass: z.int().describe('Findings that work.'),
        question: z.int().describe('Findings that look like a slip.'),
        fail: z.int().describe('Findings that will not work. Any at all gives exit code 1.'),
        untested: z.int().describe('Checks for which something is not stated.'),
        errors: z.int().describe('Problems that keep a file from being folded. Any at all gives exit code 2.'),
        warnings: z.int().describe('Problems that are questions.'),
      })
      .describe('How many of each, over all files, cards and editions.'),
    problems: z.array(problem).describe('In reading order.'),
    files: z.array(foldedFile).describe('Files that could be folded, in the order asked for.'),
  })
  .meta({ title: 'Dry fit report', description: 'The findings of the dry fit for posts and folds.' });

export type DryFitReport = z.infer<typeof dryFitReportSchema>;

/** The description of the report as JSON Schema (draft 2020-12). */
export function dryFitJsonSchema(): Record<string, unknown> {
  return z.toJSONSchema(dryFitReportSchema, { target: 'draft-2020-12' }) as Record<string, unknown>;
}
