import PDFDocument from 'pdfkit';
import { beforeAll, describe, expect, it } from 'vitest';
import { templateFonts } from '../../../plugins/astro/template-pdf.ts';
import { circle } from '../../../plugins/engine/geometry/index.ts';
import {
  type PageScene,
  type PdfDocument,
  type PdfFonts,
  type Piece,
  panelsOf,
  renderPdf,
  type SceneItem,
  type System,
  templatePages,
} from '../../../plugins/engine/index.ts';
import { type ReadCurve, type ReadPage, type ReadSegment, readPdf } from '../../oracles/pdf-lines.ts';
import { cardOf, inches, pieceOf } from '../drawings/pieces.ts';
import { SHAPED } from '../drawings/shaped-pieces.ts';

/** How far a printed line may lie from where it belongs, and a curve from its circle or ellipse, in mm. */
const TRUE_MM = 0.01;
const CURVE_MM = 0.005;
const IN = 25.4;

let fonts: PdfFonts;
beforeAll(async () => {
  fonts = await templateFonts();
});

async function read(pages: readonly PageScene[]): Promise<readonly ReadPage[]> {
  const bytes = await renderPdf(pages, {
    newDocument: (options) => new PDFDocument(options as never) as unknown as PdfDocument,
    fonts,
    info: { title: 'Shaped', language: 'en-GB', created: new Date(Date.UTC(2026, 9, 3)) },
  });
  return (await readPdf(bytes)).pages;
}

function templateOf(piece: Piece, system: System): readonly PageScene[] {
  const card = cardOf(system, piece);
  const cards = [{ name: 'Shaped', card, panelling: panelsOf(card) }];
  return templatePages({ cards, system, sheet: system === 'inch' ? 'letter' : 'a4', title: 'Shaped' });
}

async function printed(name: string): Promise<readonly ReadPage[]> {
  const found = SHAPED.find((one) => one.name === name);
  if (found === undefined) throw new Error(`there is no ${name}`);
  return (await read(templateOf(found.piece('inch'), 'inch'))).slice(1);
}

const isEdge = ({ weight, dash }: ReadSegment): boolean => dash.length === 0 && Math.abs(weight - 0.5) < 1e-3;
const dashes = (segment: ReadSegment): string => segment.dash.map((part) => part.toFixed(2)).join(' ');
const VALLEY = '3.00 0.75';
const MOUNTAIN = '6.00 0.75 0.25 0.75 0.25 0.75';
const MARK = '1.50 2.25';

/** Where the left top of a piece lies on its page, by its outermost edges and curves. */
function cornerOf({ segments, curves }: ReadPage): readonly [number, number] {
  const edges = segments.filter(isEdge);
  const ends = curves
    .filter(({ weight }) => Math.abs(weight - 0.5) < 1e-3)
    .flatMap(({ points }) => [points[0], points[3]]);
  return [
    Math.min(...edges.flatMap(({ x1, x2 }) => [x1, x2]), ...ends.map(([x]) => x)),
    Math.min(...edges.flatMap(({ y1, y2 }) => [y1, y2]), ...ends.map(([, y]) => y)),
  ];
}

/** A line by its ends in inches from the corner of the piece. */
function expectLine(page: ReadPage, form: string, ends: readonly [number, number, number, number]): void {
  const [left, top] = cornerOf(page);
  const [x1, y1, x2, y2] = ends.map((inch, i) => (i % 2 === 0 ? left : top) + inch * IN) as [
    number,
    number,
    number,
    number,
  ];
  const near = (a: number, b: number): boolean => Math.abs(a - b) <= TRUE_MM;
  const found = page.segments.some(
    (s) =>
      (form === 'edge' ? isEdge(s) : dashes(s) === form) &&
      ((near(s.x1, x1) && near(s.y1, y1) && near(s.x2, x2) && near(s.y2, y2)) ||
        (near(s.x1, x2) && near(s.y1, y2) && near(s.x2, x1) && near(s.y2, y1))),
  );
  expect(found, `${form} ${ends.join(' ')}`).toBe(true);
}

function pointsOn({ points: [a, b, c, d] }: ReadCurve): readonly (readonly [number, number])[] {
  return Array.from({ length: 65 }, (_, i) => {
    const t = i / 64;
    const u = 1 - t;
    const mix = (k: 0 | 1): number => u ** 3 * a[k] + 3 * u * u * t * b[k] + 3 * u * t * t * c[k] + t ** 3 * d[k];
    return [mix(0), mix(1)] as const;
  });
}

/** How far a point lies from an ellipse, near it; in first order, which is enough at hundredths of a millimetre. */
function offEllipse(x: number, y: number, rx: number, ry: number): number {
  const value = (x / rx) ** 2 + (y / ry) ** 2 - 1;
  return Math.abs(value) / (2 * Math.hypot(x / rx ** 2, y / ry ** 2));
}

