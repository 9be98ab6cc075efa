import type { PoseSpec, Setting } from './assembly-specs.ts';
import type { Join, SlideJoin, TurnOf } from './card-types.ts';
import { type CreaseId, RANKS, type Target } from './pose-targets.ts';
import type { Sizes } from './references.ts';
import type { Report } from './report.ts';

export type Written = PoseSpec['settings'][number];

/** A setting with what it speaks of. */
export interface Said {
  readonly written: Written;
  readonly target: Target;
}

/** What the settings of a pose are worked out with. */
export interface Settling {
  readonly creases: readonly CreaseId[];
  readonly joins: readonly Join[];
  readonly sizes: Sizes;
  readonly report: Report;
}

export function speaksOf(target: Target, crease: CreaseId): boolean {
  if (target.is === 'rest') return true;
  if (target.is === 'pieces') return target.pieces.includes(crease.piece);
  return target.creases.some(({ piece, crease: name }) => piece === crease.piece && name === crease.crease);
}

/** The lower, the more particular. */
export function rankOf(target: Target): number {
  if (target.is === 'rest') return RANKS.rest;
  if (target.is === 'pieces') return target.pieces.length > 1 ? RANKS.pieces : RANKS.piece;
  return target.rank;
}

/** What a setting makes of creases; undefined when it speaks of sliders or pinned pieces, or cannot be understood. */
export function turnOf({ written, target }: Said, making: Settling): TurnOf | 'keep' | undefined {
  const { setting, node, path } = written;
  const { joins, creases, report } = making;
  const folds = creases.some((crease) => speaksOf(target, crease));
  const slides = target.is === 'pieces' && slidersOf(joins).some(({ part }) => target.pieces.includes(part.piece));
  const turns = target.is === 'pieces' && pinnedOf(joins).some((piece) => target.pieces.includes(piece));
  if (isPlace(setting)) {
    if (slides) return undefined;
    const remedy = `\`${written.target.text}\` does not slide. Write \`flat\`, \`shut\` or degrees.`;
    report.at(node.place, path, { code: 'not-a-slider', wrote: node.text, takes: 'a slider', remedy });
    return undefined;
  }
  if (setting.is === 'word' && !folds && target.is === 'pieces') {
    const takes = slides
      ? '`start`, `middle`, `end` or a distance'
      : turns
        ? 'degrees, clockwise from the turn at rest'
        : 'a piece with creases';
    const remedy = slides || turns ? `Write ${takes}.` : `\`${written.target.text}\` has no crease. Take the line out.`;
    report.at(node.place, path, { code: 'nothing-to-fold', wrote: node.text, takes, remedy });
    return undefined;
  }
  if (setting.is === 'word') return wordTurn(setting.word);
  if (slides || turns) return undefined;
  if (!folds && target.is === 'pieces') {
    const remedy = `\`${written.target.text}\` has no crease. Take the line out.`;
    report.at(node.place, path, { code: 'nothing-to-fold', wrote: node.text, takes: 'a piece with creases', remedy });
    return undefined;
  }
  return degreesOf(written, 180, making);
}

function isPlace(setting: Setting): boolean {
  return setting.is === 'word' && ['start', 'middle', 'end'].includes(setting.word);
}

function wordTurn(word: string): TurnOf | 'keep' {
  if (word === 'flat') return 0;
  if (word === 'shut') return 180;
  return word === 'keep' ? 'keep' : 'solve';
}

export function degreesOf(written: Written, limit: number, { sizes, report }: Settling): number | undefined {
  const { setting, node, path } = written;
  if (setting.is !== 'amount') return undefined;
  const degrees = workedOut(written, 'degrees, as `60`', report, () => sizes.angle(setting.amount))?.valueOf();
  if (degrees === undefined || Math.abs(degrees) <= limit) return degrees;
  report.at(node.place, path, {
    code: 'fold-too-far',
    wrote: node.text,
    takes: `from -${limit} to ${limit} degrees`,
    remedy:
      limit === 180
        ? 'Write at most 180: a crease is flat at 0 and shut at 180, and a minus folds it against its score.'
        : `Write at most ${limit}: that is once round.`,
  });
  return undefined;
}

/** An amount, or the complaint that it is of the wrong kind where nothing else was said about it. */
export function workedOut<T>(
  { node, path }: Written,
  takes: string,
  report: Report,
  work: () => T | undefined,
): T | undefined {
  const before = report.problems.length;
  const amount = work();
  if (amount === undefined && report.problems.length === before) {
    report.at(node.place, path, { code: 'wrong-amount', wrote: node.text, takes, remedy: `Write ${takes}.` });
  }
  return amount;
}

/** The joins of all sliders, one each. */
export function slidersOf(joins: readonly Join[]): SlideJoin[] {
  const seen = new Set<string>();
  return joins.flatMap((join) => {
    if (join.is !== 'slide' || seen.has(join.part.piece)) return [];
    seen.add(join.part.piece);
    return [join];
  });
}

/** Pieces that are pinned. */
export function pinnedOf(joins: readonly Join[]): string[] {
  return [...new Set(joins.flatMap((join) => (join.is === 'pin' ? [join.part.piece] : [])))];
}
