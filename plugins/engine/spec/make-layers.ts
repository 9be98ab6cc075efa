import type { Filling, WorkStep } from './card-types.ts';
import { findPanel, findPiece, type NamedPieces } from './find-references.ts';
import { type LayerSpec, readLayers } from './read-layers.ts';
import { type Report, suggest } from './report.ts';
import type { CardRequest } from './types.ts';

/** The post's layers with their panels, pieces and fillings found. */
export function makeLayers(
  layers: CardRequest['layers'],
  pieces: NamedPieces,
  fillings: readonly Filling[],
  report: Report,
): WorkStep[] {
  const specs = layers ? readLayers(layers.node, layers.path, report) : [];
  return specs.flatMap((spec) => made(spec, pieces, fillings, report) ?? []);
}

function made(
  spec: LayerSpec,
  pieces: NamedPieces,
  fillings: readonly Filling[],
  report: Report,
): WorkStep | undefined {
  const origin = { place: spec.place, path: spec.path };
  switch (spec.is) {
    case 'coat': {
      const side = spec.on.side ?? 'face';
      const found = findPanel(spec.on, side === 'face' ? 'top' : 'body', pieces, report);
      return found && { is: 'coat', coat: { on: found.ref, side, items: spec.items, ...origin } };
    }
    case 'glue': {
      const piece = findPiece(spec.piece, 'body', pieces, report);
      return piece && { is: 'glue', piece: piece.name, ...origin };
    }
    case 'fill': {
      const { text, place } = spec.filling;
      if (fillings.some(({ name }) => name === text)) return { is: 'fill', filling: text, ...origin };
      const known = fillings.map(({ name }) => name);
      const takes = known.length === 0 ? 'a filling; this card has none' : `a filling: ${known.join(', ')}`;
      const remedy = suggest(text, known, 'Add it under `fill`, or leave this out.');
      report.at(place, `${spec.path}.fill`, { code: 'unknown-filling', wrote: text, takes, remedy });
      return undefined;
    }
  }
}
