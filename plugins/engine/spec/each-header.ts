import type { SourceNode } from '../diagnostics/index.ts';
import { type Amount, evaluate, type Scope } from './evaluate.ts';
import { checkKind, type Names } from './kinds.ts';
import { readExpression } from './parse.ts';
import { textOr } from './read-parts.ts';
import type { Report, Written } from './report.ts';
import { isName } from './words.ts';

/** What the counts of a fold come to, and the names that they may use. */
export interface Counting {
  readonly names: Names;
  readonly amount: (name: string) => Amount | undefined;
}

/** What an `each` says: a letter, and the numbers or words that it stands for. */
export type Header = { readonly variable: string } & (
  | { readonly counts: true; readonly from: number; readonly to: number }
  | { readonly counts: false; readonly words: readonly string[] }
);

/** Numbers or words, as texts. */
export type Members = readonly string[];

const TAKES_EACH = '`k from 1 to 3`, or `s in left right`';

/** Reads `k from 1 to pages` or `s in left right`. A count that another fault leaves open is taken as one. */
export function headerOf(node: SourceNode, path: string, counting: Counting, report: Report): Header | undefined {
  const text = textOr(node, path, TAKES_EACH, report);
  if (text === undefined) return undefined;
  const head = /^(\s*)(\S+)(\s+)(from|in)(\s+)(\S.*)$/su.exec(text.text);
  const [lead, variable, gap, word, space, rest] = Array.from({ length: 6 }, (_, index) => head?.[index + 1] ?? '');
  const start = `${lead}${variable}${gap}${word}${space}`.length;
  const say = (code: string, wrote: string, remedy: string): undefined => {
    report.at(text.place, path, { code, wrote, takes: TAKES_EACH, remedy });
  };
  if (!head || variable === undefined || rest === undefined) return say('bad-each', text.text, `Write ${TAKES_EACH}.`);
  if (!/^\p{L}[\p{L}\p{N}]*$/u.test(variable)) return say('bad-each', variable, 'Choose a letter such as `k` for it.');
  if (counting.names.kindOf(variable) !== undefined) {
    return say(
      'name-clash',
      variable,
      `\`${variable}\` is a size of this fold already. Choose another letter, as \`k\`.`,
    );
  }
  if (word === 'in') {
    const words = rest.split(/[\s,]+/u).filter((one) => one !== '');
    const wrong = words.find((one) => !isName(one) && !/^\d{1,6}$/u.test(one));
    if (wrong !== undefined) return say('bad-each', wrong, 'Write words with spaces between them, as `left right`.');
    const twice = words.find((one, index) => words.indexOf(one) < index);
    return twice === undefined
      ? { variable, counts: false, words }
      : say('written-twice', twice, `Take one of the two \`${twice}\` out.`);
  }
  const range = /^(.*\S)(\s+to\s+)(\S.*)$/su.exec(rest);
  const [low, joint, high] = [range?.[1] ?? '', range?.[2] ?? '', range?.[3] ?? ''];
  if (!range) return say('bad-each', text.text, `Write \`${variable} from 1 to 3\`.`);
  const from = countOf({ node: text, offset: start, path }, low, counting, report);
  const to = countOf({ node: text, offset: start + low.length + joint.length, path }, high, counting, report);
  return { variable, counts: true, from: from ?? 1, to: to ?? from ?? 1 };
}

function countOf(written: Written, text: string, { names, amount }: Counting, report: Report): number | undefined {
  const expression = readExpression(written, text, undefined, report);
  if (expression === undefined || checkKind(expression, 'number', names, report) === undefined) return undefined;
  const scope: Scope = { amount, measure: () => undefined, settle: (length) => length };
  const value = evaluate(expression, 'number', scope, report)?.valueOf();
  if (typeof value !== 'number') return undefined;
  if (Number.isSafeInteger(value) && value >= 0) return value;
  report.at(written.node.place, written.path, {
    code: 'not-whole',
    wrote: text,
    takes: 'a whole number, zero or more',
    remedy: 'Write a whole number, or a count of the fold.',
  });
  return undefined;
}

/** The members of an `each`, at most so many. None where the range ends before it begins. */
export function membersOf(header: Header, most: number): Members {
  if (!header.counts) return header.words.slice(0, most);
  const count = Math.min(most, Math.max(0, header.to - header.from + 1));
  return Array.from({ length: count }, (_, index) => String(header.from + index));
}
