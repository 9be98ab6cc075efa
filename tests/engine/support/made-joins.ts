import Fraction from 'fraction.js';
import type {
  CreaseFold,
  Edge,
  GlueJoin,
  HangJoin,
  Length,
  Line,
  PanelPart,
  PanelRef,
  Piece,
  PinJoin,
  Point,
  SlideJoin,
  SlipJoin,
  SlotJoin,
} from '../../../plugins/engine/index.ts';
import { inches, PLACE } from '../dryfit/made-card.ts';

/** A point of a drawing, in inches: `at('2 3/4', '5 1/2')`. */
export function at(x: string, y: string, unit: (text: string) => Length = inches): Point {
  return { x: unit(x).mm, y: unit(y).mm };
}

/** A panel by its piece and column or row: `ref('base.back')`, or by column and row: `ref('layer.middle.middle')`. */
export function ref(text: string, as: 'column' | 'row' = 'column'): PanelRef {
  const [piece = '', first, second] = text.split('.');
  const part: PanelPart =
    first === undefined
      ? { is: 'whole' }
      : {
          is: 'cell',
          column: second !== undefined || as === 'column' ? first : undefined,
          row: second ?? (as === 'row' ? first : undefined),
        };
  return { piece, part, text, place: PLACE, path: '' };
}

/** The panel at an edge: `insert.left`. */
export function edgeOf(piece: string, edge: Edge): PanelRef {
  return { piece, part: { is: 'edge', edge }, text: `${piece}.${edge}`, place: PLACE, path: '' };
}

const AS_DRAWN = { cos: new Fraction(1), sin: new Fraction(0) };

/** Half a turn, in the plane. */
export const HALF_TURN = { cos: new Fraction(-1), sin: new Fraction(0) };

function common(part: PanelRef, onto: PanelRef) {
  const text = `${part.text} onto ${onto.text}`;
  return { part, onto, implied: false, text, place: PLACE, path: `joins.${text}` };
}

/** Glued by the back onto the face, `p` on `q`, unless said otherwise. */
export function glue(
  [part, p]: readonly [PanelRef, Point],
  [onto, q]: readonly [PanelRef, Point],
  more: Partial<GlueJoin> = {},
): GlueJoin {
  const laying = { p, q, turn: AS_DRAWN, partSide: 'back', ontoSide: 'face' } as const;
  return { is: 'glue', ...common(part, onto), ...laying, foam: undefined, laid: undefined, ...more };
}

export function pin(
  [part, p]: readonly [PanelRef, Point],
  [onto, q]: readonly [PanelRef, Point],
  more: Partial<PinJoin> = {},
): PinJoin {
  const laying = { p, q, turn: AS_DRAWN, partSide: 'back', ontoSide: 'face' } as const;
  return { is: 'pin', ...common(part, onto), ...laying, ...more };
}

/** Slides to the right. */
export function slide(
  [part, p]: readonly [PanelRef, Point],
  [onto, q]: readonly [PanelRef, Point],
  more: Partial<SlideJoin> = {},
): SlideJoin {
  const laying = { p, q, turn: AS_DRAWN, partSide: 'back', ontoSide: 'face' } as const;
  return {
    is: 'slide',
    ...common(part, onto),
    ...laying,
    along: { x: new Fraction(1), y: new Fraction(0) },
    through: [],
    shows: 'outside',
    keep: inches('1/2'),
    start: inches('-1'),
    end: inches('1'),
    ...more,
  };
}

export function slip(part: PanelRef, onto: PanelRef, play: Length = inches('1/32')): SlipJoin {
  return { is: 'slip', ...common(part, onto), play };
}

/** Pushed into each other: the inner ends of the two half-slits meet, and they run on in one line. */
export function slot(
  [part, p, line]: readonly [PanelRef, Point, string],
  [onto, q, along]: readonly [PanelRef, Point, string],
): SlotJoin {
  const laying = { p, q, turn: AS_DRAWN, partSide: 'back', ontoSide: 'face' } as const;
  return { is: 'slot', ...common(part, onto), ...laying, line, along };
}

/** Hangs down from `q`. */
export function hang(
  [part, p]: readonly [PanelRef, Point],
  [onto, q]: readonly [PanelRef, Point],
  thread: Length,
  more: Partial<HangJoin> = {},
): HangJoin {
  const away = { x: new Fraction(0), y: new Fraction(1) };
  return { is: 'hang', ...common(part, onto), p, q, away, thread, ...more };
}

/** A crease across a piece, from point to point, or whatever `more` makes of it. */
export function line(
  name: string,
  from: Point,
  to: Point,
  folds: readonly CreaseFold[],
  more: Partial<Line> = {},
): Line {
  return { name, family: name, does: 'crease', from, to, folds, place: PLACE, path: `lines.${name}`, ...more };
}

export function withLines(piece: Piece, ...lines: readonly Line[]): Piece {
  return { ...piece, lines: [...piece.lines, ...lines] };
}
