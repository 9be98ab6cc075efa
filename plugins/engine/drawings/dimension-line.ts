import { ARROW_LENGTH_MM } from './line-types.ts';
import type { SceneLine, ScenePoint } from './scene.ts';

/** From the outline to its first dimension line, in mm, and how far extension lines run past it (ISO 129-1 practice). */
export const FIRST_LINE_MM = 10;
export const OVERRUN_MM = 1.5;

/** Shorter than this, an arrow would not show that it is one. */
const LEAST_FOR_ARROW_MM = ARROW_LENGTH_MM * 1.4;

/** A dimension line with an arrow at its end, or at both; an oblique stroke instead where arrows have no room. */
export function dimensionLine(from: ScenePoint, to: ScenePoint, arrows: 'end' | 'both'): readonly SceneLine[] {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const line: SceneLine = { kind: 'line', role: 'dimension', from, to };
  if (length >= LEAST_FOR_ARROW_MM * (arrows === 'both' ? 2 : 1)) return [{ ...line, arrows }];
  return [line, ...(arrows === 'both' ? [from, to] : [to]).map(obliqueStroke)];
}

function obliqueStroke(at: ScenePoint): SceneLine {
  const half = ARROW_LENGTH_MM / 3;
  return {
    kind: 'line',
    role: 'dimension',
    from: { x: at.x - half, y: at.y + half },
    to: { x: at.x + half, y: at.y - half },
  };
}

export function extensionLine(from: ScenePoint, to: ScenePoint): SceneLine {
  return { kind: 'line', role: 'extension', from, to };
}
