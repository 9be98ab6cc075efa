import Fraction from 'fraction.js';
import {
  circle,
  ellipse,
  type Outline,
  onGrid,
  type PathEdge,
  type Point,
  rectangle,
  roundedRectangle,
} from '../../../plugins/engine/geometry/index.ts';
import {
  type CreaseFold,
  Length,
  type Line,
  type LineWork,
  type Piece,
  type System,
} from '../../../plugins/engine/index.ts';
import { pieceOf, type Side } from './pieces.ts';

const place = { file: 'invented.md', line: 1, column: 1 };
const origin = { place, path: '' };

/** Measures of a shaped piece: inches, or the 24 mm that stand for one in the metric twin. */
export type Measure = (amount: string) => Fraction;

/** A piece with all that may lie on one, in both systems. */
export interface ShapedCase {
  readonly name: string;
  readonly piece: (system: System) => Piece;
}

function measureIn(system: System): Measure {
  return (amount) =>
    system === 'inch' ? Length.fromInches(amount).mm : Length.fromMm(new Fraction(amount).mul(24)).mm;
}

function shaped(name: string, make: (m: Measure, at: (x: string, y: string) => Point) => Piece): ShapedCase {
  return {
    name,
    piece: (system) => {
      const m = measureIn(system);
      return make(m, (x, y) => ({ x: m(x), y: m(y) }));
    },
  };
}

const long = (mm: Fraction): Length => Length.fromMm(mm);

