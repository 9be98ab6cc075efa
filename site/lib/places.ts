import type { PlaceName } from '../../plugins/markdown/index.ts';

export type { PlaceName };

/** A stretch of a post's page: rendered Markdown, or a place where a component stands. */
export type BodyPart =
  | { readonly kind: 'html'; readonly html: string }
  /** `card` is the key of one card of the post; undefined means all of them. */
  | { readonly kind: 'place'; readonly place: PlaceName; readonly card: string | undefined };

const MARKER = /<div data-place="([a-z-]+)"(?: data-card="([^"]*)")?><\/div>/;

/**
 * Splits a rendered body where the author placed something. Stretches of white space alone are left out.
 *
 * The markers stand at the top level of the body and nowhere else (the Markdown plugin sees to it), so every stretch of
 * HTML is complete in itself. Give it the HTML of `getBody`, captured in a component so that images are already there:
 * `splitPlaces(await Astro.slots.render('default'))`.
 */
export function splitPlaces(html: string): readonly BodyPart[] {
  const pieces = html.split(MARKER);
  const parts: BodyPart[] = [];
  for (let i = 0; i < pieces.length; i += 3) {
    const text = pieces[i] ?? '';
    if (text.trim() !== '') parts.push({ kind: 'html', html: text });
    const place = pieces[i + 1];
    if (place !== undefined) parts.push({ kind: 'place', place: place as PlaceName, card: pieces[i + 2] });
  }
  return parts;
}
