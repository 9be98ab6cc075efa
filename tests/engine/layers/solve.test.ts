import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Rules } from '../../../plugins/engine/layers/rules.ts';
import { smallestConflict } from '../../../plugins/engine/layers/smallest-conflict.ts';
import { contradict, solve } from '../../../plugins/engine/layers/solve.ts';

type Rule =
  | { readonly is: 'parity'; readonly literals: readonly number[]; readonly odd: boolean }
  | { readonly is: 'not alike'; readonly literals: readonly number[] };

const VARIABLES = 7;
const literal = fc.integer({ min: 0, max: 2 * VARIABLES - 1 });
const parity = fc.record({
  is: fc.constant('parity' as const),
  literals: fc.array(literal, { minLength: 1, maxLength: 4 }),
  odd: fc.boolean(),
});
const notAlike = fc.record({
  is: fc.constant('not alike' as const),
  literals: fc
    .uniqueArray(fc.integer({ min: 0, max: VARIABLES - 1 }), { minLength: 3, maxLength: 3 })
    .chain((variables) => fc.tuple(...variables.map((variable) => fc.constantFrom(2 * variable, 2 * variable + 1)))),
});

function rulesOf(list: readonly Rule[]): Rules {
  const rules = new Rules();
  rules.variables = VARIABLES;
  for (const rule of list) {
    const [a = 0, b = 0, c = 0] = rule.literals;
    if (rule.is === 'parity') rules.parity(rule.literals, rule.odd, () => ({ is: 'order' }));
    else rules.notAlike(a, b, c);
  }
  return rules;
}

/** Every answer, by trying all of them. */
function everyAnswer(list: readonly Rule[]): string[] {
  return Array.from({ length: 2 ** VARIABLES }, (_, code) => code)
    .map((code) => Array.from({ length: VARIABLES }, (_, v) => ((code >> v) & 1) === 1))
    .filter((answer) =>
      list.every((rule) => {
        const hold = rule.literals.filter((one) => answer[one >> 1] === (one % 2 === 0)).length;
        return rule.is === 'parity' ? (hold % 2 === 1) === rule.odd : hold !== 0 && hold !== 3;
      }),
    )
    .map(String)
    .sort();
}

describe('rules about which leaf lies above which', () => {
  it('have the answers that trying all of them finds', () => {
    fc.assert(
      fc.property(fc.array(fc.oneof(parity, notAlike), { maxLength: 14 }), (list) => {
        const { answers, count, none } = solve(rulesOf(list), 2 ** VARIABLES);
        const wanted = everyAnswer(list);
        expect(answers.map(String).sort()).toEqual(wanted);
        expect([count, none]).toEqual([BigInt(wanted.length), wanted.length === 0]);
      }),
      { numRuns: 400 },
    );
  });

  it('that contradict each other come down to a few, none of which can be left out', () => {
    let conflicts = 0;
    fc.assert(
      fc.property(fc.array(fc.oneof(parity, notAlike), { minLength: 8, maxLength: 20 }), (list) => {
        const rules = rulesOf(list);
        if (!solve(rules, 1).none) return;
        conflicts++;
        const conflict = smallestConflict(rules);
        expect(contradict(rules, conflict, { left: 1e6 })).toBe(true);
        for (const rule of conflict) {
          const others = conflict.filter((other) => other !== rule);
          expect(contradict(rules, others, { left: 1e6 })).toBe(false);
        }
      }),
      { numRuns: 200 },
    );
    expect(conflicts).toBeGreaterThan(50);
  });

  it('count parts that have nothing to do with each other by multiplying, beyond what is listed', () => {
    const rules = new Rules();
    rules.variables = 40;
    const { answers, count } = solve(rules, 10);
    expect(answers).toHaveLength(10);
    expect(new Set(answers.map(String)).size).toBe(10);
    expect(count).toBe(2n ** 40n);
  });
});
