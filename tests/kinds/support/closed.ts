import { type ClosedPose, formatSize, Length, type System } from '../../../plugins/engine/index.ts';

/** What of a folded card is looked at. */
interface Closed {
  readonly folded: { readonly closed: readonly { readonly pose: ClosedPose | undefined }[] };
}

/** Size of a card's first body as it is posted, as `4 1/4 x 5 1/2 in`. */
export function closedSizeOf({ folded }: Closed, system: System): string {
  const box = folded.closed[0]?.pose?.box;
  if (box === undefined) throw new Error('it does not close');
  return formatSize(Length.fromMm(box.right.sub(box.left)), Length.fromMm(box.bottom.sub(box.top)), system);
}
