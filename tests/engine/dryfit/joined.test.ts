import { describe, expect, it } from 'vitest';
import type { Card, GlueJoin } from '../../../plugins/engine/index.ts';
import { BRIDGE, BRIDGE_ALL_SHUT, explosionInsert, LIDDED, POP_UP, SLIDER, SPINNER } from '../support/joined-cards.ts';
import { at, glue, HALF_TURN, line, ref, withLines } from '../support/made-joins.ts';
import { found, outcomes, said } from './found.ts';
import { card, fold, inches, mm, PLACE, piece, pose, posed } from './made-card.ts';
import { VIEWS } from './views.ts';

const BASE = piece('base', ['front 4 1/4', 'valley spine', 'back 4 1/4'], ['5 1/2']);
const shutAs = (name: string, made: Card): Card => ({ ...made, posts: name });
const length = (inch: string, view: string) =>
  view === 'in millimetres' ? mm(inches(inch).inches.mul(10).toFraction()) : inches(inch);

describe('joins-agree', () => {
  it.each(VIEWS)('leaves rings of paper alone that close: $view', ({ of }) => {
    for (const made of [BRIDGE, POP_UP, explosionInsert()]) {
      expect(found('joins-agree', fold(of(made)))).toMatchObject([{ outcome: 'agree', state: 'pass' }]);
    }
  });

  it('has nothing to say where nothing goes round', () => {
    for (const made of [SPINNER, SLIDER, LIDDED, card([BASE])]) expect(found('joins-agree', fold(made))).toEqual([]);
  });

  it.each(VIEWS)(
    'says by how much a bridge misses with every crease shut, and which to leave flat: $view',
    ({ of, view }) => {
      const folded = fold(of(BRIDGE_ALL_SHUT));
      expect(found('joins-agree', folded)).toMatchObject([
        { outcome: 'wrong-setting', state: 'fail', figure: length('6', view) },
      ]);
      expect(said('joins-agree', folded)).toContain('Try `inner: flat, corner: flat` in `all-shut`.');
      expect(found('closes-flat', folded)).toMatchObject([{ outcome: 'apart', state: 'untested' }]);
    },
  );

  it.each(VIEWS)('finds the one crease that a pose has wrong: $view', ({ of }) => {
    const flat = BRIDGE.poses[0]?.turns.map((turn) => (turn.crease === 'turn' ? { ...turn, turn: 0 } : turn)) ?? [];
    const folded = fold(of({ ...BRIDGE, poses: [posed('closed', flat)] }));
    expect(said('joins-agree', folded)).toContain('Try `turn: shut` in `closed`.');
  });

  it.each(VIEWS)('finds the join that is glued by the wrong side: $view', ({ of }) => {
    const [first, second] = explosionInsert().joins;
    const turnedOver = { ...(first as GlueJoin), partSide: 'face' as const };
    const folded = fold(of({ ...explosionInsert(), joins: [turnedOver, ...(second ? [second] : [])] }));
    expect(found('joins-agree', folded)).toMatchObject([{ outcome: 'wrong-side', state: 'fail' }]);
    expect(said('joins-agree', folded)).toMatch(/Glue `insert\.(left|right)` by its back\./);
  });

  it.each(VIEWS)('gives the gap of a pop-up whose sums differ, and where: $view', ({ of, view }) => {
    const strip = piece('strip', ['foot 1/2', 'valley', 'wall 1 1/4', 'mountain', 'top 2', 'valley', 'toe 1/2'], ['3']);
    const [base] = POP_UP.pieces;
    const [first, last] = POP_UP.joins as readonly GlueJoin[];
    if (!base || !first || !last) throw new Error('a pop-up has two joins');
    const made = { ...POP_UP, pieces: [base, strip], joins: [first, { ...last, p: at('3 3/4', '0') }] };
    const folded = fold(of(made));
    expect(found('joins-agree', folded)).toMatchObject([{ state: 'fail', figure: length('1/4', view) }]);
    expect(said('joins-agree', folded)).toContain(view === 'in millimetres' ? 'by 2.5 mm' : 'by 1/4 in');
  });

  it.each(VIEWS)('says along which crease a sheet would tear: $view', ({ of }) => {
    // Two half folds of which one ends where it meets the other: the paper beyond has no crease to fold on.
    const sheet = withLines(piece('sheet', ['4'], ['6']), line('down', at('2', '0'), at('2', '6'), ['valley']), {
      ...line('across', at('0', '3'), at('4', '3'), ['valley', 'mountain']),
    });
    const right = card([sheet]);
    expect(found('joins-agree', fold(of(right)))).toEqual([]);
    const slanted = withLines(
      piece('sheet', ['4'], ['6']),
      line('down', at('2', '0'), at('2', '6'), ['valley']),
      line('across', at('0', '3'), at('4', '2'), ['valley', 'mountain']),
    );
    const folded = fold(of(card([slanted])));
    expect(found('joins-agree', folded)).toMatchObject([{ outcome: 'tears', state: 'fail' }]);
    expect(said('joins-agree', folded)).toMatch(/would tear along `(down|across)`/);
  });

  it('looks at the other poses whose angles are all given, too', () => {
    const poses = [...BRIDGE.poses, ...BRIDGE_ALL_SHUT.poses];
    const folded = fold({ ...BRIDGE, poses });
    expect(found('joins-agree', folded)).toMatchObject([
      { outcome: 'agree' },
      { outcome: 'wrong-setting', state: 'fail', figure: inches('6') },
    ]);
    // What the fold language makes of itself, where nothing is written, is no word of the maker's.
    const made = poses.map((one) => (one.name === 'all-shut' ? { ...one, path: 'poses' } : one));
    expect(outcomes('joins-agree', fold({ ...BRIDGE, poses: made }))).toEqual(['agree']);
  });

  it('asks about foam in a ring', () => {
    const [first, second] = explosionInsert().joins as readonly GlueJoin[];
    if (!first || !second) throw new Error('two joins');
    const folded = fold({ ...explosionInsert(), joins: [{ ...first, foam: inches('1/8') }, second] });
    expect(outcomes('joins-agree', folded)).toEqual(['agree', 'foam-in-ring insert.left']);
  });
});

