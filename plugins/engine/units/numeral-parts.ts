import Fraction from 'fraction.js';
import {
  DIGIT,
  FRACTION_CHARACTER,
  FRACTION_CHARACTERS,
  plainDigits,
  SLASH,
  SUBSCRIPT,
  SUPERSCRIPT,
} from './characters.ts';
import { matchAt, sticky } from './scan.ts';

const STROKED = sticky(`(${DIGIT}+)${SLASH}(${DIGIT}+)`);
const RAISED = sticky(`(${SUPERSCRIPT}+)${SLASH}(${SUBSCRIPT}+)`);
const ONE_OVER = sticky(`(\u215f)(${DIGIT}+|${SUBSCRIPT}+)`);
const FRACTION_START = sticky(`${FRACTION_CHARACTER}|${DIGIT}+${SLASH}${DIGIT}|${SUPERSCRIPT}+${SLASH}|\u215f`);
const DECIMAL_POINT = sticky(`(${DIGIT}*)(?:\\.(${DIGIT}+))?`);
const DECIMAL_COMMA = sticky(`(${DIGIT}*)(?:[.,](${DIGIT}+))?`);

/** A numerator over a denominator as written, not yet checked: the denominator may be 0. */
export interface WrittenFraction {
  readonly numerator: bigint;
  readonly denominator: bigint;
  /** The numerator's digits, for telling `53/4` from `5 3/4`. Empty for a fraction character. */
  readonly digits: string;
  readonly start: number;
  readonly end: number;
}

/** A number without a fraction: `5`, `5.25`, `.5`. */
export interface WrittenDecimal {
  readonly value: Fraction;
  /** Digits before the point; empty in `.5`. */
  readonly whole: string;
  /** Digits after the point, or undefined without a point. */
  readonly decimals: string | undefined;
  readonly start: number;
  readonly end: number;
}

/** `1/2`, `½`, `⅟2`, `¹⁄₂` starting exactly at `at`. */
export function readFraction(text: string, at: number): WrittenFraction | undefined {
  const character = FRACTION_CHARACTERS.get(text[at] ?? '');
  if (character) return fraction('', character[0], character[1], at, at + 1);
  const match = matchAt(STROKED, text, at) ?? matchAt(RAISED, text, at) ?? matchAt(ONE_OVER, text, at);
  if (!match) return undefined;
  const digits = match[1] === '\u215f' ? '1' : plainDigits(match[1] ?? '');
  return fraction(digits, BigInt(digits), BigInt(plainDigits(match[2] ?? '')), at, at + match[0].length);
}

/** `5`, `5.25`, `.5` starting exactly at `at`; with `comma`, `5,25` too. A point that no digit follows is left alone. */
export function readDecimal(text: string, at: number, comma: boolean): WrittenDecimal | undefined {
  const match = matchAt(comma ? DECIMAL_COMMA : DECIMAL_POINT, text, at);
  if (!match || match[0] === '') return undefined;
  const whole = plainDigits(match[1] ?? '');
  const decimals = match[2] === undefined ? undefined : plainDigits(match[2]);
  const value = new Fraction(BigInt(whole + (decimals ?? '')), 10n ** BigInt(decimals?.length ?? 0));
  return { value, whole, decimals, start: at, end: at + match[0].length };
}

/** True where a fraction could start: cheaper than reading it. */
export function startsFraction(text: string, at: number): boolean {
  return matchAt(FRACTION_START, text, at) !== undefined;
}

function fraction(
  digits: string,
  numerator: number | bigint,
  denominator: number | bigint,
  start: number,
  end: number,
): WrittenFraction {
  return { digits, numerator: BigInt(numerator), denominator: BigInt(denominator), start, end };
}
