import { placeWithin } from '../diagnostics/index.ts';
import type { Expression, Operator, Term } from './expression.ts';
import {
  ANGLE_MIXED,
  ANGLE_TIMES,
  AREA,
  MIXED,
  mixed,
  type Slip,
  UPSIDE_DOWN,
  unknownName,
  wrongKind,
} from './kind-advice.ts';
import { Report } from './report.ts';

/** What a worked-out amount is. */
export type KnownKind = 'length' | 'number' | 'angle';

/** What an amount is. `bare` is a number that may still become a length or an angle, as its neighbours have it. */
export type Kind = KnownKind | 'bare';

/** What is needed where an expression stands. `size`: a length or an angle, and a bare number is a length. */
export type Want = KnownKind | 'size' | 'any';

/** The names an expression may use, and what each stands for. */
export interface Names {
  /** Kind of a parameter or value; undefined when there is none of that name. `unsure` when its own text is faulty. */
  kindOf(name: string): KnownKind | 'unsure' | undefined;
  /** True when the piece comes earlier and has that part; otherwise what to say. */
  measure(path: readonly string[]): true | Slip;
  /** For suggestions. */
  readonly known: readonly string[];
}

/**
 * What an expression comes out as, or undefined after reporting why it cannot be worked out.
 *
 * `want` says what is needed where it stands: a bare number is then taken for that. Every name in it is checked.
 */
export function checkKind(expression: Expression, want: Want, names: Names, report: Report): KnownKind | undefined {
  const before = report.problems.length;
  const kind = kindOfTerm(expression.root, expression, names, report);
  if (kind === undefined || report.problems.length > before) return undefined;
  if (kind === 'bare') {
    if (want === 'number' || want === 'angle') return want;
    return needsUnit(expression.root, expression, report) ? undefined : 'length';
  }
  if (want === 'any' || want === kind || (want === 'size' && kind !== 'number')) return kind;
  complain(expression.root, expression, report, wrongKind(want, kind));
  return undefined;
}

/** What an expression is on its own; undefined for a bare number, which takes after its surroundings. */
export function naturalKind(expression: Expression, names: Names): KnownKind | undefined {
  const kind = kindOfTerm(expression.root, expression, names, new Report());
  return kind === 'bare' ? undefined : kind;
}

function kindOfTerm(term: Term, expression: Expression, names: Names, report: Report): Kind | undefined {
  switch (term.is) {
    case 'number':
      return term.unit === undefined ? 'bare' : 'length';
    case 'angle':
      return 'angle';
    case 'negative':
      return kindOfTerm(term.of, expression, names, report);
    case 'embedded':
      return kindOfTerm(term.expression.root, term.expression, names, report);
    case 'name': {
      const kind = names.kindOf(term.name);
      if (kind === undefined) complain(term, expression, report, unknownName(term.name, names.known));
      return kind === 'unsure' ? undefined : kind;
    }
    case 'measure': {
      const answer = names.measure(term.path);
      if (answer !== true) complain(term, expression, report, answer);
      return answer === true ? 'length' : undefined;
    }
    case 'operation': {
      const left = kindOfTerm(term.left, expression, names, report);
      const right = kindOfTerm(term.right, expression, names, report);
      if (left === undefined || right === undefined) return undefined;
      const kind = kindOfOperation(term.operator, left, right);
      if (typeof kind === 'object') {
        complain(
          term,
          expression,
          report,
          kind === MIXED ? mixed(textOf(left === 'number' ? term.left : term.right, expression)) : kind,
        );
        return undefined;
      }
      if (kind === 'length' && isSum(term.operator)) {
        const bare = left === 'bare' ? term.left : right === 'bare' ? term.right : undefined;
        if (bare && needsUnit(bare, expression, report)) return undefined;
      }
      return kind;
    }
  }
}

export function isSum(operator: Operator): boolean {
  return operator !== '*' && operator !== '/';
}

/**
 * What comes of two amounts.
 *
 * Beside * and / a bare number is a scalar. Beside + and - and in `smaller of` it is whatever the other side is:
 * beside an angle, degrees.
 */
export function kindOfOperation(operator: Operator, left: Kind, right: Kind): Kind | Slip {
  if (left === 'angle' || right === 'angle') return kindOfAngles(operator, left, right);
  if (operator === '*') {
    if (left === 'length' && right === 'length') return AREA;
    if (left === 'length' || right === 'length') return 'length';
    return left === 'bare' && right === 'bare' ? 'bare' : 'number';
  }
  if (operator === '/') {
    if (right === 'length') return left === 'length' ? 'number' : UPSIDE_DOWN;
    if (left === 'length') return 'length';
    return left === 'bare' && right === 'bare' ? 'bare' : 'number';
  }
  if (left === right) return left;
  if (left === 'bare') return right;
  if (right === 'bare') return left;
  return MIXED;
}

/** As `kindOfOperation`, with an angle on one side at least. */
function kindOfAngles(operator: Operator, left: Kind, right: Kind): Kind | Slip {
  const plain = (kind: Kind): boolean => kind === 'number' || kind === 'bare';
  if (operator === '*') return plain(left) || plain(right) ? 'angle' : ANGLE_TIMES;
  if (operator === '/')
    return left !== 'angle' ? ANGLE_TIMES : right === 'angle' ? 'number' : plain(right) ? 'angle' : ANGLE_TIMES;
  const [a, b] = [left, right].map((kind) => (kind === 'bare' ? 'angle' : kind));
  return a === b ? 'angle' : ANGLE_MIXED;
}

/** Reports a bare number that would have to be a length in a file that states no unit; true when it did. */
function needsUnit(term: Term, expression: Expression, report: Report): boolean {
  if (term.is === 'embedded') return needsUnit(term.expression.root, term.expression, report);
  if (expression.units !== undefined) return false;
  const wrote = textOf(term, expression);
  complain(term, expression, report, {
    code: 'no-unit',
    takes: 'a length with its unit',
    remedy: `Write \`${wrote} in\` or \`${wrote} mm\`, or state \`units: in\` once for the whole file.`,
  });
  return true;
}

export function textOf(term: Term, expression: Expression): string {
  if (term.is === 'embedded') return term.expression.text;
  const { node, offset } = expression.written;
  return node.text.slice(offset + term.start, offset + term.end);
}

function complain(term: Term, expression: Expression, report: Report, slip: Slip): void {
  if (term.is === 'embedded') {
    complain(term.expression.root, term.expression, report, slip);
    return;
  }
  const { node, offset, path } = expression.written;
  report.at(placeWithin(node, offset + term.start), path, { wrote: textOf(term, expression), ...slip });
}