describe('closes-flat, joined', () => {
  it.each(VIEWS)('counts the plies of what is joined: $view', ({ of }) => {
    expect(found('closes-flat', fold(of(BRIDGE)))).toMatchObject([{ outcome: 'flat', figure: 4 }]);
    expect(found('closes-flat', fold(of(SPINNER)))).toMatchObject([{ outcome: 'flat', figure: 3 }]);
  });

  it.each(VIEWS)('passes a box that is posted standing, and says how deep it is: $view', ({ of, view }) => {
    expect(found('closes-flat', fold(of(LIDDED)))).toMatchObject([
      { outcome: 'box', state: 'pass', figure: length('3', view) },
    ]);
    expect(found('closed-size', fold(of(LIDDED)))).toMatchObject([{ outcome: 'box', figure: length('3', view) }]);
    expect(found('fits-envelope', fold(of(LIDDED)))).toMatchObject([{ outcome: 'box', state: 'untested' }]);
  });

  it('does not try a pose that leaves a crease to be solved', () => {
    expect(found('closes-flat', fold(shutAs('display', BRIDGE)))).toMatchObject([
      { outcome: 'not-known', state: 'untested', witness: 'inner' },
    ]);
  });

  it.each(VIEWS)('refuses a mat glued across the spine: $view', ({ of }) => {
    const mat = piece('mat', ['3'], ['3']);
    const joins = [glue([ref('mat'), at('0', '0')], [ref('base.front'), at('2', '1')])];
    const folded = fold(of(card([BASE, mat], { joins })));
    expect(found('closes-flat', folded)).toMatchObject([{ state: 'fail' }]);
    expect(said('closes-flat', folded)).toContain('`base` does not fold flat');
  });

  it.each(VIEWS)('names the creases at a point that cannot fold, in plain words: $view', ({ of }) => {
    const [base, insert] = explosionInsert().pieces;
    if (!base || !insert) throw new Error('two pieces');
    const lines = insert.lines.map((one) => (one.name === 'half' ? { ...one, folds: ['valley' as const] } : one));
    const folded = fold(of({ ...explosionInsert(), pieces: [base, { ...insert, lines }] }));
    expect(found('closes-flat', folded)).toMatchObject([{ outcome: 'point-directions', state: 'fail' }]);
    for (const name of ['rising', 'falling', 'half']) expect(said('closes-flat', folded)).toContain(`\`${name}\``);
  });
});

