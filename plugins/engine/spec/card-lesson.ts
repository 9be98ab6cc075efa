import { type System, systemOf } from '../units/index.ts';
import { evaluateLength, type Scope } from './evaluate.ts';
import { sideOf } from './recipe-fold.ts';
import type { Report } from './report.ts';
import type { RecipeStep, RecipeStepSpec } from './types.ts';

/** A recipe with its sizes, as written; nothing in the system that it was not written in. */
export function lessonOf(steps: readonly RecipeStepSpec[], system: System, scope: Scope, report: Report): RecipeStep[] {
  return steps.flatMap((step) => {
    const written = systemOfStep(step);
    const sized = written === undefined || written === system ? stepOf(step, scope, report) : undefined;
    return sized ? [sized] : [];
  });
}

function systemOfStep({ cut }: RecipeStepSpec): System | undefined {
  const { root, units } = cut.height;
  const unit = (root.is === 'number' ? root.unit : undefined) ?? units;
  return unit && systemOf(unit);
}

function stepOf(step: RecipeStepSpec, scope: Scope, report: Report): RecipeStep | undefined {
  const width = evaluateLength(step.cut.width, scope, report);
  const height = evaluateLength(step.cut.height, scope, report);
  const length = step.along && evaluateLength(step.along.length, scope, report);
  const scores = step.scores.flatMap(({ at: position, fold, place }) => {
    const at = evaluateLength(position, scope, report);
    return at ? [{ at, fold, place }] : [];
  });
  if (!width || !height) return undefined;
  return {
    piece: step.piece,
    width,
    height,
    along: sideOf(width, height, length, step.side),
    alongFits: length === undefined || length.equals(width) || length.equals(height),
    alongText: step.along?.text,
    scores,
    place: step.place,
    path: step.path,
  };
}
