import fc from 'fast-check';
import { expect } from 'vitest';
import { SYSTEMS } from '../../../plugins/engine/index.ts';
import { type CatalogueKind, cardWith } from './catalogue.ts';
import { settingsDrawn } from './draws.ts';
import { judge, said, stopsShort } from './judged.ts';

export const DRAWS = 300;

/**
 * Draws cards of a kind from all over its ranges: each passes its dry fit without a failure, or fails a condition that the kind
 * states, with its message; never anything else.
 */
export function drawMany({ id, fold }: CatalogueKind): void {
  const share = fc.oneof(
    { arbitrary: fc.integer({ min: 0, max: 1_000_000 }).map((millionths) => millionths / 1e6), weight: 4 },
    { arbitrary: fc.constantFrom(0, 1), weight: 1 },
  );
  const shares = fc.array(share, { minLength: fold.parameters.length, maxLength: fold.parameters.length });
  const run = fc.property(fc.constantFrom(...SYSTEMS), fc.boolean(), shares, (system, onMark, drawn) => {
    const settings = settingsDrawn(
      fold,
      system,
      drawn.map((one) => ({ share: one, onMark })),
    );
    const card = cardWith(fold, system, settings);
    const { folded, findings } = judge(card);
    const where = `${id} ${system} ${JSON.stringify(settings)}`;
    expect(stopsShort(folded), where).toEqual([]);
    const failed = findings.filter(({ state }) => state === 'fail');
    const conditions = failed.filter(({ check }) => check === 'requirements');
    expect(
      failed.filter((finding) => !conditions.includes(finding)).map((finding) => said(finding, card)),
      where,
    ).toEqual([]);
    for (const { witness, facts } of conditions) {
      const stated = fold.require.find(({ that }) => that === witness);
      expect(stated, where).toBeDefined();
      expect(facts.otherwise, where).toBe(stated?.otherwise);
    }
  });
  fc.assert(run, { numRuns: DRAWS });
}
