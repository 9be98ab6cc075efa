import type { CreaseFold } from '../spec/index.ts';

/** A crease as far as its name and its fold go. */
export interface NamedFold {
  readonly name: string;
  readonly fold: CreaseFold;
}

/** A name from the fold language as it is read: `left-gate` is "left gate", `page(3)` is "page 3", `left.head` "left head". */
export function sayName(name: string): string {
  return name
    .replaceAll(/[-.]/g, ' ')
    .replaceAll(/\(([^()]*)\)/g, ' $1')
    .replaceAll(/ +/g, ' ');
}

/** Whether the maker gave the crease a name; one without is called `bandA|bandB`. */
export function isNamed({ name }: Pick<NamedFold, 'name'>): boolean {
  return !name.includes('|');
}

const FOLD_WORDS: Readonly<Record<CreaseFold, { readonly label: string; readonly noun: string }>> = {
  valley: { label: 'valley', noun: 'a valley fold' },
  mountain: { label: 'mountain', noun: 'a mountain fold' },
  both: { label: 'both ways', noun: 'a fold worked both ways' },
};

/** The crease at the crease itself, short: "valley", or "spine, valley". */
export function creaseLabel({ name, fold }: NamedFold): string {
  const { label } = FOLD_WORDS[fold];
  return isNamed({ name }) ? `${sayName(name)}, ${label}` : label;
}

/** "valley", "mountain" or "both ways". */
export function foldLabel(fold: CreaseFold): string {
  return FOLD_WORDS[fold].label;
}

/** "a valley fold". */
export function foldNoun(fold: CreaseFold): string {
  return FOLD_WORDS[fold].noun;
}

/** The crease within a sentence: "a valley fold, the spine,", or "a valley fold between front and back,". */
export function sayCrease({ name, fold }: NamedFold): string {
  const { noun } = FOLD_WORDS[fold];
  if (isNamed({ name })) return `${noun}, the ${sayName(name)},`;
  const [before, after] = name.split('|').map((part) => sayName(part));
  return `${noun} between ${before} and ${after},`;
}

/** "a", "a and b", "a, b and c". */
export function sayList(items: readonly string[]): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;
}
