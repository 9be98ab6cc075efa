import type { Creased, Point } from '../../oracles/flat-foldings.ts';
import type { Sketch } from '../support/sketched-pose.ts';

/** Numbers from 0 up to 1, the same for the same seed (a linear congruence). */
export function draws(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

/** A map of equal cells; letters say V or M for each crease, those between columns first, row by row. */
export function mapOf(columns: number, rows: number, letter: () => string, cell = 20): Creased {
  const panels: Point[][] = [];
  const creases: Creased['creases'][number][] = [];
  for (let r = 0; r < rows; r++) {
    for (let c = 0; c < columns; c++) {
      const [x, y] = [c * cell, r * cell];
      panels.push([
        [x, y],
        [x + cell, y],
        [x + cell, y + cell],
        [x, y + cell],
      ]);
      const own = r * columns + c;
      if (c > 0) creases.push({ a: own - 1, b: own, from: [x, y], to: [x, y + cell], fold: letter() });
      if (r > 0) creases.push({ a: own - columns, b: own, from: [x, y], to: [x + cell, y], fold: letter() });
    }
  }
  return { panels, creases };
}

/** A map whose vertices could each fold by themselves: three creases one way, one the other. */
export function soundMapOf(columns: number, rows: number, draw: () => number): Creased {
  const letter = (valley: boolean): string => (valley ? 'V' : 'M');
  const sheet = mapOf(columns, rows, () => letter(draw() < 0.5));
  const folds = new Map(sheet.creases.map(({ a, b, fold }) => [`${a} ${b}`, fold]));
  for (let r = 1; r < rows; r++) {
    for (let c = 1; c < columns; c++) {
      const cell = r * columns + c;
      const before = [
        `${cell - 1 - columns} ${cell - 1}`,
        `${cell - columns - 1} ${cell - columns}`,
        `${cell - 1} ${cell}`,
      ];
      const valleys = before.filter((key) => folds.get(key) === 'V').length;
      folds.set(`${cell - columns} ${cell}`, letter(valleys % 2 === 0));
    }
  }
  const creases = sheet.creases.map((crease) => ({ ...crease, fold: folds.get(`${crease.a} ${crease.b}`) ?? '' }));
  return { ...sheet, creases };
}

interface Ply {
  readonly drawn: readonly Point[];
  readonly lies: readonly Point[];
  readonly faceUp: boolean;
}

/**
 * A square of paper folded by lines, through all plies at once, so that it can surely be folded; then opened. Some lines are
 * turned by multiples of 22.5 degrees through points of a grid, so that plies often share edges.
 */
export function foldedByLines(draw: () => number, folds: number, side = 64): Creased {
  let plies: Ply[] = [{ drawn: square(side), lies: square(side), faceUp: true }];
  const scores: { from: Point; to: Point; fold: string }[] = [];
  for (let i = 0; i < folds; i++) {
    const angle = (Math.floor(draw() * 8) * Math.PI) / 8;
    const through: Point = [
      side * (0.25 + 0.125 * Math.floor(draw() * 5)),
      side * (0.25 + 0.125 * Math.floor(draw() * 5)),
    ];
    const along: Point = [Math.cos(angle), Math.sin(angle)];
    const valley = draw() < 0.5;
    plies = plies.flatMap(({ drawn, lies, faceUp }): Ply[] => {
      const stays = part(drawn, lies, through, along, 1);
      const moves = part(drawn, lies, through, along, -1);
      if (stays.lies.length < 3) return [{ ...moves, lies: moves.lies.map(over(through, along)), faceUp: !faceUp }];
      if (moves.lies.length < 3) return [{ ...stays, faceUp }];
      const [from, to] = stays.drawn.filter((_, k) => Math.abs(height(stays.lies[k] ?? [0, 0], through, along)) < 1e-9);
      if (from && to) scores.push({ from, to, fold: valley === faceUp ? 'V' : 'M' });
      return [
        { ...stays, faceUp },
        { ...moves, lies: moves.lies.map(over(through, along)), faceUp: !faceUp },
      ];
    });
  }
  const panels = plies.map(({ drawn }) => drawn);
  const creases: Creased['creases'][number][] = [];
  for (let b = 0; b < panels.length; b++) {
    for (let a = 0; a < b; a++) {
      const edge = sharedEdge(panels[a] ?? [], panels[b] ?? []);
      const score = edge && scores.find(({ from, to }) => near(edge.middle, from, to));
      if (edge && score) creases.push({ a, b, from: edge.from, to: edge.to, fold: score.fold });
    }
  }
  return { panels, creases };
}

function square(side: number): Point[] {
  return [
    [0, 0],
    [side, 0],
    [side, side],
    [0, side],
  ];
}

function height([x, y]: Point, through: Point, along: Point): number {
  return along[0] * (y - through[1]) - along[1] * (x - through[0]);
}

function over(through: Point, along: Point): (point: Point) => Point {
  return (point) => {
    const h = height(point, through, along);
    return [point[0] + 2 * h * along[1], point[1] - 2 * h * along[0]];
  };
}

/** What of a ply lies on one side of a line, as drawn and as it lies. */
function part(drawn: readonly Point[], lies: readonly Point[], through: Point, along: Point, side: 1 | -1) {
  const kept: { drawn: Point[]; lies: Point[] } = { drawn: [], lies: [] };
  const at = (list: readonly Point[], i: number): Point => list[i % list.length] ?? [0, 0];
  for (let i = 0; i < lies.length; i++) {
    const [h, k] = [side * height(at(lies, i), through, along), side * height(at(lies, i + 1), through, along)];
    if (h >= -1e-9) {
      kept.drawn.push(at(drawn, i));
      kept.lies.push(at(lies, i));
    }
    if ((h > 1e-9 && k < -1e-9) || (h < -1e-9 && k > 1e-9)) {
      const mix = (list: readonly Point[]): Point => {
        const [p, q] = [at(list, i), at(list, i + 1)];
        return [p[0] + (h / (h - k)) * (q[0] - p[0]), p[1] + (h / (h - k)) * (q[1] - p[1])];
      };
      kept.drawn.push(mix(drawn));
      kept.lies.push(mix(lies));
    }
  }
  // Corners on the line alone are no paper.
  return kept.lies.some((point) => side * height(point, through, along) > 1e-9) ? kept : { drawn: [], lies: [] };
}

function sharedEdge(
  one: readonly Point[],
  other: readonly Point[],
): { from: Point; to: Point; middle: Point } | undefined {
  for (const [i, from] of one.entries()) {
    const to = one[(i + 1) % one.length] ?? from;
    if (!other.some((p, j) => apart(p, to) < 1e-7 && apart(other[(j + 1) % other.length] ?? p, from) < 1e-7)) continue;
    return { from, to, middle: [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2] };
  }
  return undefined;
}

function apart(a: Point, b: Point): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}

