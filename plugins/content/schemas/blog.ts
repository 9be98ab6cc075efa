import { z } from 'zod';
import { languageTag, oneOrPerEdition, perEdition, text, unit, webAddress, yesNo } from './fields.ts';

/** `content/blog.yaml`. */
export const blogSchema = z.strictObject({
  title: text('the name of the blog').describe('The name of the blog, as it stands at the head of every page.'),
  tagline: text('a few words under the name').optional().describe('A few words under the name.'),
  author: text('the name of the author').describe('Who writes: the line under every post and in the feeds.'),
  address: webAddress().describe('Where the site will stand, without a slash at the end.'),
  language: languageTag()
    .default('en')
    .describe(
      'Language of the posts as a language tag (BCP 47): `en`, `en-GB`, `de`. It also decides about the decimal comma.',
    ),
  units: unit().describe('The home units: which edition is shown first to a reader who has not chosen.'),
  marks: perEdition(text('a length such as `1/16 in`'))
    .optional()
    .describe(
      'The finest mark of the ruler, in each edition. Printed lengths are whole numbers of it. Usually 1/16 in and 0.5 mm.',
    ),
  sheets: perEdition(text('a sheet such as `US Letter`'))
    .optional()
    .describe('The usual sheet of paper in each edition, where neither a card nor its cardstock names another.'),
  'envelope-clearance': oneOrPerEdition('a length such as `1/8 in`')
    .optional()
    .describe('Least room between card and envelope, both sides together, across and along. Usually 1/8 in and 3 mm.'),
  disclosure: z
    .strictObject({
      gifted: text('a sentence').optional().describe('Said beside a product that was given free of charge.'),
      affiliate: text('a sentence').optional().describe('Said beside a link that pays a share.'),
    })
    .meta({ takes: '`gifted:` and `affiliate:`, a sentence each' })
    .optional()
    .describe('The wording that stands beside gifted products and paid links.'),
  invented: yesNo().default(false).describe('Whether studio and makers are invented, as in a demonstration.'),
});
