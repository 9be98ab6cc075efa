import { describe, expect, it } from 'vitest';
import { templatePdf } from '../../../plugins/astro/template-pdf.ts';
import { buildLibrary, computeProject, readContent } from '../../../plugins/content/index.ts';
import { type ReadPage, type ReadPdf, type ReadSegment, readPdf } from '../../oracles/pdf-lines.ts';

/** How far a printed line may lie from where it belongs, in mm. */
const TRUE_MM = 0.01;
const VALLEY = [3, 0.75];

interface Expected {
  /** The card as a post gives it, and its piece in mm, worked by hand: inches times 25.4. */
  readonly fold: string;
  readonly sheet: 'letter' | 'a4';
  readonly width: number;
  readonly height: number;
  readonly down: readonly number[];
  readonly across: readonly number[];
}

const CASES: readonly Expected[] = [
  { fold: 'side-fold', sheet: 'letter', width: 215.9, height: 139.7, down: [107.95], across: [] },
  {
    fold: '{ side-fold: { width: 5 in, height: 7 in } }',
    sheet: 'letter',
    width: 254,
    height: 177.8,
    down: [127],
    across: [],
  },
  {
    fold: '{ side-fold: { width: 8 in, height: 11 in } }',
    sheet: 'letter',
    width: 406.4,
    height: 279.4,
    down: [203.2],
    across: [],
  },
  { fold: 'top-fold', sheet: 'letter', width: 107.95, height: 279.4, down: [], across: [139.7] },
  // US A2 stands for ISO A6, 105 x 148 mm, in a metric edition.
  { fold: 'top-fold', sheet: 'a4', width: 105, height: 296, down: [], across: [148] },
  { fold: 'gate', sheet: 'letter', width: 215.9, height: 139.7, down: [53.975, 161.925], across: [] },
  {
    fold: '{ gate: { width: 5 in, height: 6 in } }',
    sheet: 'a4',
    width: 254,
    height: 152.5,
    down: [63.5, 190.5],
    across: [],
  },
  {
    fold: '{ gate: { width: 8 in, height: 11 in } }',
    sheet: 'a4',
    width: 406,
    height: 279.5,
    down: [101.5, 304.5],
    across: [],
  },
  { fold: 'short-front', sheet: 'letter', width: 184.15, height: 139.7, down: [76.2], across: [] },
  { fold: '{ side-fold: { width: 2 in, height: 2 in } }', sheet: 'a4', width: 102, height: 51, down: [51], across: [] },
];

async function printed({ fold, sheet }: Pick<Expected, 'fold' | 'sheet'>): Promise<Uint8Array> {
  const content = readContent('.');
  const post = {
    path: 'content/posts/printed/index.md',
    text: `---\ntitle: Printed “true”\nsummary: To be measured.\ndate: 2026-03-04\nunits: in\nfold: ${fold}\n---\n\nText.\n`,
  };
  const { library, problems } = buildLibrary({ ...content, posts: [post] });
  const entry = library?.posts.get('printed');
  if (!library || !entry) throw new Error(problems.map((problem) => problem.remedy).join('\n'));
  const { project } = computeProject(library, entry);
  return templatePdf({ project, blog: library.blog, sheet });
}

const isJoin = (segment: ReadSegment): boolean => segment.dash.length === 4;
const isEdge = (segment: ReadSegment): boolean => segment.dash.length === 0 && Math.abs(segment.weight - 0.5) < 1e-3;
const isValley = (segment: ReadSegment): boolean =>
  segment.dash.length === 2 && segment.dash.every((part, i) => Math.abs(part - (VALLEY[i] ?? 0)) < 1e-3);

/**
 * All pages of the piece in one frame: each page is laid so that a join line falls on the same line of a page already laid,
 * as a reader does on the table; crossing lines are met at the edges and creases that both pages show.
 */
function joined(pages: readonly ReadPage[]): ReadSegment[] {
  const laid: ReadSegment[] = [...(pages[0]?.segments ?? [])];
  for (const page of pages.slice(1)) {
    const shift = shiftOnto(laid, page.segments);
    laid.push(
      ...page.segments.map((s) => ({
        ...s,
        x1: s.x1 + shift.x,
        x2: s.x2 + shift.x,
        y1: s.y1 + shift.y,
        y2: s.y2 + shift.y,
      })),
    );
  }
  return laid;
}

function shiftOnto(laid: readonly ReadSegment[], page: readonly ReadSegment[]): { x: number; y: number } {
  let best = { x: 0, y: 0 };
  let most = -1;
  for (const a of laid.filter(isJoin)) {
    for (const b of page.filter(isJoin)) {
      if (upright(a) !== upright(b)) continue;
      const middle = { x: (a.x1 + a.x2 - b.x1 - b.x2) / 2, y: (a.y1 + a.y2 - b.y1 - b.y2) / 2 };
      const agreeing = page.filter((s) => laid.some((t) => same(t, s, middle))).length;
      if (agreeing > most) [best, most] = [middle, agreeing];
    }
  }
  return best;
}

function upright(segment: ReadSegment): boolean {
  return Math.abs(segment.x1 - segment.x2) < 1e-6;
}

function same(a: ReadSegment, b: ReadSegment, by: { x: number; y: number }): boolean {
  return (
    Math.abs(a.x1 - b.x1 - by.x) +
      Math.abs(a.y1 - b.y1 - by.y) +
      Math.abs(a.x2 - b.x2 - by.x) +
      Math.abs(a.y2 - b.y2 - by.y) <
    0.02
  );
}