function near(point: Point, from: Point, to: Point): boolean {
  return Math.abs(apart(point, from) + apart(point, to) - apart(from, to)) < 1e-7;
}

/**
 * The same sheet with the directions turned round along a walk that follows creases from edge to edge, or back to where it
 * began, so that each vertex may still fold by itself.
 */
export function rerouted(sheet: Creased, draw: () => number): Creased {
  const ends = (i: number): Point[] => [sheet.creases[i]?.from ?? [0, 0], sheet.creases[i]?.to ?? [0, 0]];
  const at = (point: Point): number[] =>
    sheet.creases.flatMap((_, i) => (ends(i).some((end) => apart(end, point) < 1e-7) ? [i] : []));
  const turned = new Set<number>();
  const walk = (from: Point): void => {
    for (let here: Point | undefined = from; here; ) {
      const open: number[] = at(here).filter((i) => !turned.has(i));
      const next: number | undefined = open[Math.floor(draw() * open.length)];
      if (next === undefined) return;
      turned.add(next);
      const there: Point | undefined = ends(next).find((end) => apart(end, here ?? end) > 1e-7);
      here = there && at(there).length > 1 ? there : undefined;
    }
  };
  const edges = sheet.creases.flatMap((_, i) => ends(i).filter((end) => at(end).length === 1));
  const first = edges[Math.floor(draw() * edges.length)];
  if (first) walk(first);
  const creases = sheet.creases.map((crease, i) =>
    turned.has(i) ? { ...crease, fold: crease.fold === 'V' ? 'M' : 'V' } : crease,
  );
  return { ...sheet, creases };
}

/** The same sheet with the direction of some creases turned round. */
export function mutated(sheet: Creased, draw: () => number, share: number): Creased {
  const creases = sheet.creases.map((crease) => {
    const turned = draw() < share;
    return turned ? { ...crease, fold: crease.fold === 'V' ? 'M' : 'V' } : crease;
  });
  return { ...sheet, creases };
}

export function sketchOf({ panels, creases }: Creased): Sketch {
  return {
    panels: panels.map((outline, i) => ({ name: `${i}`, outline })),
    hinges: creases.map(({ a, b, from, to, fold }, i) => ({
      between: [`${a}`, `${b}`],
      from,
      to,
      fold: fold === 'V' ? 'valley' : fold === 'M' ? 'mountain' : 'both',
      crease: `crease ${i}`,
    })),
  };
}
