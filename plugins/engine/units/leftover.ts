import { DASH, DIGIT, FRACTION_CHARACTER, HYPHEN, SLASH, SPACE, TIMES } from './characters.ts';
import { type Fault, faultAt } from './fault.ts';
import { matchAt, sticky } from './scan.ts';

/** What else a value may turn out to be: the pattern of what follows the number, and what to say. */
const LEFTOVERS: readonly {
  readonly code: string;
  readonly pattern: RegExp;
  readonly remedy: (text: string) => string;
}[] = [
  {
    code: 'number-spaced-slash',
    pattern: sticky(`${SPACE}+${SLASH}${SPACE}*${DIGIT}|${SLASH}${SPACE}+${DIGIT}`, 'i'),
    remedy: (text) =>
      `Write the fraction without spaces round the stroke: \`${text.replace(/\s*[/\u2044\u2215\uff0f]\s*/g, '/')}\`.`,
  },
  {
    code: 'number-dash',
    pattern: sticky(`${SPACE}*${DASH}${SPACE}*(?:${DIGIT}+${SLASH}|${FRACTION_CHARACTER})`, 'i'),
    remedy: (text) =>
      `A dash may mean a range. For a whole number and a fraction write \`${text.replace(/\s*[\u2010-\u2015\u2212\uff0d]\s*/, ' ')}\`, with a space.`,
  },
  {
    code: 'number-range',
    pattern: sticky(
      `${SPACE}*(?:${DASH}|${HYPHEN}|\\.\\.|to\\b|or\\b)${SPACE}*(?:${DIGIT}|${FRACTION_CHARACTER})`,
      'i',
    ),
    remedy: () => 'This is a range, and one number goes here. Write the one you want.',
  },
  {
    code: 'number-size',
    pattern: sticky(`${SPACE}*(?:[xX*]|${TIMES}|by\\b)${SPACE}*(?:${DIGIT}|${FRACTION_CHARACTER})`, 'i'),
    remedy: () => 'This is a size, and one number goes here. Write the width or the height alone.',
  },
  {
    code: 'number-list',
    pattern: sticky(`${SPACE}*[,;]${SPACE}*(?:${DIGIT}|${FRACTION_CHARACTER})`, 'i'),
    remedy: () => 'These are several numbers, and one goes here. Write one.',
  },
];

/** The fault of a text that goes on, at `at`, after what was wanted has been read. */
export function leftoverFault(text: string, start: number, at: number, takes: string): Fault {
  const end = text.trimEnd().length;
  const whole = text.slice(start, end);
  for (const { code, pattern, remedy } of LEFTOVERS) {
    if (matchAt(pattern, text, at)) return faultAt(text, start, end, { code, takes, remedy: remedy(whole) });
  }
  const rest = text.slice(at, end).trim();
  const remedy = `Take out what is not part of it: \`${rest.length > 40 ? `${[...rest].slice(0, 40).join('')}…` : rest}\`.`;
  return faultAt(text, start, end, { code: 'number-leftover', takes, remedy });
}
