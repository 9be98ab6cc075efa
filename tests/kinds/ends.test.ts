import { describe, expect, it } from 'vitest';
import { SYSTEMS, type System } from '../../plugins/engine/index.ts';
import { CATALOGUE, type CatalogueKind, cardWith, kindOf, type Settings } from './support/catalogue.ts';
import { valueAt, wordsOf } from './support/draws.ts';
import { judge, said, stopsShort, wrongInShape } from './support/judged.ts';

/** Ends that the kind's own condition refuses, rightly. */
const REFUSED: readonly (readonly [kind: string, setting: string, condition: string, why: string])[] = [
  [
    'bridge',
    'level foot',
    'thread + ornament <= room',
    'Lessons put a bridge along the foot too, but then an ornament has no room above the table.',
  ],
];

/** Each parameter at both ends of its range, or at each of its words, the others at their defaults; first all at their defaults. */
function endsOf({ fold }: CatalogueKind, system: System): Settings[] {
  const ends = cardWith(fold, system).parameters.flatMap((parameter) => {
    const words = wordsOf(fold, parameter.name);
    const values =
      words.length > 0 ? words : [0, 1].map((share) => valueAt(parameter, fold, system, { share, onMark: true }));
    return values.map((value) => ({ [parameter.name]: value }));
  });
  return [{}, ...ends];
}

function nameOf(settings: Settings): string {
  return Object.entries(settings).flat().join(' ');
}

describe('the catalogue', () => {
  it('holds the kinds of the trade, each with honest ranges', () => {
    expect(CATALOGUE.length).toBeGreaterThanOrEqual(20);
    for (const { id, fold } of CATALOGUE) {
      for (const { name, type, from, to } of fold.parameters) {
        if (type === 'choice') continue;
        expect(from && to, `${id} ${name}`).toBeDefined();
      }
    }
  });

  it('refuses no end but those of the table', () => {
    for (const [id, setting] of REFUSED) {
      const names = SYSTEMS.map((system) => endsOf(kindOf(id), system).map(nameOf));
      for (const ends of names) expect(ends).toContain(setting);
    }
  });
});

describe.each(CATALOGUE.map((kind) => [kind.id, kind] as const))('%s', (id, kind) => {
  it.each(SYSTEMS)('at its defaults and at both ends of every parameter: %s', (system) => {
    for (const settings of endsOf(kind, system)) {
      const card = cardWith(kind.fold, system, settings);
      const { folded, findings } = judge(card);
      const where = `${id}, ${nameOf(settings) || 'defaults'}, ${system}`;
      expect(stopsShort(folded), where).toEqual([]);
      const refused = REFUSED.find(([of, setting]) => of === id && setting === nameOf(settings));
      const wrong = wrongInShape(findings);
      if (refused === undefined)
        expect(
          wrong.map((finding) => said(finding, card)),
          where,
        ).toEqual([]);
      else
        expect(
          wrong.map(({ check, witness }) => [check, witness]),
          where,
        ).toEqual([['requirements', refused[2]]]);
    }
  });
});
