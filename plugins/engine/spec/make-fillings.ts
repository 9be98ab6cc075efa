import Fraction from 'fraction.js';
import type { FillingSpec } from './assembly-specs.ts';
import type { Filling } from './card-types.ts';
import { findPiece } from './find-references.ts';
import type { Making } from './join-making.ts';
import { suggest } from './report.ts';

/** How full a chamber is where the fold does not say. */
const USUALLY_FULL = new Fraction(1, 3);

/** One loose filling, with its window found. */
export function makeFilling(spec: FillingSpec, { pieces, sizes, report }: Making): Filling | undefined {
  const { inside, name, stock, place, path } = spec;
  const [pieceName = '', ...rest] = inside.text.split('.');
  const node = { ...inside, text: pieceName };
  const piece = findPiece({ node, side: undefined, path: `${path}.in` }, 'body', pieces, report);
  const full = spec.full ? sizes.number(spec.full) : USUALLY_FULL;
  if (piece === undefined || full === undefined) return undefined;
  const windows = piece.windows.map((window) => window.name);
  const [only] = windows;
  const window = rest.length === 0 && windows.length === 1 ? only : windows.find((known) => known === rest.join('.'));
  if (window === undefined) {
    const known = windows.map((one) => `${piece.name}.${one}`);
    const takes = known.length === 0 ? 'a piece with a window' : `a window: ${known.join(', ')}`;
    const otherwise =
      known.length === 0 ? `Add a window under \`windows\` of \`${piece.name}\`.` : `Write one of ${known.join(', ')}.`;
    const remedy = suggest(inside.text, known, otherwise);
    report.at(inside.place, `${path}.in`, { code: 'unknown-window', wrote: inside.text, takes, remedy });
    return undefined;
  }
  if (full.lte(0) || full.gt(1)) {
    const written = spec.full?.written;
    report.at(written?.node.place ?? place, written?.path ?? path, {
      code: 'share-out-of-range',
      wrote: spec.full?.text ?? '',
      takes: 'a share over 0 and at most 1, as `1/3`',
      remedy: 'Write how much of the depth is filled: `1/3` for a third.',
    });
    return undefined;
  }
  const filling = { name, piece: piece.name, window, stock, full, place, path };
  return spec.mass ? { ...filling, mass: spec.mass } : filling;
}
