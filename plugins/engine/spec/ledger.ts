import { Length, type Printed, roundTogether, toMarks } from '../units/index.ts';

/** A length of the paper as it was written, and as its rule gives it in this edition. */
export interface Worked {
  readonly written: Length;
  readonly edition: Length;
}

/**
 * What is printed for each length of a card.
 *
 * Lengths that are equal as written are printed alike, wherever they stand. A strip's bands are rounded together, and its
 * printed length is their sum; a side that is one measure follows, so strips go in first. Where lengths disagree, the
 * first to come is kept.
 */
export class Ledger {
  readonly mark: Length;
  private readonly printed = new Map<string, Length>();
  private readonly editions = new Map<string, Length>();
  private readonly settled: Printed[] = [];

  constructor(mark: Length) {
    this.mark = mark;
  }

  /** Printed sizes of a strip's bands, which are from now on the printed values of these lengths and of their sum. */
  enterStrip(bands: readonly Worked[]): Length[] {
    const editions = bands.map(({ written, edition }) => this.editionOf(written, edition));
    const sizes = roundTogether(editions, this.mark, this.settled);
    bands.forEach(({ written }, index) => {
      const [edition, size] = [editions[index], sizes[index]];
      if (edition && size) this.learn(written, edition, size);
    });
    this.learn(Length.sum(bands.map(({ written }) => written)), Length.sum(editions), Length.sum(sizes));
    return sizes;
  }

  /** As it would be printed by what is known so far. */
  look({ written, edition }: Worked): Length {
    return (
      this.printed.get(keyOf(written)) ??
      this.settled.find(({ exact }) => exact.equals(edition))?.printed ??
      toMarks(edition, this.mark, 'nearest')
    );
  }

  /** Printed size of a side that is one measure. */
  enter(side: Worked): Length {
    const size = this.look(side);
    this.learn(side.written, side.edition, size);
    return size;
  }

  private editionOf(written: Length, edition: Length): Length {
    const key = keyOf(written);
    const first = this.editions.get(key) ?? edition;
    this.editions.set(key, first);
    return first;
  }

  private learn(written: Length, edition: Length, printed: Length): void {
    const key = keyOf(written);
    if (!this.printed.has(key)) this.printed.set(key, printed);
    if (!this.settled.some(({ exact }) => exact.equals(edition))) this.settled.push({ exact: edition, printed });
  }
}

function keyOf(length: Length): string {
  return length.mm.toFraction();
}
