import {
  type ArcOfEllipse,
  arcPoint,
  emOf,
  LINE_TYPES,
  type Scene,
  type SceneArc,
  type SceneFill,
  type SceneItem,
  type SceneLabel,
  type SceneLine,
  type SceneOutline,
  type ScenePoint,
  weightOf,
} from '../drawings/index.ts';
import { arrowheads, shaft } from './arrowhead.ts';
import { escapeXml, round, safeId } from './escape.ts';

export interface SvgOptions {
  /** Begins the ids of title and description: unique on the page. Characters an id may not have become hyphens. */
  readonly idPrefix: string;
  /** Class of the `svg` element besides `scene`. */
  readonly className?: string | undefined;
}

/**
 * A scene as an SVG element, in mm.
 *
 * Ink is `currentColor`, so the drawing follows its page, light, dark and printed. Presentation attributes and classes
 * only, no style attributes or elements. The page sets `.scene-text` with `font-feature-settings: "tnum", "lnum"` and
 * `.scene-fraction` with `"frac", "lnum"`: fractions alone, for `frac` makes a numerator of every figure it meets.
 */
export function renderSvg(scene: Scene, options: SvgOptions): string {
  const id = safeId(options.idPrefix);
  const className = escapeXml(['scene', options.className ?? ''].join(' ').trim());
  const [width, height] = [round(scene.width), round(scene.height)];
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" class="${className}" role="img"`,
    ` aria-labelledby="${id}-title" aria-describedby="${id}-words"`,
    ` width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}"`,
    ' fill="none" stroke="currentColor" font-family="Alegreya Sans, sans-serif">',
    `<title id="${id}-title">${escapeXml(scene.title)}</title>`,
    `<desc id="${id}-words">${escapeXml(scene.words.join(' '))}</desc>`,
    ...scene.items.map(renderItem),
    '</svg>',
  ].join('');
}

function renderItem(item: SceneItem): string {
  switch (item.kind) {
    case 'line':
      return renderLine(item);
    case 'arc':
      return renderArc(item);
    case 'fill':
      return renderFill(item);
    case 'label':
      return renderLabel(item);
  }
}

function renderLine(line: SceneLine): string {
  const { from, to } = shaft(line);
  const heads = arrowheads(line).map(
    (points) => `<path class="scene-arrow" fill="currentColor" stroke="none" d="${pathOf(points)}"/>`,
  );
  const cap = line.role === 'outline' ? ' stroke-linecap="square"' : '';
  return `<path class="scene-${line.role}" d="M${round(from.x)} ${round(from.y)}L${round(to.x)} ${round(to.y)}"${strokeOf(line)}${cap}/>${heads.join('')}`;
}

function renderArc(arc: SceneArc): string {
  const { centre, rx, ry, from, to } = arc;
  if (to - from >= 360 && rx === ry) {
    return `<circle class="scene-${arc.role}" cx="${round(centre.x)}" cy="${round(centre.y)}" r="${round(rx)}"${strokeOf(arc)}/>`;
  }
  const start = arcPoint(arc, from);
  return `<path class="scene-${arc.role}" d="M${pair(start)}${arcTo(arc, false)}"${strokeOf(arc)}/>`;
}

/** From one end of an arc to the other. A whole turn in two, since an arc from a point to itself is none. */
function arcTo(arc: ArcOfEllipse, backwards: boolean): string {
  const whole = arc.to - arc.from >= 360;
  const stops = whole ? [arc.from, (arc.from + arc.to) / 2, arc.to] : [arc.from, arc.to];
  if (backwards) stops.reverse();
  return stops
    .slice(1)
    .map((stop, i) => {
      const large = Math.abs(stop - (stops[i] ?? stop)) > 180 ? 1 : 0;
      return `A${round(arc.rx)} ${round(arc.ry)} 0 ${large} ${backwards ? 0 : 1} ${pair(arcPoint(arc, stop))}`;
    })
    .join('');
}

/** How strongly each tone is filled with ink; paper is left to the page. */
const TONE_OPACITY: Readonly<Record<SceneFill['tone'], number>> = { paper: 0, waste: 0.12, shade: 0.06, ink: 1 };

function renderFill(fill: SceneFill): string {
  const ink = fill.tone === 'paper' ? 'none' : 'currentColor';
  const opacity = fill.tone === 'ink' || fill.tone === 'paper' ? '' : ` fill-opacity="${TONE_OPACITY[fill.tone]}"`;
  return `<path class="scene-${fill.tone}" stroke="none" fill="${ink}"${opacity} fill-rule="evenodd" d="${fill.outlines.map(outlineOf).join('')}"/>`;
}

function renderLabel(label: SceneLabel): string {
  const weight = weightOf(label.role);
  const at = `x="${round(label.at.x)}" y="${round(label.at.y)}"`;
  const turn = label.turn === 0 ? '' : ` transform="rotate(-90 ${round(label.at.x)} ${round(label.at.y)})"`;
  const anchor = label.anchor === 'start' ? '' : ` text-anchor="${label.anchor}"`;
  const bold = weight === 'bold' ? ' font-weight="700"' : '';
  return (
    `<text class="scene-text scene-${label.role}" fill="currentColor" stroke="none" ${at}${turn}${anchor}${bold}` +
    ` font-size="${round(emOf(label.size, weight))}">${textOf(label.text)}</text>`
  );
}

/** Text with each fraction in a span of its own. */
function textOf(text: string): string {
  return text
    .split(/(\d+\u2044\d+)/)
    .map((part, i) => (i % 2 === 1 ? `<tspan class="scene-fraction">${part}</tspan>` : escapeXml(part)))
    .join('');
}

function strokeOf(item: SceneLine | SceneArc): string {
  const type = LINE_TYPES[item.role];
  const offset = item.kind === 'line' && item.before ? ` stroke-dashoffset="${round(item.before)}"` : '';
  const dash = type.dash.length === 0 ? '' : ` stroke-dasharray="${type.dash.map(round).join(' ')}"${offset}`;
  return ` stroke-width="${round(type.width)}"${dash}`;
}

function pathOf(points: readonly ScenePoint[]): string {
  return `${points.map((point, i) => `${i === 0 ? 'M' : 'L'}${pair(point)}`).join('')}Z`;
}

function outlineOf(outline: SceneOutline): string {
  const [first] = outline;
  if (first === undefined) return '';
  const start = first.is === 'line' ? first.from : arcPoint(first, first.backwards ? first.to : first.from);
  const steps = outline.map((edge) => (edge.is === 'line' ? `L${pair(edge.to)}` : arcTo(edge, edge.backwards)));
  return `M${pair(start)}${steps.join('')}Z`;
}

function pair({ x, y }: ScenePoint): string {
  return `${round(x)} ${round(y)}`;
}
