const SMALL = [
  'zero',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
];
const TENS = ['', '', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];

/** The part a denominator names, for those that inch rulers carry. */
const PARTS: ReadonlyMap<number, string> = new Map([
  [2, 'half'],
  [4, 'quarter'],
  [8, 'eighth'],
  [16, 'sixteenth'],
  [32, 'thirty-second'],
  [64, 'sixty-fourth'],
]);

/** A whole number in words below one hundred, in digits from there on. */
export function numberWords(value: number): string {
  if (value < SMALL.length) return SMALL[value] ?? String(value);
  if (value >= 100) return String(value);
  const rest = value % 10;
  const tens = TENS[Math.floor(value / 10)] ?? '';
  return rest === 0 ? tens : `${tens}-${SMALL[rest]}`;
}

/** A proper fraction in lowest terms over 2, 4, 8, 16, 32 or 64: `half`, `an eighth`, `three eighths`, `one sixteenth`. */
export function fractionWords(numerator: number, denominator: number): string {
  const part = PARTS.get(denominator) ?? `over ${denominator}`;
  if (numerator > 1) return `${numberWords(numerator)} ${part}s`;
  if (denominator <= 4) return `a ${part}`;
  return denominator === 8 ? `an ${part}` : `one ${part}`;
}
