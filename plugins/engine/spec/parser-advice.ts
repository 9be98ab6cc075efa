import type { Token } from './tokens.ts';

/** Why the reading of an expression ends, at a token; undefined for the whole text. */
export interface Stop {
  readonly token: Token | undefined;
  readonly code: string;
  readonly takes: string;
  readonly remedy: string;
}

/** Said where a bracket has lost its other half, which is often YAML's doing. */
export const COMMA_HINT =
  'If the value holds a comma, put the whole in quotes: inside [ ] or { } a comma starts a new item.';

const TAKES_OPERATOR = 'one of + - * / between two parts';

/** A token after the end of an expression. */
export function leftOver(text: string, before: Token | undefined, token: Token): Stop {
  if (token.is === ')') {
    const remedy = `Take the \`)\` out, or open it with a \`(\`. ${COMMA_HINT}`;
    return { token, code: 'bracket', takes: 'a `(` for each `)`', remedy };
  }
  if (token.is === 'relation') {
    return {
      token,
      code: 'relation',
      takes: 'a size',
      remedy: 'Conditions belong under `require`. Write a size here.',
    };
  }
  if (token.is === 'x') {
    const remedy = 'Two measures with an x between are a size. Write one of them here, or `*` to multiply.';
    return { token, code: 'size-for-length', takes: 'one measure', remedy };
  }
  const left = before ? text.slice(before.start, before.end) : '';
  const right = text.slice(token.start, token.end);
  const code = 'operator-missing';
  if (before?.is === 'number' && before.unit === undefined && token.is === 'name') {
    const remedy = `Write \`${left}*${right}\` to multiply. A unit is written in, mm or cm.`;
    return { token, code, takes: TAKES_OPERATOR, remedy };
  }
  if (token.is === '(') return { token, code, takes: TAKES_OPERATOR, remedy: `Write \`${left}*(\` to multiply.` };
  const remedy = `Put one of + - * / between \`${left}\` and \`${right}\`, or take one of them out.`;
  return { token, code, takes: TAKES_OPERATOR, remedy };
}

/** What stands where the x of a size should: a token, or nothing. */
export function notASize(text: string, before: Token | undefined, token: Token | undefined): Stop {
  const takes = 'a size, as `4 1/4 x 5 1/2`: across, then down';
  if (token === undefined) {
    const remedy = 'Write both measures with ` x ` between them.';
    return { token: before, code: 'size-missing-half', takes, remedy };
  }
  if (token.is === 'name' && /^x\p{N}/u.test(token.name)) {
    const [first, second] = [text.slice(0, token.start).trim(), text.slice(token.start + 1).trim()];
    return { token, code: 'size-without-spaces', takes, remedy: `Write \`${first} x ${second}\`.` };
  }
  if (token.is === 'name' && token.name === 'by') {
    return { token, code: 'size-with-by', takes, remedy: 'Write `x` for `by`.' };
  }
  return leftOver(text, before, token);
}

/** A name with a bracket after it: expressions have no functions. */
export function theCall(token: Token & { is: 'name' }): Stop {
  const { name } = token;
  const word = name === 'min' ? 'smaller' : name === 'max' ? 'larger' : undefined;
  if (word !== undefined) {
    const form = `\`${word} of A and B\``;
    return { token, code: 'call', takes: form, remedy: `Write ${form} for \`${name}(A, B)\`.` };
  }
  const remedy = `Write \`${name}*(\` to multiply.`;
  return { token, code: 'call', takes: TAKES_OPERATOR, remedy };
}
