import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import {
  assemble,
  centreOfMass,
  closedPoses,
  type FoldedCard,
  GRADES,
  gramsPerSquareMetre,
  isKnown,
  Length,
  type Materials,
  massOf,
  panelsOf,
  poundsOf,
} from '../../../plugins/engine/index.ts';
import { areaLeft, areaShared } from '../../oracles/clipped-areas.ts';
import { type Box, type Design, folded, made, paper, sayWay, WAYS, type Way } from '../support/layered-design.ts';

const INCH: Way = { turned: false, mirrored: false, system: 'inch' };
const MM = 25.4;

const STOCK: Materials = {
  cover: paper('0.28', 270),
  mat: paper('0.2', 160),
  film: paper('0.15', 200, { sort: 'film' }),
  foam: { name: 'foam tape', sort: 'foam', height: Length.fromInches('1/16'), density: new Fraction('0.08') },
  glue: paper('0.05', 50, { sort: 'adhesive' }),
  beads: { name: 'seed beads', sort: 'filler', bead: Length.fromMm(2), density: new Fraction('1.5') },
  charm: { name: 'a charm', sort: 'ornament', height: Length.fromMm(3), mass: new Fraction('2.5') },
};

function corners([x, y, w, h]: Box): (readonly [number, number])[] {
  const at = (a: number, b: number) => [a * MM, b * MM] as const;
  return [at(x, y), at(x + w, y), at(x + w, y + h), at(x, y + h)];
}

function gramsOfPiece({ mass, assembly }: FoldedCard, piece: string): number {
  return mass.parts
    .filter((part) => part.is === 'panel' && assembly.panels.get(part.panel)?.piece === piece)
    .reduce((sum, { grams }) => sum + (grams?.valueOf() ?? Number.NaN), 0);
}

describe('published weights', () => {
  it.each(GRADES.map(({ id, basicSheet }) => ({ id, basicSheet })))(
    'basis sheets: 500 basic sheets of 80 lb $id weigh 80 lb',
    ({ id, basicSheet: [short, long] }) => {
      const design: Design = { pieces: [{ name: 'sheet', across: short.valueOf(), down: long.valueOf() }] };
      const { mass } = folded(design, INCH, { cover: paper('0.25', 1, { grammage: gramsPerSquareMetre(80, id) }) });
      expect(mass.grams.mul(500).div('453.59237').toString()).toBe('80');
    },
  );

  it('1959 agreement: a Letter sheet of 100 lb cover is 93.5/520 of a five-hundredth of 100 lb', () => {
    const { mass } = folded({ pieces: [{ name: 'sheet', across: 8.5, down: 11 }] }, INCH, {
      cover: paper('0.28', 1, { grammage: gramsPerSquareMetre(100, 'cover') }),
    });
    const sheet = new Fraction('453.59237').mul(100).div(500).mul('93.5').div(520);
    expect(mass.grams.equals(sheet)).toBe(true);
    expect(poundsOf(gramsPerSquareMetre(100, 'cover'), 'cover').toString()).toBe('100');
  });
});

