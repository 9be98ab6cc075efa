import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import PDFDocument from 'pdfkit';
import { describe, expect, it } from 'vitest';
import { templateFonts } from '../../../plugins/astro/template-pdf.ts';
import {
  type PageScene,
  type PdfDocument,
  renderPdf,
  renderSvg,
  type SceneArc,
  type SceneEdge,
  type SceneItem,
} from '../../../plugins/engine/index.ts';
import { readPdf } from '../../oracles/pdf-lines.ts';

const SIZE = { width: 300, height: 300 };

function sceneOf(...items: readonly SceneItem[]): PageScene {
  return { ...SIZE, title: 'Curves', words: [], figure: 'Curves.', page: 1, pages: 1, items };
}

async function bytesOf(...items: readonly SceneItem[]): Promise<Uint8Array> {
  return renderPdf([sceneOf(...items)], {
    newDocument: (options) => new PDFDocument(options as never) as unknown as PdfDocument,
    fonts: await templateFonts(),
    info: { title: 'Curves', language: 'en-GB', created: new Date(Date.UTC(2026, 9, 3)) },
  });
}

function partOfCircle(radius: number, from: number, to: number): SceneArc {
  return { kind: 'arc', role: 'outline', centre: { x: 150, y: 150 }, rx: radius, ry: radius, from, to };
}

const ARCS: readonly (readonly [string, SceneArc])[] = [
  ['a quarter of a circle', partOfCircle(90, 0, 90)],
  ['a small part', partOfCircle(40, 10, 13)],
  ['more than half', partOfCircle(120, -100, 135)],
  ['a whole circle', partOfCircle(140, 0, 360)],
];

const ELLIPSES: typeof ARCS = [
  [
    'half of a flat ellipse',
    { kind: 'arc', role: 'cut', centre: { x: 150, y: 140 }, rx: 140, ry: 30, from: 20, to: 200 },
  ],
  [
    'a whole tall ellipse',
    { kind: 'arc', role: 'cut', centre: { x: 150, y: 150 }, rx: 20, ry: 140, from: -90, to: 270 },
  ],
];

describe.each([...ARCS, ...ELLIPSES])('%s', (_, arc) => {
  const at = (degrees: number): readonly [number, number] => {
    const radians = (degrees * Math.PI) / 180;
    return [arc.centre.x + arc.rx * Math.cos(radians), arc.centre.y + arc.ry * Math.sin(radians)];
  };

  it('is within 0.005 mm in a PDF, end to end', async () => {
    const [page] = (await readPdf(await bytesOf(arc))).pages;
    const curves = page?.curves ?? [];
    const [first, last] = [curves[0]?.points[0], curves.at(-1)?.points[3]];
    expect(Math.hypot((first?.[0] ?? 0) - at(arc.from)[0], (first?.[1] ?? 0) - at(arc.from)[1])).toBeLessThan(0.001);
    expect(Math.hypot((last?.[0] ?? 0) - at(arc.to)[0], (last?.[1] ?? 0) - at(arc.to)[1])).toBeLessThan(0.001);
    for (const { points } of curves) {
      for (let i = 0; i <= 50; i++) {
        const [t, u] = [i / 50, 1 - i / 50];
        const [a, b, c, d] = points;
        const mix = (k: 0 | 1): number => u ** 3 * a[k] + 3 * u * u * t * b[k] + 3 * u * t * t * c[k] + t ** 3 * d[k];
        const [x, y] = [mix(0) - arc.centre.x, mix(1) - arc.centre.y];
        const value = (x / arc.rx) ** 2 + (y / arc.ry) ** 2 - 1;
        expect(Math.abs(value) / (2 * Math.hypot(x / arc.rx ** 2, y / arc.ry ** 2))).toBeLessThanOrEqual(0.005);
      }
    }
  });

  it('is an arc of the same ends and way in SVG', () => {
    const svg = renderSvg(sceneOf(arc), { idPrefix: 'a' });
    if (arc.to - arc.from >= 360 && arc.rx === arc.ry) {
      expect(svg).toContain(`<circle class="scene-${arc.role}" cx="150" cy="150" r="${arc.rx}"`);
      return;
    }
    const [, d = ''] = /<path class="scene-(?:outline|cut)" d="([^"]+)"/.exec(svg) ?? [];
    const numbers = d
      .split(/[MA ]/)
      .filter((part) => part !== '')
      .map(Number);
    const steps = (numbers.length - 2) / 7;
    expect(steps).toBe(arc.to - arc.from >= 360 ? 2 : 1);
    const end = numbers.slice(-2);
    expect([...numbers.slice(0, 2), ...end]).toEqual([...at(arc.from), ...at(arc.to)].map((n) => expect.closeTo(n, 3)));
    // W3C SVG 1.1, 8.3.8: rx ry x-axis-rotation large-arc-flag sweep-flag; sweep 1 is clockwise on the page.
    const [rx, ry, turn, large, sweep] = numbers.slice(2, 7);
    expect([rx, ry, turn, sweep]).toEqual([arc.rx, arc.ry, 0, 1]);
    expect(large).toBe(arc.to - arc.from > 180 && arc.to - arc.from < 360 ? 1 : 0);
  });
});

describe('a filled region with a hole', () => {
  const line = (x1: number, y1: number, x2: number, y2: number): SceneEdge => ({
    is: 'line',
    from: { x: x1, y: y1 },
    to: { x: x2, y: y2 },
  });
  const square = [line(10, 10, 90, 10), line(90, 10, 90, 90), line(90, 90, 10, 90), line(10, 90, 10, 10)];
  const hole = (backwards: boolean): readonly SceneEdge[] => [
    { is: 'arc', centre: { x: 50, y: 50 }, rx: 20, ry: 10, from: 0, to: 360, backwards },
  ];

  it.each([false, true])(
    'is filled by the even-odd rule, whichever way the hole runs (backwards: %s)',
    async (backwards) => {
      const fill: SceneItem = { kind: 'fill', tone: 'shade', outlines: [square, hole(backwards)] };
      const svg = renderSvg(sceneOf(fill), { idPrefix: 'a' });
      expect(svg).toContain('fill-rule="evenodd"');
      expect(svg).toContain(
        backwards ? 'M70 50A20 10 0 0 0 30 50A20 10 0 0 0 70 50Z' : 'M70 50A20 10 0 0 1 30 50A20 10 0 0 1 70 50Z',
      );
      const document = await getDocument({ data: await bytesOf(fill), verbosity: 0 }).promise;
      const { fnArray, argsArray } = await (await document.getPage(1)).getOperatorList();
      const paths = fnArray.flatMap((operator, i) => (operator === OPS.constructPath ? [argsArray[i]?.[0]] : []));
      expect(paths).toEqual([OPS.eoFill]);
    },
  );
});

describe('dashes that go on from another page', () => {
  it('begin as far into their pattern as the line has run', async () => {
    const line: SceneItem = { kind: 'line', role: 'valley', from: { x: 10, y: 50 }, to: { x: 90, y: 50 }, before: 5 };
    expect(renderSvg(sceneOf(line), { idPrefix: 'a' })).toContain('stroke-dasharray="3 0.75" stroke-dashoffset="5"');
    const [page] = (await readPdf(await bytesOf(line))).pages;
    expect(page?.segments[0]?.phase).toBeCloseTo(5, 6);
  });
});
