import type { Unit } from './system.ts';

/**
 * Something wrong or doubtful in a text that was to be read as a number, a length, a size or a weight.
 *
 * The same three answers as a `Problem`, without a place: the caller knows where the text stands.
 */
export interface Fault {
  /** Stable and kebab-case, for tests and for looking up the cure. */
  readonly code: string;
  /** An error refuses the value; a warning keeps it and asks. */
  readonly severity: 'error' | 'warning';
  /** The doubtful part, verbatim, cut short when it is very long. */
  readonly wrote: string;
  readonly takes: string;
  readonly remedy: string;
  /** Where the doubtful part starts in the text that was read, counted in UTF-16 units from 0. */
  readonly offset: number;
}

/** A value with its faults: no value means refused, a value with faults means questioned. */
export interface Reading<T> {
  readonly value: T | undefined;
  readonly faults: readonly Fault[];
}

export interface ReadOptions {
  /** The unit of bare numbers. Without it a bare number is refused where a length is wanted. */
  readonly units?: Unit | undefined;
  /** True where the language of the text writes `5,5`. */
  readonly decimalComma?: boolean | undefined;
}

/** The longest text that is looked at. Anything longer is no measurement. */
export const LONGEST_TEXT = 120;

/** A fault about `text` from `start` to `end`. */
export function faultAt(
  text: string,
  start: number,
  end: number,
  fault: Pick<Fault, 'code' | 'takes' | 'remedy'> & { readonly severity?: Fault['severity'] },
): Fault {
  const { code, severity = 'error', takes, remedy } = fault;
  return { code, severity, wrote: shorten(text.slice(start, end)), takes, remedy, offset: start };
}

/** The value unless an error stands among the faults. */
export function reading<T>(value: T | undefined, faults: readonly Fault[]): Reading<T> {
  return { value: faults.some((fault) => fault.severity === 'error') ? undefined : value, faults };
}

/** A text too long to show, cut with an ellipsis. Never cuts a surrogate pair in two. */
function shorten(text: string): string {
  const shown = [...text.slice(0, 2 * LONGEST_SHOWN)];
  return shown.length <= LONGEST_SHOWN && text.length <= 2 * LONGEST_SHOWN
    ? text
    : `${shown.slice(0, LONGEST_SHOWN).join('')}…`;
}

const LONGEST_SHOWN = 60;
