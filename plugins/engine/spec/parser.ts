import { nearestName } from '../diagnostics/index.ts';
import type { Fault } from '../units/index.ts';
import type { Operator, Term } from './expression.ts';
import { COMMA_HINT, leftOver, notASize, type Stop, theCall } from './parser-advice.ts';
import type { Report, Written } from './report.ts';
import { type Relation, type Token, tokenise } from './tokens.ts';

/** The longest text of one expression. Keeps every walk over it short. */
const LONGEST_EXPRESSION = 400;

/** Faults that leave every token in place. After the others, what does not fit may be due to what is missing. */
const CAN_GO_ON: ReadonlySet<string> = new Set(['hyphen-in-number', 'minus-without-spaces']);

/**
 * Recursive descent over the tokens of one text: sums of products of numbers, names and brackets.
 *
 * `smaller of A and B` reaches as far to the right as it can: `smaller of a and b - 1` is the smaller of `a` and `b - 1`.
 * The first thing that does not fit ends the reading; what is wrong inside a token is all reported.
 */
export class Parser {
  private readonly text: string;
  private readonly tokens: readonly Token[];
  private readonly faults: Fault[];
  private next = 0;
  private stopped: boolean;

  constructor(text: string) {
    this.text = text;
    const { tokens, faults } = text.length > LONGEST_EXPRESSION ? tooLong(text) : tokenise(text);
    this.tokens = tokens;
    this.faults = faults;
    this.stopped = faults.some(({ code, severity }) => severity === 'error' && !CAN_GO_ON.has(code));
  }

  /** Reports what was found; true when there was no error. */
  tell(written: Written, report: Report): boolean {
    report.faults(written, this.faults);
    return !this.faults.some((fault) => fault.severity === 'error');
  }

  sum(): Term | undefined {
    let left = this.product();
    for (let token = this.peek(); left && (token?.is === '+' || token?.is === '-'); token = this.peek()) {
      this.next++;
      left = operation(token.is, left, this.product());
    }
    return left;
  }

  /** The x between the two halves of a size. */
  times(): void {
    const token = this.peek();
    if (token?.is === 'x') this.next++;
    else this.stop(notASize(this.text, this.before(), token));
  }

  /** The sign between the two sides of a condition. */
  relation(): Relation | undefined {
    const token = this.peek();
    if (token?.is !== 'relation') {
      const takes = 'a condition with <, <=, =, >= or >';
      const remedy = 'Say what must hold between two measures, as `width >= 2*depth`.';
      const lost = token === undefined || token.is === 'x';
      if (lost) this.stop({ token: token ?? this.before(), code: 'condition-missing', takes, remedy });
      else this.finish();
      return undefined;
    }
    this.next++;
    const second = this.peek();
    if (second?.is === 'relation' && second.relation === '=' && second.start === token.end) {
      this.stop({ token, code: 'double-equals', takes: '<, <=, =, >= or >', remedy: 'Write a single `=`.' });
    }
    return token.relation;
  }

  /** Nothing may be left. */
  finish(): void {
    const token = this.peek();
    if (token !== undefined) this.stop(leftOver(this.text, this.before(), token));
  }

  private product(): Term | undefined {
    let left = this.factor();
    for (let token = this.peek(); left && (token?.is === '*' || token?.is === '/'); token = this.peek()) {
      this.next++;
      left = operation(token.is, left, this.factor());
    }
    return left;
  }

  private factor(): Term | undefined {
    if (this.stopped) return undefined;
    const token = this.peek();
    if (token === undefined) {
      const before = this.before();
      return before === undefined
        ? this.stop({ token: undefined, code: 'nothing-written', takes: 'a size', remedy: 'Write a size, as `4 1/4`.' })
        : this.stop({ token: before, code: 'unfinished', takes: 'a size after it', remedy: 'Finish the expression.' });
    }
    this.next++;
    if (token.is === 'number' || token.is === 'angle') return token;
    if (token.is === 'name') return this.named(token);
    if (token.is === '(') return this.bracketed(token);
    if (token.is === '-') {
      const of = this.factor();
      return of && { is: 'negative', of, start: token.start, end: of.end };
    }
    const remedy = `Write a number or a name before \`${this.textOf(token)}\`.`;
    return this.stop({ token, code: 'out-of-place', takes: 'a number or a name', remedy });
  }

  private bracketed(open: Token): Term | undefined {
    const inner = this.sum();
    if (inner === undefined) return undefined;
    const close = this.peek();
    if (close === undefined) {
      const remedy = `Close the bracket with \`)\`. ${COMMA_HINT}`;
      return this.stop({ token: open, code: 'bracket', takes: 'a `)` for each `(`', remedy });
    }
    if (close.is !== ')') return this.stop(leftOver(this.text, this.before(), close));
    this.next++;
    return { ...inner, start: open.start, end: close.end };
  }

  private named(token: Token & { is: 'name' }): Term | undefined {
    const { name, start, end } = token;
    if (name === 'smaller' || name === 'larger') return this.chosen(name, token);
    if (this.peek()?.is === '(') return this.stop(theCall(token));
    if (!name.includes('.')) return { is: 'name', name, start, end };
    const parts = name.split('.');
    const side = parts.at(-1);
    if (side === 'width' || side === 'height') return { is: 'measure', path: parts.slice(0, -1), side, start, end };
    const takes = 'a measure of a piece, as `base.width` or `base.front.height`';
    const meant = nearestName(side ?? '', ['width', 'height']);
    const remedy = meant
      ? `Did you mean \`${[...parts.slice(0, -1), meant].join('.')}\`?`
      : `Write \`${name}.width\` or \`${name}.height\`.`;
    return this.stop({ token, code: 'measure-without-side', takes, remedy });
  }

  private chosen(operator: 'smaller' | 'larger', start: Token): Term | undefined {
    if (!this.take('of')) return this.notChosen(operator, start);
    const left = this.sum();
    if (left === undefined) return undefined;
    if (!this.take('and')) return this.notChosen(operator, start);
    const right = this.sum();
    return right && { is: 'operation', operator, left, right, start: start.start, end: right.end };
  }

  private notChosen(operator: string, token: Token): undefined {
    const form = `\`${operator} of A and B\``;
    return this.stop({ token, code: 'choice-unfinished', takes: form, remedy: `Write ${form}.` });
  }

  private stop({ token, code, takes, remedy }: Stop): undefined {
    if (this.stopped) return undefined;
    this.stopped = true;
    const wrote = token ? this.textOf(token) : this.text.trim() || 'nothing';
    this.faults.push({ code, severity: 'error', wrote, takes, remedy, offset: token?.start ?? 0 });
    return undefined;
  }

  private peek(): Token | undefined {
    return this.tokens[this.next];
  }

  private before(): Token | undefined {
    return this.tokens[this.next - 1];
  }

  private take(word: string): boolean {
    const token = this.peek();
    if (token?.is !== 'name' || token.name !== word) return false;
    this.next++;
    return true;
  }

  private textOf(token: Token): string {
    return this.text.slice(token.start, token.end);
  }
}

function operation(operator: Operator, left: Term, right: Term | undefined): Term | undefined {
  return right && { is: 'operation', operator, left, right, start: left.start, end: right.end };
}

function tooLong(text: string): { tokens: Token[]; faults: Fault[] } {
  const fault: Fault = {
    code: 'too-long',
    severity: 'error',
    wrote: `${text.slice(0, 40)}…`,
    takes: `at most ${LONGEST_EXPRESSION} characters`,
    remedy: 'Put a part of it under `values` and use its name here.',
    offset: 0,
  };
  return { tokens: [], faults: [fault] };
}
