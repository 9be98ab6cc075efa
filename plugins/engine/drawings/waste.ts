import { cornersOf, insideOf } from '../geometry/index.ts';
import { AWAY_WORDS, sayName } from '../wording/index.ts';
import type { Board } from './board.ts';
import { type DrawnPiece, onSheet, outlineOnSheet } from './drawn-piece.ts';
import { type HatchedRegion, hatching } from './hatching.ts';
import { aboutMiddle, isWithin, type NamedPanel } from './panel-names.ts';
import type { SceneLine } from './scene.ts';
import { labelBox } from './text-metrics.ts';

/** Writes in each window and shape its name, and in what is trimmed off what becomes of it, where there is room. */
export function drawRegionNames(board: Board, drawn: DrawnPiece): void {
  for (const place of regionPlaces(drawn))
    board.place(
      aboutMiddle(place).filter((label) => isWithin(labelBox(label), place) && board.isClear(labelBox(label))),
    );
}

function regionPlaces(drawn: DrawnPiece): readonly NamedPanel[] {
  const { windows, away, shapes } = drawn.piece;
  return [
    ...[...windows, ...shapes].map(({ name, outline }) => ({ text: sayName(name), outline })),
    ...away.map(({ outline }) => ({ text: AWAY_WORDS, outline })),
  ].flatMap(({ text, outline }): readonly NamedPanel[] => {
    const ring = outlineOnSheet(drawn, outline);
    const inside = insideOf(cornersOf(outline));
    if (inside === undefined) return [];
    const [xs, ys] = [ring.map(({ x }) => x), ring.map(({ y }) => y)];
    const box = { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
    return [{ text, box, rings: [ring], inside: onSheet(drawn, inside) }];
  });
}

/** Hatching over windows and what is trimmed off, round the letters that stand there already. */
export function wasteHatching(board: Board, drawn: DrawnPiece, spacing: number): readonly SceneLine[] {
  const { outline, windows, away } = drawn.piece;
  if (windows.length + away.length === 0) return [];
  const paper = [outlineOnSheet(drawn, outline)];
  const regions = [...windows, ...away].map(
    (region): HatchedRegion => ({ waste: [outlineOnSheet(drawn, region.outline)], paper }),
  );
  return hatching(regions, board.lettered, spacing);
}
