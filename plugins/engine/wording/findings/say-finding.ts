import type { CheckName, Finding } from '../../dryfit/index.ts';
import type { System } from '../../units/index.ts';
import { closedSize } from './closed-size.ts';
import { closesFlat } from './closes-flat.ts';
import { creaseChannel } from './crease-channel.ts';
import { declaredEqualities } from './declared-equalities.ts';
import { fitsEnvelope } from './fits-envelope.ts';
import { fitsSheet } from './fits-sheet.ts';
import { grain } from './grain.ts';
import { joinsAgree } from './joins-agree.ts';
import { joinsFound } from './joins-found.ts';
import { lidGoesOver } from './lid-goes-over.ts';
import { linesOnPaper } from './lines-on-paper.ts';
import { looksLikeHalf } from './looks-like-half.ts';
import { movingLayers } from './moving-layers.ts';
import { recipeAgrees } from './recipe-agrees.ts';
import { requirements } from './requirements.ts';
import { scoresInside } from './scores-inside.ts';
import { EditionWords, type Sentence, type Sentences } from './sentence.ts';
import { shaker } from './shaker.ts';
import { sumOfPanels } from './sum-of-panels.ts';
import { thickness } from './thickness.ts';
import { thicknessInFold } from './thickness-in-fold.ts';
import { weight } from './weight.ts';

/** What each check is called above its findings. */
export const CHECK_LABELS: { readonly [C in CheckName]: string } = {
  'fits-sheet': 'Sheet',
  'scores-inside': 'Scores',
  'sum-of-panels': 'Sum of the panels',
  'declared-equalities': 'Equal measures',
  requirements: 'What the fold asks for',
  'recipe-agrees': 'Recipe',
  'looks-like-half': 'Half fold',
  'lines-on-paper': 'Lines',
  'joins-found': 'Joins',
  'joins-agree': 'Joins meet',
  'closes-flat': 'Folds flat',
  'lid-goes-over': 'Lid',
  'closed-size': 'Closed size',
  grain: 'Grain',
  'crease-channel': 'Creasing',
  'thickness-in-fold': 'Thickness in the fold',
  'moving-layers': 'Moving parts',
  shaker: 'Shaker',
  thickness: 'Thickness',
  weight: 'Weight',
  'fits-envelope': 'Envelope',
};

const SENTENCES: { readonly [C in CheckName]: Sentences<C> } = {
  'fits-sheet': fitsSheet,
  'scores-inside': scoresInside,
  'sum-of-panels': sumOfPanels,
  'declared-equalities': declaredEqualities,
  requirements,
  'recipe-agrees': recipeAgrees,
  'looks-like-half': looksLikeHalf,
  'lines-on-paper': linesOnPaper,
  'joins-found': joinsFound,
  'joins-agree': joinsAgree,
  'closes-flat': closesFlat,
  'lid-goes-over': lidGoesOver,
  'closed-size': closedSize,
  grain,
  'crease-channel': creaseChannel,
  'thickness-in-fold': thicknessInFold,
  'moving-layers': movingLayers,
  shaker,
  thickness,
  weight,
  'fits-envelope': fitsEnvelope,
};

/**
 * A finding in plain sentences, with its figures in an edition's units, as `5 1/2 in`. Names stand between backticks,
 * as the maker wrote them. `remedy` says what to do, when there is something to do.
 *
 * Throws RangeError for a finding that no check makes.
 */
export function sayFinding(
  finding: Finding,
  system: System,
): { says: string; remedy: string | undefined; label: string } {
  const sentences: Readonly<Record<string, Readonly<Record<string, unknown>>>> = SENTENCES;
  const sentence = sentences[finding.check]?.[finding.outcome];
  if (sentence === undefined) throw new RangeError(`no sentence for ${finding.check} ${finding.outcome}`);
  const { says, remedy } = (sentence as Sentence<Finding['facts']>)(finding.facts, new EditionWords(system));
  return { says, remedy, label: CHECK_LABELS[finding.check as CheckName] };
}
