import { describe, expect, it } from 'vitest';
import { type Card, type PageScene, panelsOf, type SheetFormat, templatePages } from '../../../plugins/engine/index.ts';
import { everyKind } from './every-kind.ts';
import { cardOf, inches, millimetres, pieceOf } from './pieces.ts';
import { SHAPED } from './shaped-pieces.ts';
import { alongArc, expectClear, inkOf, labelsOf } from './sound-drawing.ts';

/** What home printers leave white, in mm: 1/4 in, and 1/2 in at the foot. */
const MARGIN = 6.35;
const FOOT = 12.7;
/** Letters' outlines may differ from the table of widths by kerning. */
const SLACK = 0.05;

function pagesOf(card: Card, sheet: SheetFormat, title = 'Lantern night'): readonly PageScene[] {
  const cards = [{ name: card.name, card, panelling: panelsOf(card) }];
  return templatePages({
    cards,
    system: card.system,
    sheet,
    title,
    address: 'https://saltmarsh-paper.example/projects/lantern-night/',
  });
}

function expectPrintable(page: PageScene): void {
  const off = labelsOf(page)
    .map(inkOf)
    .filter(
      ({ left, right, top, bottom }) =>
        left < MARGIN - SLACK ||
        top < MARGIN - SLACK ||
        right > page.width - MARGIN + SLACK ||
        bottom > page.height - FOOT + SLACK,
    );
  expect(
    off.map(({ text }) => text),
    `page ${page.page}`,
  ).toEqual([]);
  const outside = page.items.flatMap((item) => {
    if (item.kind !== 'line' && item.kind !== 'arc') return [];
    const points = item.kind === 'line' ? [item.from, item.to] : alongArc(item);
    return points
      .filter(({ x, y }) => x < MARGIN || x > page.width - MARGIN || y < MARGIN || y > page.height - FOOT + 1e-9)
      .map(({ x, y }) => `${item.role} at ${x} ${y}`);
  });
  expect(outside, `page ${page.page}`).toEqual([]);
}

describe.each(everyKind())('template of $name', ({ card }) => {
  it.each(['letter', 'a4'] as const)(
    'keeps ink off the margins, and texts off each other and off lines, on %s',
    (sheet) => {
      const pages = pagesOf(card, sheet);
      for (const page of pages) {
        expectPrintable(page);
        expectClear(page);
        const texts = labelsOf(page).map(({ text }) => text);
        expect(texts).toContain(`page ${page.page} of ${pages.length}`);
        expect(texts).toContain('Print at 100 %, no fitting to the page');
      }
    },
  );
});

describe.each(SHAPED)('template of $name', ({ piece }) => {
  it.each([
    ['letter', 'inch'],
    ['a4', 'metric'],
  ] as const)('keeps ink off the margins, and texts off each other and off lines, on %s', (sheet, system) => {
    for (const page of pagesOf(cardOf(system, piece(system)), sheet)) {
      expectPrintable(page);
      expectClear(page);
    }
  });
});

