import {
  type CheckName,
  dryFit,
  type Finding,
  type FoldedCard,
  Length,
  sayFinding,
} from '../../../plugins/engine/index.ts';

/** What one check says of a folded card. */
export function found(check: CheckName, folded: FoldedCard): Finding[] {
  return dryFit(folded).filter((finding) => finding.check === check);
}

/** Outcomes with their witnesses, as `too-long base.foot`. */
export function outcomes(check: CheckName, folded: FoldedCard): string[] {
  return found(check, folded).map(({ outcome, witness }) =>
    witness === undefined ? outcome : `${outcome} ${witness}`,
  );
}

/** All that a check says, in the words of the card's edition. */
export function said(check: CheckName, folded: FoldedCard): string {
  return found(check, folded)
    .map((finding) => sayFinding(finding, folded.card.system))
    .flatMap(({ says, remedy }) => (remedy === undefined ? [says] : [says, remedy]))
    .join(' ');
}

/** The figure of a finding, or one of its facts, that has to be a length. */
export function lengthIn(finding: Finding | undefined, fact?: string): Length {
  const value = fact === undefined ? finding?.figure : finding?.facts[fact];
  if (value instanceof Length) return value;
  throw new Error(`no length ${fact ?? 'as its figure'} in ${finding?.outcome ?? 'no finding'}`);
}
