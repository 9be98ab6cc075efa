import type { LineUp, Source } from './curves.ts';
import { type Faces, sidesOf } from './faces.ts';
import type { GroundWork } from './ground-work.ts';
import type { Net } from './net.ts';
import type { Stretch } from './runs.ts';
import type { PanelSlip } from './types.ts';

/** What of a piece cannot be as it was written: regions first, then lines, each in the order in which they are written. */
export function slipsOf(
  piece: string,
  lineUp: LineUp,
  net: Net,
  faces: Faces,
  ground: GroundWork,
  stretches: readonly Stretch[],
): PanelSlip[] {
  const { sources } = lineUp;
  const linksOf = linksBySource(lineUp, net);
  return sources.flatMap((source, number): PanelSlip[] => {
    const common = { piece, name: source.name };
    const links = linksOf[number] ?? [];
    if (source.is === 'outline') return ground.paper.includes(true) ? [] : [{ ...common, is: 'nothing-left' }];
    if (source.is === 'window') return windowSlips(source, links, faces, ground).map((is) => ({ ...common, is }));
    // What is taken away must have been there; what is part-cut must still be.
    const isThere = (face: number): boolean =>
      source.is === 'away' ? ground.isIn(face, 0) : ground.paper[face] === true;
    if (source.region >= 0) {
      const some = allFaces(faces).some((face) => ground.isIn(face, source.region) && isThere(face));
      return some ? [] : [{ ...common, is: 'off-paper' }];
    }
    return lineSlips(piece, number, lineUp, links, faces, ground, stretches);
  });
}

function allFaces({ count }: Faces): number[] {
  return Array.from({ length: count }, (_, face) => face);
}

function linksBySource({ curves, sources }: LineUp, { steps }: Net): number[][] {
  const links: number[][] = sources.map(() => []);
  for (const [number, { source }] of curves.entries())
    for (const { link } of steps[number] ?? []) links[source]?.push(link);
  return links;
}

/** A window must have paper all round. */
function windowSlips(
  { region }: Source,
  links: readonly number[],
  faces: Faces,
  { base, isIn }: GroundWork,
): ('window-off' | 'window-edge')[] {
  const within = allFaces(faces).filter((face) => isIn(face, region));
  if (!within.some((face) => base[face])) return ['window-off'];
  const outside = links.some((link) => sidesOf(link, faces).some((face) => !isIn(face, region) && !base[face]));
  return outside || within.some((face) => !base[face]) ? ['window-edge'] : [];
}

function lineSlips(
  piece: string,
  number: number,
  { sources }: LineUp,
  links: readonly number[],
  faces: Faces,
  ground: GroundWork,
  stretches: readonly Stretch[],
): PanelSlip[] {
  const source = sources[number];
  if (source === undefined) return [];
  const common = { piece, name: source.name };
  const onPaper = links.filter((link) => sidesOf(link, faces).every((face) => ground.paper[face]));
  if (onPaper.length === 0) return [{ ...common, is: 'off-paper' }];
  if (source.is === 'perforation' || source.is === 'mark') return [];
  const own = stretches.filter((stretch) => stretch.source === number);
  const lost = source.is === 'crease' && own.length === 0;
  const others = overlapsOf(number, source, sources, onPaper, ground, lost);
  if (lost && others.length === 0) others.push(...shapesOver(sources, onPaper, faces, ground));
  const slips: PanelSlip[] = others.map((other) => ({ ...common, is: 'overlap', other }));
  if (source.is !== 'crease') return slips;
  for (const { left, right, stretch } of own)
    if (left === right) slips.push({ ...common, is: 'divides-nothing', stretch });
  const wrote = source.folds.length;
  if (wrote > 1 && own.length > 0 && wrote !== own.length)
    slips.push({ ...common, is: 'stretch-count', wrote, takes: own.length });
  return slips;
}

/**
 * Names of others that do the same along a part of a line. A crease that is cut along a part of it is what makers do for
 * flaps; only one that is nothing but cut, or nothing but lost in a shape, is too many.
 */
function overlapsOf(
  number: number,
  { is }: Source,
  sources: readonly Source[],
  onPaper: readonly number[],
  ground: GroundWork,
  isAllLost: boolean,
): string[] {
  const names = new Set<string>();
  for (const link of onPaper) {
    const other = ground.source[link] ?? -1;
    const winner = sources[other];
    if (winner === undefined || other === number) continue;
    const alike = ground.work[link] === is;
    if (alike || (is === 'crease' && isAllLost)) names.add(winner.name);
  }
  return [...names];
}

/** Names of the part-cut shapes that a crease is lost in. */
function shapesOver(
  sources: readonly Source[],
  links: readonly number[],
  faces: Faces,
  { isIn }: GroundWork,
): string[] {
  return sources
    .filter(
      ({ is, region }) =>
        is === 'shape' && links.some((link) => sidesOf(link, faces).some((face) => isIn(face, region))),
    )
    .map(({ name }) => name);
}
