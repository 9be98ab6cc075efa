import { describe, expect, it } from 'vitest';
import {
  buildLibrary,
  type CardEdition,
  computeKind,
  computeProject,
  readContent,
} from '../../plugins/content/index.ts';
import { formatProblems, SYSTEMS, type System } from '../../plugins/engine/index.ts';
import { closedSizeOf } from './support/closed.ts';
import { said, wrongInShape } from './support/judged.ts';

const CONTENT = { ...readContent('.'), posts: [] };

type Editions = Readonly<Record<System, CardEdition>>;

/** The card of a post, with these lines in its frontmatter, among the kinds of the catalogue. */
function posted(lines: string): Editions {
  const text = `---\ntitle: Composed\nsummary: A card put together.\ndate: 2026-11-01\nunits: in\n${lines}\n---\nText.\n`;
  const { library, problems } = buildLibrary({
    ...CONTENT,
    posts: [{ path: 'content/posts/composed/index.md', text }],
  });
  const post = library?.posts.get('composed');
  if (library === undefined || post === undefined) throw new Error(formatProblems(problems));
  const { project, problems: ofCard } = computeProject(library, post);
  const [card] = project.cards;
  if (card === undefined || ofCard.length > 0) throw new Error(formatProblems(ofCard));
  return card.editions;
}

/** The kind of a fold file, at its defaults, among the kinds of the catalogue. */
function ownKind(lines: string): Editions {
  const file = { path: 'content/folds/composed.md', text: `---\nname: Composed\nunits: in\n${lines}\n---\nText.\n` };
  const { library, problems } = buildLibrary({ ...CONTENT, folds: [...CONTENT.folds, file] });
  const kind = library?.folds.get('composed');
  if (library === undefined || kind === undefined) throw new Error(formatProblems(problems));
  const { project, problems: ofCard } = computeKind(library, kind);
  if (project === undefined || ofCard.length > 0) throw new Error(formatProblems(ofCard));
  return project.editions;
}

function wrongIn({ findings, card }: CardEdition): string[] {
  return wrongInShape(findings).map((finding) => said(finding, card));
}

function outcomes({ findings }: CardEdition): string[] {
  return findings.map(({ check, outcome }) => `${check} ${outcome}`);
}

const sizeOf = ({ closed, system }: CardEdition): string =>
  closedSizeOf({ folded: { closed: [{ pose: closed[0] }] } }, system);

/** A strip across the gutter, feet 1 1/2 and 1 in from it, and a mat on the front. */
function popUp(leftWall: string): string {
  return `fold: side-fold
add:
  pieces:
    strip:
      across: [left-tab 1/2, valley left-score, left-wall ${leftWall}, mountain ridge, right-wall 1 1/2, valley right-score, right-tab 1/2]
      down: 2
    mat: { size: front less 1/8 }
  joins:
    - { glue: strip.left-tab, onto: front, match: 'left-score at 0 to [base.front.width - 1 1/2, 1 3/4]' }
    - { glue: strip.right-tab, onto: back, match: 'right-score at 0 to [1, 1 3/4]' }
    - { glue: mat, onto: outside of front }`;
}

describe('a side fold with a box pop-up and a mat, added by a post', () => {
  it.each(SYSTEMS)('closes to the size of the side fold: %s', (system) => {
    const edition = posted(popUp('1'))[system];
    expect(edition.card.pieces.map(({ name }) => name)).toEqual(['base', 'strip', 'mat']);
    expect(wrongIn(edition)).toEqual([]);
    expect(outcomes(edition)).toContain('joins-agree agree');
    expect(sizeOf(edition)).toBe(system === 'inch' ? '4 1/4 x 5 1/2 in' : '105 x 148 mm');
  });

  it.each(SYSTEMS)('does not close with a wall that is half an inch too wide: %s', (system) => {
    const edition = posted(popUp('1 1/2'))[system];
    expect(outcomes(edition)).toContain('joins-agree misses');
    // 1/2 in = 12.7 mm; in millimetres both walls go to marks of their own: 38 - 25.5 = 12.5.
    const missed = edition.findings.find(({ outcome }) => outcome === 'misses');
    expect(missed && said(missed, edition.card)).toContain(system === 'inch' ? 'by 1/2 in' : 'by 12.5 mm');
  });

  it('does not lie on the front when it is glued inside, under the strip', () => {
    const inside = popUp('1').replace('mat, onto: outside of front', 'mat, onto: front');
    for (const edition of Object.values(posted(inside))) expect(outcomes(edition)).toContain('closes-flat between');
  });
});

