import { CREASED_FROM_GSM, materialOf } from '../../layers/index.ts';
import type { Piece } from '../../spec/index.ts';
import { Length } from '../../units/index.ts';
import { finding } from '../finding.ts';
import { isFolding } from '../fold-card.ts';
import type { Finding, FoldedCard } from '../types.ts';

/** How wide the channel is beside the rule that presses it, in calipers: with the grain, and across it (mill guides). */
const ALONG_GRAIN = '1.3';
const ACROSS_GRAIN = '1.5';

/** The rule of a scoring tool: 2 points of a printer, about 0.7 mm (common practice, no source). */
const RULE = Length.fromMm('0.7');

/** For each creased stock whether it is creased in a channel and how wide; and panels too narrow to lie between two of them. */
export function creaseChannel({ card, materials }: FoldedCard): Finding[] {
  const creased = card.pieces.filter(isFolding);
  const stocks = [...new Set(creased.map(({ stock }) => stock))];
  return stocks.flatMap((stock): Finding[] => {
    const pieces = creased.filter((piece) => piece.stock === stock);
    const [at] = pieces;
    const { caliper, grammage } = materialOf(stock, materials);
    const creases = pieces.reduce((sum, piece) => sum + creasesOn(piece), 0);
    if (at === undefined) return [];
    if (caliper === undefined || grammage === undefined) {
      return [finding('crease-channel', 'unknown', { facts: { stock, creases }, at, witness: stock })];
    }
    const grams = Math.round(grammage.valueOf());
    if (grammage.lt(CREASED_FROM_GSM)) {
      const shown = { at, figure: grams, limit: CREASED_FROM_GSM, witness: stock };
      return [finding('crease-channel', 'no-channel', { facts: { stock, grams, creases }, ...shown })];
    }
    const [along, across] = [caliper.length.times(ALONG_GRAIN), caliper.length.times(ACROSS_GRAIN)];
    const close = pieces.flatMap((piece) => tooClose(piece, across.plus(RULE)));
    const facts = { stock, grams, creases, along, across };
    return [...close, finding('crease-channel', 'channel', { facts, at, figure: across, witness: stock })];
  });
}

function creasesOn({ creases, lines }: Piece): number {
  return creases.length + lines.filter(({ does }) => does === 'crease').length;
}

/** Bands between two creases that are narrower than one channel. */
function tooClose(piece: Piece, least: Length): Finding[] {
  const inner = [piece.columns, piece.rows].flatMap((bands) => bands.slice(1, -1));
  return inner
    .filter(({ size }) => size.isPositive && size.lessThan(least))
    .map((band) => {
      const panel = band.name ?? piece.name;
      const facts = { piece: piece.name, panel, size: band.size, least };
      return finding('crease-channel', 'too-close', {
        facts,
        at: band,
        figure: band.size,
        limit: least,
        witness: panel,
      });
    });
}
