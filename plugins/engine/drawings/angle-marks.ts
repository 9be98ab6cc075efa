import { angleLabel, angleOf, type LineAngle, type PieceStrokes } from '../wording/index.ts';
import type { Board } from './board.ts';
import { extensionLine } from './dimension-line.ts';
import { type DrawnPiece, onSheet } from './drawn-piece.ts';
import { FIGURE_SIZES, HALF_FIGURE } from './figure-plan.ts';
import type { SceneArc, SceneLabel, SceneLine, ScenePoint } from './scene.ts';
import { emOf, textWidth } from './text-metrics.ts';

/** Radii of an angle's arc, the best first, and the room between it and its figure, in mm. */
const RADII_MM = [9, 12, 7, 15, 19, 24, 5];
const OFF_ARC_MM = 1;
/** Parts of the arc at which its figure may stand. */
const PARTS = [0.5, 0.35, 0.65, 0.2, 0.8];
/** An arc stays this part of the line's length. */
const SHARE_OF_LINE = 0.9;
/** Room beyond the arc on a level line that is drawn for it alone, in mm. */
const BEYOND_MM = 1.5;

/** The angle of each sloping line, with an arc and its degrees. */
export function drawAngles(board: Board, drawn: DrawnPiece, { lines }: PieceStrokes): void {
  for (const line of lines) {
    const angle = angleOf(line, lines, drawn.piece);
    if (angle !== undefined) drawAngle(board, drawn, angle);
  }
}

function drawAngle(board: Board, drawn: DrawnPiece, angle: LineAngle): void {
  const at = onSheet(drawn, angle.at);
  const away = onSheet(drawn, angle.away);
  const length = Math.hypot(away.x - at.x, away.y - at.y);
  const start = degreesOf(angle.along[0], angle.along[1]);
  const turn = turnBetween(start, degreesOf(away.x - at.x, away.y - at.y));
  const [from, to] = turn > 0 ? [start, start + turn] : [start + turn, start];
  for (const radius of RADII_MM.filter((each) => each <= SHARE_OF_LINE * length)) {
    const arc: SceneArc = { kind: 'arc', role: 'dimension', centre: at, rx: radius, ry: radius, from, to };
    const level = angle.with === undefined ? [levelLine(at, angle.along, radius)] : [];
    if (!board.isFree(arc, ...level)) continue;
    const succeeded = board.try((copy) => {
      copy.add(arc, ...level);
      return copy.place(figures(angleLabel(angle.degrees), at, radius, from, to));
    });
    if (succeeded) return;
  }
}

/** Outside the arc, then inside. */
function figures(text: string, at: ScenePoint, radius: number, from: number, to: number): readonly SceneLabel[] {
  return FIGURE_SIZES.flatMap((size) => {
    const half = HALF_FIGURE * emOf(size, 'regular');
    const halfWidth = textWidth(text, size) / 2;
    return [1, -1].flatMap((side) =>
      PARTS.map((part): SceneLabel => {
        const radians = ((from + part * (to - from)) * Math.PI) / 180;
        const [cos, sin] = [Math.cos(radians), Math.sin(radians)];
        const off = radius + side * (OFF_ARC_MM + Math.abs(cos) * halfWidth + Math.abs(sin) * half);
        const middle = { x: at.x + off * cos, y: at.y + off * sin };
        return {
          kind: 'label',
          text,
          role: 'figure',
          size,
          anchor: 'middle',
          turn: 0,
          at: { x: middle.x, y: middle.y + half },
        };
      }),
    );
  });
}

function levelLine(at: ScenePoint, along: LineAngle['along'], radius: number): SceneLine {
  const reach = radius + BEYOND_MM;
  return extensionLine(at, { x: at.x + along[0] * reach, y: at.y + along[1] * reach });
}

function degreesOf(x: number, y: number): number {
  return (Math.atan2(y, x) * 180) / Math.PI;
}

/** From one direction to another the short way: over -180 to 180. */
function turnBetween(from: number, to: number): number {
  const turn = (((to - from) % 360) + 360) % 360;
  return turn > 180 ? turn - 360 : turn;
}
