import {
  type Card,
  dryFit,
  type Finding,
  type FoldedCard,
  foldCard,
  Length,
  sayFinding,
} from '../../../plugins/engine/index.ts';

/** A card folded as it is posted, with no sheet and no envelope named, and what the dry fit says. */
export interface Judged {
  readonly folded: FoldedCard;
  readonly findings: readonly Finding[];
}

export function judge(card: Card): Judged {
  const folded = foldCard(card, {
    envelope: undefined,
    clearance: Length.fromInches('1/8'),
    sheets: {},
    promised: undefined,
  });
  return { folded, findings: dryFit(folded) };
}

/** What fails or is asked about. */
export function loud(findings: readonly Finding[]): Finding[] {
  return findings.filter(({ state }) => state === 'fail' || state === 'question');
}

/** Questions about lines, joins and sizes; not about paper, its thickness and its grain. */
const OF_SHAPE = [
  'fits-sheet',
  'scores-inside',
  'lines-on-paper',
  'recipe-agrees',
  'looks-like-half',
  'joins-agree',
  'lid-goes-over',
  'closed-size',
];

/** All that fails, and what is asked about the shape. */
export function wrongInShape(findings: readonly Finding[]): Finding[] {
  return loud(findings).filter(({ state, check }) => state === 'fail' || OF_SHAPE.includes(check));
}

/** As `fail closes-flat through: ...`, in the words that a maker reads. */
export function said(finding: Finding, card: Card): string {
  const { says, remedy } = sayFinding(finding, card.system);
  return `${finding.state} ${finding.check} ${finding.outcome}: ${says}${remedy === undefined ? '' : ` ${remedy}`}`;
}

/**
 * Why a card has not come the whole way, body by body: no panels, angles left open, joins apart, no order of plies, or none found.
 * Nothing when it has.
 */
export function stopsShort({ closed, assembly }: FoldedCard): string[] {
  const { panels, joins } = assembly.slips;
  if (closed.length === 0) return ['nothing is folded'];
  return [
    ...panels.map(({ is, name }) => `${name} ${is}`),
    ...joins.map(({ is, join }) => `${join.text} ${is}`),
    ...closed.flatMap(({ piece, pose, plies }) => {
      if (pose === undefined) return [`${piece.name} has no known pose`];
      if (pose.gaps.length > 0) return [`${piece.name} has gaps`];
      if (plies === undefined) return [`${piece.name} was not put in order`];
      if (plies.orders.length === 0)
        return [`${piece.name} has no order of plies: ${plies.obstruction?.is ?? 'too much work'}`];
      return [];
    }),
  ];
}
