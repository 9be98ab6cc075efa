import { describe, expect, it } from 'vitest';
import type { PanelSlip } from '../../../plugins/engine/index.ts';
import { about, card, type Extra, line, partCut, piece, region, type Side, shape } from './paper.ts';
import { expectSound } from './sound.ts';
import { VIEWS } from './views.ts';

interface Broken {
  readonly what: string;
  readonly across?: Side;
  readonly extra: Extra;
  readonly slips: readonly Record<string, unknown>[];
  readonly panels: number;
  readonly hinges?: number;
}

/** On a sheet of 4 x 5 in unless `across` says otherwise. */
const BROKEN: readonly Broken[] = [
  {
    what: 'a cut from edge to edge',
    extra: { lines: [line('cut', 'through', [0, 2], [4, 2])] },
    ...{ slips: [{ is: 'falls-apart', name: '', parts: 2 }], panels: 2 },
  },
  {
    what: 'a cut right round a part in the middle, and a crease that holds one half to the edge',
    extra: {
      lines: [
        ...[
          line('cut', 'top', [1, 1], [3, 1]),
          line('cut', 'left', [1, 1], [1, 4]),
          line('cut', 'right', [3, 1], [3, 4]),
        ],
        ...[line('cut', 'foot', [1, 4], [3, 4]), line('crease', 'half', [1, 2], [3, 2])],
      ],
    },
    ...{ slips: [{ is: 'falls-apart', name: '', parts: 2 }], panels: 3, hinges: 1 },
  },
  {
    what: 'a crease that ends within the paper',
    extra: { lines: [line('crease', 'stub', [2, 0], [2, 3])] },
    ...{ slips: [{ is: 'divides-nothing', name: 'stub', stretch: 1 }], panels: 1 },
  },
  {
    what: 'a crease of which only the stretch past the crossing ends within the paper',
    extra: { lines: [line('crease', 'whole', [0, 2], [4, 2]), line('crease', 'long', [2, 0], [2, 3])] },
    ...{ slips: [{ is: 'divides-nothing', name: 'long', stretch: 2 }], panels: 3, hinges: 3 },
  },
  {
    what: 'a crease from a window to the edge, round which the paper goes on',
    extra: {
      lines: [line('crease', 'spoke', [0, '5/2'], [2, '5/2'])],
      windows: [region('window', shape.rectangle(1, 1, 2, 3))],
    },
    ...{ slips: [{ is: 'divides-nothing', name: 'spoke', stretch: 1 }], panels: 1 },
  },
  {
    what: 'a line beside the paper, and one along its edge',
    extra: { lines: [line('mark', 'beside', [9, 0], [9, 5]), line('crease', 'along', [0, 0], [0, 5])] },
    slips: [
      { is: 'off-paper', name: 'beside' },
      { is: 'off-paper', name: 'along' },
    ],
    panels: 1,
  },
  {
    what: 'a line in a window',
    extra: {
      lines: [line('cut', 'within', [2, 2], [2, 3])],
      windows: [region('window', shape.circle([2, '5/2'], 3))],
    },
    ...{ slips: [{ is: 'off-paper', name: 'within' }], panels: 1 },
  },
  {
    what: 'more directions than stretches, and fewer',
    extra: {
      lines: [
        line('crease', 'across', [0, 2], [4, 2]),
        line('crease', 'more', [1, 0], [1, 5], ['valley', 'mountain', 'valley']),
        line('crease', 'fewer', [2, 0], [2, 5], ['valley', 'mountain']),
        line('crease', 'third', [0, 3], [4, 3]),
        line('crease', 'fourth', [0, 4], [4, 4]),
      ],
    },
    slips: [
      { is: 'stretch-count', name: 'more', wrote: 3, takes: 4 },
      { is: 'stretch-count', name: 'fewer', wrote: 2, takes: 4 },
    ],
    panels: 12,
    hinges: 8 + 9,
  },
  {
    what: 'two creases on one line',
    extra: { lines: [line('crease', 'one', [2, 0], [2, 5]), line('crease', 'other', [2, 1], [2, 4])] },
    ...{ slips: [{ is: 'overlap', name: 'other', other: 'one' }], panels: 2, hinges: 1 },
  },
  {
    what: 'a crease on a band crease',
    across: ['front 2', 'valley spine', 'back 2'],
    extra: { lines: [line('crease', 'again', [2, 5], [2, 0])] },
    ...{ slips: [{ is: 'overlap', name: 'again', other: 'spine' }], panels: 2, hinges: 1 },
  },
  {
    what: 'a band without paper',
    across: ['front 2', 'valley spine', 'none 0', 'valley second', 'back 2'],
    extra: {},
    ...{ slips: [{ is: 'overlap', name: 'second', other: 'spine' }], panels: 2, hinges: 1 },
  },
  {
    what: 'a crease that is cut from end to end',
    extra: { lines: [line('crease', 'lost', [2, 1], [2, 4]), line('cut', 'blade', [2, 0], [2, 5])] },
    slips: [
      { is: 'overlap', name: 'lost', other: 'blade' },
      { is: 'falls-apart', name: '', parts: 2 },
    ],
    panels: 2,
  },
  {
    what: 'a crease between bands that is wholly lost in a shape',
    across: ['flap 2', 'valley swing', 'strip 2'],
    extra: { shapes: [partCut('plate', shape.rectangle(1, 0, 2, 5), 'strip')] },
    slips: [
      { is: 'overlap', name: 'swing', other: 'plate' },
      { is: 'falls-apart', name: '', parts: 2 },
    ],
    panels: 2,
  },
  {
    what: 'a window beside the paper, and windows that break through its edge or touch it',
    extra: {
      windows: [
        region('beside', shape.circle([9, 2], 1)),
        region('through', shape.circle([0, 2], 2)),
        region('touching', shape.rectangle(1, 0, 1, 1)),
      ],
    },
    slips: [
      { is: 'window-off', name: 'beside' },
      { is: 'window-edge', name: 'through' },
      { is: 'window-edge', name: 'touching' },
    ],
    panels: 1,
  },
  {
    what: 'a window that reaches into what is taken away',
    extra: {
      away: [region('corner', shape.rectangle(0, 0, 2, 2))],
      windows: [region('window', shape.rectangle(1, 1, 2, 2))],
    },
    ...{ slips: [{ is: 'window-edge', name: 'window' }], panels: 1 },
  },
  {
    what: 'a shape and a corner beside the paper',
    extra: {
      away: [region('corner', shape.rectangle(5, 5, 2, 2))],
      shapes: [partCut('shape', shape.circle([9, 9], 1), 'strip')],
    },
    slips: [
      { is: 'off-paper', name: 'corner' },
      { is: 'off-paper', name: 'shape' },
    ],
    panels: 1,
  },
  {
    what: 'everything taken away',
    extra: { away: [region('all', shape.rectangle(0, 0, 4, 5))] },
    ...{ slips: [{ is: 'nothing-left', name: '' }], panels: 0 },
  },
];