describe('a zigzag with four blocks across its valley, added by a post', () => {
  // Strips of 5 x 1 1/4 in, scored 1 1/4, 2 1/2 and 3 3/4, glued either side of the valley: common practice, no source.
  const blocks = (ridge: string): string => `fold: { z-fold: { width: 3 3/4, height: 5 3/4, turn: 3 3/4 } }
sheet: { inch: 12 x 12 in, metric: ISO A4 }
add:
  pieces:
    block(k):
      each: k from 1 to 4
      across: [left-tab 1 1/4, valley left-score, left-wall 1 1/4, ${ridge} ridge, right-wall 1 1/4, valley right-score, right-tab 1 1/4]
      down: 1 1/4
  joins:
    - { each: k from 1 to 4, glue: block(k).left-tab, onto: middle, match: 'left-score at 0 to [base.middle.width - 1 1/4, (k - 1)*1 1/2]' }
    - { each: k from 1 to 4, glue: block(k).right-tab, onto: base.back, match: 'right-score at 0 to [1 1/4, (k - 1)*1 1/2]' }`;

  it.each(SYSTEMS)('closes to 3 3/4 x 5 3/4 in, open and shut: %s', (system) => {
    const edition = posted(blocks('mountain'))[system];
    // The fourth block ends where the card does; in millimetres both go to marks of their own, half a millimetre apart.
    const wrong = wrongIn(edition).filter((one) => !one.includes('sticks out 0.5 mm'));
    expect(wrong).toEqual([]);
    expect(outcomes(edition)).toContain('joins-agree agree');
    expect(edition.card.pieces).toHaveLength(5);
    if (system === 'inch') expect(sizeOf(edition)).toBe('3 3/4 x 5 3/4 in');
  });

  it('does not close with all scores one way', () => {
    for (const edition of Object.values(posted(blocks('valley')))) expect(wrongIn(edition)).not.toEqual([]);
  });
});

describe('a charm more on a bridge, added by a post', () => {
  const charm = (thread: string): string => `fold: bridge
add:
  pieces:
    bell: { circle: 3/4 }
  joins:
    - { hang: bell.top, from: bridge.bottom, after: 2*depth + width/2 + 1, thread: ${thread} }`;

  it.each(SYSTEMS)('hangs beside the first: %s', (system) => {
    const edition = posted(charm('1/4'))[system];
    expect(wrongIn(edition)).toEqual([]);
    expect(edition.card.joins.filter(({ is }) => is === 'hang')).toHaveLength(2);
    expect(edition.closed.flatMap(({ panels }) => panels).some(({ piece }) => piece === 'bell')).toBe(true);
  });

  it.each(SYSTEMS)('sticks out below when its thread is longer than the card is high: %s', (system) => {
    const edition = posted(charm('4'))[system];
    expect(outcomes(edition)).toContain('closed-size sticks-out');
  });
});

describe('a shaker on an easel, by use and replace', () => {
  const lines = (height: string): string => `parameters: { width: 4 1/4, height: 5 1/2 }
use:
  easel: { width: width, height: height }
  shaker-front: { width: width, height: ${height} }
replace: { front: shaker-front }`;

  it.each(SYSTEMS)('closes to the size of the easel: %s', (system) => {
    const edition = ownKind(lines('height'))[system];
    expect(edition.card.pieces.map(({ name }) => name)).toEqual(['base', 'frame', 'film', 'ring', 'backing']);
    expect(wrongIn(edition)).toEqual([]);
    expect(outcomes(edition)).toContain('closes-flat flat');
    expect(sizeOf(edition)).toBe(system === 'inch' ? '4 1/4 x 5 1/2 in' : '105 x 148 mm');
    // Backing on flap; ring, film and frame on it, in this order.
    const glued = edition.card.joins
      .filter(({ is }) => is === 'glue')
      .map(({ part, onto }) => `${part.piece} on ${onto.piece}`);
    expect(glued).toEqual(['backing on base', 'ring on backing', 'film on ring', 'frame on film']);
    const plies = edition.bodies[0]?.plies?.orders[0]?.plies ?? [];
    const at = (name: string): number => plies.findIndex((panel) => panel.startsWith(name));
    expect(['backing', 'ring', 'film', 'frame'].map(at).toSorted((a, b) => a - b)).toEqual(
      ['backing', 'ring', 'film', 'frame'].map(at),
    );
  });

  it.each(SYSTEMS)('sticks out when the shaker is higher than the easel: %s', (system) => {
    expect(outcomes(ownKind(lines('height + 1/2'))[system])).toContain('closed-size sticks-out');
  });
});
