import { DIGIT, plainDigits, SLASH, SPACE } from './characters.ts';
import { type Fault, faultAt } from './fault.ts';
import { matchAt, sticky } from './scan.ts';

/** What a number looks like, for every fault about one. */
export const NUMBER_TAKES = 'a number, as `5`, `5 1/2`, `5½` or `5.5`';

/** More digits than this in a row are no measurement. */
const MOST_DIGITS = 9;

const RUN = sticky(`(?:${DIGIT}|${SLASH}|[.,](?=${DIGIT}))+`);
const TOO_MANY_DIGITS = new RegExp(`${DIGIT}{${MOST_DIGITS + 1}}`);

interface Slip {
  readonly code: string;
  readonly pattern: RegExp;
  readonly remedy: (wrote: string) => string;
}

/** Ways of writing a number that are not ours. Each takes the whole of what was meant as one number. */
const SLIPS: readonly Slip[] = [
  {
    code: 'number-underscore',
    pattern: sticky(`${DIGIT}+(?:_+${DIGIT}*)+`),
    remedy: (wrote) => `Write \`${wrote.replace(/_/g, '')}\`, without the underscore.`,
  },
  {
    code: 'number-hexadecimal',
    pattern: sticky('0[xX](?:[0-9a-fA-F]+)'),
    remedy: (wrote) =>
      `Write the number in ordinary digits. For a size, put spaces round the x: \`0 x ${wrote.slice(2)}\`.`,
  },
  {
    code: 'number-exponent',
    pattern: sticky(`${DIGIT}+(?:\\.${DIGIT}+)?[eE][-+]?${DIGIT}+(?![A-Za-z])`),
    remedy: sayExponent,
  },
  {
    code: 'number-points',
    pattern: sticky(`${DIGIT}*(?:\\.\\.+${DIGIT}*|\\.${DIGIT}+(?:\\.${DIGIT}+)+)`),
    remedy: (wrote) => sayPoints(wrote),
  },
  {
    code: 'number-letter',
    pattern: sticky(`${DIGIT}*${SPACE}?[lI|]${SLASH}${DIGIT}+|${DIGIT}+[OolI][OolI0-9]*(?![A-Za-z])`),
    remedy: (wrote) => `Did you mean \`${lettersAsDigits(wrote)}\`? A letter stands there in place of a digit.`,
  },
  {
    code: 'size-spaces',
    pattern: sticky(`${DIGIT}+[xX](?=${DIGIT})(?:${DIGIT}|[./])+`),
    remedy: (wrote) => `For a size write \`${wrote.replace(/[xX]/, ' x ')}\`, with spaces round the x.`,
  },
];

/** A number written in a way that is not read, starting exactly at `at`: the fault, and where what was meant ends. */
export function readSlip(text: string, at: number): { fault: Fault; end: number } | undefined {
  for (const slip of SLIPS) {
    const match = matchAt(slip.pattern, text, at);
    if (!match) continue;
    const end = at + match[0].length;
    const remedy = slip.remedy(match[0]);
    return { end, fault: faultAt(text, at, end, { code: slip.code, takes: NUMBER_TAKES, remedy }) };
  }
  return readLongRun(text, at);
}

/** A run of digits too long to be a measurement, as part of the number that starts at `at`. */
export function readLongRun(text: string, at: number): { fault: Fault; end: number } | undefined {
  const run = matchAt(RUN, text, at)?.[0] ?? '';
  if (!TOO_MANY_DIGITS.test(run)) return undefined;
  const end = at + run.length;
  const remedy = `Write a number with at most ${MOST_DIGITS} digits before and after the point.`;
  return { end, fault: faultAt(text, at, end, { code: 'number-long', takes: NUMBER_TAKES, remedy }) };
}

/** The letters that are taken for digits, as the digits they look like; `5 l/2` becomes `5 1/2`. */
export function lettersAsDigits(text: string): string {
  return text.replace(/[oO]/g, '0').replace(/[lI|]/g, '1');
}

function sayExponent(wrote: string): string {
  const [mantissa = '', exponent = ''] = plainDigits(wrote).split(/[eE]/);
  const power = Number(exponent);
  if (Math.abs(power) > 6 || mantissa.length > 9) return 'Write the number out in ordinary digits.';
  const plain = (Number(mantissa) * 10 ** power).toFixed(6).replace(/\.?0+$/, '');
  return `Write the number out: \`${plain}\`.`;
}

function sayPoints(wrote: string): string {
  const single = wrote.replace(/\.\.+/, '.').replace(/^\.|\.$/g, '');
  if (single.split('.').length > 2) return 'Write one number with one point.';
  return `Write one point: did you mean \`${single}\`?`;
}
