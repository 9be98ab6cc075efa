import type { FoldDirection } from '../spec/index.ts';
import { foldStrip } from './fold-strip.ts';
import type { Paper, PaperHinge } from './paper.ts';
import { PARALLEL, TOUCH_MM } from './touch.ts';
import type { Obstruction } from './types.ts';

/** A piece whose shut creases run side by side from edge to edge, with nothing else that lets it move. */
interface Strip {
  readonly piece: string;
  readonly lengths: readonly number[];
  readonly folds: readonly FoldDirection[];
  readonly creases: readonly string[];
  /** Panels of each length, in the order of the pose. */
  readonly panels: readonly (readonly string[])[];
}

/** The first piece that is a strip which cannot fold, even with nothing in its way, and by how much; undefined for none. */
export function stuckStrip(paper: Paper): Obstruction | undefined {
  for (const piece of new Set(paper.panels.map((panel) => panel.piece))) {
    const strip = stripOf(paper, piece);
    const stuck = strip && foldStrip(strip.lengths, strip.folds);
    if (!strip || !stuck) continue;
    const trimmed = strip.lengths.with(stuck.panel, (strip.lengths[stuck.panel] ?? 0) - stuck.mm);
    const panels = strip.panels[stuck.panel] ?? [];
    return {
      is: 'too-long',
      piece,
      panel: (stuck.panel === 0 ? panels[0] : panels.at(-1)) ?? '',
      crease: strip.creases[stuck.crease] ?? '',
      mm: Math.round(stuck.mm / TOUCH_MM) * TOUCH_MM,
      cures: trimmed.every((length) => length > TOUCH_MM) && foldStrip(trimmed, strip.folds) === undefined,
    };
  }
  return undefined;
}

function stripOf(paper: Paper, piece: string): Strip | undefined {
  const hinges = paper.hinges.filter(({ joint, is }) => joint.hinge.piece === piece && is !== 'flat');
  const [first] = hinges;
  if (first === undefined || hinges.some(({ is }) => is !== 'shut')) return undefined;
  if (paper.torn.some(({ joint }) => joint.hinge.piece === piece)) return undefined;
  const [ux, uy] = directionOf(first);
  if (hinges.some((hinge) => Math.abs(ux * directionOf(hinge)[1] - uy * directionOf(hinge)[0]) > PARALLEL))
    return undefined;
  const panels = paper.panels.flatMap((panel, i) =>
    panel.piece === piece ? [{ ...panel, facet: paper.facetOf[i] ?? 0 }] : [],
  );
  const range = (x: number, y: number): [number, number] => {
    const reached = panels.flatMap(({ rings: [edge] }) =>
      Array.from(
        { length: (edge?.length ?? 0) / 2 },
        (_, i) => x * (edge?.[2 * i] ?? 0) + y * (edge?.[2 * i + 1] ?? 0),
      ),
    );
    return [Math.min(...reached), Math.max(...reached)];
  };
  const [from, to] = range(-uy, ux);
  const [low, high] = range(ux, uy);
  const creases = creasesAcross(hinges, [-uy, ux], high - low);
  if (creases === undefined || new Set(panels.map(({ facet }) => facet)).size !== creases.length + 1) return undefined;
  const ends = [from, ...creases.map(({ at }) => at), to];
  const middleOf = (rings: readonly Float64Array[]): number => {
    const edge = rings[0] ?? new Float64Array(0);
    let sum = 0;
    for (let i = 0; i < edge.length; i += 2) sum += (ux * (edge[i + 1] ?? 0) - uy * (edge[i] ?? 0)) * 2;
    return sum / edge.length;
  };
  return {
    piece,
    lengths: ends.slice(1).map((end, i) => end - (ends[i] ?? 0)),
    folds: creases.map(({ fold }) => fold),
    creases: creases.map(({ name }) => name),
    panels: ends.slice(1).map((end, i) => {
      const inside = panels.filter(({ rings }) => middleOf(rings) > (ends[i] ?? 0) && middleOf(rings) < end);
      return inside.map(({ name }) => name);
    }),
  };
}

function directionOf({ from, to }: PaperHinge): [number, number] {
  const size = Math.hypot(to[0] - from[0], to[1] - from[1]);
  return [(to[0] - from[0]) / size, (to[1] - from[1]) / size];
}

interface FullCrease {
  at: number;
  long: number;
  readonly fold: FoldDirection;
  readonly name: string;
}

/** Creases in a row, each made up of stretches of one direction that go right across; undefined when one is not. */
function creasesAcross(
  hinges: readonly PaperHinge[],
  [x, y]: [number, number],
  across: number,
): FullCrease[] | undefined {
  const creases: FullCrease[] = [];
  for (const { from, to, meets, joint } of hinges) {
    if (meets === undefined) return undefined;
    const fold = meets === 'face' ? 'valley' : 'mountain';
    const at = x * from[0] + y * from[1];
    const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const known = creases.find((crease) => Math.abs(crease.at - at) <= TOUCH_MM);
    if (known === undefined) creases.push({ at, long, fold, name: joint.hinge.crease });
    else if (known.fold !== fold) return undefined;
    else known.long += long;
  }
  if (creases.some(({ long }) => Math.abs(long - across) > TOUCH_MM)) return undefined;
  return creases.sort((a, b) => a.at - b.at);
}
