import type { TextNode } from '../diagnostics/index.ts';
import { evaluate } from './evaluate.ts';
import { readExpression } from './parse.ts';
import type { Report } from './report.ts';

/**
 * A text with a value in the place of a letter.
 *
 * In the brackets of a name the value is worked out: `layer(k - 1)` becomes `layer(1)`. After a hyphen or a dot the brackets go:
 * `line-(s)` becomes `line-left`. Elsewhere the letter standing alone is replaced: `2*k - 1` becomes `2*2 - 1`. The text
 * remembers where its parts were written.
 */
export function filledIn(node: TextNode, path: string, variable: string, value: string, report: Report): TextNode {
  const { text } = node;
  if (!text.includes(variable)) return node;
  let filled = '';
  const parts: { readonly at: number; readonly from: number }[] = [];
  const put = (stretch: string, next: number): void => {
    filled += stretch;
    parts.push({ at: filled.length, from: next });
  };
  let at = 0;
  while (at < text.length) {
    const bracket = text[at] === '(' ? closing(text, at) : undefined;
    const inside = bracket === undefined ? '' : text.slice(at + 1, bracket);
    if (bracket !== undefined && inside.trim() === variable && takesWord(text, at)) {
      put(value, bracket + 1);
      at = bracket + 1;
    } else if (bracket !== undefined && /[\p{L}\p{N})]$/u.test(text.slice(0, at)) && hasLetter(inside, variable)) {
      const index = indexOf(node, path, at + 1, replaced(inside, variable, value), report);
      put(`(${index})`, bracket + 1);
      at = bracket + 1;
    } else if (standsAlone(text, at, variable)) {
      put(value, at + variable.length);
      at += variable.length;
    } else {
      const next = at + String.fromCodePoint(text.codePointAt(at) ?? 0).length;
      filled += text.slice(at, next);
      at = next;
    }
  }
  return parts.length === 0 ? node : { ...node, text: filled, filled: { from: node, parts } };
}

/** The bracket that closes the one at `open`. */
function closing(text: string, open: number): number | undefined {
  let depth = 0;
  for (let at = open; at < text.length; at++) {
    if (text[at] === '(') depth++;
    if (text[at] === ')' && --depth === 0) return at;
  }
  return undefined;
}

/** Whether a bracket stands where a word is filled in: alone, or after the hyphen or dot of a name. */
function takesWord(text: string, at: number): boolean {
  return /(?:^\s*|[\p{L}\p{N})][-.]|\s(?:of|in)\s+)$/u.test(text.slice(0, at));
}

/** Whether the letter stands at `at` by itself and not within a name. */
function standsAlone(text: string, at: number, variable: string): boolean {
  if (!text.startsWith(variable, at)) return false;
  return (
    !/[\p{L}\p{N}.-]$/u.test(text.slice(0, at)) && !/^(?:[\p{L}\p{N}(]|-\p{L})/u.test(text.slice(at + variable.length))
  );
}

function hasLetter(text: string, variable: string): boolean {
  return [...text].some((_, at) => standsAlone(text, at, variable));
}

function replaced(text: string, variable: string, value: string): string {
  let out = '';
  for (let at = 0; at < text.length; ) {
    const here = standsAlone(text, at, variable);
    out += here ? value : (text[at] ?? '');
    at += here ? variable.length : 1;
  }
  return out;
}

/** The number in the brackets of a name; as it stands where it holds more than numbers, for another `each` to fill. */
function indexOf(node: TextNode, path: string, offset: number, text: string, report: Report): string {
  if (!/^[\d\s+\-*/()]+$/u.test(text)) return text;
  const expression = readExpression({ node, offset, path }, text, undefined, report);
  const scope = { amount: () => undefined, measure: () => undefined, settle: <T>(length: T): T => length };
  const value = expression && evaluate(expression, 'number', scope, report)?.valueOf();
  if (typeof value === 'number' && Number.isSafeInteger(value) && value >= 0) return String(value);
  if (expression) {
    report.at(node.place, path, {
      code: 'not-whole',
      wrote: text,
      takes: 'a whole number, zero or more, in the brackets of a name',
      remedy: `This comes out as ${String(value)}. Begin or end the \`each\` elsewhere.`,
    });
  }
  return text;
}
