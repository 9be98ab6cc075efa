import Fraction from 'fraction.js';
import type { CheckName, OutcomeName, Outcomes } from '../../dryfit/index.ts';
import {
  DEFAULT_MARKS,
  formatLength,
  formatMass,
  formatSize,
  Length,
  type System,
  toMarks,
} from '../../units/index.ts';

/** A finding in words: what is so, and what to do about it when something is to be done. */
export interface Said {
  readonly says: string;
  readonly remedy?: string;
}

export type Sentence<Facts> = (facts: Facts, words: EditionWords) => Said;

/** A sentence for every outcome of a check. */
export type Sentences<C extends CheckName> = { readonly [O in OutcomeName<C>]: Sentence<Outcomes[C][O]> };

/** The finest that a ruler shows, so that a measured distance can be told. */
const FINEST: Readonly<Record<System, Length>> = { inch: Length.fromInches('1/32'), metric: Length.fromMm('0.1') };

const FINEST_THICKNESS: Readonly<Record<System, Length>> = {
  inch: Length.fromInches('1/1000'),
  metric: Length.fromMm('0.01'),
};

/** Measured distances that differ by less are the same. */
const HAIR = Length.fromMm('0.0001');

/** Figures and names as one edition writes them. */
export class EditionWords {
  readonly system: System;

  constructor(system: System) {
    this.system = system;
  }

  length(length: Length): string {
    return formatLength(length, this.system);
  }

  /** A distance that was measured in the folded card: exact when it is on a fine ruler, else `about` the nearest. */
  measured(length: Length): string {
    const nearest = toMarks(length, FINEST[this.system], 'nearest');
    return nearest.minus(length).abs().lessThan(HAIR) ? this.length(nearest) : `about ${this.length(nearest)}`;
  }

  /** The least length on the usual marks of a ruler that is not less: how much to take off. */
  atLeast(length: Length): string {
    const nearest = toMarks(length, FINEST[this.system], 'nearest');
    const exact = nearest.minus(length).abs().lessThan(HAIR) ? nearest : length;
    return this.length(toMarks(exact, DEFAULT_MARKS[this.system], 'up'));
  }

  /** A thickness, which no ruler shows: to a thousandth of an inch, or a hundredth of a millimetre. */
  thin(length: Length): string {
    const step = FINEST_THICKNESS[this.system];
    return this.length(toMarks(length, step, 'nearest'));
  }

  /** A mass, in an inch edition with its grams behind it, since scales show those. */
  weight(grams: number): string {
    const said = formatMass(new Fraction(grams), this.system);
    return this.system === 'metric' ? said : `${said} (${formatMass(new Fraction(grams), 'metric')})`;
  }

  size(width: Length, height: Length): string {
    return formatSize(width, height, this.system);
  }

  /** `2 1/8 in and 6 3/8 in`. */
  lengths(lengths: readonly Length[]): string {
    return inSeries(lengths.map((length) => this.length(length)));
  }

  measure(value: Length | number): string {
    return value instanceof Length ? this.length(value) : String(value);
  }
}

/** `a`, `a and b`, `a, b and c`; `nothing` for an empty list. */
export function inSeries(items: readonly string[]): string {
  if (items.length === 0) return 'nothing';
  if (items.length === 1) return items[0] ?? '';
  return `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;
}

/** `1 panel`, `2 panels`. */
export function counted(count: number, thing: string, things = `${thing}s`): string {
  return `${count} ${count === 1 ? thing : things}`;
}

/** A name as it stands in the maker's file. */
export function named(name: string): string {
  return `\`${name}\``;
}

/** Names that a fact holds in one string, as `a` and `b`. */
export function listed(names: string): string {
  return inSeries(names.split(', ').map(named));
}

/** The article before the name of a size: `a US A2`, `an ISO C6`, `an 8 1/2 x 11 in`. */
export function article(name: string): 'a' | 'an' {
  return /^(?:[AEFHILMNORSX](?![a-z])|ISO|[aeio]|8|1[18]\b)/.test(name) && !name.startsWith('US') ? 'an' : 'a';
}