/** All curves of an ellipse told in inches: how many degrees of it there are. */
function degreesOf(page: ReadPage, [cx, cy, rx, ry]: readonly [number, number, number, number]): number {
  const [left, top] = cornerOf(page);
  const [x, y, a, b] = [left + cx * IN, top + cy * IN, rx * IN, ry * IN];
  let degrees = 0;
  for (const curve of page.curves) {
    const points = pointsOn(curve).map(([px, py]) => [px - x, py - y] as const);
    if (points.some(([px, py]) => offEllipse(px, py, a, b) > TRUE_MM)) continue;
    for (const [px, py] of points) expect(offEllipse(px, py, a, b)).toBeLessThanOrEqual(CURVE_MM);
    const [first, last] = [points[0], points.at(-1)];
    if (first === undefined || last === undefined) continue;
    const turn = Math.atan2(last[1] / b, last[0] / a) - Math.atan2(first[1] / b, first[0] / a);
    degrees += ((((turn * 180) / Math.PI) % 360) + 360) % 360;
  }
  return degrees;
}

describe('a shaped piece printed and read back by another program', () => {
  it('has its part creases from end to end, each in its own form', async () => {
    // 12 in wide: on two pages, whose creases are compared in the test of tiles.
    const [page] = await printed('creases that meet at a point');
    if (page === undefined) throw new Error('there is no page');
    const up = 2 * Math.tan((20 * Math.PI) / 180);
    expectLine(page, VALLEY, [2, 0, 2, 2.5]);
    expectLine(page, MOUNTAIN, [2, 2.5, 0, 2.5 - up]);
    expectLine(page, MOUNTAIN, [2, 2.5, 4, 2.5 - up]);
    for (const edge of [
      [0, 0, 4, 0],
      [4, 0, 4, 2.5],
      [4, 2.5, 0, 2.5],
      [0, 2.5, 0, 0],
    ] as const)
      expectLine(page, 'edge', edge);
  });

  it('has angled marks', async () => {
    const [page] = await printed('angled marks');
    if (page === undefined) throw new Error('there is no page');
    const [aside, down] = [2 * Math.sin((50 * Math.PI) / 180), 2 * Math.cos((50 * Math.PI) / 180)];
    expectLine(page, MARK, [4.25, 2, 4.25 - aside, 2 + down]);
    expectLine(page, MARK, [4.25, 2, 4.25 + aside, 2 + down]);
    expectLine(page, VALLEY, [4.25, 0, 4.25, 5.5]);
  });

  it('has its swinging circle cut half round, and the crease stop at it', async () => {
    const [page] = await printed('a circle that swings');
    if (page === undefined) throw new Error('there is no page');
    expect(degreesOf(page, [2.75, 2.75, 1.25, 1.25])).toBeCloseTo(180, 3);
    expectLine(page, MOUNTAIN, [2.75, 0, 2.75, 1.5]);
    expectLine(page, MOUNTAIN, [2.75, 4, 2.75, 5.5]);
  });

  it('has circles, ellipses and round corners within 0.005 mm', async () => {
    const [page] = await printed('round windows and round corners');
    if (page === undefined) throw new Error('there is no page');
    expect(degreesOf(page, [1.5, 2, 0.75, 0.75])).toBeCloseTo(360, 3);
    expect(degreesOf(page, [3.5, 2, 0.75, 1.25])).toBeCloseTo(360, 3);
    expect(degreesOf(page, [2.5, 0.5, 0.125, 0.125])).toBeCloseTo(360, 3);
    for (const [x, y] of [
      [0.5, 0.5],
      [4.5, 0.5],
      [4.5, 3.5],
      [0.5, 3.5],
    ] as const)
      expect(degreesOf(page, [x, y, 0.5, 0.5])).toBeCloseTo(90, 3);
    expectLine(page, 'edge', [0.5, 0, 4.5, 0]);
  });

  it('has an outline of lines and arcs, and a notch', async () => {
    const [tag] = await printed('an outline of lines and arcs');
    if (tag === undefined) throw new Error('there is no page');
    expect(degreesOf(tag, [4, 2, 2, 2])).toBeCloseTo(180, 3);
    expectLine(tag, 'edge', [0, 2, 1.5, 0]);
    expectLine(tag, VALLEY, [3, 0, 3, 4]);
    const [notched] = await printed('a notch and a window with a slanting side');
    if (notched === undefined) throw new Error('there is no page');
    expect(degreesOf(notched, [0, 2.5, 0.5, 0.5])).toBeCloseTo(180, 3);
    expectLine(notched, 'edge', [6, 1, 7, 2.5]);
    expectLine(notched, 'edge', [0, 0, 0, 2]);
  });

  it('has foam at its true size', async () => {
    const [page] = await printed('a ring of foam');
    if (page === undefined) throw new Error('there is no page');
    expectLine(page, 'edge', [0, 0, 4, 0]);
    expectLine(page, 'edge', [0.5, 0.5, 3.5, 0.5]);
    expectLine(page, 'edge', [3.5, 0.5, 3.5, 4.75]);
  });
});

