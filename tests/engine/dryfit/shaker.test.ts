import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { Length, type Material, type Materials } from '../../../plugins/engine/index.ts';
import { type Design, folded, type LayeredPiece, paper, sayWay, WAYS } from '../support/layered-design.ts';
import { found, lengthIn, outcomes, said } from './found.ts';

const SIXTEENTH = Length.fromInches('1/16');

function beads(mm: string): Material {
  return { name: `beads of ${mm} mm`, sort: 'filler', bead: Length.fromMm(mm), density: new Fraction('1.5') };
}

function stock(more: Materials = {}): Materials {
  return {
    cover: paper('0.28', 270),
    film: paper('0.15', 200, { sort: 'film' }),
    foam: { name: 'foam tape', sort: 'foam', height: SIXTEENTH, density: new Fraction('0.08') },
    beads: beads('2'),
    ...more,
  };
}

interface Shaker {
  readonly foam?: number;
  readonly ring?: Partial<LayeredPiece>;
  readonly film?: Partial<LayeredPiece>;
  readonly frame?: Partial<LayeredPiece>;
  readonly stack?: readonly string[];
  readonly layers?: string;
}

/** A frame of 4 1/4 x 5 1/2 in over a chamber of 3 x 4 1/4 in. */
function shaker({ foam = 0.125, ring, film, frame, stack, layers }: Shaker = {}): Design {
  return {
    pieces: [
      { name: 'backing', across: 4.25, down: 5.5 },
      {
        ...{ name: 'ring', across: 4, down: 5.25, windows: { chamber: [0.5, 0.5, 3, 4.25] }, stock: 'foam' },
        ...{ thick: foam, ...ring },
      },
      { name: 'film', across: 3.75, down: 5, stock: 'film', ...film },
      { name: 'frame', across: 4.25, down: 5.5, windows: { view: [0.75, 0.75, 2.75, 4] }, ...frame },
    ],
    stack: stack ?? ['backing', 'ring', 'film', 'frame'],
    more: 'fill: { beads: { in: ring.chamber, stock: beads } }',
    ...(layers !== undefined && { layers }),
  };
}

const POWDERED = '- { on: film, lay: [{ with: pouch, as: anti-static }] }';

