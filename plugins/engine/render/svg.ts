import {
  emOf,
  LINE_TYPES,
  type Scene,
  type SceneArc,
  type SceneFill,
  type SceneItem,
  type SceneLabel,
  type SceneLine,
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
  const { centre, radius, from, to } = arc;
  if (to - from >= 360) {
    return `<circle class="scene-${arc.role}" cx="${round(centre.x)}" cy="${round(centre.y)}" r="${round(radius)}"${strokeOf(arc)}/>`;
  }
  const at = (degrees: number): string => {
    const radians = (degrees * Math.PI) / 180;
    return `${round(centre.x + radius * Math.cos(radians))} ${round(centre.y + radius * Math.sin(radians))}`;
  };
  const large = to - from > 180 ? 1 : 0;
  return `<path class="scene-${arc.role}" d="M${at(from)}A${round(radius)} ${round(radius)} 0 ${large} 1 ${at(to)}"${strokeOf(arc)}/>`;
}

/** How strongly each tone is filled with ink; paper is left to the page. */
const TONE_OPACITY: Readonly<Record<SceneFill['tone'], number>> = { paper: 0, waste: 0.12, shade: 0.06, ink: 1 };

function renderFill(fill: SceneFill): string {
  const ink = fill.tone === 'paper' ? 'none' : 'currentColor';
  const opacity = fill.tone === 'ink' || fill.tone === 'paper' ? '' : ` fill-opacity="${TONE_OPACITY[fill.tone]}"`;
  return `<path class="scene-${fill.tone}" stroke="none" fill="${ink}"${opacity} d="${pathOf(fill.outline)}"/>`;
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
  const dash = type.dash.length === 0 ? '' : ` stroke-dasharray="${type.dash.map(round).join(' ')}"`;
  return ` stroke-width="${round(type.width)}"${dash}`;
}

function pathOf(points: readonly { readonly x: number; readonly y: number }[]): string {
  return `${points.map((point, i) => `${i === 0 ? 'M' : 'L'}${round(point.x)} ${round(point.y)}`).join('')}Z`;
}
