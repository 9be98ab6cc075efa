import type { Card } from '../../../plugins/engine/index.ts';
import { about, card, type Inches, line, partCut, piece, region, shape } from './paper.ts';

const DEGREE = Math.PI / 180;

/** From the middle of the bottom edge of the pop-up, so many degrees off its ridge, past the paper. */
function footTo(side: -1 | 1, degrees: number) {
  return about([2 + side * 9 * Math.sin(degrees * DEGREE), 2.5 - 9 * Math.cos(degrees * DEGREE)]);
}

function square(name: string, left: Inches, top: Inches) {
  return region(name, shape.rectangle(left, top, 4, 4));
}

/** What folds of the language come to as pieces, in inches, with what each must be divided into. */
export const FOLDS: readonly {
  readonly fold: string;
  readonly made: Card;
  readonly panels: number;
  readonly hinges: number;
  /** Square inches of paper. Chords leave out a little of what is round. */
  readonly area: number;
  readonly round?: true;
}[] = [
  {
    fold: 'side fold',
    made: card(piece('base', ['front 17/4', 'valley spine', 'back 17/4'], '11/2')),
    ...{ panels: 2, hinges: 1, area: 8.5 * 5.5 },
  },
  {
    fold: 'bridge',
    made: card(
      piece('base', ['wing 3', 'valley inner', 'side 3', 'valley outer', 'back 6'], 5),
      piece('bridge', ['tab 3', 'valley corner', 'end 3', 'valley turn', 'span 6'], '3/2'),
      piece('ornament', '3/2', '3/2', { outline: shape.circle(['3/4', '3/4'], '3/2') }),
    ),
    ...{ panels: 7, hinges: 4, area: 60 + 18 + Math.PI * 0.75 ** 2, round: true },
  },
  {
    fold: 'twisting easel',
    made: card(
      piece('base', ['wing 11/4', 'mountain knee', 'strut 11/4', 'valley spine', 'back 11/2'], '11/2'),
      piece('front', '11/2', '11/2', { lines: [line('mark', 'middle', ['11/4', 0], ['11/4', '11/2'])] }),
      ...[1, 2].map((k) =>
        piece(`disc(${k})`, 2, 2, {
          outline: shape.circle([1, 1], 2),
          lines: [line('crease', 'fold', [1, 0], [1, 2])],
        }),
      ),
    ),
    ...{ panels: 8, hinges: 4, area: 11 * 5.5 + 5.5 ** 2 + 2 * Math.PI, round: true },
  },
  {
    fold: 'tri-shutter',
    made: card(
      piece('sheet', 12, 7, {
        lines: [
          ...['3/2', '11/2'].map((y, i) => line('cut', `slit(${i + 1})`, [2, y], [10, y])),
          ...[2, 10].map((x, i) => line('crease', `outer(${i + 1})`, [x, 0], [x, 7], ['valley', 'mountain', 'valley'])),
          ...[4, 8].map((x, i) =>
            line('crease', `inner(${i + 1})`, [x, 0], [x, 7], ['mountain', 'valley', 'mountain']),
          ),
        ],
      }),
    ),
    ...{ panels: 11, hinges: 12, area: 84 },
  },
  {
    fold: 'V-fold',
    made: card(
      piece('base', ['left 17/4', 'valley spine', 'right 17/4'], '11/2', {
        lines: [
          line(
            'mark',
            'line-left',
            ['17/4', 2],
            about([4.25 - 2 * Math.sin(50 * DEGREE), 2 + 2 * Math.cos(50 * DEGREE)]),
          ),
        ],
      }),
      piece('pop', 4, '5/2', {
        lines: [
          line('crease', 'ridge', [2, 0], [2, '5/2']),
          line('crease', 'foot-left', [2, '5/2'], footTo(-1, 70), ['mountain']),
          line('crease', 'foot-right', [2, '5/2'], footTo(1, 70), ['mountain']),
        ],
      }),
    ),
    ...{ panels: 6, hinges: 4, area: 8.5 * 5.5 + 10 },
  },
  {
    fold: 'swing card',
    made: card(
      piece('card', ['flap 11/4', 'mountain swing', 'strip 11/8', 'valley spine', 'back 33/8'], '11/2', {
        shapes: [partCut('disc', shape.circle(['11/4', '11/4'], '5/2'), 'strip')],
      }),
    ),
    ...{ panels: 3, hinges: 3, area: 8.25 * 5.5 },
  },
  {
    fold: 'pull slider',
    made: card(
      piece('card', ['front 17/4', 'valley spine', 'back 17/4'], '11/2', {
        lines: ['5/4', 3].map((x, i) => line('cut', `slit(${i + 1})`, [x, '5/4'], [x, '17/4'])),
      }),
      piece('slider', 4, '23/8'),
    ),
    ...{ panels: 3, hinges: 1, area: 8.5 * 5.5 + 4 * 2.875 },
  },
  {
    fold: 'accordion',
    made: card(
      piece(
        'strip',
        [1, 2, 3, 4, 5, 6].flatMap((k) => [
          ...(k > 1 ? [`${k % 2 ? 'mountain' : 'valley'} fold(${k - 1})`] : []),
          `page(${k}) 3`,
        ]),
        4,
      ),
    ),
    ...{ panels: 6, hinges: 5, area: 72 },
  },
  {
    fold: 'explosion insert',
    made: card(
      piece('base', ['left 3', 'valley spine', 'right 3'], 6),
      piece('insert', '11/2', '11/2', {
        lines: [
          line('crease', 'falling', [0, 0], ['11/2', '11/2']),
          line('crease', 'rising', [0, '11/2'], ['11/2', 0]),
          line('crease', 'half', ['11/4', 0], ['11/4', '11/2'], ['mountain']),
        ],
      }),
    ),
    ...{ panels: 8, hinges: 7, area: 36 + 5.5 ** 2 },
  },
  {
    fold: 'exploding box',
    made: card(
      piece(
        'layer',
        ['left 4', 'valley a', 'middle 4', 'valley b', 'right 4'],
        ['head 4', 'valley c', 'middle 4', 'valley d', 'foot 4'],
        {
          away: [
            square('top-left', 0, 0),
            square('top-right', 8, 0),
            square('bottom-left', 0, 8),
            square('bottom-right', 8, 8),
          ],
        },
      ),
      piece(
        'lid',
        ['left 1', 'valley a', 'middle 4', 'valley b', 'right 1'],
        ['head 1', 'valley c', 'middle 4', 'valley d', 'foot 1'],
        {
          lines: [
            line('cut', 'tab(1)', [1, 0], [1, 1]),
            line('cut', 'tab(2)', [5, 0], [5, 1]),
            line('cut', 'tab(3)', [1, 5], [1, 6]),
            line('cut', 'tab(4)', [5, 5], [5, 6]),
          ],
        },
      ),
    ),
    ...{ panels: 5 + 9, hinges: 4 + 8, area: 80 + 36 },
  },
  {
    fold: 'shaker front',
    made: card(
      piece('frame', '17/4', '11/2', { windows: [region('window', shape.rectangle('3/4', '3/4', '11/4', 4))] }),
      piece('ring', 4, '21/4', { windows: [region('chamber', shape.rectangle('1/2', '1/2', 3, '17/4'))] }),
      piece('backing', '17/4', '11/2'),
    ),
    ...{ panels: 3, hinges: 0, area: 2 * 4.25 * 5.5 - 2.75 * 4 + 4 * 5.25 - 3 * 4.25 },
  },
];
