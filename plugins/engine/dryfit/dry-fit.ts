import { closedSize } from './checks/closed-size.ts';
import { closesFlat } from './checks/closes-flat.ts';
import { creaseChannel } from './checks/crease-channel.ts';
import { declaredEqualities } from './checks/declared-equalities.ts';
import { fitsEnvelope } from './checks/fits-envelope.ts';
import { fitsSheet } from './checks/fits-sheet.ts';
import { grain } from './checks/grain.ts';
import { joinsAgree } from './checks/joins-agree.ts';
import { joinsFound } from './checks/joins-found.ts';
import { lidGoesOver } from './checks/lid-goes-over.ts';
import { linesOnPaper } from './checks/lines-on-paper.ts';
import { looksLikeHalf } from './checks/looks-like-half.ts';
import { movingLayers } from './checks/moving-layers.ts';
import { recipeAgrees } from './checks/recipe-agrees.ts';
import { requirements } from './checks/requirements.ts';
import { scoresInside } from './checks/scores-inside.ts';
import { shaker } from './checks/shaker.ts';
import { sumOfPanels } from './checks/sum-of-panels.ts';
import { thickness } from './checks/thickness.ts';
import { thicknessInFold } from './checks/thickness-in-fold.ts';
import { weight } from './checks/weight.ts';
import type { Finding, FoldedCard } from './types.ts';

/** In the order in which a maker meets the questions: the paper, the scores, the joins, the folding, the envelope. */
const CHECKS: readonly ((folded: FoldedCard) => Finding[])[] = [
  fitsSheet,
  scoresInside,
  linesOnPaper,
  sumOfPanels,
  declaredEqualities,
  requirements,
  recipeAgrees,
  looksLikeHalf,
  joinsFound,
  joinsAgree,
  closesFlat,
  lidGoesOver,
  closedSize,
  grain,
  creaseChannel,
  thicknessInFold,
  movingLayers,
  shaker,
  thickness,
  weight,
  fitsEnvelope,
];

/** Every finding of every check, in the order of the checks. */
export function dryFit(folded: FoldedCard): Finding[] {
  return CHECKS.flatMap((check) => check(folded));
}