/** The stretches of one line, merged; each as [from, to] along it. */
function covered(segments: readonly ReadSegment[], along: 'x' | 'y', at: number): [number, number][] {
  const parts = segments
    .filter((s) => upright(s) === (along === 'y') && Math.abs((along === 'y' ? s.x1 : s.y1) - at) <= TRUE_MM)
    .map((s): [number, number] =>
      along === 'y' ? [Math.min(s.y1, s.y2), Math.max(s.y1, s.y2)] : [Math.min(s.x1, s.x2), Math.max(s.x1, s.x2)],
    )
    .sort((a, b) => a[0] - b[0]);
  const merged: [number, number][] = [];
  for (const part of parts) {
    const last = merged.at(-1);
    if (last && part[0] <= last[1] + TRUE_MM) last[1] = Math.max(last[1], part[1]);
    else merged.push([...part]);
  }
  return merged;
}

function expectLine(segments: readonly ReadSegment[], along: 'x' | 'y', at: number, from: number, to: number): void {
  const lines = covered(segments, along, at);
  expect(lines, `a line along ${along} at ${at}`).toHaveLength(1);
  expect(Math.abs((lines[0]?.[0] ?? 0) - from)).toBeLessThanOrEqual(TRUE_MM);
  expect(Math.abs((lines[0]?.[1] ?? 0) - to)).toBeLessThanOrEqual(TRUE_MM);
}

describe.each(CASES)('$fold on $sheet, read back by another program', (expected) => {
  it('has every edge and crease at true size', async () => {
    const pdf = await readPdf(await printed(expected));
    const pages = pdf.pages.filter((page) => page.segments.some(isEdge) && !page.text.includes('each way'));
    const all = joined(pages);
    const edges = all.filter(isEdge);
    const creases = all.filter(isValley);
    const left = Math.min(...edges.map((s) => Math.min(s.x1, s.x2)));
    const top = Math.min(...edges.map((s) => Math.min(s.y1, s.y2)));
    const { width, height } = expected;
    for (const x of [0, width]) expectLine(edges, 'y', left + x, top, top + height);
    for (const y of [0, height]) expectLine(edges, 'x', top + y, left, left + width);
    for (const x of expected.down) expectLine(creases, 'y', left + x, top, top + height);
    for (const y of expected.across) expectLine(creases, 'x', top + y, left, left + width);
    const known = [...expected.down.map((x) => left + x), ...expected.across.map((y) => top + y)];
    for (const s of creases)
      expect(known.some((at) => Math.abs((upright(s) ? s.x1 : s.y1) - at) <= TRUE_MM)).toBe(true);
  });
});

describe('the document', () => {
  const read = async (sheet: 'letter' | 'a4'): Promise<ReadPdf> => readPdf(await printed({ fold: 'gate', sheet }));

  // ISO 32000-1:2008, 12.2: PrintScaling None. US Letter is 612 x 792 pt, ISO A4 210 x 297 mm.
  it.each([
    ['letter', 612, 792],
    ['a4', (210 * 72) / 25.4, (297 * 72) / 25.4],
  ] as const)('on %s has its page box, asks not to be scaled, and says who it is', async (sheet, short, long) => {
    const pdf = await read(sheet);
    expect(new Map(Object.entries(Object.fromEntries(pdf.preferences as never)))).toEqual(
      new Map<string, unknown>([
        ['DisplayDocTitle', true],
        ['PrintScaling', 'None'],
      ]),
    );
    expect(pdf.info.Title).toBe('Printed “true”');
    expect(pdf.language).toBe('en');
    for (const page of pdf.pages) {
      const [a = 0, b = 0] = [page.width, page.height].sort((m, n) => m - n);
      expect(Math.abs(a - short)).toBeLessThan(0.01);
      expect(Math.abs(b - long)).toBeLessThan(0.01);
    }
  });

  it('has check squares of 50 mm and 2 in, and says on every page which it is and how to print it', async () => {
    const { pages } = await read('letter');
    const first = pages[0]?.segments ?? [];
    for (const side of [50, 50.8]) {
      const sides = first.filter((s) => Math.abs(Math.hypot(s.x2 - s.x1, s.y2 - s.y1) - side) <= TRUE_MM);
      expect(sides, `four sides of ${side} mm`).toHaveLength(4);
      expect(sides.filter(upright)).toHaveLength(2);
    }
    pages.forEach((page, i) => {
      expect(page.text).toContain(`page ${i + 1} of ${pages.length}`);
      expect(page.text).toContain('Print at 100');
      expect(page.text).toContain('no fitting to the page');
    });
  });

  it('keeps its fractions readable in the text, with no glyph missing', async () => {
    const text = (await read('letter')).pages.map((page) => page.text).join(' ');
    expect(text.replace(/[\u2009\u00a0]/g, ' ')).toMatch(/2 ?1\s*[⁄/]\s*8|2 ?⅛/);
    expect(text).not.toContain('\ufffd');
    expect(text).not.toContain('\u0000');
  });

  it('leaves the margins home printers cannot print: 6.35 mm', async () => {
    for (const page of (await read('a4')).pages) {
      const [width, height] = [(page.width * 25.4) / 72, (page.height * 25.4) / 72];
      for (const s of page.segments) {
        for (const x of [s.x1, s.x2]) expect(x > 6.34 && x < width - 6.34).toBe(true);
        for (const y of [s.y1, s.y2]) expect(y > 6.34 && y < height - 6.34).toBe(true);
      }
    }
  });

  it('is the same bytes twice', async () => {
    const [a, b] = [
      await printed({ fold: 'top-fold', sheet: 'letter' }),
      await printed({ fold: 'top-fold', sheet: 'letter' }),
    ];
    expect(Buffer.compare(a, b)).toBe(0);
  });
});
