import { placeWithin, type SourceNode } from '../diagnostics/index.ts';
import type { Unit } from '../units/index.ts';
import type { Corner, Edge, Origin } from './card-types.ts';
import type { Expression } from './expression.ts';
import { readExpression, readText } from './parse.ts';
import { textOr, wrongShape } from './read-parts.ts';
import { join, type Report, suggest, type Written } from './report.ts';
import { CORNERS, EDGES, isMember } from './words.ts';

/** A point of a piece as a rule: read, not yet worked out. */
export type PointSpec = PointKind & Origin & { readonly text: string };

type PointKind =
  | { readonly is: 'corner'; readonly corner: Corner }
  /** The middle of that edge. */
  | { readonly is: 'edge'; readonly edge: Edge }
  | { readonly is: 'centre' }
  /** So far from the start of a line: from its top or left end, or as it was written. */
  | { readonly is: 'on'; readonly line: string; readonly at: Expression }
  /** From the left edge, and from the top edge. */
  | { readonly is: 'at'; readonly across: Expression; readonly down: Expression };

export const TAKES_POINT = 'a corner, an edge, `centre`, `LINE at 2`, or `[2, 3]`: across, then down';

const WORDS: readonly string[] = [...CORNERS, ...EDGES, 'centre'];

/** A point: a word, `spine at 2`, or a list of two measures. */
export function readPoint(
  node: SourceNode | undefined,
  path: string,
  units: Unit | undefined,
  report: Report,
): PointSpec | undefined {
  if (node?.kind === 'list') {
    const [x, y, ...more] = node.items;
    if (x === undefined || y === undefined || more.length > 0) {
      report.at(node.place, path, wrongShape(node, TAKES_POINT));
      return undefined;
    }
    const across = coordinate(x, join(path, 0), units, report);
    const down = coordinate(y, join(path, 1), units, report);
    const text = `[${across?.text ?? ''}, ${down?.text ?? ''}]`;
    return across && down && { is: 'at', across, down, place: node.place, path, text };
  }
  const text = textOr(node, path, TAKES_POINT, report);
  return text && readPointText({ node: text, offset: 0, path }, text.text, units, report);
}

function coordinate(node: SourceNode, path: string, units: Unit | undefined, report: Report): Expression | undefined {
  const text = textOr(node, path, 'a measure, as `2 3/4`', report);
  return text && readText(text, path, units, report);
}

/** A point in a stretch of a text. There `[2, 3]` may stand too, when the whole text is in quotes. */
export function readPointText(
  written: Written,
  stretch: string,
  units: Unit | undefined,
  report: Report,
): PointSpec | undefined {
  const lead = stretch.length - stretch.trimStart().length;
  const text = stretch.trim();
  const start = written.offset + lead;
  const { node, path } = written;
  const origin = { place: placeWithin(node, start), path, text };
  if ((CORNERS as readonly string[]).includes(text)) return { is: 'corner', corner: text as Corner, ...origin };
  if ((EDGES as readonly string[]).includes(text)) return { is: 'edge', edge: text as Edge, ...origin };
  if (text === 'centre' || text === 'center') return { is: 'centre', ...origin };
  const pair = /^\[([^,\]]*),([^,\]]*)\]$/u.exec(text);
  if (pair) {
    const [x, y] = [pair[1] ?? '', pair[2] ?? ''];
    const across = readExpression({ node, offset: start + 1, path }, x, units, report);
    const down = readExpression({ node, offset: start + 2 + x.length, path }, y, units, report);
    return across && down && { is: 'at', across, down, ...origin };
  }
  const on = /^(\S+)(\s+at\s+)(\S.*)$/u.exec(text);
  const [line, word, rest] = [on?.[1] ?? '', on?.[2] ?? '', on?.[3] ?? ''];
  if (on && isLineWord(line)) {
    const at = readExpression({ node, offset: start + line.length + word.length, path }, rest, units, report);
    return at && { is: 'on', line, at, ...origin };
  }
  const remedy = suggest(
    text,
    WORDS,
    isMember(text) ? `Write \`${text} at 2\` for a point on it.` : `Write ${TAKES_POINT}.`,
  );
  report.at(origin.place, path, { code: 'unknown-point', wrote: text || 'nothing', takes: TAKES_POINT, remedy });
  return undefined;
}

/** A line may be called by its name, by that of a member, by an edge, or by the bands it parts: `front|back`. */
export function isLineWord(text: string): boolean {
  return text.split('|').every(isMember);
}
