import Fraction from 'fraction.js';
import {
  type Band,
  type Card,
  type Crease,
  type FoldDirection,
  type FoldedCard,
  foldCard,
  Length,
  type Outline,
  type PaperInUse,
  type Piece,
  type Place,
  type Pose,
  type RecipeStep,
  type System,
} from '../../../plugins/engine/index.ts';

/** One side of a piece: `['4 1/4']`, or bands and creases in turn as `['front 4 1/4', 'valley spine', 'back 4 1/4']`. */
export type Side = readonly string[];

export const PLACE: Place = { file: 'invented.md', line: 7, column: 3 };

export function inches(text: string): Length {
  return Length.fromInches(text);
}

export function mm(value: string | number): Length {
  return Length.fromMm(value);
}

/** A piece written by hand, without the fold language. `unit` reads the numbers; inches unless given. */
export function piece(name: string, across: Side, down: Side, unit: (text: string) => Length = inches): Piece {
  const columns = bandsOf(across, unit);
  const rows = bandsOf(down, unit);
  const path = `pieces.${name}`;
  return {
    name,
    width: Length.sum(columns.map(({ size }) => size)),
    height: Length.sum(rows.map(({ size }) => size)),
    declared: undefined,
    columns,
    rows,
    creases: [...creasesOf(across, columns, 'down', path), ...creasesOf(down, rows, 'across', path)],
    outline: rectangle(Length.sum(columns.map(({ size }) => size)), Length.sum(rows.map(({ size }) => size))),
    lines: [],
    windows: [],
    away: [],
    shapes: [],
    spots: [],
    thick: undefined,
    stock: 'cover',
    grain: undefined,
    place: PLACE,
    path,
  };
}

/** The edge of a rectangle, clockwise on the drawing from its top left corner. */
export function rectangle(width: Length, height: Length): Outline {
  const nought = new Fraction(0);
  const corners = [
    { x: nought, y: nought },
    { x: width.mm, y: nought },
    { x: width.mm, y: height.mm },
    { x: nought, y: height.mm },
  ];
  return corners.map((from, i) => ({ is: 'line' as const, from, to: corners[(i + 1) % 4] ?? from }));
}

function bandsOf(side: Side, unit: (text: string) => Length): Band[] {
  let start = Length.zero;
  return side
    .filter((_, i) => i % 2 === 0)
    .map((text) => {
      const named = /^([a-z][a-z0-9-]*) (.*)$/.exec(text);
      const size = unit(named?.[2] ?? text);
      const band = { name: named?.[1], start, size, exact: size, place: PLACE, path: '' };
      start = start.plus(size);
      return band;
    });
}

function creasesOf(side: Side, bands: readonly Band[], runs: Crease['runs'], path: string): Crease[] {
  return side
    .filter((_, i) => i % 2 === 1)
    .map((text, i) => {
      const [fold = '', name] = text.split(' ');
      const unnamed = `${bands[i]?.name}|${bands[i + 1]?.name}`;
      const at = bands[i + 1]?.start ?? Length.zero;
      return { name: name ?? unnamed, runs, at, fold: fold as FoldDirection, place: PLACE, path };
    });
}

export function card(pieces: readonly Piece[], more: Partial<Card> = {}): Card {
  const system: System = more.system ?? 'inch';
  return {
    name: 'Invented card',
    system,
    mark: system === 'inch' ? Length.fromInches('1/16') : Length.fromMm('1/2'),
    parameters: [],
    pieces,
    joins: [],
    fillings: [],
    poses: [pose('closed', pieces)],
    motions: [],
    actsAs: undefined,
    posts: 'closed',
    closesWithin: [],
    requirements: [],
    equalities: [],
    coats: [],
    work: [],
    lesson: [],
    place: PLACE,
    ...more,
  };
}

/** Every crease shut but those named, band creases and lines alike. */
export function pose(name: string, pieces: readonly Piece[], flat: readonly string[] = []): Pose {
  const turn = (crease: string): number => (flat.includes(crease) ? 0 : 180);
  return posed(
    name,
    pieces.flatMap((one) => creaseNames(one).map((crease) => ({ piece: one.name, crease, turn: turn(crease) }))),
  );
}

/** A pose that says just this of creases. */
export function posed(name: string, turns: Pose['turns'], more: Partial<Pose> = {}): Pose {
  return {
    name,
    turns,
    slides: [],
    pins: [],
    ground: undefined,
    stands: [],
    rests: false,
    aside: [],
    place: PLACE,
    path: `poses.${name}`,
    ...more,
  };
}

function creaseNames(one: Piece): string[] {
  const lines = one.lines.filter(({ does }) => does === 'crease');
  return [...one.creases, ...lines].map(({ name }) => name);
}

/** A recipe step as it reads: sheet, the side it is scored along, and scores as `2 3/4 mountain`. */
export function step(
  width: string,
  height: string,
  along: RecipeStep['along'],
  scores: readonly string[],
  unit: (text: string) => Length = inches,
): RecipeStep {
  return {
    piece: undefined,
    width: unit(width),
    height: unit(height),
    along,
    alongFits: true,
    alongText: undefined,
    scores: scores.map((text) => {
      const mountain = text.endsWith(' mountain');
      const at = unit(text.replace(' mountain', ''));
      return { at, fold: mountain ? ('mountain' as const) : ('valley' as const), place: PLACE };
    }),
    place: PLACE,
    path: 'recipe[0]',
  };
}

export function fold(made: Card, paper: Partial<PaperInUse> = {}): FoldedCard {
  return foldCard(made, {
    envelope: undefined,
    clearance: Length.fromInches('1/8'),
    sheets: {},
    promised: undefined,
    ...paper,
  });
}
