import { z } from 'zod';
import { nearestName } from '../../engine/index.ts';
import { idOf, list, oneOf, oneOrPerEdition, refuse, text, unit, webAddress, yesNo } from './fields.ts';

/** Categories in use. A new word is taken; one that looks like a slip of a known word is not. */
const CATEGORIES = [
  'adhesive',
  'board',
  'cardstock',
  'die',
  'embellishment',
  'envelope',
  'filler',
  'film',
  'foam',
  'foil',
  'gel',
  'ink',
  'ornament',
  'paste',
  'pattern paper',
  'powder',
  'stamp',
  'stencil',
  'tool',
  'vellum',
] as const;

const category = text(`a category such as \`cardstock\` or \`ink\``).transform((written, context) => {
  const word = written.toLowerCase();
  if (CATEGORIES.some((known) => known === word)) return word;
  const near = nearestName(word, CATEGORIES);
  if (near === undefined) return word;
  return refuse(context, {
    code: 'category-unknown',
    takes: `a category; in use are ${CATEGORIES.join(', ')}`,
    remedy: `Did you mean \`${near}\`? If it is a new category, choose a word less like it.`,
  });
});

/** `content/supplies/<id>.yaml`: one product. */
export const supplySchema = z.strictObject({
  name: text('the name of the product').describe('The product, as its maker calls it.'),
  category: category.describe('What it is: cardstock, pattern paper, adhesive, tool, ink and so on.'),
  maker: text('the maker').optional().describe('Who makes it.'),
  units: unit().optional().describe('The unit of bare numbers in this file.'),
  links: list(
    z
      .strictObject({
        shop: text('the name of the shop').describe('Where the link leads, for people.'),
        address: webAddress().describe('The page of the product.'),
      })
      .meta({ takes: '`{ shop: name, address: https://... }`' }),
    'a list of shops',
  )
    .default([])
    .describe('Where to get it.'),
  gifted: yesNo().default(false).describe('Given free of charge; the disclosure of the blog is shown beside it.'),
  affiliate: yesNo().default(false).describe('Its links pay a share; the disclosure of the blog is shown beside it.'),
  discontinued: yesNo().default(false).describe('No longer made. It stays listed, with its substitutes.'),
  substitutes: list(idOf('supply'), 'a list of supply ids')
    .default([])
    .describe('What does the same job, the best first.'),
  sheet: oneOrPerEdition('a sheet such as `US Letter`, or a size')
    .optional()
    .describe('Size of the sheet it is sold in; one for both editions or one for each.'),
  weight: text('a weight such as `80 lb cover` or `216 gsm`')
    .optional()
    .describe('Weight of the paper or film by its area, as printed on the pack.'),
  caliper: text('a thickness such as `0.011 in`, `12 pt` or `300 µm`')
    .optional()
    .describe(
      'Measured thickness of one sheet, or of one coat of a gel or paste; it overrides what the weight suggests.',
    ),
  height: text('a height such as `1/16 in`')
    .optional()
    .describe('Height of one layer of foam, or of an ornament as it lies on the card, measured.'),
  bead: text('a size such as `2.1 mm`')
    .optional()
    .describe('Size of a loose filler: across its largest bead, which has to move in a shaker.'),
  density: text('a density such as `1.5 g/cm³`')
    .optional()
    .describe('What a cubic centimetre weighs: of a filler as it is poured, of foam with its air.'),
  mass: text('a mass such as `3 g` or `1/8 oz`').optional().describe('Mass of one ornament, weighed.'),
  gives: yesNo()
    .optional()
    .describe('Whether it gives under pressure. Foam does unless this says no; nothing else does unless it says yes.'),
  grain: oneOf(['long', 'short'])
    .optional()
    .describe('Whether the grain runs along the long or the short side of the sheet.'),
  notes: text('a sentence or two')
    .optional()
    .describe('What matters when using it, or when looking for something like it.'),
  caution: text('a sentence or two')
    .optional()
    .describe(
      'What to take care of, in plain words, shown wherever the supply is listed. The label on the product counts.',
    ),
  invented: yesNo().default(false).describe('Whether the product is invented, as in a demonstration.'),
});