describe.each(WAYS.map((way) => ({ way, title: sayWay(way) })))('mass, $title', ({ way }) => {
  const shaker: Design = {
    pieces: [
      { name: 'backing', across: 4.25, down: 5.5 },
      { name: 'ring', across: 4, down: 5.25, windows: { chamber: [0.5, 0.5, 3, 4.25] }, stock: 'foam', thick: 0.125 },
      { name: 'film', across: 3.75, down: 5, stock: 'film' },
      { name: 'frame', across: 4.25, down: 5.5, windows: { view: [0.75, 0.75, 2.75, 4] } },
      { name: 'charm', across: 0.5, down: 0.5, stock: 'charm' },
    ],
    stack: ['backing', 'ring', 'film', 'frame'],
    joins: [{ part: 'charm', onto: 'frame', at: [0.125, 0.125, 0.5, 0.5] }],
    panels: { frame: [4.25, 5.5] },
    more: 'fill: { beads: { in: ring.chamber, stock: beads, full: 1/3 } }',
  };
  const card = folded(shaker, way, STOCK);

  it('every piece weighs its area after the cut-outs, foam its room, an ornament what it was weighed as', () => {
    const square = (box: Box, ...windows: Box[]): number => areaLeft(corners(box), windows.map(corners));
    expect(gramsOfPiece(card, 'backing')).toBeCloseTo((square([0, 0, 4.25, 5.5]) * 270) / 1e6, 9);
    expect(gramsOfPiece(card, 'film')).toBeCloseTo((square([0, 0, 3.75, 5]) * 200) / 1e6, 9);
    const frame = square([0, 0, 4.25, 5.5], [0.75, 0.75, 2.75, 4]);
    expect(gramsOfPiece(card, 'frame')).toBeCloseTo((frame * 270) / 1e6, 9);
    const ring = square([0, 0, 4, 5.25], [0.5, 0.5, 3, 4.25]);
    expect(gramsOfPiece(card, 'ring')).toBeCloseTo((ring * 3.175 * 0.08) / 1000, 9);
    expect(gramsOfPiece(card, 'charm')).toBe(2.5);
  });

  it('beads weigh the third of their chamber that they fill, or what was weighed', () => {
    const beads = (one: FoldedCard) => one.mass.parts.find(({ is }) => is === 'filling')?.grams?.valueOf();
    expect(beads(card)).toBeCloseTo((3 * 4.25 * MM * MM * 3.175 * 1.5) / 3 / 1000, 9);
    const weighed = { ...shaker, more: 'fill: { beads: { in: ring.chamber, stock: beads, mass: 1/10 oz } }' };
    expect(beads(folded(weighed, way, STOCK))).toBeCloseTo(2.8349523125, 12);
  });

  it('the whole is the sum of its parts, glue where two papers share an area among them', () => {
    const glue = card.mass.parts.filter(({ is }) => is === 'glue');
    expect(glue.map(({ name }) => name).sort()).toEqual(['charm onto frame', 'frame onto film']);
    const frame = glue.find(({ name }) => name === 'frame onto film')?.grams?.valueOf();
    // The film, 3/4 x 5 in, lies in the middle of the frame; the window takes its part.
    const shared = areaShared(corners([0.25, 0.25, 3.75, 5]), corners([0, 0, 4.25, 5.5])) - 2.75 * 4 * MM * MM;
    expect(frame).toBeCloseTo((shared * 50) / 1e6, 6);
    const sum = card.mass.parts.reduce((all, { grams }) => all + (grams?.valueOf() ?? Number.NaN), 0);
    expect(card.mass.grams.valueOf()).toBeCloseTo(sum, 9);
    expect(card.mass.unknown).toEqual([]);
    expect(card.mass.assumed).toEqual([]);
  });

  it('foam of a join weighs the room between the two', () => {
    const design: Design = {
      pieces: [
        { name: 'base', across: 4, down: 4 },
        { name: 'tile', across: 2, down: 1, stock: 'mat' },
      ],
      joins: [{ part: 'tile', onto: 'base', at: [3, 1, 2, 1], foam: 0.0625, layers: 2 }],
      panels: { base: [4, 4] },
    };
    const foam = folded(design, way, STOCK).mass.parts.find(({ is }) => is === 'foam');
    // An inch of the tile reaches past the base, and stands on nothing.
    expect(foam?.grams?.valueOf()).toBeCloseTo((1 * 1 * MM * MM * 3.175 * 0.08) / 1000, 6);
  });

  it('what nobody knows the weight of is named, and what is assumed too', () => {
    const bare = folded(shaker, way, { ...STOCK, cover: { name: 'a find', sort: 'paper' } });
    expect(bare.mass.unknown).toEqual(['cover']);
    const { glue: _glue, ...without } = STOCK;
    expect(folded(shaker, way, without).mass.assumed.map(({ role }) => role)).toEqual(['glue']);
  });
});

