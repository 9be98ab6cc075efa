import { drawable, textWidth, type Weight } from '../text-metrics.ts';

/** The text as drawn, cut short with an ellipsis when it is wider than `width` mm. */
export function fitText(text: string, size: number, width: number, weight: Weight = 'regular'): string {
  const drawn = drawable(text);
  if (textWidth(drawn, size, weight) <= width) return drawn;
  const characters = [...drawn];
  while (characters.length > 0 && textWidth(`${characters.join('').trimEnd()}…`, size, weight) > width)
    characters.pop();
  return `${characters.join('').trimEnd()}…`;
}