/** A line of a piece; a crease folds `folds`. */
export function lineOf(name: string, does: LineWork, from: Point, to: Point, folds: readonly CreaseFold[] = []): Line {
  const family = name.replace(/\(.*/, '');
  return {
    name,
    family,
    does,
    from,
    to,
    folds: does === 'crease' && folds.length === 0 ? ['valley'] : folds,
    ...origin,
  };
}

/** From a point so far in a direction, as an angle leaves it: rounded. */
function off(from: Point, degrees: number, by: number): Point {
  const radians = (degrees * Math.PI) / 180;
  return {
    x: from.x.add(onGrid(by * Math.cos(radians))),
    y: from.y.add(onGrid(by * Math.sin(radians))),
    rounded: true,
  };
}

const region = (name: string, outline: Outline): Piece['windows'][number] => ({ name, outline, ...origin });

function cells(piece: Piece, m: Measure, wall: string, floor: string): Piece['windows'] {
  const far = m(wall).add(m(floor));
  return [
    ['left.head', new Fraction(0), new Fraction(0)],
    ['right.head', far, new Fraction(0)],
    ['left.foot', new Fraction(0), far],
    ['right.foot', far, far],
  ]
    .map(([name, x, y]) => region(`${name}`, rectangle(x as Fraction, y as Fraction, m(wall), m(wall))))
    .slice(0, piece.columns.length > 1 ? 4 : 0);
}

function boxSide(m: Measure, wall: string, floor: string, names: readonly [string, string]): Side {
  return [
    [names[0], long(m(wall))],
    ['middle', long(m(floor))],
    [names[1], long(m(wall))],
  ];
}

export const SHAPED: readonly ShapedCase[] = [
  shaped('a slit and part creases', (m, at) => ({
    ...pieceOf('sheet', long(m('12')), long(m('7')), 'down'),
    lines: [
      lineOf('slit(1)', 'cut', at('2', '3/2'), at('10', '3/2')),
      lineOf('slit(2)', 'cut', at('2', '11/2'), at('10', '11/2')),
      lineOf('outer(1)', 'crease', at('2', '0'), at('2', '7'), ['valley', 'mountain', 'valley']),
      lineOf('outer(2)', 'crease', at('10', '0'), at('10', '7'), ['valley', 'mountain', 'valley']),
      lineOf('inner(1)', 'crease', at('4', '0'), at('4', '7'), ['mountain', 'valley', 'mountain']),
      lineOf('inner(2)', 'crease', at('8', '0'), at('8', '7'), ['mountain', 'valley', 'mountain']),
    ],
  })),
  shaped('a circle that swings', (m, at) => {
    const piece = pieceOf(
      'card',
      [
        ['flap', long(m('11/4'))],
        ['strip', long(m('11/8')), 'mountain', 'swing'],
        ['back', long(m('33/8')), 'valley', 'spine'],
      ],
      long(m('11/2')),
      'down',
    );
    return { ...piece, shapes: [{ ...region('disc', circle(at('11/4', '11/4'), m('5/4'))), staysWith: 'strip' }] };
  }),
  shaped('angled marks', (m, at) => ({
    ...pieceOf(
      'base',
      [
        ['left', long(m('17/4'))],
        ['right', long(m('17/4')), 'valley', 'spine'],
      ],
      long(m('11/2')),
      'down',
    ),
    lines: [
      lineOf('line-left', 'mark', at('17/4', '2'), off(at('17/4', '2'), 140, 50.8)),
      lineOf('line-right', 'mark', at('17/4', '2'), off(at('17/4', '2'), 40, 50.8)),
    ],
  })),
  shaped('creases that meet at a point', (m, at) => {
    const foot = (degrees: number): Point => off(at('2', '5/2'), degrees, m('2').valueOf() / Math.cos(Math.PI / 9));
    return {
      ...pieceOf('pop', long(m('4')), long(m('5/2'))),
      lines: [
        lineOf('ridge', 'crease', at('2', '0'), at('2', '5/2')),
        lineOf('foot-left', 'crease', at('2', '5/2'), foot(200), ['mountain']),
        lineOf('foot-right', 'crease', at('2', '5/2'), foot(-20), ['mountain']),
      ],
    };
  }),
  shaped('creases from corner to corner', (m, at) => ({
    ...pieceOf('insert', long(m('11/2')), long(m('11/2'))),
    lines: [
      lineOf('falling', 'crease', at('0', '0'), at('11/2', '11/2')),
      lineOf('rising', 'crease', at('0', '11/2'), at('11/2', '0')),
      lineOf('half', 'crease', at('11/4', '0'), at('11/4', '11/2'), ['mountain']),
    ],
  })),
  shaped('a disc with a crease', (m, at) => ({
    ...pieceOf('disc(1)', long(m('2')), long(m('2'))),
    outline: circle(at('1', '1'), m('1')),
    lines: [lineOf('fold', 'crease', at('1', '0'), at('1', '2'))],
  })),
  shaped('a plain disc', (m, at) => ({
    ...pieceOf('charm', long(m('3/2')), long(m('3/2'))),
    outline: circle(at('3/4', '3/4'), m('3/4')),
  })),
  shaped('a frame', (m) => ({
    ...pieceOf('frame', long(m('17/4')), long(m('11/2')), 'down'),
    windows: [region('window', rectangle(m('3/4'), m('3/4'), m('11/4'), m('4')))],
  })),
  shaped('a ring of foam', (m) => ({
    ...pieceOf('ring', long(m('4')), long(m('21/4'))),
    windows: [region('chamber', rectangle(m('1/2'), m('1/2'), m('3'), m('17/4')))],
    stock: 'foam',
    thick: long(m('1/8')),
  })),
  shaped('corners cut away', (m) => {
    const piece = pieceOf('layer(1)', boxSide(m, '4', '4', ['left', 'right']), boxSide(m, '4', '4', ['head', 'foot']));
    return { ...piece, away: cells(piece, m, '4', '4') };
  }),
  shaped('corners cut loose', (m, at) => {
    const piece = pieceOf(
      'lid',
      boxSide(m, '3/2', '65/16', ['left', 'right']),
      boxSide(m, '3/2', '65/16', ['head', 'foot']),
    );
    const far = '89/16';
    return {
      ...piece,
      lines: [
        lineOf('left.head', 'cut', at('3/2', '0'), at('3/2', '3/2')),
        lineOf('right.head', 'cut', at(far, '0'), at(far, '3/2')),
        lineOf('left.foot', 'cut', at('3/2', far), at('3/2', '113/16')),
        lineOf('right.foot', 'cut', at(far, far), at(far, '113/16')),
      ],
    };
  }),
  shaped('a perforated stub, worked both ways', (m, at) => ({
    ...pieceOf('ticket', long(m('6')), long(m('3'))),
    lines: [
      lineOf('tear', 'perforation', at('1', '0'), at('1', '3')),
      lineOf('hinge', 'crease', at('3', '0'), at('3', '3'), ['both']),
    ],
  })),
  shaped('round windows and round corners', (m, at) => ({
    ...pieceOf('mat', long(m('5')), long(m('4'))),
    outline: roundedRectangle(new Fraction(0), new Fraction(0), m('5'), m('4'), m('1/2')),
    windows: [
      region('porthole', circle(at('3/2', '2'), m('3/4'))),
      region('oval', ellipse(at('7/2', '2'), m('3/4'), m('5/4'))),
      region('eyelet', circle(at('5/2', '1/2'), m('1/8'))),
    ],
  })),
  shaped('an outline of lines and arcs', (m, at) => {
    const tag: PathEdge[] = [
      { is: 'line', from: at('0', '2'), to: at('3/2', '0') },
      { is: 'line', from: at('3/2', '0'), to: at('4', '0') },
      {
        is: 'arc',
        from: at('4', '0'),
        to: at('4', '4'),
        centre: at('4', '2'),
        rx: m('2'),
        ry: m('2'),
        clockwise: true,
      },
      { is: 'line', from: at('4', '4'), to: at('3/2', '4') },
      { is: 'line', from: at('3/2', '4'), to: at('0', '2') },
    ];
    return {
      ...pieceOf('tag', long(m('6')), long(m('4'))),
      outline: tag,
      windows: [region('hole', circle(at('1', '2'), m('1/4')))],
      lines: [lineOf('fold', 'crease', at('3', '-1'), at('3', '5'))],
    };
  }),
  shaped('a notch and a window with a slanting side', (m, at) => ({
    ...pieceOf(
      'card',
      [
        ['front', long(m('4'))],
        ['back', long(m('4')), 'valley', 'spine'],
      ],
      long(m('5')),
    ),
    away: [region('notch', circle(at('0', '5/2'), m('1/2')))],
    windows: [
      region('kite', [
        { is: 'line', from: at('6', '1'), to: at('7', '5/2') },
        { is: 'line', from: at('7', '5/2'), to: at('6', '4') },
        { is: 'line', from: at('6', '4'), to: at('5', '5/2') },
        { is: 'line', from: at('5', '5/2'), to: at('6', '1') },
      ]),
    ],
  })),
];
