import { describe, expect, it } from 'vitest';
import { readFold } from '../../../plugins/engine/index.ts';
import { partKey } from '../../../plugins/engine/spec/part-key.ts';
import { cardOf, foldOf } from '../support/folds.ts';
import { only } from '../support/marked.ts';
import { yamlMap } from '../support/yaml-tree.ts';

/** A sheet whose corners are folded over, each a panel that only a point can name. */
const fold = (joins: string, points = '{ tip: [3 3/4, 1/4], foot: [1/4, 4 3/4] }'): string => `name: Trial
units: in
pieces:
  card: { size: 4 x 5, creases: { ear: "[3, 0] to [4, 1]", toe: "[0, 4] to [1, 5]" }, panels: ${points} }
  dot(k): { each: k from 1 to 2, circle: 1/4 }
joins:
${joins}`;

const AT_TIP = 'match: "centre to [3 3/4, 1/4]"';

describe('a panel that is named by a point', () => {
  it('takes what is glued onto it', () => {
    const { joins } = cardOf(foldOf(fold(`  - { glue: dot(1), onto: card.tip, ${AT_TIP} }`)), 'inch');
    expect(joins[0]?.onto.part).toMatchObject({ is: 'spot' });
    expect(joins[0]?.onto.part.is === 'spot' && joins[0].onto.part.at.x.toFraction()).toBe('381/4');
  });

  it('takes the same part once', () => {
    const twice = `  - { glue: dot(1), onto: card.tip, ${AT_TIP} }\n  - { glue: dot(1), onto: card.tip, match: centre }`;
    expect(only(readFold(yamlMap(fold(twice))).problems)).toMatchObject({ code: 'glued-twice', path: 'joins[1]' });
  });

  it('is another than one that is named by another point', () => {
    const two = `  - { glue: dot(1), onto: card.tip, ${AT_TIP} }\n  - { glue: dot(2), onto: card.foot, match: "centre to [1/4, 4 3/4]" }`;
    const { joins } = cardOf(foldOf(fold(two)), 'inch');
    const [tip, foot] = joins.map(({ onto }) => partKey(onto.part));
    expect(tip).not.toBe(foot);
    expect(
      readFold(yamlMap(fold('  - { glue: face of card.tip, onto: card.foot, match: "[1, 1] to [2, 2]" }'))).problems,
    ).toEqual([]);
  });

  it('cannot hold itself', () => {
    const itself = '  - { glue: card.tip, onto: card.tip, match: centre }';
    expect(only(readFold(yamlMap(fold(itself))).problems)).toMatchObject({ code: 'joined-to-itself' });
  });
});