describe.each(VIEWS)('what cannot be as it was written, $view', ({ of }) => {
  it.each(BROKEN)('$what', ({ across = 4, extra, slips, panels, hinges = 0 }) => {
    const found = expectSound(of(card(piece('sheet', across, 5, extra))));
    expect(found.slips).toHaveLength(slips.length);
    expect(sorted(found.slips)).toEqual(sorted(slips.map((slip) => ({ piece: 'sheet', ...slip })) as PanelSlip[]));
    expect(found.panels).toHaveLength(panels);
    expect(found.hinges).toHaveLength(hinges);
  });
});

/** A mirrored card counts its bands from the other side, and so names the other of two creases on one line. */
function sorted(slips: readonly PanelSlip[]): unknown[] {
  return slips
    .map((slip) => (slip.is === 'overlap' ? { ...slip, name: '', other: [slip.name, slip.other].sort() } : slip))
    .sort((a, b) => (a.name < b.name ? -1 : 1));
}

const GOOD: readonly Omit<Broken, 'slips'>[] = [
  {
    what: 'a crease cut along a part of it, as for flaps',
    extra: {
      lines: [
        line('crease', 'score', [0, 2], [4, 2]),
        line('crease', 'down', [2, 0], [2, 5]),
        line('cut', 'blade', [2, 0], [2, 2]),
      ],
    },
    ...{ panels: 4, hinges: 3 },
  },
  {
    what: 'a mark and a perforation along a crease',
    extra: {
      lines: [
        line('crease', 'score', [0, 2], [4, 2]),
        line('mark', 'pencil', [0, 2], [4, 2]),
        line('perforation', 'tear', [1, 2], [3, 2]),
      ],
    },
    ...{ panels: 2, hinges: 1 },
  },
  {
    what: 'a crease that ends exactly on another, crossed by marks',
    extra: {
      lines: [
        line('crease', 'whole', [0, 2], [4, 2]),
        line('crease', 'half', [2, 2], [2, 5]),
        line('mark', 'slanting', [0, 0], [4, 5]),
      ],
    },
    ...{ panels: 3, hinges: 3 },
  },
  {
    what: 'a crease crossed by a slit: still one hinge',
    extra: { lines: [line('crease', 'score', [2, 0], [2, 5]), line('cut', 'slit', [1, 2], [3, 2])] },
    ...{ panels: 2, hinges: 1 },
  },
  {
    what: 'a crease over a window: a hinge on either side of it',
    extra: { lines: [line('crease', 'score', [2, -1], [2, 9])], windows: [region('window', shape.circle([2, 2], 2))] },
    ...{ panels: 2, hinges: 2 },
  },
  {
    what: 'a fold of its own in a part-cut shape',
    across: ['flap 2', 'valley swing', 'strip 2'],
    extra: {
      shapes: [partCut('plate', shape.rectangle(1, 1, 2, 2), 'strip')],
      lines: [line('crease', 'own', ['3/2', 1], ['3/2', 3])],
    },
    ...{ panels: 3, hinges: 3 },
  },
  {
    what: 'creases round a closed loop within the paper',
    extra: {
      lines: [
        line('crease', 'top', [1, 1], [3, 1]),
        line('crease', 'right', [3, 1], [3, 4]),
        line('crease', 'bottom', [1, 4], [3, 4]),
        line('crease', 'left', [1, 1], [1, 4]),
      ],
    },
    ...{ panels: 2, hinges: 4 },
  },
];

