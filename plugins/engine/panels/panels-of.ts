import type { Card, PanelPart, Piece } from '../spec/index.ts';
import { type Panelled, panelsMeant } from './find.ts';
import { gridPanels } from './grid-panels.ts';
import { PANEL_LIMIT } from './limits.ts';
import { panelNames } from './names.ts';
import { type DraftedNet, netPanels, uncut } from './net-panels.ts';
import type { Hinge, Panel, Panelling, PanelSlip, Stroke } from './types.ts';

/**
 * The panels of a card, the hinges between them and every line as it is drawn, each in its piece's own drawing. Exact
 * wherever coordinates are fractions.
 *
 * Panels go piece by piece, from the top down and from left to right by their top left corner; hinges crease by crease,
 * along the crease. A crease that is crossed gives one hinge for each two panels that it parts. A piece that is divided into more
 * panels than a card may have stays whole.
 */
export function panelsOf(card: Card): Panelling {
  let room = PANEL_LIMIT;
  const pieces = card.pieces.map((piece) => {
    const made = panelsOfPiece(piece, room);
    room = Math.max(0, room - made.panels.length);
    return made;
  });
  const byName = new Map(pieces.map((one) => [one.piece.name, one]));
  return {
    panels: pieces.flatMap(({ panels }) => panels),
    hinges: pieces.flatMap(({ hinges }) => hinges),
    strokes: pieces.flatMap(({ strokes }) => strokes),
    slips: pieces.flatMap(({ slips }) => slips),
    find(piece: string, part: PanelPart): readonly Panel[] {
      const found = byName.get(piece);
      return found ? panelsMeant(found, part) : [];
    },
  };
}

interface PiecePanels extends Panelled {
  readonly hinges: readonly Hinge[];
  readonly strokes: readonly Stroke[];
  readonly slips: readonly PanelSlip[];
}

function panelsOfPiece(piece: Piece, room: number): PiecePanels {
  const { panels: drafts, standings, hinges, strokes, slips } = draft(piece, room);
  const names = panelNames(piece, drafts, standings);
  const nameOf = (panel: number): string => names[panel] ?? piece.name;
  const parts = partsOf(drafts.length, hinges);
  const apart: PanelSlip[] = parts > 1 ? [{ piece: piece.name, name: '', is: 'falls-apart', parts }] : [];
  return {
    piece,
    standings,
    strokes,
    slips: [...slips, ...apart],
    panels: drafts.map(
      ({ outline, holes, inside }, panel): Panel => ({
        name: nameOf(panel),
        piece: piece.name,
        outline,
        holes,
        inside,
      }),
    ),
    hinges: hinges.map(
      ({ left, right, ...hinge }): Hinge => ({ ...hinge, piece: piece.name, left: nameOf(left), right: nameOf(right) }),
    ),
  };
}

function draft(piece: Piece, room: number): DraftedNet {
  const cells = piece.columns.length * piece.rows.length;
  if (cells > PANEL_LIMIT) return uncut(piece, cells, room);
  const grid = gridPanels(piece);
  if (grid === undefined) return netPanels(piece, room);
  return cells > Math.max(1, room) ? uncut(piece, cells, room) : { ...grid, slips: [] };
}

/** How many parts a piece is in when it has been cut, held together by nothing but its creases. */
function partsOf(panels: number, hinges: readonly { readonly left: number; readonly right: number }[]): number {
  const heads = Array.from({ length: panels }, (_, panel) => panel);
  const headOf = (panel: number): number => {
    let head = panel;
    while (heads[head] !== head) head = heads[head] ?? head;
    return head;
  };
  let parts = panels;
  for (const { left, right } of hinges) {
    const [a, b] = [headOf(left), headOf(right)];
    if (a === b) continue;
    heads[Math.max(a, b)] = Math.min(a, b);
    parts--;
  }
  return parts;
}
