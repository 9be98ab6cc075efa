import type Fraction from 'fraction.js';
import { type Fault, readUnit, scanNumeral, type Unit } from '../units/index.ts';

/** A part of a lesson's text, from `start` up to but not including `end`. */
export interface Stretch {
  readonly start: number;
  readonly end: number;
}

/** A number with the unit behind it, if one is written. `refused` tells why it is not taken as it stands. */
export interface NumberToken extends Stretch {
  readonly kind: 'number';
  readonly value: Fraction;
  readonly shape: 'whole' | 'decimal' | 'fraction' | 'mixed';
  readonly unit: Unit | undefined;
  readonly refused: Fault | undefined;
}

export interface WordToken extends Stretch {
  readonly kind: 'word';
  /** In lower case; hyphens within it stay. */
  readonly word: string;
}

/** `x` stands for every sign between the two numbers of a size. */
export interface MarkToken extends Stretch {
  readonly kind: 'mark';
  readonly mark: string;
}

export type Token = NumberToken | WordToken | MarkToken;

/** What makes a number doubtful: several readings, and the text does not say which. */
const COMMA_NUMBER = /\d+(?:,\d+)+(?!\d)/uy;
const WORD = /\p{L}[\p{L}\p{N}'’]*(?:-\p{L}[\p{L}\p{N}'’]*)*/uy;
const ORDINAL = /\d{1,2}(?:st|nd|rd|th)\b/iuy;
const TIMES = /\s{0,3}(?:[xX×✕✖]|\bby\b|-by-)\s{0,3}(?=[\d０-９.¼-¾⅐-⅞⅟])/uy;
/** What a unit may start with: asking what else a word may be takes longer. */
const UNIT_START =
  /(?:in|inch|inches|mm|cm|millimet(?:re|er)s?|centimet(?:re|er)s?)(?![\p{L}\p{N}])|[^\p{L}\p{N}\s]/iuy;
const UNIT_GAP = /\s{0,3}|-/uy;
const LIST_NUMBER = /[ \t]*(?:(?:[-*•–]|\(?\d{1,2}[.)]|step\s+\d{1,2}\s*[:.)-]?)[ \t]+)+/iuy;
/** What follows `in` where it is no unit. */
const NOT_A_UNIT =
  /in\s+(?:half|the|a|an|your|this|that|it|place|order|turn|total|front|back|between|both|each|opposite|alternat\w*|one|two|three|four|half-|halves|quarters|thirds)\b/iuy;

/** The sentences of a lesson as tokens, with where each starts and ends. Time grows with the length of the text. */
export function sentencesOf(text: string): { readonly tokens: readonly Token[]; readonly stretch: Stretch }[] {
  const sentences: { tokens: Token[]; stretch: Stretch }[] = [];
  let tokens: Token[] = [];
  const end = (): void => {
    const [first, last] = [tokens[0], tokens.at(-1)];
    if (first && last) sentences.push({ tokens, stretch: { start: first.start, end: last.end } });
    tokens = [];
  };
  let at = startOfLine(text, 0);
  while (at < text.length) {
    const character = text[at] ?? '';
    if (character === '\n') {
      const next = startOfLine(text, at + 1);
      if (endsSentence(text, at, next)) end();
      at = next;
    } else if (/[.!?;]/u.test(character) && !/[\d.]/u.test(text[at + 1] ?? '')) {
      end();
      at++;
    } else if (/\s/u.test(character)) at++;
    else {
      const token = tokenAt(text, at, tokens.at(-1));
      tokens.push(token);
      at = token.end;
    }
  }
  end();
  return sentences;
}

/** Past the bullet or number of a list. */
function startOfLine(text: string, at: number): number {
  return at + (match(LIST_NUMBER, text, at)?.length ?? 0);
}

/** A line ends a sentence before an empty line, a bullet or a capital; otherwise the text is merely broken there. */
function endsSentence(text: string, newline: number, next: number): boolean {
  const bullet = next > newline + 1 && /\S/u.test(text.slice(newline + 1, next));
  return bullet || /^[ \t]*(?:\n|$|\p{Lu})/u.test(text.slice(newline + 1, newline + 40));
}

function tokenAt(text: string, at: number, before: Token | undefined): Token {
  const ordinal = match(ORDINAL, text, at);
  if (ordinal !== undefined) return { kind: 'word', start: at, end: at + ordinal.length, word: ordinal.toLowerCase() };
  if (before?.kind === 'number') {
    const times = match(TIMES, text, at);
    if (times !== undefined) return { kind: 'mark', start: at, end: at + times.trimEnd().length, mark: 'x' };
  }
  const number = numberAt(text, at);
  if (number) return number;
  const word = match(WORD, text, at);
  if (word !== undefined) return { kind: 'word', start: at, end: at + word.length, word: word.toLowerCase() };
  const width = (text.codePointAt(at) ?? 0) > 0xffff ? 2 : 1;
  return { kind: 'mark', start: at, end: at + width, mark: text.slice(at, at + width) };
}

function numberAt(text: string, at: number): NumberToken | undefined {
  const commas = match(COMMA_NUMBER, text, at);
  const numeral = scanNumeral(text, at, { hyphen: true });
  if (numeral === undefined) return undefined;
  if (commas !== undefined && at + commas.length >= numeral.end) return withComma(text, at, commas);
  const [first] = numeral.faults.filter(({ code }) => !HARMLESS.has(code));
  const unit = unitAt(text, numeral.end);
  return {
    kind: 'number',
    start: at,
    end: unit?.end ?? numeral.end,
    value: numeral.value,
    shape: numeral.shape,
    unit: unit?.unit,
    refused: first,
  };
}

/** Doubts that change nothing about the value. */
const HARMLESS = new Set(['number-wide-digits', 'number-bare-point', 'number-leading-zero']);

function withComma(text: string, at: number, commas: string): NumberToken {
  const unit = unitAt(text, at + commas.length);
  const end = unit?.end ?? at + commas.length;
  const remedy =
    commas.split(',').length > 2
      ? 'Several numbers want a space after each comma, and one number wants none.'
      : `One number is \`${commas.replace(',', '.')}\`; two are \`${commas.replace(',', ', ')}\`. Which is it?`;
  const { value } = scanNumeral(text, at) ?? {};
  const refused: Fault = {
    code: 'number-comma',
    severity: 'error',
    wrote: commas,
    takes: 'a number with a point, or numbers with a space after the comma',
    remedy,
    offset: at,
  };
  if (value === undefined) throw new RangeError('no number stands where one was found');
  return { kind: 'number', start: at, end, value, shape: 'decimal', unit: unit?.unit, refused };
}

function unitAt(text: string, at: number): { unit: Unit; end: number } | undefined {
  const start = at + (match(UNIT_GAP, text, at)?.length ?? 0);
  if (start > at && /["”″'’′]/u.test(text[start] ?? '')) return undefined;
  if (match(UNIT_START, text, start) === undefined || match(NOT_A_UNIT, text, start) !== undefined) return undefined;
  const read = readUnit(text, start);
  if (read?.kind !== 'unit') return undefined;
  // A full stop behind an abbreviation may end the sentence as well.
  const stop = text[read.end - 1] === '.' && /^\s*(?:$|\p{Lu})/u.test(text.slice(read.end, read.end + 12));
  return { unit: read.unit, end: stop ? read.end - 1 : read.end };
}

function match(pattern: RegExp, text: string, at: number): string | undefined {
  pattern.lastIndex = at;
  const found = pattern.exec(text)?.[0];
  return found === '' ? undefined : found;
}
