import type { TextNode } from '../diagnostics/index.ts';
import type { Unit } from '../units/index.ts';
import type { Expression, Term } from './expression.ts';
import { Parser } from './parser.ts';
import type { Report, Written } from './report.ts';
import type { Relation } from './tokens.ts';

/** An expression and nothing else; undefined when the text has an error, which is reported at its place. */
export function readExpression(
  written: Written,
  text: string,
  units: Unit | undefined,
  report: Report,
): Expression | undefined {
  const parser = new Parser(text);
  const root = parser.sum();
  parser.finish();
  if (!parser.tell(written, report) || root === undefined) return undefined;
  return expression(written, text, units, root);
}

/** A whole text as an expression. */
export function readText(
  node: TextNode,
  path: string,
  units: Unit | undefined,
  report: Report,
): Expression | undefined {
  return readExpression({ node, offset: 0, path }, node.text, units, report);
}

/** `A x B`: across, then down. A unit at the end serves both numbers. */
export function readPair(
  written: Written,
  text: string,
  units: Unit | undefined,
  report: Report,
): { width: Expression; height: Expression } | undefined {
  const parser = new Parser(text);
  const left = parser.sum();
  parser.times();
  const right = parser.sum();
  parser.finish();
  if (!parser.tell(written, report) || left === undefined || right === undefined) return undefined;
  const shared = left.is === 'number' && left.unit === undefined && right.is === 'number' && right.unit !== undefined;
  const width: Term = shared ? { ...left, unit: right.unit } : left;
  return { width: expression(written, text, units, width), height: expression(written, text, units, right) };
}

/** `A >= B`. */
export function readCondition(
  written: Written,
  text: string,
  units: Unit | undefined,
  report: Report,
): { left: Expression; relation: Relation; right: Expression } | undefined {
  const parser = new Parser(text);
  const left = parser.sum();
  const relation = parser.relation();
  const right = parser.sum();
  parser.finish();
  if (!parser.tell(written, report) || left === undefined || right === undefined || relation === undefined)
    return undefined;
  return {
    left: expression(written, text, units, left),
    relation,
    right: expression(written, text, units, right),
  };
}

function expression(written: Written, text: string, units: Unit | undefined, root: Term): Expression {
  return { written, text: text.slice(root.start, root.end), units, root };
}
