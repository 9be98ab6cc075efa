import Fraction from 'fraction.js';
import type { Point } from '../geometry/index.ts';
import type { LineWord, SlotSpec } from './assembly-specs.ts';
import type { SlotJoin } from './card-types.ts';
import type { Found } from './find-references.ts';
import { commonOf, lineOf, type Making, type Pair } from './join-making.ts';
import { seen, turnBetween, turnedOver } from './laying.ts';
import { minus, times } from './plane.ts';
import type { Piece } from './types.ts';

/**
 * Two half-slits pushed into each other until their inner ends meet: the slit of each then holds the paper of the other, so the
 * one runs on where the other ends.
 */
export function makeSlot(spec: SlotSpec, pair: Pair, making: Making): SlotJoin | undefined {
  const { part, onto, partSide, ontoSide } = pair;
  const line = spec.lay?.line ?? onlyCut(part, spec, making);
  const along = spec.lay?.along ?? onlyCut(onto, spec, making);
  const a = line && halfSlit(part, line, making);
  const b = along && halfSlit(onto, along, making);
  if (line === undefined || along === undefined || a === undefined || b === undefined) return undefined;
  const over = turnedOver(partSide, ontoSide);
  const turn = turnBetween(seen(minus(a.mouth, a.inner), over), times(minus(b.mouth, b.inner), new Fraction(-1)));
  const names = { line: line.node.text, along: along.node.text };
  return { is: 'slot', ...commonOf(spec, pair), p: a.inner, q: b.inner, turn, partSide, ontoSide, ...names };
}

/** The cut that is meant when nothing is said: there must be just one. */
function onlyCut({ piece, ref }: Found, spec: SlotSpec, { report }: Making): LineWord | undefined {
  const cuts = piece.lines.filter(({ does }) => does === 'cut');
  const [only] = cuts;
  if (only && cuts.length === 1) {
    return { node: { kind: 'text', text: only.name, place: ref.place, quoted: false }, path: ref.path };
  }
  report.at(ref.place, ref.path, {
    code: 'which-slit',
    wrote: cuts.length === 0 ? `\`${piece.name}\` without a cut` : `\`${piece.name}\` with ${cuts.length} cuts`,
    takes: 'one half-slit in each piece',
    remedy:
      cuts.length === 0
        ? `Add the half-slit under \`cuts\` of \`${piece.name}\`.`
        : `Say which: \`lay: ${spec.lay?.line.node.text ?? cuts[0]?.name} along slit\`.`,
  });
  return undefined;
}

/** Its end at the edge of the piece, and its end within. */
function halfSlit(found: Found, word: LineWord, { report }: Making): { mouth: Point; inner: Point } | undefined {
  const line = lineOf(found, word, report);
  if (line === undefined) return undefined;
  const [from, to] = [atEdge(found.piece, line.from), atEdge(found.piece, line.to)];
  if (from !== to) return from ? { mouth: line.from, inner: line.to } : { mouth: line.to, inner: line.from };
  report.at(word.node.place, word.path, {
    code: 'not-a-half-slit',
    wrote: word.node.text,
    takes: 'a cut from an edge of the piece to a point within it',
    remedy: from
      ? `\`${word.node.text}\` cuts \`${found.piece.name}\` through. Let it end half way.`
      : `\`${word.node.text}\` does not reach the edge of \`${found.piece.name}\`. Let it begin there.`,
  });
  return undefined;
}

/** On the edge of the piece: on a straight stretch of its outline, or at the sides of the rectangle round it. */
function atEdge({ width, height, outline }: Piece, at: Point): boolean {
  if (at.x.lte(0) || at.y.lte(0) || at.x.gte(width.mm) || at.y.gte(height.mm)) return true;
  return outline.some(({ is, from, to }) => {
    if (is === 'arc') return false;
    const [along, off] = [minus(to, from), minus(at, from)];
    if (!along.x.mul(off.y).equals(along.y.mul(off.x))) return false;
    const share = along.x.mul(off.x).add(along.y.mul(off.y));
    return share.gte(0) && share.lte(along.x.mul(along.x).add(along.y.mul(along.y)));
  });
}
