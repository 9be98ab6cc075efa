import { add, divide, equal, fraction, type Fraction as MathFraction, multiply } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import {
  buildLibrary,
  computeProject,
  dryFitJsonSchema,
  type LengthSummary,
  type ProjectSummary,
  projectSummaryJsonSchema,
  projectSummarySchema,
  summarise,
} from '../../plugins/content/index.ts';
import { blogSchema } from '../../plugins/content/schemas/blog.ts';
import { foldSchema } from '../../plugins/content/schemas/fold.ts';
import { postSchema } from '../../plugins/content/schemas/post.ts';
import { supplySchema } from '../../plugins/content/schemas/supply.ts';
import { techniqueSchema } from '../../plugins/content/schemas/technique.ts';
import { contentOf, post } from './support.ts';

const POST = post(
  'ferry',
  `supplies: [{ use: slate-card, for: Base, amount: 1 sheet }]
techniques: [scoring]
tools: [Trimmer]
fold: { side-fold: { width: 4 5/16, height: 5 1/2 } }
stock: { cover: slate-card }
envelope: US A2
metric: { width: 105.5 mm }`,
);

function summaryOf(): ProjectSummary {
  const { library } = buildLibrary(contentOf([POST]));
  const found = library?.posts.get('ferry');
  if (library === undefined || found === undefined) throw new Error('not read');
  return summarise(computeProject(library, found).project);
}

/** Every length in a value, with its path. */
function lengthsIn(value: unknown, path = ''): [string, LengthSummary][] {
  if (typeof value !== 'object' || value === null) return [];
  if ('mm' in value) return [[path, value as LengthSummary]];
  return Object.entries(value).flatMap(([key, inner]) => lengthsIn(inner, `${path}/${key}`));
}

describe('project.json', () => {
  const summary = summaryOf();
  const { inch, metric } = summary.cards[0]?.editions ?? {};

  test('is as its description says, also after it has been written and read', () => {
    const read = JSON.parse(JSON.stringify(summary));
    expect(projectSummarySchema.parse(read)).toEqual(summary);
  });

  test('refuses what the description does not know', () => {
    expect(projectSummarySchema.safeParse({ ...summary, more: 1 }).success).toBe(false);
    expect(projectSummarySchema.safeParse({ ...summary, schemaVersion: 2 }).success).toBe(false);
  });

  test('has the exact sizes that were asked for', () => {
    const base = inch?.pieces[0];
    expect(equal(fraction(base?.width.mm ?? ''), multiply(fraction('69/8'), fraction('127/5')))).toBe(true);
    expect(base?.width).toEqual({ mm: '8763/40', inches: '69/8', printed: '8 5/8 in' });
    expect(base?.creases).toEqual([
      { name: 'spine', runs: 'down', at: { mm: '8763/80', inches: '69/16', printed: '4 5/16 in' }, fold: 'valley' },
    ]);
    expect(metric?.closed).toMatchObject([{ width: { mm: '211/2', printed: '105.5 mm' }, height: { mm: '279/2' } }]);
  });

  test('says every length twice, and both are the same: 1 in is 25.4 mm (agreement of 1959)', () => {
    const lengths = lengthsIn(summary);
    expect(lengths.length).toBeGreaterThan(30);
    for (const [path, { mm, inches }] of lengths) {
      expect(equal(divide(fraction(mm), fraction('25.4')), fraction(inches)), path).toBe(true);
    }
  });

  test('has lengths that are whole numbers of the marks, and bands that add up to their piece', () => {
    for (const edition of [inch, metric]) {
      const mark = fraction(edition?.mark.mm ?? '1');
      for (const piece of edition?.pieces ?? []) {
        for (const [bands, whole] of [
          [piece.columns, piece.width],
          [piece.rows, piece.height],
        ] as const) {
          const sum = bands.reduce((total, { size }) => add(total, fraction(size.mm)) as MathFraction, fraction('0'));
          expect(equal(sum, fraction(whole.mm))).toBe(true);
          for (const { size } of bands) expect((divide(fraction(size.mm), mark) as MathFraction).d).toBe(1n);
        }
      }
    }
  });

  test('holds a sentence for every finding, and where its cure belongs', () => {
    const findings = [...(inch?.findings ?? []), ...(metric?.findings ?? [])];
    expect(findings.length).toBeGreaterThan(8);
    for (const { says, label, place } of findings) {
      expect(says).not.toBe('');
      expect(label).not.toBe('');
      expect(place.file).toMatch(/^content\//);
    }
    expect(inch?.findings.find(({ check }) => check === 'fits-envelope')).toMatchObject({
      path: 'envelope',
      place: { line: 11 },
    });
  });

  test('names supplies and their use', () => {
    expect(summary.supplies).toMatchObject([
      { id: 'slate-card', name: 'Slate cardstock', for: 'Base', amount: '1 sheet' },
    ]);
    expect(summary.cards[0]?.stock).toEqual({ cover: 'slate-card' });
    expect(summary).toMatchObject({ techniques: ['scoring'], tools: ['Trimmer'], date: '2026-10-03', updated: null });
  });

  test('is the same, byte for byte, when made again', () => {
    expect(JSON.stringify(summaryOf())).toBe(JSON.stringify(summary));
  });
});

describe('the descriptions as JSON Schema', () => {
  test.each([
    ['project.json', projectSummaryJsonSchema()],
    ['the report of the dry fit', dryFitJsonSchema()],
    ['a blog', asWritten(blogSchema)],
    ['a post', asWritten(postSchema)],
    ['a fold', asWritten(foldSchema)],
    ['a supply', asWritten(supplySchema)],
    ['a technique', asWritten(techniqueSchema)],
  ])('%s has words for every field', (_, schema) => {
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    const bare = fieldsWithoutWords(schema);
    expect(bare).toEqual([]);
  });
});

/** The description of a file as its author writes it. */
function asWritten(schema: z.ZodType): Record<string, unknown> {
  return z.toJSONSchema(schema, { io: 'input', unrepresentable: 'any' }) as Record<string, unknown>;
}

/** Paths of properties without a description of their own or of what they refer to. */
function fieldsWithoutWords(node: unknown, path = ''): string[] {
  if (typeof node !== 'object' || node === null) return [];
  const { properties } = node as { properties?: Record<string, { description?: string }> };
  const own = Object.entries(properties ?? {})
    .filter(([, field]) => field.description === undefined)
    .map(([name]) => `${path}/${name}`);
  const inner = Object.entries(node).flatMap(([key, value]) => fieldsWithoutWords(value, `${path}/${key}`));
  return [...own, ...inner];
}
