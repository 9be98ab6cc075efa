import { drawable, textWidth, type Weight } from '../text-metrics.ts';

const ELLIPSIS = '…';

/** The text as drawn, cut short with an ellipsis when it is wider than `width` mm. */
export function fitText(text: string, size: number, width: number, weight: Weight = 'regular'): string {
  const drawn = drawable(text);
  if (textWidth(drawn, size, weight) <= width) return drawn;
  const characters = [...drawn];
  const shortened = (count: number): string => `${characters.slice(0, count).join('').trimEnd()}${ELLIPSIS}`;
  // The longest beginning that fits, by halves.
  let [fits, tooLong] = [0, characters.length];
  while (tooLong - fits > 1) {
    const middle = Math.floor((fits + tooLong) / 2);
    if (textWidth(shortened(middle), size, weight) <= width) fits = middle;
    else tooLong = middle;
  }
  return shortened(fits);
}
