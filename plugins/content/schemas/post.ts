import { z } from 'zod';
import { cardFields, cardSchema } from './card.ts';
import { day, idOf, list, text, unit, yesNo } from './fields.ts';

const supplyUse = z
  .preprocess(
    (written) => (typeof written === 'string' ? { use: written } : written),
    z.strictObject({
      use: idOf('supply').describe('The supply, by its id.'),
      for: text('what it is used for')
        .optional()
        .describe('What it is used for in this project: the part, not the product.'),
      amount: text('an amount').optional().describe('How much is needed, in words.'),
    }),
  )
  .meta({ takes: 'a supply id, or `{ use: supply-id, for: what, amount: how much }`' });

/** The frontmatter of `content/posts/<slug>/index.md`. A post holds no card, one (its keys at the top), or several. */
export const postSchema = z.strictObject({
  title: text('a title').describe('The title of the project.'),
  summary: text('a sentence or two').describe('One or two sentences, for lists, feeds and search engines.'),
  date: day().describe('The day it is published.'),
  updated: day().optional().describe('The day of the last real change.'),
  units: unit().optional().describe('The unit of bare numbers in this file. Without it a bare number is an error.'),
  techniques: list(idOf('technique'), 'a list of technique ids').default([]).describe('Techniques used, by id.'),
  supplies: list(supplyUse, 'a list of supplies')
    .default([])
    .describe('What is needed, in the order of the list that readers see.'),
  tools: list(text('a tool'), 'a list of tools').default([]).describe('Tools that most makers have.'),
  ...cardFields,
  cards: list(cardSchema, 'a list of cards')
    .optional()
    .describe('Several cards, each with a `name`. Not together with `fold` at the top.'),
  invented: yesNo().default(false).describe('Whether what is told is invented, as in a demonstration.'),
});
