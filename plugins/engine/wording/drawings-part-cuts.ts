import type { PartCut, Piece } from '../spec/index.ts';
import { type Form, formOf } from './drawings-forms.ts';
import { acrossFrom } from './drawings-lines.ts';
import { sayMeasure } from './drawings-measures.ts';
import { isNamed, sayName } from './drawings-names.ts';
import { sayForm, sayWhere } from './drawings-outlines.ts';
import type { Telling } from './drawings-points.ts';

/** A shape that is cut round only where it leaves the band that it stays with. */
export function sayPartCut({ name, outline, staysWith }: PartCut, telling: Telling): readonly string[] {
  const form = formOf(outline);
  const sides = cutSides(form, staysWith, telling);
  const where = sides.length === 0 ? '' : `, ${sides.join(' and ')}`;
  return [
    `The ${sayName(name)} is ${sayForm(form, telling)}.`,
    ...sayWhere(outline, telling),
    `Cut round it only outside the ${sayName(staysWith)}${where}.`,
    `Do not cut it where it lies on the ${sayName(staysWith)}, and score nothing across it.`,
  ];
}

/** "left of the swing", for each edge of the band that the shape reaches over. */
function cutSides({ left, top, width, height }: Form, staysWith: string, telling: Telling): readonly string[] {
  const { piece } = telling;
  for (const [runs, bands, first, last] of [
    ['down', piece.columns, left, left.add(width)],
    ['across', piece.rows, top, top.add(height)],
  ] as const) {
    const index = bands.findIndex((band) => band.name === staysWith);
    const band = bands[index];
    if (band === undefined) continue;
    const [start, end] = [band.start.mm, band.start.plus(band.size).mm];
    const words = runs === 'down' ? ['left of', 'right of'] : ['above', 'below'];
    return [
      ...(first.compare(start) < 0 ? [`${words[0]} ${sayEdge(piece, runs, index - 1, telling)}`] : []),
      ...(last.compare(end) > 0 ? [`${words[1]} ${sayEdge(piece, runs, index, telling)}`] : []),
    ];
  }
  return [];
}

/** The crease between two bands, by its name or where it is. */
function sayEdge(piece: Piece, runs: 'down' | 'across', index: number, { system, hand }: Telling): string {
  const crease = piece.creases.filter((each) => each.runs === runs)[index];
  if (crease === undefined) return 'the edge';
  if (isNamed(crease)) return `the ${sayName(crease.name)}`;
  const at = runs === 'down' ? acrossFrom(crease.at.mm, piece, hand) : crease.at.mm;
  return `the fold at ${sayMeasure(at, false, system)}`;
}
