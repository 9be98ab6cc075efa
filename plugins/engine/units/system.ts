import { Length } from './length.ts';

/** The two ways readers measure. An edition of a card is made for one of them. */
export type System = 'inch' | 'metric';

export const SYSTEMS: readonly System[] = ['inch', 'metric'];

/** A unit as it is written. `cm` is read and never printed. */
export type Unit = 'in' | 'mm' | 'cm';

export function systemOf(unit: Unit): System {
  return unit === 'in' ? 'inch' : 'metric';
}

/** The finest mark a maker can set a ruler or scoring board to, in each system. */
export type Marks = Readonly<Record<System, Length>>;

/** 1/16 in and 0.5 mm: the finest marks on common craft rulers (common practice, no source). */
export const DEFAULT_MARKS: Marks = {
  inch: Length.fromInches('1/16'),
  metric: Length.fromMm('1/2'),
};
