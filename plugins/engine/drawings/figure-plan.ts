import { spread } from './spread.ts';
import { emOf, textWidth } from './text-metrics.ts';

/** Letter heights that figures may take, in mm, the one that reads best first (ISO 3098-1; never under 2.5). */
export const FIGURE_SIZES = [3.5, 2.5] as const;

/** Half the height of a figure, in ems: sets a figure's middle on a line. */
export const HALF_FIGURE = 0.295;

/** Room between neighbouring figures, in mm. */
const FIGURE_GAP_MM = 1;
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

/**
 * Plans the figures over an edge measured from left to right: upright if they fit at their places, else turned in line
 * with the extension lines and moved aside as needed; undefined when there is no room even so.
 *
 * `places` in rising order; figures stay between `low` and `high`.
 */
export function planAcross(
  places: readonly number[],
  texts: readonly string[],
  low: number,
  high: number,
): FigurePlan | undefined {
  for (const size of FIGURE_SIZES) {
    const widths = texts.map((text) => textWidth(text, size));
    const lefts = places.map((place, i) => place - (widths[i] ?? 0) / 2);
    const rights = places.map((place, i) => place + (widths[i] ?? 0) / 2);
    const apart = lefts.every((left, i) => i === 0 || left - (rights[i - 1] ?? left) >= FIGURE_GAP_MM);
    const inside = lefts.every((left) => left >= low) && rights.every((right) => right <= high);
    if (apart && inside) {
      return {
        size,
        middles: places,
        inLine: false,
        moved: false,
        from: STAND_OFF_MM,
        to: STAND_OFF_MM + emOf(size, 'regular'),
      };
    }
  }
  return planInLine(places, texts, low, high);
}

/** Plans the figures beside an edge measured from top to bottom: always in line with their extension lines. */
export function planDown(
  places: readonly number[],
  texts: readonly string[],
  low: number,
  high: number,
): FigurePlan | undefined {
  return planInLine(places, texts, low, high);
}

function planInLine(
  places: readonly number[],
  texts: readonly string[],
  low: number,
  high: number,
): FigurePlan | undefined {
  const plans = FIGURE_SIZES.flatMap((size): FigurePlan[] => {
    const row = FIGURE_ROW * emOf(size, 'regular');
    const middles = spread(places, row + FIGURE_GAP_MM * 0.7, low + row / 2, high - row / 2);
    if (middles === undefined) return [];
    const moved = middles.some((middle, i) => Math.abs(middle - (places[i] ?? middle)) > MOVED_MM);
    const from = STAND_OFF_MM + (moved ? LEADER_MM : 0);
    const length = Math.max(...texts.map((text) => textWidth(text, size)));
    return [{ size, middles, inLine: true, moved, from, to: from + length }];
  });
  return plans.find((plan) => !plan.moved) ?? plans.at(-1);
}
