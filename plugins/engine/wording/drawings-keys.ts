import type { WorkLine } from './drawings-lines.ts';
import { creaseLabel, foldNoun, isNamed, sayName } from './drawings-names.ts';

/** What a label or a key says of a line. */
export type KeyedLine = Pick<WorkLine, 'name' | 'does' | 'fold'>;

/** A line at the line itself: "spine, valley", "left line". A crease that folds more than one way has no `fold` to say. */
export function lineLabel({ name, does, fold }: KeyedLine): string {
  return does === 'crease' && fold !== undefined ? creaseLabel({ name, fold }) : sayName(name);
}

/** The keys of lines whose names find no room at the line: "1 is the spine, a valley fold." */
export function sayKey(key: number, { name, does, fold }: KeyedLine): string {
  const called = isNamed({ name }) ? `the ${sayName(name)}, ` : '';
  if (does === 'crease') return `${key} is ${called}${fold === undefined ? 'a fold' : foldNoun(fold)}.`;
  return `${key} is ${called}${{ cut: 'a slit', perforation: 'a perforation', mark: 'a light line' }[does]}.`;
}

const MEMBER = /^(.+)\((\d+)\)$/;

/** The number of a line that is one of a family, as `fold(3)` is; undefined for any other. */
export function memberOf(name: string): { readonly family: string; readonly number: string } | undefined {
  const [, family, number] = MEMBER.exec(name) ?? [];
  return family === undefined || number === undefined ? undefined : { family, number };
}

/** Said where the members of a family are called by their numbers alone: "A number at a line is that of the fold." */
export function sayNumbers(family: string): string {
  return `A number at a line is that of the ${sayName(family)}.`;
}