describe.each(VIEWS)('what is right though it looks odd, $view', ({ of, perInch }) => {
  it.each(GOOD)('$what', ({ across = 4, extra, panels, hinges }) => {
    const window = (extra.windows ?? []).length > 0;
    const found = expectSound(of(card(piece('sheet', across, 5, extra))), window ? undefined : 20 * perInch ** 2);
    expect(found.slips).toEqual([]);
    expect(found.panels).toHaveLength(panels);
    expect(found.hinges).toHaveLength(hinges ?? 0);
  });
});

describe('ends that come short by next to nothing', () => {
  const SHORT = ['1/10000000000000000', '1/1000000000000', '1/1000000000'];
  it.each(SHORT)('a crease %s in short of the edge, or past it, is a hinge from edge to edge', (by) => {
    for (const end of [`5/1 - ${by}`, `5/1 + ${by}`]) {
      const [five, sign, part] = end.split(' ');
      const exact = part === undefined ? [0n, 1n] : part.split('/').map(BigInt);
      const [n = 0n, d = 1n] = exact;
      const y = `${sign === '-' ? 5n * d - n : 5n * d + n}/${d}`;
      expect(five).toBe('5/1');
      const found = expectSound(card(piece('sheet', 4, 5, { lines: [line('crease', 'score', [2, 0], [2, y])] })));
      expect(found.slips).toEqual([]);
      expect(found.hinges).toHaveLength(1);
      expect(found.panels).toHaveLength(2);
    }
  });

  it('a crease that ends a thousandth of an inch short is reported', () => {
    const found = expectSound(
      card(piece('sheet', 4, 5, { lines: [line('crease', 'score', [2, 0], [2, '4999/1000'])] })),
    );
    expect(found.slips).toMatchObject([{ is: 'divides-nothing' }]);
    expect(found.hinges).toHaveLength(0);
  });

  it('rounded lines that meet where no fraction lies meet in one point', () => {
    const [x, y] = [2 + Math.SQRT1_2, 2 + Math.sqrt(3) / 10];
    const found = expectSound(
      card(
        piece('sheet', 4, 5, {
          lines: [
            line('crease', 'a', about([x, y]), [0, 0]),
            line('crease', 'b', about([x + 1e-13, y]), [4, 0]),
            line('crease', 'c', about([x, y - 1e-13]), [4, 5]),
            line('crease', 'd', about([x, y + 2e-13]), [0, 5]),
          ],
        }),
      ),
    );
    expect(found.slips).toEqual([]);
    expect(found.panels).toHaveLength(4);
    expect(found.hinges).toHaveLength(4);
  });

  it('two lines a hair apart are one line, drawn twice', () => {
    const found = expectSound(
      card(
        piece('sheet', 4, 5, {
          lines: [
            line('crease', 'one', [2, 0], [2, 5]),
            line('crease', 'other', about([2 + 1e-10, 0]), about([2 - 1e-10, 5])),
          ],
        }),
      ),
    );
    expect(found.panels).toHaveLength(2);
    expect(found.slips).toMatchObject([{ is: 'overlap', name: 'other', other: 'one' }]);
  });
});
