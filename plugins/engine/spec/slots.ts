import type { NamedPieces, Role } from './find-references.ts';
import type { Piece } from './types.ts';

/** A piece of a used kind, which may give way to another kind. */
export class Slot {
  /** With its name in the card, once that is settled. */
  piece: Piece;
  /** What stands for it: the piece that offers its edges and back, the one on top, and all of the kind. */
  standIn: { readonly body: Slot; readonly top: Slot; readonly whole: readonly Slot[] } | undefined;
  replaced = false;

  constructor(piece: Piece) {
    this.piece = piece;
  }

  /** The piece that is there in its place. */
  as(role: Role): Piece {
    return this.standIn ? this.standIn[role].as(role) : this.piece;
  }

  all(): readonly Piece[] {
    return this.standIn ? this.standIn.whole.flatMap((slot) => slot.all()) : [this.piece];
  }
}

/** Pieces by the names that one kind has for them. */
export type Slots = ReadonlyMap<string, Slot>;

export function namedSlots(slots: Slots): NamedPieces {
  return {
    names: [...slots.keys()],
    find: (name, role) => slots.get(name)?.as(role),
    whole: (name) => slots.get(name)?.all() ?? [],
  };
}

/** Pieces that are in the card: those that gave way to a kind are not. */
export function piecesIn(slots: Slots): Piece[] {
  return [...slots.values()].flatMap((slot) => (slot.replaced ? [] : [slot.piece]));
}
