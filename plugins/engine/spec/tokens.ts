import Fraction from 'fraction.js';
import { type Fault, readNumeral, type Unit } from '../units/index.ts';
import { unitOfWord } from './words.ts';

export type Relation = '<' | '<=' | '=' | '>=' | '>';

/** A part of an expression, with the half-open range of characters that it stands on. */
export type Token = TokenKind & { readonly start: number; readonly end: number };

type TokenKind =
  | { readonly is: 'number'; readonly value: Fraction; readonly unit: Unit | undefined }
  | { readonly is: 'angle'; readonly degrees: Fraction }
  /** A name, or a piece's measure with its dots: `base.front.width`. */
  | { readonly is: 'name'; readonly name: string }
  | { readonly is: '+' | '-' | '*' | '/' | '(' | ')' | 'x' }
  | { readonly is: 'relation'; readonly relation: Relation };

const SPACES = /\s+/uy;
const WORD = '\\p{L}[\\p{L}\\p{N}]*(?:-[\\p{L}\\p{N}]+)*';
/** A member of a family, `layer(2)`, only within a measure: alone it would be a product. */
const NUMBERED = `${WORD}(?:(?:\\(\\d{1,6}\\)){1,2}(?=\\.\\p{L}))?`;
const NAME = new RegExp(`${NUMBERED}(?:\\.${NUMBERED})*`, 'uy');
const DEGREES = /\s*(?:deg(?:rees?)?(?![\p{L}\p{N}.-])|\u00b0)/uy;
const UNIT = /\s*(?:(inch(?:es)?|in|mm|cm|(?:milli|centi)met(?:re|er)s?)(?![\p{L}\p{N}.-])|["\u201c\u201d\u2033])/uy;
const SIMPLE_FRACTION = /(\d+)\/\d/uy;
const RELATION = /<=|>=|[<>=\u2264\u2265]/uy;
const MINUS = '-\u2212\u2013';

/**
 * The parts of an expression, a size or a condition, and everything in it that cannot be read.
 *
 * A number directly after a division is taken without its fraction, so that `width/3/4` is divided twice, as on paper.
 * Offsets count from the start of `text`.
 */
export function tokenise(text: string): { tokens: Token[]; faults: Fault[] } {
  const tokens: Token[] = [];
  const faults: Fault[] = [];
  let at = 0;
  while (at < text.length) {
    at += (match(SPACES, text, at)?.[0] ?? '').length;
    if (at >= text.length) break;
    const token = readToken(text, at, tokens.at(-1), faults);
    if (token) tokens.push(token);
    at = token?.end ?? at + String.fromCodePoint(text.codePointAt(at) ?? 0).length;
  }
  return { tokens, faults };
}

function readToken(text: string, at: number, before: Token | undefined, faults: Fault[]): Token | undefined {
  const character = text[at] ?? '';
  const single = (is: '+' | '-' | '*' | '/' | '(' | ')' | 'x'): Token => ({ is, start: at, end: at + 1 });
  if (MINUS.includes(character)) {
    if (endsOperand(before)) checkMinus(text, at, faults);
    return single('-');
  }
  if (character === '+' || character === '*' || character === '/' || character === '(' || character === ')') {
    return single(character);
  }
  if (character === '×') return single('x');
  const relation = match(RELATION, text, at)?.[0];
  if (relation !== undefined) {
    const known = relation.replace('\u2264', '<=').replace('\u2265', '>=') as Relation;
    return { is: 'relation', relation: known, start: at, end: at + relation.length };
  }
  const name = match(NAME, text, at)?.[0];
  if (name !== undefined) {
    const end = at + name.length;
    return name === 'x' ? { is: 'x', start: at, end } : { is: 'name', name, start: at, end };
  }
  return readNumber(text, at, before, faults) ?? strange(text, at, faults);
}

function readNumber(text: string, at: number, before: Token | undefined, faults: Fault[]): Token | undefined {
  const divisor = before?.is === '/' ? match(SIMPLE_FRACTION, text, at)?.[1] : undefined;
  if (divisor !== undefined && divisor.length < LONGEST_DIVISOR) {
    return { is: 'number', value: new Fraction(divisor), unit: undefined, start: at, end: at + divisor.length };
  }
  const numeral = readNumeral(text, at);
  if (numeral === undefined || numeral.end <= at) return undefined;
  faults.push(...numeral.faults);
  const degrees = match(DEGREES, text, numeral.end);
  if (degrees) return { is: 'angle', degrees: numeral.value, start: at, end: numeral.end + degrees[0].length };
  const unit = match(UNIT, text, numeral.end);
  const end = numeral.end + (unit?.[0].length ?? 0);
  return {
    is: 'number',
    value: numeral.value,
    unit: unit === undefined ? undefined : unitOfWord(unit[1] ?? 'in'),
    start: at,
    end,
  };
}

/** Digits of a divisor that fraction.js reads without trouble. */
const LONGEST_DIVISOR = 12;

function endsOperand(token: Token | undefined): boolean {
  return (
    token !== undefined && (token.is === 'number' || token.is === 'angle' || token.is === 'name' || token.is === ')')
  );
}

/** A minus without its spaces: told apart from a fraction written with a hyphen. */
function checkMinus(text: string, at: number, faults: Fault[]): void {
  const before = text.slice(0, at);
  const after = text.slice(at + 1);
  if (/\s$/u.test(before) && /^\s/u.test(after)) return;
  const whole = /\d+$/u.exec(before)?.[0];
  const part = /^(?:\d+\s*[/\u2044]\s*\d+|[\u00bc-\u00be\u2150-\u215e])/u.exec(after)?.[0];
  if (whole !== undefined && part !== undefined) {
    faults.push({
      code: 'hyphen-in-number',
      severity: 'error',
      wrote: `${whole}-${part}`,
      takes: 'in an expression, a fraction after a space, and a minus with a space each side',
      remedy: `Write \`${whole} ${part}\` for one number, or \`${whole} - ${part}\` to subtract.`,
      offset: at - whole.length,
    });
    return;
  }
  const left = /\S+\s*$/u.exec(before)?.[0].trim() ?? '';
  const right = /^\s*[^\s+*/()]*/u.exec(after)?.[0].trim() ?? '';
  faults.push({
    code: 'minus-without-spaces',
    severity: 'error',
    wrote:
      text.slice(at - (/\S+\s*$/u.exec(before)?.[0].length ?? 0), at + 1) + after.slice(0, right.length + 1).trimEnd(),
    takes: 'a minus with a space each side',
    remedy: `Write \`${`${left} - ${right}`.trim()}\`.`,
    offset: at,
  });
}

function strange(text: string, at: number, faults: Fault[]): undefined {
  const wrote = String.fromCodePoint(text.codePointAt(at) ?? 0);
  const takes = 'numbers, names, + - * / and ( )';
  const call = wrote === ',' ? /(?<![\p{L}\p{N}-])(min|max)\s*\(/u.exec(text.slice(0, at)) : null;
  if (call) {
    const form = `\`${call[1] === 'min' ? 'smaller' : 'larger'} of A and B\``;
    const remedy = `Write ${form} for \`${call[1]}(A, B)\`.`;
    faults.push({ code: 'call', severity: 'error', wrote: text.trim(), takes: form, remedy, offset: call.index });
    return undefined;
  }
  const code = wrote === ',' ? 'comma-in-expression' : 'strange-character';
  const remedy =
    wrote === ','
      ? 'One value stands here, so take the comma out. A decimal point is a point: `10.5`.'
      : wrote === '÷'
        ? 'Write `/` to divide.'
        : `Take the \`${wrote}\` out.`;
  faults.push({ code, severity: 'error', wrote, takes, remedy, offset: at });
  return undefined;
}

function match(pattern: RegExp, text: string, at: number): RegExpExecArray | undefined {
  const sticky = new RegExp(pattern);
  sticky.lastIndex = at;
  return sticky.exec(text) ?? undefined;
}