describe('closed-size, joined', () => {
  it.each(VIEWS)('measures what sticks out past the first piece, and on which side: $view', ({ of, view }) => {
    const folded = fold(of(BRIDGE));
    expect(found('closed-size', folded)).toMatchObject([
      { outcome: 'sticks-out', state: 'question', figure: length('3', view) },
    ]);
  });

  it.each(VIEWS)('takes the panels that the card says it closes within: $view', ({ of }) => {
    const within = [ref('base.back'), ref('bridge.end'), ref('ornament')];
    expect(outcomes('closed-size', fold(of({ ...BRIDGE, closesWithin: within })))).toEqual([
      'within base.back and bridge.end and ornament',
    ]);
  });

  it.each(VIEWS)('knows a front that is turned over because like sides were glued: $view', ({ of, view }) => {
    const front = piece('front', ['4 1/4'], ['5 1/2']);
    const laid = { line: 'left', along: 'left', after: inches('0') };
    // Back to back, the left edge along the left edge: the front lands beyond it.
    const joins = [
      glue([ref('front'), at('0', '0')], [ref('base.front'), at('0', '0')], {
        partSide: 'back',
        ontoSide: 'back',
        laid,
      }),
    ];
    const folded = fold(of(card([BASE, front], { joins })));
    const [finding, ...more] = found('closed-size', folded);
    expect(more).toEqual([]);
    expect(finding).toMatchObject({ outcome: 'turned-over', state: 'fail', figure: length('4 1/4', view) });
    expect(said('closed-size', folded)).toContain('leave out `back of`');
    const right = [
      glue([ref('front'), at('0', '0')], [ref('base.front'), at('0', '0')], {
        partSide: 'face',
        ontoSide: 'back',
        laid,
      }),
    ];
    expect(outcomes('closed-size', fold(of(card([BASE, front], { joins: right }))))).toEqual(['within base']);
  });

  it.each(VIEWS)('is the size of the whole body that a promise is held against: $view', ({ of, view }) => {
    const promised = { width: length('9', view), height: length('5', view), place: PLACE, path: 'finished' };
    const turned = { ...promised, width: promised.height, height: promised.width };
    const each = [promised, turned].map((one) => outcomes('closed-size', fold(of(BRIDGE), { promised: one })).at(-1));
    expect(each.sort()).toEqual(['as-promised', 'turned']);
  });
});

describe('lines-on-paper', () => {
  const sheet = piece('sheet', ['4'], ['6']);
  const slit = line('slit', at('1', '1'), at('3', '1'), [], { does: 'cut' });

  it('leaves lines alone that lie on their paper', () => {
    const made = card([withLines(sheet, slit, line('half', at('0', '3'), at('4', '3'), ['valley']))]);
    expect(found('lines-on-paper', fold(made))).toMatchObject([{ outcome: 'on-paper', state: 'pass', figure: 2 }]);
    expect(found('lines-on-paper', fold(card([sheet])))).toEqual([]);
  });

  it.each(VIEWS)('catches a cut that is off the paper, and a crease that divides nothing: $view', ({ of }) => {
    const off = withLines(sheet, line('slit', at('5', '1'), at('7', '1'), [], { does: 'cut' }));
    expect(outcomes('lines-on-paper', fold(of(card([off]))))).toEqual(['off-paper slit']);
    const short = withLines(sheet, line('half', at('0', '3'), at('2', '3'), ['valley']));
    expect(outcomes('lines-on-paper', fold(of(card([short]))))).toEqual(['divides-nothing half']);
    expect(said('lines-on-paper', fold(of(card([short]))))).toContain('Nothing folds along `half`');
  });

  it('leaves bands that do not fit to the check of scores', () => {
    const off = card([piece('base', ['front 9', 'valley spine', 'back -1'], ['5'])]);
    expect(found('lines-on-paper', fold(off))).toEqual([]);
    expect(found('scores-inside', fold(off))).toMatchObject([{ state: 'fail' }]);
  });
});

describe('joins-found', () => {
  const mat = piece('mat', ['3'], ['4']);

  it('counts joins whose panels are there', () => {
    expect(found('joins-found', fold(BRIDGE))).toMatchObject([{ outcome: 'found', state: 'pass', figure: 3 }]);
    expect(found('joins-found', fold(card([BASE])))).toEqual([]);
  });

  it('names what is no panel, and the choices where there are several', () => {
    const joins = [
      glue([ref('mat'), at('0', '0')], [ref('base.side'), at('0', '0')]),
      glue([ref('mat'), at('0', '0')], [ref('base'), at('0', '0')], { turn: HALF_TURN }),
      glue([ref('mat'), at('0', '0')], [ref('mat'), at('1', '0')]),
    ];
    const folded = fold(card([BASE, mat], { joins }));
    expect(outcomes('joins-found', folded)).toEqual(['no-panel base.side', 'which-panel base', 'to-itself mat']);
    expect(said('joins-found', folded)).toContain('can mean `base.front` and `base.back`');
  });

  it('looks at the ground of poses and at the cover as well', () => {
    const shut = { ...pose('closed', [BASE]), ground: ref('base.side') };
    const folded = fold(card([BASE], { poses: [shut], closesWithin: [ref('lid')] }));
    expect(outcomes('joins-found', folded)).toEqual(['no-panel base.side', 'no-panel lid']);
  });
});
