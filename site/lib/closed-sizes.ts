import type { CardEdition, ProjectCard } from '../../plugins/content/index.ts';
import { Length, type System } from '../../plugins/engine/index.ts';

export interface ClosedSize {
  readonly width: Length;
  readonly height: Length;
}

export type ClosedSizes = Readonly<Record<System, ClosedSize>>;

/** Width and height of the card when it is shut, in both editions. */
export function closedSizes(card: ProjectCard): ClosedSizes {
  return { inch: closedSize(card.editions.inch), metric: closedSize(card.editions.metric) };
}

/** The closed sizes of a post's cards, each once, in the order of the cards. */
export function distinctSizes(cards: readonly ProjectCard[]): readonly ClosedSizes[] {
  const sizes = cards.map(closedSizes);
  return sizes.filter((size, index) => sizes.findIndex((other) => sameSizes(other, size)) === index);
}

/** The box round the first piece that folds; a card of flat pieces is as large as its first. */
function closedSize(edition: CardEdition): ClosedSize {
  const box = edition.closed[0]?.box;
  if (box !== undefined) {
    return { width: Length.fromMm(box.right.sub(box.left)), height: Length.fromMm(box.bottom.sub(box.top)) };
  }
  const piece = edition.card.pieces[0];
  return { width: piece?.width ?? Length.zero, height: piece?.height ?? Length.zero };
}

function sameSizes(a: ClosedSizes, b: ClosedSizes): boolean {
  return sameSize(a.inch, b.inch) && sameSize(a.metric, b.metric);
}

function sameSize(a: ClosedSize, b: ClosedSize): boolean {
  return a.width.equals(b.width) && a.height.equals(b.height);
}
