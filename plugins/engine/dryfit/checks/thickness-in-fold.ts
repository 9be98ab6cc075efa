import { CREASED_FROM_GSM, type CreaseLoad, type InnerPanel, materialOf } from '../../layers/index.ts';
import { Length } from '../../units/index.ts';
import { finding } from '../finding.ts';
import { measured } from '../lengths.ts';
import type { Finding, FoldedBody, FoldedCard } from '../types.ts';

/** What thin paper and a firm bone folder still take up without a crumple (common practice, no source). */
const PAPER_GIVES = Length.fromMm('0.5');

/** The most that one score goes round before it wants to be two, a spine apart: 1/16 in (common practice, no source). */
const ONE_SCORE = Length.fromInches('1/16');

/**
 * What paper's thickness does in the fold: whether a panel that is tucked in leaves the turn of the paper its room, by how much
 * a sheet that is folded inside another creeps out of it, and where one score is not enough.
 */
export function thicknessInFold(folded: FoldedCard): Finding[] {
  return folded.closed.flatMap((body) => ofBody(body, folded));
}

function ofBody({ thickness, piece }: FoldedBody, folded: FoldedCard): Finding[] {
  const [first] = thickness?.creases[0] ?? [];
  if (thickness === undefined || first === undefined) return [];
  if (thickness.unknown.length > 0) {
    const facts = { crease: nameOf(first), stocks: thickness.unknown.join(', ') };
    return [finding('thickness-in-fold', 'unknown', { facts, at: piece, witness: thickness.unknown[0] ?? '' })];
  }
  // Of several ways to fold, the one with least in its way.
  const [best] = thickness.creases.map((loads) => inOrder(loads, folded)).toSorted(byTrouble);
  return best ?? [];
}

const WEIGHTS: Readonly<Record<string, number>> = { fail: 100, question: 1 };

function byTrouble(one: readonly Finding[], other: readonly Finding[]): number {
  const trouble = (found: readonly Finding[]): number =>
    found.reduce((sum, { state }) => sum + (WEIGHTS[state] ?? 0), 0);
  return trouble(one) - trouble(other);
}

function inOrder(loads: readonly CreaseLoad[], folded: FoldedCard): Finding[] {
  const heavy = loads.filter(({ hinge }) => {
    const stock = folded.card.pieces.find(({ name }) => name === hinge.piece)?.stock ?? '';
    return !materialOf(stock, folded.materials).grammage?.lt(CREASED_FROM_GSM);
  });
  const wrong = [
    ...loads.flatMap((load) => tucked(load, folded)),
    ...loads.flatMap((load) => crept(load, loads, folded)),
    ...heavy.filter(({ inside }) => inside.moreThan(ONE_SCORE)).map((load) => needsSpine(load, folded)),
  ];
  if (wrong.length > 0) return wrong;
  const fullest = loads.toSorted((a, b) => b.inside.compare(a.inside))[0];
  if (fullest === undefined) return [];
  const facts = { ...inFold(fullest), creases: loads.length };
  const shown = { at: creaseAt(fullest, folded), figure: fullest.takes.most, witness: facts.crease };
  return [finding('thickness-in-fold', 'clear', { facts, ...shown })];
}

function nameOf({ hinge }: CreaseLoad): string {
  return `${hinge.piece}.${hinge.crease}`;
}

function inFold(load: CreaseLoad) {
  return { crease: nameOf(load), inside: load.inside, least: load.takes.least, most: load.takes.most };
}

function creaseAt({ hinge }: CreaseLoad, { card }: FoldedCard): Pick<Finding, 'place' | 'path'> {
  const piece = card.pieces.find(({ name }) => name === hinge.piece);
  const lines = [...(piece?.creases ?? []), ...(piece?.lines ?? [])];
  return lines.find(({ name }) => name === hinge.crease) ?? piece ?? { place: card.place, path: '' };
}

/** The turn takes half of its paper from each panel: so far from the crease has an inner panel to end. */
function tucked(load: CreaseLoad, folded: FoldedCard): Finding[] {
  const need = load.takes.most.dividedBy(2);
  return load.between.flatMap(({ panel, gap }) => {
    if (gap === undefined || !measured(gap).lessThan(need)) return [];
    const by = need.minus(measured(gap));
    const facts = { ...inFold(load), panel, gap: measured(gap), by };
    const shown = { at: creaseAt(load, folded), figure: measured(gap), limit: need, witness: panel };
    return [finding('thickness-in-fold', by.moreThan(PAPER_GIVES) ? 'too-long' : 'short', { facts, ...shown })];
  });
}

/** Half of what the outer turn takes more than the inner one: so far the inner sheet comes out at its other edge. */
function crept(load: CreaseLoad, all: readonly CreaseLoad[], folded: FoldedCard): Finding[] {
  return load.between.flatMap(({ panel, nested }: InnerPanel) => {
    const inner = nested && all.find(({ hinge }) => isSame(hinge, nested.hinge));
    if (nested === undefined || inner === undefined || isHeld(panel, inner, load, folded)) return [];
    const least = load.takes.least.minus(inner.takes.least).dividedBy(2);
    const most = load.takes.most.minus(inner.takes.most).dividedBy(2);
    const room = measured(nested.outer - nested.reach);
    const out = most.minus(room);
    if (!out.isPositive || !most.isPositive) return [];
    const facts = { crease: nameOf(load), panel, out, least, most };
    const at = creaseAt(load, folded);
    return [finding('thickness-in-fold', 'creeps', { facts, at, figure: out, limit: Length.zero, witness: panel })];
  });
}

function isSame(one: CreaseLoad['hinge'], other: CreaseLoad['hinge']): boolean {
  return one.piece === other.piece && one.crease === other.crease;
}

/** What is glued to the outer sheet does not creep; nor does a sheet glued on both sides of its crease. */
function isHeld(panel: string, inner: CreaseLoad, outer: CreaseLoad, { assembly }: FoldedCard): boolean {
  const glued = (a: string, b: string): boolean =>
    assembly.joints.some(({ is, ...one }) => is === 'glue' && [one.a, one.b].includes(a) && [one.a, one.b].includes(b));
  const holds = outer.panels.filter((one) => inner.panels.some((own) => glued(one, own)));
  return holds.length === outer.panels.length || outer.panels.some((one) => glued(one, panel));
}

function needsSpine(load: CreaseLoad, folded: FoldedCard): Finding {
  const facts = inFold(load);
  const shown = { at: creaseAt(load, folded), figure: load.inside, limit: ONE_SCORE, witness: facts.crease };
  return finding('thickness-in-fold', 'needs-spine', { facts, ...shown });
}