describe('centre of mass', () => {
  const LEAVES: Design = {
    pieces: [{ name: 'base', across: ['front 4', 'valley spine', 'back 6'], down: 5 }],
    more: 'poses: { closed: {}, half: { spine: 90 }, open: { all: flat } }',
  };

  function centreIn(design: Design, way: Way, pose: string, ground: string) {
    const card = made(design, way);
    const assembly = assemble(card, panelsOf(card));
    const stated = card.poses.find(({ name }) => name === pose);
    const [placed] = stated ? closedPoses(assembly, stated) : [];
    if (placed === undefined || !isKnown(placed)) throw new Error(`no pose ${pose}`);
    expect(placed.ground).toBe(ground);
    return centreOfMass(massOf(assembly, STOCK), placed.panels);
  }

  it('a leaf lies in its middle; two leaves have theirs between, by their areas', () => {
    // Open: the middle of 10 x 5. The ground is the larger leaf; x counts on the drawing.
    expect(centreIn(LEAVES, INCH, 'open', 'base.back')?.x).toBeCloseTo(5 * MM, 9);
    // Closed the front lies over the back, from 4 to 8: (7 x 30 + 6 x 20) / 50.
    const closed = centreIn(LEAVES, INCH, 'closed', 'base.back');
    expect(closed?.x).toBeCloseTo(((7 * 30 + 6 * 20) / 50) * MM, 9);
    expect(closed?.y).toBeCloseTo(-2.5 * MM, 9);
    expect(closed?.z).toBeCloseTo(0, 9);
    expect(closed?.grams).toBeCloseTo((50 * MM * MM * 270) / 1e6, 9);
    // Half open the front stands on the crease at 4, its middle 2 in up.
    const half = centreIn(LEAVES, INCH, 'half', 'base.back');
    expect(half?.x).toBeCloseTo(((7 * 30 + 4 * 20) / 50) * MM, 9);
    expect(half?.z).toBeCloseTo(((2 * 20) / 50) * MM, 9);
  });

  it('turns and mirrors with the drawing, and is the same in millimetres', () => {
    for (const way of WAYS) {
      const half = centreIn(LEAVES, way, 'half', 'base.back');
      const across = way.mirrored ? 10 - (7 * 30 + 4 * 20) / 50 : (7 * 30 + 4 * 20) / 50;
      // A quarter turn clockwise takes (x, y) to (5 - y, x), and y counts down the drawing.
      const [x, y] = way.turned ? [2.5, -across] : [across, -2.5];
      expect(half?.x).toBeCloseTo(x * MM, 9);
      expect(half?.y).toBeCloseTo(y * MM, 9);
      expect(half?.z).toBeCloseTo(0.8 * MM, 9);
    }
  });

  it('random tiles on a sheet have it where the sum of their moments says', () => {
    const tile = fc.record({
      left: fc.integer({ min: 0, max: 12 }),
      top: fc.integer({ min: 0, max: 12 }),
      wide: fc.integer({ min: 1, max: 8 }),
      high: fc.integer({ min: 1, max: 8 }),
    });
    fc.assert(
      fc.property(fc.array(tile, { minLength: 1, maxLength: 4 }), (tiles) => {
        const sheet: Box = [0, 0, 8, 8];
        const boxes = tiles.map(({ left, top, wide, high }): Box => [left / 2, top / 2, wide / 2, high / 2]);
        const design: Design = {
          pieces: [
            { name: 'sheet', across: 8, down: 8 },
            ...boxes.map(([, , w, h], i) => ({ name: `tile-${i}`, across: w, down: h, stock: 'mat' })),
          ],
          joins: boxes.map((at, i) => ({ part: `tile-${i}`, onto: 'sheet', at })),
          panels: { sheet: [8, 8] },
        };
        const { closed, mass } = folded(design, INCH, { ...STOCK, glue: paper('0', 0) });
        const centre = centreOfMass(mass, closed[0]?.pose?.panels ?? []);
        const all = [{ box: sheet, gsm: 270 }, ...boxes.map((box) => ({ box, gsm: 160 }))];
        const weight = ({ box, gsm }: (typeof all)[number]): number => areaLeft(corners(box), []) * gsm;
        const moment = (axis: 0 | 1): number =>
          all.reduce((sum, one) => sum + weight(one) * (one.box[axis] + (one.box[axis + 2] ?? 0) / 2), 0);
        const total = all.reduce((sum, one) => sum + weight(one), 0);
        expect(centre?.x).toBeCloseTo((moment(0) / total) * MM, 6);
        expect(centre?.y).toBeCloseTo((-moment(1) / total) * MM, 6);
        expect(centre?.grams).toBeCloseTo(total / 1e6, 6);
      }),
      { numRuns: 40, seed: 1606 },
    );
  });
});