describe.each(WAYS.map((way) => ({ way, title: sayWay(way) })))('a shaker, $title', ({ way }) => {
  const check = (design: Design, materials = stock()) => outcomes('shaker', folded(design, way, materials));

  it('of two layers of foam and beads of 2 mm moves, is closed and is filled in order', () => {
    const card = folded(shaker({ layers: POWDERED }), way, stock());
    expect(outcomes('shaker', card)).toEqual(['moves beads', 'closed film', 'in-order pouch']);
    const [moves, closed] = found('shaker', card);
    // 2 x 1/16 in = 3.175 mm of depth
    expect(lengthIn(moves).mm.toString()).toBe('3.175');
    expect(lengthIn(moves, 'free').mm.toString()).toBe('1.175');
    // Walls: (4 - 3)/2 in; the film, 3 3/4 x 5 in, reaches 3/8 in past 3 x 4 1/4.
    expect(lengthIn(closed, 'wall').toMm()).toBeCloseTo(12.7, 6);
    expect(lengthIn(closed, 'margin').toMm()).toBeCloseTo(9.525, 6);
  });

  it('of one layer of foam and beads too large is refused, with the number of layers that would do', () => {
    const one = shaker({ foam: 0.0625 });
    const card = folded(one, way, stock());
    expect(outcomes('shaker', card)).toContain('jams beads');
    const [jams] = found('shaker', card);
    expect(jams?.state).toBe('fail');
    // 2 mm and 1/32 in (0.8 mm in millimetres) of clearance are more than 1.5875 mm and less than twice that.
    expect(jams?.facts).toMatchObject({ now: 1, layers: 2 });
    expect(said('shaker', card)).toMatch(
      /2 layers of foam of (?:1\/16 in|about 1\.6 mm) instead of 1, or smaller beads\. Two are usual/,
    );
    // Just so many do: one fewer is refused, and as many move.
    expect(check(shaker({ foam: 0.125 }))).toContain('moves beads');
    const large = folded(one, way, stock({ beads: beads('4.5') }));
    expect(found('shaker', large)[0]?.facts.layers).toBe(4);
    expect(check(shaker({ foam: 0.1875 }), stock({ beads: beads('4.5') }))).toContain('tight beads');
    expect(check(shaker({ foam: 0.25 }), stock({ beads: beads('4.5') }))).toContain('moves beads');
  });

  it('asks where the beads go in with too little to spare, and where nobody measured them', () => {
    const card = folded(shaker(), way, stock({ beads: beads('2.6') }));
    expect(outcomes('shaker', card)).toContain('tight beads');
    expect(found('shaker', card)[0]?.state).toBe('question');
    const { bead: _bead, ...unmeasured } = beads('2');
    expect(check(shaker(), stock({ beads: unmeasured }))).toContain('bead-unknown beads');
    expect(found('shaker', folded(shaker(), way, {}))[0]).toMatchObject({ outcome: 'bead-unknown', state: 'untested' });
  });

  it('without a film falls open, and with one too small in part', () => {
    expect(check(shaker({ stack: ['backing', 'ring', 'frame'] }))).toContain('open-in-part frame');
    expect(check(shaker({ stack: ['backing', 'ring'] }))).toContain('open ring');
    expect(check(shaker({ film: { across: 2, down: 5 } }))).toContain('open-in-part film');
    expect(check(shaker({ stack: ['ring', 'film', 'frame'] }))).toContain('open ring');
  });

  it('has no chamber where its window runs over the edge of its piece', () => {
    const through = { windows: { chamber: [-0.5, 0.5, 5, 4.25] as const } };
    expect(check(shaker({ ring: through }))).toEqual(['no-chamber chamber']);
  });

  it('says where walls and film are too narrow to stick', () => {
    const thin = { windows: { chamber: [0.0625, 0.0625, 3.875, 5.125] as const } };
    const wide = { across: 4.25, down: 5.5 };
    expect(check(shaker({ ring: thin, film: wide }))).toContain('narrow-wall ring');
    const small = folded(shaker({ film: { across: 3.125, down: 4.375 } }), way, stock());
    expect(outcomes('shaker', small)).toContain('narrow-margin film');
    expect(lengthIn(found('shaker', small).find(({ outcome }) => outcome === 'narrow-margin')).toMm()).toBeCloseTo(
      1.5875,
      6,
    );
    const view = { windows: { view: [0.125, 0.125, 4, 5.25] as const } };
    expect(check(shaker({ frame: view }))).toContain('frame-past-film frame');
  });

  it('asks for powder, and refuses powder and filling that come too late', () => {
    expect(check(shaker())).toContain('no-powder beads');
    const late = `- { fill: beads }\n${POWDERED}`;
    expect(check(shaker({ layers: late }))).toContain('powder-late pouch');
    const shut = `${POWDERED}\n- { glue: film }\n- { fill: beads }`;
    const card = folded(shaker({ layers: shut }), way, stock());
    expect(outcomes('shaker', card)).toContain('filled-late film');
    expect(found('shaker', card).find(({ outcome }) => outcome === 'filled-late')?.path).toBe('layers[2]');
    const right = `${POWDERED}\n- { glue: ring }\n- { fill: beads }\n- { glue: film }`;
    expect(check(shaker({ layers: right }))).toContain('in-order pouch');
  });

  it('knows a frame that stands on foam itself, with its film behind it', () => {
    const design: Design = {
      pieces: [
        { name: 'base', across: 4.25, down: 5.5 },
        { name: 'frame', across: 4, down: 5.25, windows: { view: [0.5, 0.5, 3, 4.25] } },
        { name: 'film', across: 3.5, down: 4.75, stock: 'film' },
      ],
      joins: [
        { part: 'face of film', onto: 'back of frame' },
        { part: 'frame', onto: 'base', foam: 0.0625, layers: 2 },
      ],
      more: 'fill: { beads: { in: frame.view, stock: beads } }',
    };
    const card = folded(design, way, stock());
    expect(outcomes('shaker', card)).toEqual(['moves beads', 'closed film', 'no-powder beads']);
    // Two layers of 1/16 in, less the film of 0.15 mm that lies within.
    expect(lengthIn(found('shaker', card)[0]).mm.toString()).toBe('3.025');
  });
});

describe('the order of work', () => {
  it('keeps the coats as they are written, fills before the film, and makes the joins in the order of the file', () => {
    const layers = `
- { on: backing, lay: [{ with: dusk-ink, as: ink }, { with: reed-stencil, through: true, and: sand-ink, as: ink }] }
${POWDERED}`;
    const [way] = WAYS;
    if (way === undefined) throw new Error('no way');
    const { work } = folded(shaker({ layers }), way, stock());
    const steps = work.steps.map((step) => {
      if (step.is === 'coat') return step.coat.items.map((item) => item.with).join(' then ');
      return step.is === 'fill' ? `fill ${step.filling.name}` : step.join.text;
    });
    expect(steps).toEqual([
      'dusk-ink then sand-ink',
      'pouch',
      'ring onto backing',
      'fill beads',
      'film onto ring',
      'frame onto film',
    ]);
  });
});
