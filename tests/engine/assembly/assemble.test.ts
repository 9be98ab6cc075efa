import { describe, expect, it } from 'vitest';
import { assemble, spanningTree } from '../../../plugins/engine/assembly/index.ts';
import { type Card, panelsOf } from '../../../plugins/engine/index.ts';
import { card, inches, piece } from '../dryfit/made-card.ts';
import { VIEWS } from '../dryfit/views.ts';
import { BRIDGE, LIDDED, POP_UP } from '../support/joined-cards.ts';
import { at, glue, hang, ref } from '../support/made-joins.ts';

const of = (made: Card) => assemble(made, panelsOf(made));

const BASE = piece('base', ['front 4', 'valley spine', 'back 4'], ['5']);
const MAT = piece('mat', ['3'], ['4']);
const ON_FRONT = glue([ref('mat'), at('0', '0')], [ref('base.front'), at('1/2', '1/2')]);

describe('assemble', () => {
  it('finds the panels that joins mean, and keeps joins in file order after the creases', () => {
    const { joints, slips } = of(card([BASE, MAT], { joins: [ON_FRONT] }));
    expect(joints.map(({ is, a, b }) => `${is} ${a} ${b}`)).toEqual([
      // A crease that runs down the page has, seen going along it, the right of the page on its left hand.
      'hinge base.front base.back',
      'glue mat base.front',
    ]);
    expect(slips).toEqual({ panels: [], joins: [] });
  });

  it('says which reference means no panel, and which means several', () => {
    const nowhere = glue([ref('mat'), at('0', '0')], [ref('base.side'), at('0', '0')]);
    const anywhere = glue([ref('mat'), at('0', '0')], [ref('base'), at('0', '0')]);
    const { slips, joints } = of(card([BASE, MAT], { joins: [nowhere, anywhere] }));
    expect(slips.joins).toMatchObject([
      { is: 'no-panel', ref: { text: 'base.side' } },
      { is: 'which-panel', ref: { text: 'base' }, choices: ['base.front', 'base.back'] },
    ]);
    expect(joints.map(({ is }) => is)).toEqual(['hinge']);
  });

  it('refuses a panel that is glued to itself', () => {
    const itself = glue([ref('mat'), at('0', '0')], [ref('mat'), at('1', '1')]);
    expect(of(card([MAT], { joins: [itself] })).slips.joins).toMatchObject([{ is: 'to-itself' }]);
  });

  it('takes the panel under the point where a thread is fixed, of an edge that three panels share', () => {
    const { joints } = of(BRIDGE);
    expect(joints.find(({ is }) => is === 'hang')).toMatchObject({ a: 'ornament', b: 'bridge.span' });
    const whole = { ...ref('bridge'), part: { is: 'edge', edge: 'bottom' } } as const;
    const hung = hang([ref('ornament'), at('3/4', '0')], [whole, at('4', '1 1/2')], inches('1/2'));
    const made = { ...BRIDGE, joins: [...BRIDGE.joins.slice(0, 2), hung] };
    expect(of(made).joints.at(-1)).toMatchObject({ is: 'hang', b: 'bridge.end' });
  });

  it('slips a lid over a whole piece, for which its largest panel speaks', () => {
    expect(of(LIDDED).joints.at(-1)).toMatchObject({ is: 'slip', a: 'lid.middle', b: 'tray.middle' });
  });
});

describe('bodies', () => {
  it('are what hangs together, in file order; loose pieces are bodies of their own', () => {
    const tag = piece('tag', ['1'], ['2']);
    const { bodies } = of(card([BASE, tag, MAT], { joins: [ON_FRONT] }));
    expect(bodies.map(({ pieces }) => pieces)).toEqual([['base', 'mat'], ['tag']]);
    expect(bodies.map(({ ground }) => ground)).toEqual(['base.back', 'tag']);
  });

  it.each(VIEWS)('stand on the largest panel of their first piece: $view', ({ of: view }) => {
    const strip = view(card([piece('base', ['a 3', 'valley', 'b 5', 'valley', 'c 4'], ['6'])]));
    expect(of(strip).bodies[0]?.ground).toBe('base.b');
  });

  it.each(VIEWS)('have a tree that reaches each panel once, and loops for the rest: $view', ({ of: view }) => {
    for (const made of [BRIDGE, POP_UP]) {
      const { bodies, joints } = of(view(made));
      const [body, ...others] = bodies;
      expect(others).toEqual([]);
      // A tree of n panels has n - 1 joints; each further one closes one loop.
      expect(body?.tree).toHaveLength((body?.panels.length ?? 0) - 1);
      expect(body?.loops).toHaveLength(joints.length - (body?.tree.length ?? 0));
      expect(body?.loops).toHaveLength(1);
      const reached = new Set([body?.ground]);
      for (const { a, b } of body?.tree ?? []) {
        expect(reached.has(a) !== reached.has(b)).toBe(true);
        reached.add(a).add(b);
      }
      expect([...reached].sort()).toEqual([...(body?.panels ?? [])].sort());
    }
  });

  it('use a thread only for what nothing else holds', () => {
    const hung = hang([ref('mat'), at('1', '0')], [ref('base.front'), at('2', '5')], inches('1/2'));
    const both = of(card([BASE, MAT], { joins: [hung, ON_FRONT] }));
    expect(both.bodies[0]?.tree.map(({ is }) => is)).toEqual(['hinge', 'glue']);
    expect(both.bodies[0]?.loops).toEqual([]);
    expect(of(card([BASE, MAT], { joins: [hung] })).bodies[0]?.tree.map(({ is }) => is)).toEqual(['hinge', 'hang']);
  });
});

describe('spanningTree', () => {
  it('goes breadth first, over joints in the order given', () => {
    const joint = (a: string, b: string) => ({ ...of(BRIDGE).joints[0], is: 'hinge', a, b }) as never;
    const ring = [joint('1', '2'), joint('2', '3'), joint('3', '4'), joint('4', '1')];
    const { reached, loops } = spanningTree('1', ring);
    expect(reached).toEqual(['1', '2', '4', '3']);
    expect(loops).toEqual([ring[2]]);
  });
});
