import type { Supply } from '../../plugins/content/index.ts';
import { capital } from './capital.ts';

export interface Category {
  readonly category: string;
  readonly id: string;
  readonly supplies: readonly Supply[];
}

/** Supplies by category, both in alphabetical order. */
export function byCategory(supplies: readonly Supply[]): readonly Category[] {
  const words = [...new Set(supplies.map(({ category }) => category))].sort();
  return words.map((word) => ({
    category: capital(word),
    id: word.replace(/[^\p{L}\p{N}]+/gu, '-'),
    supplies: supplies.filter(({ category }) => category === word),
  }));
}

/** One line under a supply's name: who makes it, and whether it can still be had. */
export function describeSupply(supply: Supply): string {
  return [supply.maker, supply.discontinued ? 'no longer made' : undefined]
    .filter((part) => part !== undefined)
    .join(', ');
}
