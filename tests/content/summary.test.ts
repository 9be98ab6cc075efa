import { type Fraction as MathFraction, create, fractionDependencies, addDependencies, divideDependencies, equalDependencies, multiplyDependencies } from 'mathjs';
import { describe, expect, test } from 'vitest';
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
import { contentOf, post } from './support.ts';

/** An independent reader of exact fractions. */
const math = create({ fractionDependencies, addDependencies, divideDependencies, equalDependencies, multiplyDependencies });
const fraction = (text: string): MathFraction => math.fraction(text);

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
    expect(math.equal(fraction(base?.width.mm ?? ''), math.multiply(fraction('69/8'), fraction('127/5')))).toBe(true);
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
      expect(math.equal(math.divide(fraction(mm), fraction('25.4')), fraction(inches)), path).toBe(true);
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
          const sum = bands.reduce((total, { size }) => math.add(total, fraction(size.mm)) as MathFraction, fraction('0'));
          expect(math.equal(sum, fraction(whole.mm))).toBe(true);
          for (const { size } of bands) expect((math.divide(fraction(size.mm), mark) as MathFraction).d).toBe(1n);
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
    expect(inch?.findings.find(({ check }) => check === 'fits-envelope')).toMatchObject({ path: 'envelope', place: { line: 11 } });
  });

  test('names supplies and their use', () => {
    expect(summary.supplies).toMatchObject([{ id: 'slate-card', name: 'Slate cardstock', for: 'Base', amount: '1 sheet' }]);
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
  ])('%s has words for every field', (_, schema) => {
    expect(schema['$schema']).toBe('https://json-schema.org/draft/2020-12/schema');
    const bare = fieldsWithoutWords(schema, schema['$defs'] as Record<string, unknown>);
    expect(bare).toEqual([]);
  });
});

/** Paths of properties without a description of their own or of what they refer to. */
function fieldsWithoutWords(node: unknown, defs: Record<string, unknown>, path = ''): string[] {
  if (typeof node !== 'object' || node === null) return [];
  const { properties } = node as { properties?: Record<string, { description?: string; $ref?: string }> };
  const own = Object.entries(properties ?? {})
    .filter(([, field]) => field.description === undefined)
    .map(([name]) => `${path}/${name}`);
  const inner = Object.entries(node).flatMap(([key, value]) => fieldsWithoutWords(value, defs, `${path}/${key}`));
  return [...own, ...inner];
}
