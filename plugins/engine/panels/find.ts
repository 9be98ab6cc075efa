import { standingInPaper } from '../geometry/index.ts';
import type { PanelPart, Piece } from '../spec/index.ts';
import type { Standing } from './names.ts';
import type { Panel } from './types.ts';

/** A piece with its panels and what is known of each, in one order. */
export interface Panelled {
  readonly piece: Piece;
  readonly panels: readonly Panel[];
  readonly standings: readonly Standing[];
}

/** The panels of a piece that a part of it means. */
export function panelsMeant({ piece, panels, standings }: Panelled, part: PanelPart): readonly Panel[] {
  const where = (holds: (standing: Standing) => boolean): readonly Panel[] =>
    panels.filter((_, panel) => {
      const standing = standings[panel];
      return standing !== undefined && holds(standing);
    });
  switch (part.is) {
    case 'whole':
      return panels;
    case 'cell':
      return where(({ cells }) =>
        cells.some(
          ({ column, row }) =>
            (part.column === undefined || piece.columns[column]?.name === part.column) &&
            (part.row === undefined || piece.rows[row]?.name === part.row),
        ),
      );
    case 'edge':
      return where(({ rim }) => rim.edges.has(part.edge));
    case 'corner':
      return where(({ rim }) => rim.corners.has(part.corner));
    case 'spot':
      return panels.filter(({ outline, holes }) => standingInPaper(part.at, outline, holes) !== 'outside');
  }
}
