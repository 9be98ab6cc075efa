import { spread } from './spread.ts';
import { emOf, textWidth } from './text-metrics.ts';

/** Letter heights that figures may take, in mm, the one that reads best first (ISO 3098-1; never under 2.5). */
export const FIGURE_SIZES = [3.5, 2.5] as const;

/** Half the height of a figure, in ems: sets a figure's middle on a line. */
export const HALF_FIGURE = 0.295;

/** Room between neighbouring figures, in mm. */
const FIGURE_GAP_MM = 1;
/** Between rows of figures in line with their extension lines, in mm. */
const ROW_GAP_MM = 0.7;
/** What a row of upright figures takes of the line, each, in ems. */
const FIGURE_ROW = 0.79;
/** Figures moved by more than this get a leader. */
const MOVED_MM = 0.2;
/** From the end of an extension line to its figure, in mm. */
const STAND_OFF_MM = 1.2;
export const LEADER_MM = 3;

/** How the figures of one running dimension stand beside their extension lines. */
export interface FigurePlan {
  readonly size: number;
  /** Along the measured edge, where each figure's middle lies, in the order given. */
  readonly middles: readonly number[];
  /** True when the text runs along its extension line, false when it stands across the line's end. */
  readonly inLine: boolean;
  /** Whether any figure is moved aside, so that leaders are drawn. */
  readonly moved: boolean;
  /** From the end of the extension lines to the figures, and to their far end, in mm. */
  readonly from: number;
  readonly to: number;
}

/** A figure and where along the edge its extension line is, in mm. */
export interface FigurePlace {
  readonly at: number;
  readonly text: string;
}

/**
 * Plans the figures over an edge measured from left to right: upright if they fit at their places, else turned in line
 * with the extension lines and moved aside as needed; undefined when there is no room even so.
 *
 * `places` in rising order; figures stay between `low` and `high`.
 */
export function planAcross(places: readonly FigurePlace[], low: number, high: number): FigurePlan | undefined {
  for (const size of FIGURE_SIZES) {
    const spans = places.map(({ at, text }) => {
      const half = textWidth(text, size) / 2;
      return { left: at - half, right: at + half };
    });
    const apart = spans.every(({ left }, i) => i === 0 || left - (spans[i - 1]?.right ?? left) >= FIGURE_GAP_MM);
    if (apart && spans.every(({ left, right }) => left >= low && right <= high)) {
      const to = STAND_OFF_MM + emOf(size, 'regular');
      return { size, middles: places.map(({ at }) => at), inLine: false, moved: false, from: STAND_OFF_MM, to };
    }
  }
  return planInLine(places, low, high);
}

/** Plans the figures beside an edge measured from top to bottom: always in line with their extension lines. */
export function planDown(places: readonly FigurePlace[], low: number, high: number): FigurePlan | undefined {
  return planInLine(places, low, high);
}

function planInLine(places: readonly FigurePlace[], low: number, high: number): FigurePlan | undefined {
  const plans = FIGURE_SIZES.flatMap((size): FigurePlan[] => {
    const row = FIGURE_ROW * emOf(size, 'regular');
    const middles = spread(
      places.map(({ at }) => at),
      row + ROW_GAP_MM,
      low + row / 2,
      high - row / 2,
    );
    if (middles === undefined) return [];
    const moved = middles.some((middle, i) => Math.abs(middle - (places[i]?.at ?? middle)) > MOVED_MM);
    const from = STAND_OFF_MM + (moved ? LEADER_MM : 0);
    const to = from + Math.max(...places.map(({ text }) => textWidth(text, size)));
    return [{ size, middles, inLine: true, moved, from, to }];
  });
  return plans.find((plan) => !plan.moved) ?? plans.at(-1);
}
