import type { Crease } from '../spec/index.ts';

/** A name from the fold language as it is read: `left-gate` is "left gate". */
export function sayName(name: string): string {
  return name.replaceAll('-', ' ');
}

/** Whether the maker gave the crease a name; one without is called `bandA|bandB`. */
export function isNamed(crease: Crease): boolean {
  return !crease.name.includes('|');
}

/** The crease at the crease itself, short: "valley", or "spine, valley". */
export function creaseLabel(crease: Crease): string {
  return isNamed(crease) ? `${sayName(crease.name)}, ${crease.fold}` : crease.fold;
}

/** The crease within a sentence: "a valley fold, the spine,", or "a valley fold between front and back,". */
export function sayCrease(crease: Crease): string {
  if (isNamed(crease)) return `a ${crease.fold} fold, the ${sayName(crease.name)},`;
  const [before, after] = crease.name.split('|').map((name) => sayName(name));
  return `a ${crease.fold} fold between ${before} and ${after},`;
}

/** "a", "a and b", "a, b and c". */
export function sayList(items: readonly string[]): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;
}