describe('a template', () => {
  const topFold = pieceOf(
    'base',
    inches('17/4'),
    [
      ['front', inches('11/2')],
      ['back', inches('11/2'), 'valley', 'spine'],
    ],
    'across',
  );
  const big = pieceOf(
    'base',
    [
      ['front', inches('8')],
      ['back', inches('8'), 'mountain', 'spine'],
    ],
    inches('11'),
  );

  it('puts a piece on as few pages as will hold it, lying when that is fewer', () => {
    const counts = (card: Card, sheet: SheetFormat): number[] => [
      pagesOf(card, sheet).length,
      pagesOf(card, sheet).filter(({ width, height }) => width > height).length,
    ];
    const sideFold = pieceOf(
      'base',
      [
        ['front', inches('5')],
        ['back', inches('5'), 'valley', 'spine'],
      ],
      inches('7'),
    );
    expect(counts(cardOf('inch', sideFold), 'letter')).toEqual([2, 1]);
    expect(counts(cardOf('inch', sideFold), 'a4')).toEqual([2, 1]);
    expect(counts(cardOf('inch', topFold), 'letter')).toEqual([3, 0]);
    expect(counts(cardOf('metric', pieceOf('mat', millimetres('100'), millimetres('140'))), 'a4')).toEqual([2, 0]);
  });

  it('shows the same marks, at the same places of the piece, on both sides of every join', () => {
    const pages = pagesOf(cardOf('inch', big), 'letter').slice(1);
    expect(pages).toHaveLength(4);
    const marks = pages.map((page) => {
      const circles = page.items.filter((item) => item.kind === 'arc');
      const letters = labelsOf(page).filter(({ text }) => /^[A-Z]\d$/.test(text));
      expect(letters).toHaveLength(circles.length);
      return letters.map((letter) => {
        const nearest = circles.reduce((a, b) =>
          distance(a.centre, letter.at) <= distance(b.centre, letter.at) ? a : b,
        );
        return { name: letter.text, ...nearest.centre };
      });
    });
    const names = marks.flat().map(({ name }) => name);
    for (const name of new Set(names)) expect(names.filter((other) => other === name)).toHaveLength(2);
    expect(new Set(names).size).toBe(8);
    // Two pages that share marks are laid on each other by one shift, whichever mark is taken.
    marks.forEach((some, i) => {
      for (const others of marks.slice(i + 1)) {
        const shifts = some.flatMap((a) =>
          others.filter((b) => b.name === a.name).map((b) => `${(a.x - b.x).toFixed(6)} ${(a.y - b.y).toFixed(6)}`),
        );
        expect(new Set(shifts).size).toBeLessThanOrEqual(1);
      }
    });
  });

  it('tells in words what to print, measure and cut, and where blades need care', () => {
    const [first] = pagesOf(cardOf('inch', topFold), 'letter');
    const text = first?.words.join(' ').replaceAll('\u2009', ' ').replaceAll('\u00a0', ' ') ?? '';
    for (const part of [
      'Lantern night',
      'Inch edition',
      'US Letter',
      'Print at 100 %, with no fitting to the page.',
      '50 mm each way',
      '2 in each way',
      'If a side is not right, do not cut.',
      'Dashes: valley fold.',
      'the circles with the same letter and number meet',
      'Cut the base, a piece 4 1⁄4 in wide and 11 in high.',
      'at 5 1⁄2 in, from left to right.',
      'Its template is on pages 2 to 3.',
      'Cut away from your fingers',
    ])
      expect(text).toContain(part);
  });

  it('explains joins only when there are any', () => {
    const words = pagesOf(
      cardOf('metric', pieceOf('mat', millimetres('100'), millimetres('140'))),
      'a4',
    )[0]?.words.join(' ');
    expect(words).not.toContain('join');
  });

  it('goes on to further pages when the list is long, and still counts them right', () => {
    const pieces = Array.from({ length: 30 }, (_, i) =>
      pieceOf(`layer-${i + 1}`, inches('4'), [
        ['head', inches('1')],
        ['foot', inches('2'), 'valley', 'fold'],
      ]),
    );
    const pages = pagesOf(cardOf('inch', ...pieces), 'a4');
    const lists = pages.filter((page) => page.words.some((line) => line.includes('Its template')));
    expect(lists.length).toBeGreaterThan(1);
    for (const page of pages) expectPrintable(page);
    pages.slice(lists.length).forEach((page, i) => {
      expect(page.title).toBe(`Lantern night: layer ${i + 1}`);
      const said = lists
        .flatMap(({ words }) => words)
        .filter((line) => line.includes(`Its template is on page ${page.page}.`));
      expect(said).toHaveLength(1);
    });
  });

  it('keeps long and hostile titles within the page', () => {
    for (const title of [
      'Lantern '.repeat(60).trim(),
      'x'.repeat(400),
      'Lantern '.repeat(2000),
      '\u{1F426} <b>“Święta”</b> & ½',
    ]) {
      for (const page of pagesOf(cardOf('inch', topFold), 'letter', title))
        if (!/[Śę]/.test(title)) expectPrintable(page);
    }
  });

  it('heads each card of several with its name', () => {
    const card = cardOf('inch', topFold);
    const cards = ['The ferry', 'The jetty'].map((name) => ({ name, card, panelling: panelsOf(card) }));
    const pages = templatePages({ cards, system: 'inch', sheet: 'letter', title: 'Harbour' });
    expect(pages.map(({ title }) => title)).toEqual([
      'Harbour',
      'The ferry: base, row 1 of 2',
      'The ferry: base, row 2 of 2',
      'The jetty: base, row 1 of 2',
      'The jetty: base, row 2 of 2',
    ]);
    expect(pages[0]?.words).toEqual(expect.arrayContaining(['The ferry', 'The jetty']));
  });
});

function distance(a: { x: number; y: number }, b: { x: number; y: number }): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}
