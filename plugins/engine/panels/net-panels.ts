import { cornersOf, insideOf, larger, SNAP } from '../geometry/index.ts';
import type { Piece } from '../spec/index.ts';
import { curvesOf, type LineUp } from './curves.ts';
import { facesOf } from './faces.ts';
import type { Drafted, DraftHinge } from './grid-panels.ts';
import { type GroundWork, groundWorkOf } from './ground-work.ts';
import { PANEL_LIMIT } from './limits.ts';
import { roughCrossings } from './meetings.ts';
import type { Standing } from './names.ts';
import { netOf } from './net.ts';
import { panelsOfNet, type Unnamed } from './panel-shapes.ts';
import { rimsOf } from './rim.ts';
import { runsOf } from './runs.ts';
import { slipsOf } from './slips-of.ts';
import { divide } from './stretches.ts';
import type { PanelSlip, Stroke } from './types.ts';

export type DraftedNet = Drafted & { readonly slips: readonly PanelSlip[] };

/**
 * The panels of any piece: its lines are divided wherever they meet, the regions between them found, and those that nothing
 * parts put together. The piece stays whole when it has more panels than there is `room` for.
 */
export function netPanels(piece: Piece, room: number): DraftedNet {
  const lineUp = curvesOf(piece);
  const side = larger(piece.width.mm, piece.height.mm).valueOf();
  const divided = divide(lineUp, side);
  if (divided === undefined) return uncut(piece, roughCrossings(lineUp.curves) + piece.lines.length + 1, room);
  const net = netOf(divided);
  const faces = facesOf(net);
  if (faces.count > 4 * PANEL_LIMIT) return uncut(piece, faces.count - 1, room);
  const ground = groundWorkOf(piece, lineUp, net, faces);
  const { panels, panelOf } = panelsOfNet(net, faces, ground, SNAP * side);
  if (panels.length > Math.max(1, room)) return uncut(piece, panels.length, room);
  const { strokes, stretches } = runsOf(piece.name, lineUp, net, faces, ground, panelOf);
  const hinges = stretches
    .filter(({ left, right }) => left !== right && left >= 0 && right >= 0)
    .map(
      ({ source, fold, edge: { from, to }, left, right }): DraftHinge => ({
        ...{ crease: lineUp.sources[source]?.name ?? '', fold, from, to, left, right },
      }),
    );
  return {
    panels,
    standings: standingsOf(panels, lineUp, ground),
    hinges,
    strokes,
    slips: slipsOf(piece.name, lineUp, net, faces, ground, stretches),
  };
}

function standingsOf(panels: readonly Unnamed[], { sources }: LineUp, ground: GroundWork): Standing[] {
  const shapes = sources.filter(({ is }) => is === 'shape');
  const rims = rimsOf(panels);
  return panels.map(({ faces }, panel) => {
    const own = faces.filter((face) => !shapes.some(({ region }) => ground.isIn(face, region)));
    const cells: { column: number; row: number }[] = [];
    for (const face of own) {
      const cell = ground.cell[face];
      if (cell && !cells.some(({ column, row }) => column === cell.column && row === cell.row)) cells.push(cell);
    }
    const [first] = faces;
    const shape =
      own.length === 0 && first !== undefined
        ? shapes.find(({ region }) => ground.isIn(first, region))?.name
        : undefined;
    return { cells, shape, rim: rims[panel] ?? { edges: new Set(), corners: new Set() } };
  });
}

/** The piece as one panel, when its lines make more than can be folded. */
export function uncut(piece: Piece, count: number, room: number): DraftedNet {
  const outline = cornersOf(piece.outline);
  const inside = insideOf(outline) ?? outline[0];
  const panels: Unnamed[] = inside ? [{ outline, holes: [], inside, faces: [] }] : [];
  const strokes = piece.outline.map(
    (edge): Stroke => ({ piece: piece.name, does: 'edge', name: '', fold: undefined, edge }),
  );
  const standings = rimsOf(panels).map((rim): Standing => ({ cells: [{ column: 0, row: 0 }], shape: undefined, rim }));
  const { name } = piece;
  const before = PANEL_LIMIT - room;
  const slip: PanelSlip = { piece: name, name, is: 'too-many-panels', count, before, limit: PANEL_LIMIT };
  return { panels, standings, hinges: [], strokes, slips: [slip] };
}
