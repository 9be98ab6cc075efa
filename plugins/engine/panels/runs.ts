import type { PathEdge } from '../geometry/index.ts';
import type { CreaseFold } from '../spec/index.ts';
import type { LineUp, Source } from './curves.ts';
import { type Faces, sidesOf } from './faces.ts';
import type { GroundWork } from './ground-work.ts';
import type { Net, Step } from './net.ts';
import type { Stroke } from './types.ts';

/** A crease between two panels, or within one, by panel number. */
export interface Stretch {
  readonly source: number;
  readonly fold: CreaseFold;
  readonly edge: PathEdge;
  readonly left: number;
  readonly right: number;
  /** Of its crease, from 1. */
  readonly stretch: number;
}

/** What is left of the curves of a piece where there is paper. */
export interface Runs {
  readonly strokes: readonly Stroke[];
  readonly stretches: readonly Stretch[];
}

interface Run {
  readonly does: Stroke['does'];
  readonly left: number;
  readonly right: number;
  readonly first: number;
  last: number;
}

/** Follows every curve and gathers links of one kind that follow each other. */
export function runsOf(
  piece: string,
  { curves, sources }: LineUp,
  net: Net,
  faces: Faces,
  ground: GroundWork,
  panelOf: readonly number[],
): Runs {
  const strokes: Stroke[] = [];
  const stretches: Stretch[] = [];
  for (const [number, curve] of curves.entries()) {
    const source = sources[curve.source];
    if (source === undefined) continue;
    const steps = net.steps[number] ?? [];
    let count = 0;
    let drawn: { fold: CreaseFold; first: number; last: number } | undefined;
    const draw = (does: Stroke['does'], first: number, last: number, fold: CreaseFold | undefined): void => {
      strokes.push({ piece, does, name: source.name, fold, edge: partOf(curve.edge, steps, first, last, net) });
    };
    const finish = (): void => {
      if (drawn) draw('crease', drawn.first, drawn.last, drawn.fold);
      drawn = undefined;
    };
    for (const { does, left, right, first, last } of runsAlong(steps, curve.source, source, faces, ground, panelOf)) {
      if (does !== 'crease') {
        draw(does, first, last, undefined);
        continue;
      }
      const fold = source.folds[Math.min(count, source.folds.length - 1)] ?? 'valley';
      count++;
      const edge = partOf(curve.edge, steps, first, last, net);
      stretches.push({ source: curve.source, fold, edge, left, right, stretch: count });
      if (drawn && drawn.last === first - 1 && drawn.fold === fold) drawn.last = last;
      else {
        finish();
        drawn = { fold, first, last };
      }
    }
    finish();
  }
  return { strokes, stretches };
}

function runsAlong(
  steps: readonly Step[],
  number: number,
  source: Source,
  faces: Faces,
  ground: GroundWork,
  panelOf: readonly number[],
): Run[] {
  const runs: Run[] = [];
  for (const [i, { link, forward }] of steps.entries()) {
    const does = doneAlong(link, number, source, faces, ground);
    if (does === undefined) continue;
    const [a, b] = sidesOf(link, faces);
    const [right, left] =
      does !== 'crease'
        ? [-1, -1]
        : forward
          ? [panelOf[a] ?? -1, panelOf[b] ?? -1]
          : [panelOf[b] ?? -1, panelOf[a] ?? -1];
    const run = runs.at(-1);
    if (run && run.last === i - 1 && run.does === does && run.left === left && run.right === right) run.last = i;
    else runs.push({ does, left, right, first: i, last: i });
  }
  return runs;
}

/** Lines that lie on each other are drawn once; a perforation or a mark wherever there is paper on both its sides. */
function doneAlong(
  link: number,
  number: number,
  { is }: Source,
  faces: Faces,
  { paper, work, source }: GroundWork,
): Stroke['does'] | undefined {
  const done = work[link];
  if (is === 'perforation' || is === 'mark')
    return done !== 'cut' && sidesOf(link, faces).every((face) => paper[face]) ? is : undefined;
  return done === undefined || done === 'none' || source[link] !== number ? undefined : done;
}

/** The part of a curve from the beginning of one step to the end of another. */
function partOf(edge: PathEdge, steps: readonly Step[], first: number, last: number, { links, nodes }: Net): PathEdge {
  const ends = (step: Step | undefined): readonly [number, number] => {
    const { from = -1, to = -1 } = links[step?.link ?? -1] ?? {};
    return step?.forward === false ? [to, from] : [from, to];
  };
  return { ...edge, from: nodes.at(ends(steps[first])[0]).at, to: nodes.at(ends(steps[last])[1]).at };
}
