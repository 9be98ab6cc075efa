import type { PanelPart } from './card-types.ts';

/** A text that two references have in common when they mean the same part of a piece by the same name. */
export function partKey(part: PanelPart): string {
  switch (part.is) {
    case 'whole':
      return part.is;
    case 'cell':
      return `${part.is} ${part.column ?? ''}.${part.row ?? ''}`;
    case 'edge':
      return `${part.is} ${part.edge}`;
    case 'corner':
      return `${part.is} ${part.corner}`;
    case 'spot':
      return `${part.is} ${part.at.x.toFraction()} ${part.at.y.toFraction()}`;
  }
}