describe('a shaped piece on several pages', () => {
  const hoop: Piece = {
    ...pieceOf('hoop', inches('14'), inches('14')),
    windows: [
      {
        name: 'opening',
        outline: circle({ x: inches('7').mm, y: inches('7').mm }, inches('11/2').mm),
        place: { file: 'invented.md', line: 1, column: 1 },
        path: '',
      },
    ],
    lines: [
      {
        ...{ name: 'slant', family: 'slant', does: 'crease', folds: ['mountain'] },
        from: { x: inches('0').mm, y: inches('1/4').mm },
        to: { x: inches('14').mm, y: inches('5/4').mm },
        ...{ place: { file: 'invented.md', line: 1, column: 1 }, path: '' },
      },
    ],
  };

  /** Where the corner of the piece would lie on each page: every page of four shows one corner of it. */
  function cornersOn(pages: readonly ReadPage[]): readonly (readonly [number, number])[] {
    return pages.map((page) => {
      const edges = page.segments.filter(
        (s) => isEdge(s) && (Math.abs(s.x1 - s.x2) < 1e-6 || Math.abs(s.y1 - s.y2) < 1e-6),
      );
      const upright = edges.find((s) => Math.abs(s.x1 - s.x2) < 1e-6);
      const level = edges.find((s) => Math.abs(s.y1 - s.y2) < 1e-6);
      if (upright === undefined || level === undefined) throw new Error('a page shows no corner');
      const isRight = Math.min(level.x1, level.x2) < upright.x1 - 1;
      const isFoot = Math.min(upright.y1, upright.y2) < level.y1 - 1;
      return [upright.x1 - (isRight ? 14 * IN : 0), level.y1 - (isFoot ? 14 * IN : 0)] as const;
    });
  }

  it('has every part of a circle on some page, each within 0.005 mm of it, and none twice but for the overlap', async () => {
    const pages = (await read(templateOf(hoop, 'inch'))).slice(1);
    expect(pages).toHaveLength(4);
    const corners = cornersOn(pages);
    const seen = new Set<number>();
    for (const [i, page] of pages.entries()) {
      const [left, top] = corners[i] ?? [0, 0];
      const big = page.curves.filter(({ weight }) => Math.abs(weight - 0.5) < 1e-3);
      expect(big.length).toBeGreaterThan(0);
      for (const curve of big) {
        for (const [x, y] of pointsOn(curve)) {
          const [dx, dy] = [x - left - 7 * IN, y - top - 7 * IN];
          expect(Math.abs(Math.hypot(dx, dy) - 5.5 * IN)).toBeLessThanOrEqual(CURVE_MM);
          seen.add(Math.floor(((Math.atan2(dy, dx) * 180) / Math.PI + 360) % 360));
        }
      }
    }
    expect(seen.size).toBe(360);
  });

  it('keeps all ink of the piece within its part of the page', async () => {
    for (const page of (await read(templateOf(hoop, 'inch'))).slice(1)) {
      const points = [
        ...page.segments.flatMap((s) => [[s.x1, s.y1] as const, [s.x2, s.y2] as const]),
        ...page.curves.flatMap(pointsOn),
      ];
      for (const [x, y] of points) {
        expect(x).toBeGreaterThan(6.35 - 0.01);
        expect(x).toBeLessThan(215.9 - 6.35 + 0.01);
        expect(y).toBeGreaterThan(6.35 - 0.01);
        expect(y).toBeLessThan(279.4 - 12.7 + 0.01);
      }
    }
  });

  it('goes on with the dashes of a crease from page to page as if it had been drawn in one', async () => {
    const pages = (await read(templateOf(hoop, 'inch'))).slice(1);
    const corners = cornersOn(pages);
    const period = 6 + 0.75 + 0.25 + 0.75 + 0.25 + 0.75;
    const slope = Math.atan2(1, 14);
    let count = 0;
    for (const [i, page] of pages.entries()) {
      const [left, top] = corners[i] ?? [0, 0];
      for (const s of page.segments.filter((segment) => dashes(segment) === MOUNTAIN)) {
        count++;
        const [x, y] = [s.x1 - left, s.y1 - top - 0.25 * IN];
        expect(Math.abs(x * Math.sin(slope) - y * Math.cos(slope))).toBeLessThanOrEqual(TRUE_MM);
        const off = (Math.hypot(x, y) - s.phase) % period;
        expect(Math.min(Math.abs(off), period - Math.abs(off))).toBeLessThan(0.01);
      }
    }
    expect(count).toBe(2);
  });

  it('leaves out pages with nothing but waste', async () => {
    const [box] = SHAPED.filter(({ name }) => name === 'corners cut away');
    const pages = templateOf(box?.piece('metric') ?? hoop, 'metric').slice(1);
    for (const page of pages) {
      const inked = page.items.some((item: SceneItem) => item.kind === 'line' && item.role === 'outline');
      expect(inked, page.title).toBe(true);
    }
  });
});
