import {
  type ArcOfEllipse,
  arcPoint,
  direction,
  emOf,
  inMainFont,
  LINE_TYPES,
  type SceneArc,
  type SceneFill,
  type SceneItem,
  type SceneLabel,
  type SceneLine,
  type ScenePoint,
  textWidth,
  type Weight,
  weightOf,
} from '../drawings/index.ts';
import { arrowheads, shaft } from './arrowhead.ts';
import type { PdfDocument } from './pdf-document.ts';

/** Points of 1/72 in, in a mm (ISO 32000-1, 8.3.2.3). */
export const POINTS_PER_MM = 72 / 25.4;

/** Fractions from their slash, figures of one width and height: what the advance widths were measured with. */
const FEATURES = ['frac', 'tnum', 'lnum'] as const;

/** Names under which fonts are registered: by weight, and whether from the main or the extended file. */
export function fontName(weight: Weight, main: boolean): string {
  return `${weight}-${main ? 'main' : 'extended'}`;
}

/** Draws one item on the current page; the scene's mm become points here. */
export function drawItem(document: PdfDocument, item: SceneItem): void {
  switch (item.kind) {
    case 'line':
      drawLine(document, item);
      break;
    case 'arc':
      drawArc(document, item);
      break;
    case 'fill':
      drawFill(document, item);
      break;
    case 'label':
      drawLabel(document, item);
      break;
  }
}

function drawLine(document: PdfDocument, line: SceneLine): void {
  const { from, to } = shaft(line);
  setPen(document, line);
  document.lineCap(line.role === 'outline' ? 'square' : 'butt');
  document.moveTo(...pointOf(from));
  document.lineTo(...pointOf(to));
  document.stroke();
  for (const triangle of arrowheads(line)) {
    document.polygon(...triangle.map(pointOf));
    document.fill();
  }
}

function drawArc(document: PdfDocument, arc: SceneArc): void {
  setPen(document, arc);
  document.lineCap('butt');
  document.moveTo(...pointOf(arcPoint(arc, arc.from)));
  curveAlong(document, arc, false);
  if (arc.to - arc.from >= 360) document.closePath();
  document.stroke();
}

/** A curve of an eighth of a turn leaves a circle by less than 5 millionths of its radius (ISO 32000-1 has no arcs). */
const MOST_DEGREES = 45;

/** From one end of an arc to the other, in cubic curves. */
function curveAlong(document: PdfDocument, arc: ArcOfEllipse, backwards: boolean): void {
  const count = Math.max(1, Math.ceil((arc.to - arc.from) / MOST_DEGREES - 1e-9));
  const [start, end] = backwards ? [arc.to, arc.from] : [arc.from, arc.to];
  const step = (end - start) / count;
  const reach = (4 / 3) * Math.tan((step * Math.PI) / 720);
  for (let k = 0; k < count; k++) {
    const [a, b] = [start + k * step, k === count - 1 ? end : start + (k + 1) * step];
    document.bezierCurveTo(
      ...pointOf(beside(arc, a, reach)),
      ...pointOf(beside(arc, b, -reach)),
      ...pointOf(arcPoint(arc, b)),
    );
  }
}

/** A point on the tangent at an angle, `share` of a radius further on. */
function beside(arc: ArcOfEllipse, degrees: number, share: number): ScenePoint {
  const { x, y } = arcPoint(arc, degrees);
  const [cos, sin] = direction(degrees);
  return { x: x - share * arc.rx * sin, y: y + share * arc.ry * cos };
}

const TONE_OPACITY: Readonly<Record<SceneFill['tone'], number>> = { paper: 0, shade: 0.06, waste: 0.12, ink: 1 };

function drawFill(document: PdfDocument, fill: SceneFill): void {
  if (fill.tone === 'paper') return;
  document.save();
  document.fillOpacity(TONE_OPACITY[fill.tone]);
  for (const outline of fill.outlines) {
    for (const [i, edge] of outline.entries()) {
      if (i === 0)
        document.moveTo(
          ...pointOf(edge.is === 'line' ? edge.from : arcPoint(edge, edge.backwards ? edge.to : edge.from)),
        );
      if (edge.is === 'line') document.lineTo(...pointOf(edge.to));
      else curveAlong(document, edge, edge.backwards);
    }
    document.closePath();
  }
  document.fill('even-odd');
  document.restore();
}

function drawLabel(document: PdfDocument, label: SceneLabel): void {
  const weight = weightOf(label.role);
  const [x, y] = pointOf(label.at);
  const width = textWidth(label.text, label.size, weight) * POINTS_PER_MM;
  let start = label.anchor === 'start' ? x : label.anchor === 'middle' ? x - width / 2 : x - width;
  if (label.turn === 90) {
    document.save();
    document.rotate(-90, { origin: [x, y] });
  }
  for (const run of runsOf(label.text)) {
    document.font(fontName(weight, run.main), emOf(label.size, weight) * POINTS_PER_MM);
    document.text(run.text, start, y, { lineBreak: false, baseline: 'alphabetic', features: FEATURES });
    start += textWidth(run.text, label.size, weight) * POINTS_PER_MM;
  }
  if (label.turn === 90) document.restore();
}

/** The text in stretches that one font file has. */
function runsOf(text: string): readonly { readonly text: string; readonly main: boolean }[] {
  const runs: { text: string; main: boolean }[] = [];
  for (const character of text) {
    const main = inMainFont(character);
    const last = runs.at(-1);
    if (last?.main === main) last.text += character;
    else runs.push({ text: character, main });
  }
  return runs;
}

function setPen(document: PdfDocument, item: SceneLine | SceneArc): void {
  const type = LINE_TYPES[item.role];
  document.lineWidth(type.width * POINTS_PER_MM);
  if (type.dash.length === 0) document.undash();
  else {
    const phase = (item.kind === 'line' ? (item.before ?? 0) : 0) * POINTS_PER_MM;
    document.dash(
      type.dash.map((length) => length * POINTS_PER_MM),
      { phase },
    );
  }
}

function pointOf(point: ScenePoint): [number, number] {
  return [point.x * POINTS_PER_MM, point.y * POINTS_PER_MM];
}
