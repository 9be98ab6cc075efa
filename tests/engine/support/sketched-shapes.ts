import type { CreaseFold } from '../../../plugins/engine/spec/index.ts';
import type { Point, Sketch, SketchedPanel } from './sketched-pose.ts';

/** A rectangle as a panel; a piece of its own unless said. */
export function rectangle(name: string, [left, top]: Point, [width, height]: Point, piece = name): SketchedPanel {
  return { name, piece, outline: corners([left, top], [width, height]) };
}

/** Clockwise on the drawing. */
export function corners([left, top]: Point, [width, height]: Point): Point[] {
  return [
    [left, top],
    [left + width, top],
    [left + width, top + height],
    [left, top + height],
  ];
}

const FOLDS: Readonly<Record<string, CreaseFold>> = { V: 'valley', M: 'mountain', B: 'both' };

/** A strip from left to right: panels 0, 1 and so on of one piece, and a letter for each crease: V, M or B for both ways. */
export function stripSketch(lengths: readonly number[], folds: string, height = 30): Sketch {
  const starts = lengths.map((_, i) => lengths.slice(0, i).reduce((sum, length) => sum + length, 0));
  return {
    panels: lengths.map((length, i) => rectangle(`${i}`, [starts[i] ?? 0, 0], [length, height], 'strip')),
    hinges: [...folds].map((letter, i) => {
      const at = starts[i + 1] ?? 0;
      return { between: [`${i}`, `${i + 1}`], from: [at, 0], to: [at, height], fold: FOLDS[letter] ?? 'valley' };
    }),
  };
}
