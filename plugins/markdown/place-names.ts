/** What an author can place in the text of a post. What she does not place stands in the usual order at the end. */
export const PLACE_NAMES = ['drawing', 'supplies', 'template', 'measurements', 'layers', 'dry-fit'] as const;

export type PlaceName = (typeof PLACE_NAMES)[number];

export function isPlaceName(name: string): name is PlaceName {
  return (PLACE_NAMES as readonly string[]).includes(name);
}
