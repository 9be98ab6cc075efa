import type { SceneLine, ScenePoint } from '../drawings/index.ts';
import { ARROW_LENGTH_MM, ARROW_WIDTH_MM } from '../drawings/index.ts';

/** Triangles of a line's arrowheads: tip first. The tip lies on the line's end. */
export function arrowheads(line: SceneLine): readonly (readonly [ScenePoint, ScenePoint, ScenePoint])[] {
  if (line.arrows === 'end') return [arrowhead(line.from, line.to)];
  if (line.arrows === 'both') return [arrowhead(line.from, line.to), arrowhead(line.to, line.from)];
  return [];
}

function arrowhead(from: ScenePoint, tip: ScenePoint): readonly [ScenePoint, ScenePoint, ScenePoint] {
  const length = Math.hypot(tip.x - from.x, tip.y - from.y) || 1;
  const along = { x: (tip.x - from.x) / length, y: (tip.y - from.y) / length };
  const foot = { x: tip.x - along.x * ARROW_LENGTH_MM, y: tip.y - along.y * ARROW_LENGTH_MM };
  const half = ARROW_WIDTH_MM / 2;
  return [
    tip,
    { x: foot.x - along.y * half, y: foot.y + along.x * half },
    { x: foot.x + along.y * half, y: foot.y - along.x * half },
  ];
}

/** The line without the parts its arrowheads cover, so that no blunt end shows at a tip. */
export function shaft(line: SceneLine): { readonly from: ScenePoint; readonly to: ScenePoint } {
  const length = Math.hypot(line.to.x - line.from.x, line.to.y - line.from.y) || 1;
  const cut = Math.min(ARROW_LENGTH_MM * 0.8, length / 2) / length;
  const towards = (a: ScenePoint, b: ScenePoint): ScenePoint => ({
    x: a.x + (b.x - a.x) * cut,
    y: a.y + (b.y - a.y) * cut,
  });
  return {
    from: line.arrows === 'both' ? towards(line.from, line.to) : line.from,
    to: line.arrows === 'both' || line.arrows === 'end' ? towards(line.to, line.from) : line.to,
  };
}
