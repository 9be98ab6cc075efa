import { drawable, textWidth, type Weight } from '../text-metrics.ts';

/** The text as drawn, cut short with an ellipsis when it is wider than `width` mm. */
export function fitText(text: string, size: number, width: number, weight: Weight = 'regular'): string {
  const drawn = drawable(text);
  if (textWidth(drawn, size, weight) <= width) return drawn;
  const characters = [...drawn];
  const cut = (count: number): string => `${characters.slice(0, count).join('').trimEnd()}…`;
  // A longer beginning is never narrower, so the longest that fits is found by halving.
  let fits = 0;
  let tooLong = characters.length;
  while (tooLong - fits > 1) {
    const middle = (fits + tooLong) >> 1;
    if (textWidth(cut(middle), size, weight) <= width) fits = middle;
    else tooLong = middle;
  }
  return cut(fits);
}
