import { Length, NAMED_SIZES, type NamedSize, type System, systemOf } from '../units/index.ts';

/** A rectangle that may be turned: its longer and its shorter side. */
export interface Sides {
  readonly long: Length;
  readonly short: Length;
}

export function sidesOf(size: { readonly width: Length; readonly height: Length }): Sides {
  return { long: Length.larger(size.width, size.height), short: Length.smaller(size.width, size.height) };
}

/**
 * Room left when one rectangle lies square in another, either way round: along the long side and across. Long side to
 * long side is never worse than the other way. Less than zero where it does not fit.
 */
export function roomIn(outer: Sides, inner: Sides): { along: Length; across: Length; least: Length } {
  const along = outer.long.minus(inner.long);
  const across = outer.short.minus(inner.short);
  return { along, across, least: Length.smaller(along, across) };
}

/**
 * The smallest named size of one system's shops that leaves `room` on both sides of what is to go in; '' for none.
 * Of two alike the first by name.
 */
export function nextSize(use: NamedSize['use'], system: System, inner: Sides, room: Length): string {
  const fitting = NAMED_SIZES.filter(
    (size) =>
      size.use === use &&
      !isSeldomSold(size) &&
      systemOf(size.unit) === system &&
      !roomIn(sidesOf(size), inner).least.lessThan(room),
  );
  const area = (size: NamedSize): number => size.width.toMm() * size.height.toMm();
  return fitting.toSorted((a, b) => area(a) - area(b) || (a.name < b.name ? -1 : 1))[0]?.name ?? '';
}

/** B sheets and the large lettered US ones are not on a paper shop's shelf for cards (common practice, no source). */
function isSeldomSold({ use, name }: NamedSize): boolean {
  return use === 'sheet' && /^(ISO B|US [C-E]$)/.test(name);
}
