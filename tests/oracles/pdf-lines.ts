import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** What an independent reader finds in a PDF. Imports nothing of the project. Millimetres, y down from the page's top. */
export interface ReadPdf {
  readonly info: Readonly<Record<string, unknown>>;
  readonly language: string | null;
  readonly preferences: Readonly<Record<string, unknown>> | null;
  readonly pages: readonly ReadPage[];
}

export interface ReadPage {
  /** Points, as the page box says. */
  readonly width: number;
  readonly height: number;
  readonly segments: readonly ReadSegment[];
  readonly curves: readonly ReadCurve[];
  readonly text: string;
}

export interface ReadSegment {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
  /** Millimetres of dash and gap in turn; empty for a continuous line. */
  readonly dash: readonly number[];
  /** How far into its dashes the line begins, in mm. */
  readonly phase: number;
  readonly weight: number;
}

/** A stroked cubic curve: its two ends with the two points that draw it between them, in mm. */
export interface ReadCurve {
  readonly points: readonly [ReadPoint, ReadPoint, ReadPoint, ReadPoint];
  readonly weight: number;
}

export type ReadPoint = readonly [x: number, y: number];

type Matrix = readonly [number, number, number, number, number, number];

const MM_PER_POINT = 25.4 / 72;

export async function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
  const document = await getDocument({ data: bytes.slice(), useSystemFonts: false, verbosity: 0 }).promise;
  const { info } = await document.getMetadata();
  const pages: ReadPage[] = [];
  for (let n = 1; n <= document.numPages; n++) {
    const page = await document.getPage(n);
    const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
    const content = await page.getTextContent();
    const text = content.items.map((item) => ('str' in item ? item.str + (item.hasEOL ? '\n' : ' ') : '')).join('');
    const { fnArray, argsArray } = await page.getOperatorList();
    pages.push({
      width: right - left,
      height: top - bottom,
      ...strokesOf(fnArray, argsArray, top - bottom),
      text,
    });
  }
  const preferences = (await document.getViewerPreferences()) as Record<string, unknown> | null;
  const language = typeof info === 'object' && info && 'Language' in info ? String(info.Language) : null;
  return { info: info as Record<string, unknown>, language, preferences, pages };
}

function strokesOf(
  operators: readonly number[],
  args: readonly unknown[],
  pageHeight: number,
): { segments: ReadSegment[]; curves: ReadCurve[] } {
  const segments: ReadSegment[] = [];
  const curves: ReadCurve[] = [];
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  let dash: readonly number[] = [];
  let phase = 0;
  let weight = 1;
  const saved: { matrix: Matrix; dash: readonly number[]; phase: number; weight: number }[] = [];
  operators.forEach((operator, i) => {
    const arg = args[i] as unknown[];
    if (operator === OPS.save) saved.push({ matrix, dash, phase, weight });
    else if (operator === OPS.restore)
      ({ matrix, dash, phase, weight } = saved.pop() ?? { matrix, dash, phase, weight });
    else if (operator === OPS.transform) matrix = times(matrix, arg as unknown as Matrix);
    else if (operator === OPS.setDash) [dash, phase] = arg as [number[], number];
    else if (operator === OPS.setLineWidth) weight = arg[0] as number;
    else if (operator === OPS.constructPath && arg[0] === OPS.stroke) {
      const scale = Math.hypot(matrix[0], matrix[1]) * MM_PER_POINT;
      const { lines, cubics } = pathOf((arg[1] as [ArrayLike<number>])[0]);
      for (const [x1, y1, x2, y2] of lines) {
        const a = at(matrix, x1, y1, pageHeight);
        const b = at(matrix, x2, y2, pageHeight);
        segments.push({
          x1: a[0],
          y1: a[1],
          x2: b[0],
          y2: b[1],
          dash: [...dash].map((d) => d * scale),
          phase: phase * scale,
          weight: weight * scale,
        });
      }
      for (const cubic of cubics) {
        const [a, b, c, d] = [0, 2, 4, 6].map((k) => at(matrix, cubic[k] ?? 0, cubic[k + 1] ?? 0, pageHeight));
        if (a && b && c && d) curves.push({ points: [a, b, c, d], weight: weight * scale });
      }
    }
  });
  return { segments, curves };
}

/** A path: 0 x y moves, 1 x y draws a line, 2 is a curve of three points, 3 a curve of two, 4 closes. */
function pathOf(path: ArrayLike<number>): { lines: [number, number, number, number][]; cubics: number[][] } {
  const lines: [number, number, number, number][] = [];
  const cubics: number[][] = [];
  let [x, y, startX, startY] = [0, 0, 0, 0];
  for (let i = 0; i < path.length; ) {
    const operation = path[i++];
    if (operation === 0) [x, y, startX, startY] = [path[i] ?? 0, path[i + 1] ?? 0, path[i] ?? 0, path[i + 1] ?? 0];
    if (operation === 1) lines.push([x, y, path[i] ?? 0, path[i + 1] ?? 0]);
    if (operation === 2) cubics.push([x, y, ...Array.from({ length: 6 }, (_, k) => path[i + k] ?? 0)]);
    // A path that has come back already is closed by nothing.
    if (operation === 4 && Math.hypot(startX - x, startY - y) > 1e-6) lines.push([x, y, startX, startY]);
    const numbers = operation === 2 ? 6 : operation === 3 ? 4 : operation === 4 ? 0 : 2;
    if (numbers > 0) [x, y] = [path[i + numbers - 2] ?? 0, path[i + numbers - 1] ?? 0];
    i += numbers;
  }
  return { lines, cubics };
}

function times(m: Matrix, n: Matrix): Matrix {
  return [
    m[0] * n[0] + m[2] * n[1],
    m[1] * n[0] + m[3] * n[1],
    m[0] * n[2] + m[2] * n[3],
    m[1] * n[2] + m[3] * n[3],
    m[0] * n[4] + m[2] * n[5] + m[4],
    m[1] * n[4] + m[3] * n[5] + m[5],
  ];
}

function at(m: Matrix, x: number, y: number, pageHeight: number): [number, number] {
  return [(m[0] * x + m[2] * y + m[4]) * MM_PER_POINT, (pageHeight - (m[1] * x + m[3] * y + m[5])) * MM_PER_POINT];
}
