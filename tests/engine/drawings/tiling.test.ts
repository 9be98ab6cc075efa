import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { joinOf, stretchesOf } from '../../../plugins/engine/drawings/template/tiling.ts';

const SLACK = 1e-6;

describe('a side cut into pages', () => {
  const side = fc.record({
    length: fc.integer({ min: 1, max: 9000 }).map((tenths) => tenths / 10),
    room: fc.integer({ min: 1200, max: 2700 }).map((tenths) => tenths / 10),
    creases: fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 8 }),
  });

  it('is covered from end to end, each page in its room, neighbours sharing 10 mm or more', () => {
    fc.assert(
      fc.property(side, ({ length, room, creases }) => {
        const stretches = stretchesOf(
          length,
          room,
          creases.map((part) => part * length),
        );
        expect(stretches[0]?.from).toBe(0);
        expect(stretches.at(-1)?.to).toBe(length);
        stretches.forEach(({ from, to }, i) => {
          expect(to - from).toBeGreaterThan(0);
          expect(to - from).toBeLessThanOrEqual(room + SLACK);
          const next = stretches[i + 1];
          if (next !== undefined) expect(to - next.from).toBeGreaterThanOrEqual(10 - SLACK);
        });
      }),
    );
  });

  it('takes no more pages than 10 to 12 mm of overlap need', () => {
    fc.assert(
      fc.property(side, ({ length, room, creases }) => {
        const pages = stretchesOf(
          length,
          room,
          creases.map((part) => part * length),
        ).length;
        const least = length <= room ? 1 : Math.ceil((length - 12 - SLACK) / (room - 12));
        expect(pages).toBe(least);
      }),
    );
  });

  it('is joined away from its creases where the pages allow', () => {
    const [before, after] = stretchesOf(406.4, 254, [248, 203.2]);
    if (before === undefined || after === undefined) throw new Error('two pages were expected');
    expect(Math.abs(joinOf(before, after) - 248)).toBeGreaterThanOrEqual(8);
  });

  it('needs one page for what just fits', () => {
    expect(stretchesOf(254, 254, [127])).toEqual([{ from: 0, to: 254 }]);
  });

  it('refuses pages that could hold nothing, which no sheet is', () => {
    expect(() => stretchesOf(100, 20, [])).toThrow(RangeError);
  });
});
