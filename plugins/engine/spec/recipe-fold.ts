import type { Place } from '../diagnostics/index.ts';
import type { Length } from '../units/index.ts';
import { NO_PARTS } from './assembly-specs.ts';
import { evaluateLength, type Scope } from './evaluate.ts';
import { difference, type Expression } from './expression.ts';
import { PLAIN, USUAL_STOCK } from './read-pieces.ts';
import { Report } from './report.ts';
import type { BandSpec, CreaseSpec, Fold, PieceSpec, RecipeStepSpec, StripSpec } from './types.ts';

/** What the one sheet of a recipe is called when the recipe gives it no name. */
const USUAL_PIECE = 'base';

/** A recipe standing alone, as a fold: its sheets as pieces, `panel-1`, `panel-2` between `score-1` and so on. */
export function recipeFold(name: string, steps: readonly RecipeStepSpec[], place: Place): Fold {
  return {
    name,
    family: undefined,
    units: steps[0]?.cut.width.units,
    parameters: [],
    values: [],
    require: [],
    same: [],
    pieces: recipePieces(steps),
    parts: NO_PARTS,
    repeats: undefined,
    recipe: steps,
    place,
  };
}

/** The sheets of a recipe. Steps that name one piece are scorings of one sheet; a step without a name is a sheet itself. */
export function recipePieces(steps: readonly RecipeStepSpec[]): PieceSpec[] {
  const sheets = new Map<string, RecipeStepSpec[]>();
  steps.forEach((step, index) => {
    const name = step.piece ?? (index === 0 ? USUAL_PIECE : `piece-${index + 1}`);
    sheets.set(name, [...(sheets.get(name) ?? []), step]);
  });
  return [...sheets].flatMap(([name, own]) => pieceOf(name, own) ?? []);
}

function pieceOf(name: string, steps: readonly RecipeStepSpec[]): PieceSpec | undefined {
  const first = steps[0];
  if (first === undefined) return undefined;
  const { width, height } = first.cut;
  const scoresAlong = (side: 'across' | 'down'): Score[] =>
    steps
      .filter((step) => sideOfSpec(step) === side)
      .flatMap(({ scores, path }) => scores.map((score) => ({ ...score, path })));
  const columns = inOrder(scoresAlong('across'));
  const across = stripOf(width, columns, 1, first);
  const down = stripOf(height, inOrder(scoresAlong('down')), columns.length + 1, first);
  const { place, path } = first;
  return { ...PLAIN, name, size: undefined, across, down, stock: USUAL_STOCK, place, path };
}

type Score = RecipeStepSpec['scores'][number] & { readonly path: string };

function stripOf(
  whole: Expression,
  scores: readonly Score[],
  firstNumber: number,
  { place, path }: RecipeStepSpec,
): StripSpec {
  const bands = [...scores, undefined].map((score, index): BandSpec => {
    const before = scores[index - 1];
    const end = score?.at ?? whole;
    const size = before ? difference(end, before.at) : end;
    const name = scores.length === 0 ? undefined : `panel-${index + 1}`;
    return { name, size, place: score?.place ?? place, path: score?.path ?? path };
  });
  const creases = scores.map((score, index): CreaseSpec => {
    const { fold, place: here, path: within } = score;
    return { name: `score-${firstNumber + index}`, fold, place: here, path: within };
  });
  return { bands, creases, place };
}

/** Scores from the top or left end, whatever order they were said in. */
function inOrder(scores: readonly Score[]): Score[] {
  const sized = scores.map((score) => ({ score, at: lengthOfPlain(score.at) }));
  return sized.sort((a, b) => (a.at && b.at ? a.at.compare(b.at) : 0)).map(({ score }) => score);
}

/** The side that a step's scores are measured along, when its sizes are written out; `sideOf` has the rule. */
function sideOfSpec(step: RecipeStepSpec): 'across' | 'down' {
  const [width, height] = [lengthOfPlain(step.cut.width), lengthOfPlain(step.cut.height)];
  const along = step.along && lengthOfPlain(step.along.length);
  return width && height ? sideOf(width, height, along, step.side) : 'across';
}

/**
 * The side that scores are measured along: the one named, by a word or by its length; else the long side, and across
 * when the sheet is square. A length that is neither side counts as not named.
 */
export function sideOf(
  width: Length,
  height: Length,
  along: Length | undefined,
  side: RecipeStepSpec['side'],
): 'across' | 'down' {
  if (side === 'across' || side === 'down') return side;
  if (along?.equals(width)) return 'across';
  if (along?.equals(height)) return 'down';
  const long = width.compare(height) >= 0 ? 'across' : 'down';
  if (side === 'short') return long === 'across' ? 'down' : 'across';
  return long;
}

const NO_NAMES: Scope = { amount: () => undefined, measure: () => undefined, settle: (length) => length };

function lengthOfPlain(expression: Expression): Length | undefined {
  return evaluateLength(expression, NO_NAMES, new Report());
}
