import type { Problem } from '../diagnostics/index.ts';
import { Length } from '../units/index.ts';
import { checkEqualities, checkRequirements } from './card-conditions.ts';
import { lessonOf } from './card-lesson.ts';
import { type Settled, settleParameters } from './card-parameters.ts';
import { type MadePieces, makePieces } from './card-pieces.ts';
import { resolvePoses } from './card-poses.ts';
import { Report } from './report.ts';
import type { Card, CardParameter, CardRequest, Fold } from './types.ts';

/**
 * A fold with its sizes, in one edition.
 *
 * The fold's rule is applied again, not converted: its length parameters and written lengths go on the edition's marks
 * first, then values and bands are worked out exactly, and the bands are put on marks together. Problems are what the post
 * gives that cannot be taken; with an error among them there is no card. Throws RangeError unless `mark` is positive.
 */
export function makeCard(fold: Fold, request: CardRequest): { card: Card | undefined; problems: Problem[] } {
  const report = new Report();
  const { system, mark } = request;
  const settled = settleParameters(fold, request, report);
  const silent = report.failed ? new Report() : report;
  const made = makePieces(fold.pieces, settled, mark, silent);
  const requirements = checkRequirements(fold.require, made.printed, silent);
  const equalities = checkEqualities(fold.same, made, silent);
  const given = (request.parameters?.entries.length ?? 0) + (request.own?.entries.length ?? 0) > 0;
  const steps = request.recipe.length > 0 || given ? request.recipe : fold.recipe;
  const lesson = lessonOf(steps, system, made.written, silent);
  if (report.failed) return { card: undefined, problems: report.problems };
  const { name, place } = fold;
  const poses = resolvePoses(fold);
  const parameters = settled.parameters.map((parameter) => asPrinted(parameter, settled, made));
  const { pieces } = made;
  const card = { name, system, mark, parameters, pieces, poses, requirements, equalities, lesson, place };
  return { card, problems: report.problems };
}

/** A parameter is shown as the paper that has its length is cut: a strip may have moved that by a mark. */
function asPrinted(parameter: CardParameter, settled: Settled, { ledger }: MadePieces): CardParameter {
  const written = settled.written.get(parameter.name);
  const { value } = parameter;
  return written instanceof Length && value instanceof Length
    ? { ...parameter, value: ledger.look({ written, edition: value }) }
    : parameter;
}
