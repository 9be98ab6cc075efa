import type { Problem } from '../diagnostics/index.ts';
import { Length } from '../units/index.ts';
import { checkNewPoses, readAdditions } from './additions.ts';
import { type CardParts, makeAssemblyParts } from './card-assembly-parts.ts';
import { checkEqualities, checkRequirements } from './card-conditions.ts';
import { lessonOf } from './card-lesson.ts';
import { checkLimits } from './card-limits.ts';
import { type Settled, settleParameters } from './card-parameters.ts';
import { type MadePieces, makePieces } from './card-pieces.ts';
import { type NamedPieces, namedPieces, namedTogether } from './find-references.ts';
import { makeLayers } from './make-layers.ts';
import { makeUsed, nameTaken } from './make-used.ts';
import { bodyFor } from './repeated-body.ts';
import { Report } from './report.ts';
import type { Card, CardParameter, CardRequest, Fold, Piece } from './types.ts';

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
  const body = bodyFor(fold, settled.written, silent);
  const used = makeUsed(fold, settled, request, silent);
  const quiet = silent.failed ? new Report() : silent;
  const made = makePieces(body.pieces, settled, mark, quiet, used.earlier);
  for (const piece of made.pieces) if (used.named.names.includes(piece.name)) nameTaken(piece.name, piece, quiet);
  const requirements = [...used.requirements, ...checkRequirements(body.require, made.printed, quiet)];
  const equalities = [...used.equalities, ...checkEqualities(body.same, made, quiet)];
  const given = (request.parameters?.entries.length ?? 0) + (request.own?.entries.length ?? 0) > 0;
  const steps = request.recipe.length > 0 || given ? request.recipe : fold.recipe;
  const lesson = lessonOf(steps, system, made.written, quiet);
  const { name, place } = fold;
  const kind: WholeCard = {
    pieces: [...used.pieces, ...made.pieces],
    named: namedTogether(used.named, namedPieces(made.pieces)),
    parts: makeAssemblyParts(body.parts, {
      all: [...used.pieces, ...made.pieces],
      pieces: namedTogether(used.named, namedPieces(made.pieces)),
      ...{ sizes: made.sizes, place, implied: made.implied, earlier: used.parts },
      report: quiet.failed ? new Report() : quiet,
    }),
  };
  const loud = quiet.failed ? new Report() : quiet;
  const { pieces, named, parts } = addTo(kind, { ...fold, ...body }, settled, made, request, loud);
  checkLimits(pieces, parts.poses, system, loud);
  const work = makeLayers(request.layers, named, parts.fillings, loud.failed ? new Report() : loud);
  if (report.failed) return { card: undefined, problems: report.problems };
  const parameters = settled.parameters.map((parameter) => asPrinted(parameter, settled, made));
  const coats = work.flatMap((step) => (step.is === 'coat' ? [step.coat] : []));
  const conditions = { requirements, equalities, lesson, place };
  const card = { name, system, mark, parameters, pieces, ...parts, coats, work, ...conditions };
  return { card, problems: report.problems };
}

interface WholeCard {
  readonly pieces: readonly Piece[];
  readonly named: NamedPieces;
  readonly parts: CardParts;
}

/** A card with what a post adds to it; as it is when nothing is added. */
function addTo(
  kind: WholeCard,
  fold: Fold,
  settled: Settled,
  before: MadePieces,
  { mark }: CardRequest,
  report: Report,
): WholeCard {
  const { additions, place } = fold;
  if (additions === undefined) return kind;
  const { pieces: specs, parts } = readAdditions(additions, fold, kind.named.names, settled.written, report);
  checkNewPoses(parts, kind.parts, report);
  const quiet = report.failed ? new Report() : report;
  const { ledger, written, printed } = before;
  const made = makePieces(specs, settled, mark, quiet, { ledger, written: written.measure, printed: printed.measure });
  const all = [...kind.pieces, ...made.pieces];
  const named = namedTogether(kind.named, namedPieces(made.pieces));
  const { sizes, implied } = made;
  const whole = { all, pieces: named, sizes, place, implied, earlier: kind.parts, report: quiet };
  return { pieces: all, named, parts: makeAssemblyParts(parts, whole) };
}

/** A parameter is shown as the paper that has its length is cut: a strip may have moved that by a mark. */
function asPrinted(parameter: CardParameter, settled: Settled, { ledger }: MadePieces): CardParameter {
  const written = settled.written.get(parameter.name);
  const { value } = parameter;
  return written instanceof Length && value instanceof Length
    ? { ...parameter, value: ledger.look({ written, edition: value }) }
    : parameter;
}
