import { z } from 'zod';
import { foldLanguage, idOf, oneOrPerEdition, text } from './fields.ts';

/** What makes a card. These keys stand at the top of a post with one card, or in each entry under `cards`. */
export const cardFields = {
  name: text('a short name')
    .optional()
    .describe('Name of the card, where a post has several. It also gives the key that directives use.'),
  fold: foldLanguage('a fold such as `side-fold`, or `{ side-fold: { width: 5 in } }`')
    .optional()
    .describe('The fold kind by its id, and in a group under it the parameters that differ from its defaults.'),
  recipe: foldLanguage('a list of steps such as `{ cut: 10 x 7 in, score: 5 }`')
    .optional()
    .describe("The lesson's numbers, compared with the fold. Without `fold` the recipe is the card."),
  add: foldLanguage('a group with `pieces`, `joins`, `stack`, `poses` or `fill`')
    .optional()
    .describe('Pieces, joins, poses and fillings that the post adds to the fold, in the fold language.'),
  layers: foldLanguage('a list such as `- { on: front, lay: [{ with: ebb-ink, as: ink }] }`')
    .optional()
    .describe(
      'What is laid on each panel, the first first: inks, stencils, gels, powders, foils. `with` names a supply.',
    ),
  inch: foldLanguage('parameters of the fold').optional().describe('Parameters of the inch edition alone.'),
  metric: foldLanguage('parameters of the fold').optional().describe('Parameters of the metric edition alone.'),
  stock: z
    .record(z.string(), idOf('supply'))
    .meta({ takes: 'a role and a supply for each paper, such as `{ cover: kraft-heavy }`' })
    .optional()
    .describe('Which supply each paper, foam and filling of the fold is: role to supply id.'),
  envelope: oneOrPerEdition('an envelope such as `US A7`, or a size')
    .optional()
    .describe('The envelope, by name or size; one for both editions or one for each.'),
  sheet: oneOrPerEdition('a sheet such as `US Letter`, or a size')
    .optional()
    .describe(
      'The sheet all pieces are cut from; otherwise the sheet of the supply, otherwise the usual sheet of the blog.',
    ),
  finished: oneOrPerEdition('a size such as `5 x 7 in`')
    .optional()
    .describe('The closed size that the post promises. A single size counts for the edition of its own unit.'),
};

export const cardSchema = z.strictObject(cardFields).meta({ takes: 'a card: a name, a fold and what goes with it' });
