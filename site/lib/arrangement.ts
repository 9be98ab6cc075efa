import type { BodyPart, PlaceName } from './places.ts';

/** A part of a project's page, with the keys of the cards it shows. The supply list and the files serve the whole post. */
export interface Standing {
  readonly place: PlaceName;
  readonly cards: readonly string[];
}

/** Where the parts stand that the author has not placed in her text. */
export interface Arrangement {
  readonly before: readonly Standing[];
  readonly after: readonly Standing[];
}

/**
 * The usual order of what the author left out: drawing, measurements, supplies; the text; layers, template, dry fit.
 *
 * Measurements belong to their drawing, so when every drawing stands in the text the tables follow the text.
 *
 * @param keys the keys of the post's cards; none for a post without a card
 */
export function arrange(body: readonly BodyPart[], keys: readonly string[]): Arrangement {
  const drawing = ofCards('drawing', body, keys);
  const measurements = ofCards('measurements', body, keys);
  const leads = drawing.length > 0;
  return {
    before: [...drawing, ...(leads ? measurements : []), ...ofPost('supplies', body)],
    after: [
      ...(leads ? [] : measurements),
      ...ofCards('layers', body, keys),
      ...(keys.length > 0 ? ofPost('template', body) : []),
      ...ofCards('dry-fit', body, keys),
    ],
  };
}

function ofCards(place: PlaceName, body: readonly BodyPart[], keys: readonly string[]): readonly Standing[] {
  const cards = keys.filter((key) => !placed(place, body, key));
  return cards.length > 0 ? [{ place, cards }] : [];
}

function ofPost(place: PlaceName, body: readonly BodyPart[]): readonly Standing[] {
  return placed(place, body) ? [] : [{ place, cards: [] }];
}

function placed(place: PlaceName, body: readonly BodyPart[], key?: string): boolean {
  return body.some(
    (part) =>
      part.kind === 'place' &&
      part.place === place &&
      (key === undefined || part.card === undefined || part.card === key),
  );
}
