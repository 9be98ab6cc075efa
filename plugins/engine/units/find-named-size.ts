import { nearestName } from '../diagnostics/index.ts';
import { type Fault, faultAt, LONGEST_TEXT, type Reading, type ReadOptions } from './fault.ts';
import { formatSize } from './format.ts';
import { NAMED_SIZES, type NamedSize, type SizeUse, sizeId } from './named-sizes.ts';
import { readSize } from './read-size.ts';
import { systemOf } from './system.ts';

/** Other ways to say a name that mean one size, as keys. */
const ALIASES: ReadonlyMap<string, string> = new Map([
  ['ansia', 'US Letter'],
  ['ansib', 'US Tabloid'],
  ['ansic', 'US C'],
  ['ansid', 'US D'],
  ['ansie', 'US E'],
  ['ledger', 'US Tabloid'],
  ['usledger', 'US Tabloid'],
  ['usalong', 'US Slimline'],
  ['along', 'US Slimline'],
]);

const USES: readonly SizeUse[] = ['sheet', 'envelope', 'card'];

/**
 * The size that a name means where a sheet, an envelope or a card is wanted: `US Letter`, `iso a6`, `C6`, `12 x 12 in`.
 *
 * `A2` alone is refused with a question, since US A2 is a card and its envelope while ISO A2 is a large sheet. So is every
 * name that both families use. A size in figures is taken too: the named one of those measures, or else one of its own
 * with the source `as written`; `options.units` is the unit of bare numbers in it.
 */
export function findNamedSize(text: string, use: SizeUse, options: ReadOptions = {}): Reading<NamedSize> {
  const written = text.trim();
  if (/\d\D{0,40}(?:[x×]|\bby\b).{0,40}\d/i.test(written.slice(0, LONGEST_TEXT)))
    return findMeasured(text, use, options);
  const { key, said } = keyFor(written.slice(0, LONGEST_TEXT));
  const all = NAMED_SIZES.filter((size) => matches(size, key));
  const names = [...new Set(all.map((size) => size.name))];
  const wanted = said && said !== use ? undefined : all.find((size) => size.use === use);
  if (names.length === 1 && wanted) return { value: wanted, faults: [] };
  if (names.length > 1) return refuse(text, 'size-ambiguous', use, sayChoice(names, use));
  if (all.length > 0) return refuse(text, 'size-use', use, sayOtherUse(all, use));
  return refuse(text, 'size-unknown', use, sayNearest(written, use));
}

/** Without case, spaces, hyphens and a word for what it is. `No. 10` and `number 10` are `#10`. */
function keyFor(text: string): { key: string; said: SizeUse | undefined } {
  const lower = text.toLowerCase();
  const said = USES.find((use) => lower.endsWith(` ${use}`) || lower.endsWith(` ${use}s`));
  const name = lower.replace(/\s(?:sheets?|paper|envelopes?|cards?)$/, '').replace(/\b(?:no\.?|number)\s*(?=\d)/, '#');
  const key = name.replace(/[\s_-]+/g, '');
  return { key: keyOf(ALIASES.get(key) ?? key), said };
}

function keyOf(name: string): string {
  return name.toLowerCase().replace(/[\s_-]+/g, '');
}

/** The whole name, or the name without its family. */
function matches(size: NamedSize, key: string): boolean {
  const name = keyOf(size.name);
  return name === key || (/^(us|iso)/.test(name) && name.replace(/^(us|iso)/, '') === key);
}

function findMeasured(text: string, use: SizeUse, options: ReadOptions): Reading<NamedSize> {
  const { value, faults } = readSize(text, options);
  if (!value) return { value: undefined, faults };
  const named = NAMED_SIZES.find(
    (size) =>
      size.use === use &&
      ((size.width.equals(value.width) && size.height.equals(value.height)) ||
        (size.width.equals(value.height) && size.height.equals(value.width))),
  );
  if (named) return { value: named, faults };
  const name = formatSize(value.width, value.height, systemOf(value.unit));
  return { value: { ...value, id: sizeId(name, use), name, use, source: 'as written' }, faults };
}

function refuse(text: string, code: string, use: SizeUse, remedy: string): Reading<NamedSize> {
  const takes = `${ARTICLE[use]} ${use} by name, as ${EXAMPLES[use]}, or its size, as \`5 x 7 in\``;
  const fault: Fault = faultAt(text, text.length - text.trimStart().length, text.trimEnd().length, {
    code,
    takes,
    remedy,
  });
  return { value: undefined, faults: [fault] };
}

const ARTICLE: Readonly<Record<SizeUse, string>> = { sheet: 'a', envelope: 'an', card: 'a' };

const EXAMPLES: Readonly<Record<SizeUse, string>> = {
  sheet: '`US Letter` or `ISO A4`',
  envelope: '`US A7` or `ISO C6`',
  card: '`US A2` or `ISO A6`',
};

function sayChoice(names: readonly string[], use: SizeUse): string {
  const choices = names.map((name) => {
    const size =
      NAMED_SIZES.find((one) => one.name === name && one.use === use) ?? NAMED_SIZES.find((one) => one.name === name);
    return size ? `\`${name}\` (${ARTICLE[size.use]} ${size.use}, ${sayMeasures(size)})` : name;
  });
  return `Write which one you mean: ${choices.join(' or ')}.`;
}

function sayOtherUse(sizes: readonly NamedSize[], use: SizeUse): string {
  const [first] = sizes;
  const uses = sizes.map((size) => `${ARTICLE[size.use]} ${size.use}`).join(' and ');
  return `${first?.name} is ${uses}, and ${ARTICLE[use]} ${use} is wanted here. Write another name, or the size itself.`;
}

function sayNearest(written: string, use: SizeUse): string {
  if (written === '') return `Write the name of ${ARTICLE[use]} ${use}, or its size.`;
  const names = NAMED_SIZES.filter((size) => size.use === use).map((size) => size.name);
  const bare = names.map((name) => name.replace(/^(US|ISO) /, ''));
  const short = written.replace(/^(?:us|iso)[\s-]+/i, '');
  const near = nearestName(written, names) ?? names[bare.indexOf(nearestName(short, bare) ?? '\u0000')];
  return near === undefined ? `Known names are ${names.join(', ')}.` : `Did you mean \`${near}\`?`;
}

function sayMeasures(size: NamedSize): string {
  return formatSize(size.width, size.height, systemOf(size.unit));
}
