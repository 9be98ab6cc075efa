import type { TextNode } from '../diagnostics/index.ts';
import type { Unit } from '../units/index.ts';
import { difference, type Expression } from './expression.ts';
import { readExpression, readPair } from './parse.ts';
import type { Report } from './report.ts';
import type { PieceSpec } from './types.ts';

export const TAKES_SIZE = 'a size as `4 1/4 x 5 1/2`, or `base less 1/8`';

/** `A x B`, or `PIECE less D`: smaller by D all round. */
export function readSizeOf(
  node: TextNode,
  path: string,
  units: Unit | undefined,
  report: Report,
): NonNullable<PieceSpec['size']> | undefined {
  const less = /^(\s*)([\p{L}][\p{L}\p{N}.()-]*)(\s+less\s+)(\S.*)$/u.exec(node.text);
  if (!less) {
    const pair = readPair({ node, offset: 0, path }, node.text, units, report);
    return pair && { ...pair, place: node.place };
  }
  const [lead, piece, word, margin] = [less[1] ?? '', less[2] ?? '', less[3] ?? '', less[4] ?? ''];
  const written = { node, offset: lead.length + piece.length + word.length, path };
  const once = readExpression(written, margin, units, report);
  if (once === undefined) return undefined;
  const both: Expression = { ...once, root: twice(once) };
  const side = (name: 'width' | 'height'): Expression =>
    difference(measureOf({ node, offset: lead.length, path }, piece, name), both);
  return { width: side('width'), height: side('height'), place: node.place };
}

function twice(expression: Expression): Expression['root'] {
  const { start, end } = expression.root;
  return { is: 'operation', operator: '+', left: expression.root, right: expression.root, start, end };
}

function measureOf(written: Expression['written'], piece: string, side: 'width' | 'height'): Expression {
  const root = { is: 'measure', path: piece.split('.'), side, start: 0, end: piece.length } as const;
  return { written, text: piece, units: undefined, root };
}
