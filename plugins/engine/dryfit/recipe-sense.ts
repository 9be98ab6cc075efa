import type { RecipeStep } from '../spec/index.ts';
import type { Length } from '../units/index.ts';
import { finding } from './finding.ts';
import type { Finding } from './types.ts';

/** The side of its sheet that a step's scores run along, and the other. */
export function sidesOfStep(step: RecipeStep): { side: Length; other: Length } {
  return step.along === 'across' ? { side: step.width, other: step.height } : { side: step.height, other: step.width };
}

/** What is wrong with a recipe step in itself, whatever it is compared with. */
export function senseOfStep(step: RecipeStep): Finding[] {
  if (!step.alongFits) {
    const facts = { side: step.alongText ?? '', width: step.width, height: step.height };
    return [finding('recipe-agrees', 'side-unknown', { facts, at: step, witness: step.alongText ?? '' })];
  }
  const { side, other } = sidesOfStep(step);
  return step.scores.flatMap((score, index) => {
    const at = { place: score.place, path: `${step.path}.score` };
    const before = step.scores[index - 1];
    const found: Finding[] = [];
    if (!score.at.lessThan(side)) {
      const facts = { at: score.at, side, other };
      found.push(finding('recipe-agrees', 'score-beyond', { facts, at, figure: score.at, limit: side }));
    }
    if (before && !score.at.moreThan(before.at)) {
      const facts = { at: score.at, before: before.at };
      found.push(finding('recipe-agrees', 'scores-descend', { facts, at, figure: score.at, limit: before.at }));
    }
    return found;
  });
}
