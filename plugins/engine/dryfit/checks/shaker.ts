import { type Chamber, type Closing, isCompressible, materialOf } from '../../layers/index.ts';
import { Length } from '../../units/index.ts';
import { finding } from '../finding.ts';
import { measured } from '../lengths.ts';
import type { Finding, FoldedCard } from '../types.ts';
import { shakerOrder } from './shaker-order.ts';

/** What a bead wants beside its own size, so that it runs and does not rub on the film: 1/32 in (common practice, no source). */
const CLEARANCE = { inch: Length.fromInches('1/32'), metric: Length.fromMm('0.8') } as const;

/** The narrowest wall of foam that holds: 1/8 in (common practice, no source). */
const LEAST_WALL = { inch: Length.fromInches('1/8'), metric: Length.fromMm(3) } as const;

/** The least that film and floor reach past a window to be stuck all round: 1/8 in (common practice, no source). */
const LEAST_MARGIN = { inch: Length.fromInches('1/8'), metric: Length.fromMm(3) } as const;

/** Less is the rounding of what was measured. */
const HAIR = Length.fromMm('0.001');

/** Whether the filling of each chamber moves, whether it stays in, and whether it is filled in an order that can be done. */
export function shaker(folded: FoldedCard): Finding[] {
  return folded.card.fillings.flatMap((filling) => {
    const chamber = folded.work.chambers.find((one) => one.filling === filling);
    if (chamber === undefined) {
      const facts = { filling: filling.name, piece: filling.piece, window: filling.window };
      return [finding('shaker', 'no-chamber', { facts, at: filling, witness: filling.window })];
    }
    const open = openings(chamber);
    return [
      ...moving(chamber, folded),
      ...open,
      ...(open.length > 0 ? [] : walls(chamber, folded)),
      ...shakerOrder(chamber, folded),
    ];
  });
}

/** A bead runs when the depth is more than its size and the clearance. */
function moving(chamber: Chamber, { card, materials }: FoldedCard): Finding[] {
  const { filling, depth } = chamber;
  const { bead } = materialOf(filling.stock, materials);
  const at = filling;
  if (bead === undefined) {
    const facts = { filling: filling.name, stock: filling.stock, depth };
    return [finding('shaker', 'bead-unknown', { facts, at, witness: filling.stock })];
  }
  const least = CLEARANCE[card.system];
  const free = depth.minus(bead);
  const facts = { filling: filling.name, depth, bead };
  const shown = { at, figure: depth, limit: bead.plus(least), witness: filling.stock };
  if (!free.lessThan(least)) return [finding('shaker', 'moves', { facts: { ...facts, free }, ...shown })];
  const { layer, now } = layersNow(chamber, materials);
  const layers = layer.isPositive ? Math.ceil(bead.plus(least).per(layer).valueOf() - 1e-9) : 0;
  const cure = { ...facts, least, layer, now, layers };
  return [
    free.isPositive
      ? finding('shaker', 'tight', { facts: { ...cure, free }, ...shown })
      : finding('shaker', 'jams', { facts: cure, ...shown }),
  ];
}

/** How high one layer of the chamber's foam is, and how many there are now. */
function layersNow({ layers, depth }: Chamber, materials: FoldedCard['materials']): { layer: Length; now: number } {
  const foam = layers.filter(({ is, material }) => is === 'foam' || isCompressible(material));
  const stated = foam.flatMap(({ role }) => materialOf(role, materials).height ?? [])[0];
  const high = foam.length > 0 ? Length.sum(foam.flatMap((one) => one.high ?? [])) : depth;
  const layer = stated ?? high.dividedBy(Math.max(1, foam.length));
  return { layer, now: layer.isPositive ? Math.max(1, Math.round(high.per(layer).valueOf())) : 0 };
}

function openings({ filling, floor, roof }: Chamber): Finding[] {
  const side = (closing: Closing, name: 'back' | 'face'): Finding[] => {
    if (closing.is === 'closed') return [];
    const at = closing.is === 'open' ? filling : closing.joint.join;
    if (closing.is === 'partly') {
      const facts = { filling: filling.name, panel: closing.panel };
      return [finding('shaker', 'open-in-part', { facts, at, witness: closing.panel })];
    }
    const facts = { filling: filling.name, piece: filling.piece, side: name };
    return [finding('shaker', 'open', { facts, at, witness: filling.piece })];
  };
  return [...side(floor, 'back'), ...side(roof, 'face')];
}

/** Whether walls, floor and film are wide enough to stick. */
function walls({ filling, floor, roof, walls: all }: Chamber, { card }: FoldedCard): Finding[] {
  const [leastWall, leastMargin] = [LEAST_WALL[card.system], LEAST_MARGIN[card.system]];
  const isLess = (mm: number, least: Length): boolean => measured(mm).plus(HAIR).lessThan(least);
  const narrow = all
    .filter(({ wall }) => isLess(wall, leastWall))
    .map(({ panel, wall }) => {
      const facts = { filling: filling.name, panel, wall: measured(wall), least: leastWall };
      const shown = { at: filling, figure: facts.wall, limit: leastWall, witness: panel };
      return finding('shaker', 'narrow-wall', { facts, ...shown });
    });
  const closings = [floor, roof].flatMap((closing) => (closing.is === 'closed' ? [closing] : []));
  const margins = closings.flatMap(({ panel, joint, margin, frames }): Finding[] => {
    const past = frames
      .filter((frame) => frame.margin < 0)
      .map((frame) => {
        const facts = { filling: filling.name, panel: frame.panel, film: panel, by: measured(-frame.margin) };
        return finding('shaker', 'frame-past-film', { facts, at: joint.join, figure: facts.by, witness: frame.panel });
      });
    const least = Math.min(margin, ...frames.map((frame) => frame.margin));
    if (past.length > 0 || !isLess(least, leastMargin)) return past;
    const facts = { filling: filling.name, panel, margin: measured(least), least: leastMargin };
    const shown = { at: joint.join, figure: facts.margin, limit: leastMargin, witness: panel };
    return [finding('shaker', 'narrow-margin', { facts, ...shown })];
  });
  const wrong = [...narrow, ...margins];
  if (wrong.length > 0) return wrong;
  const [wall, margin] = [Math.min(...all.map((one) => one.wall)), Math.min(...closings.map((one) => one.margin))];
  const [under, over] = closings.map(({ panel }) => panel);
  const facts = {
    filling: filling.name,
    floor: under ?? '',
    roof: over ?? '',
    wall: measured(wall),
    margin: measured(margin),
  };
  return [
    finding('shaker', 'closed', { facts, at: filling, figure: facts.margin, limit: leastMargin, witness: over ?? '' }),
  ];
}
