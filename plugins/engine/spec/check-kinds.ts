import { expressionsOfParts } from './assembly-expressions.ts';
import { sourcesOf } from './check-names.ts';
import { checkPlaces } from './check-places.ts';
import type { Expression } from './expression.ts';
import type { Slip } from './kind-advice.ts';
import { checkKind, type KnownKind, type Names, naturalKind } from './kinds.ts';
import { wantOf } from './parameter-want.ts';
import { sizesOfPiece, sizesUponPiece } from './piece-expressions.ts';
import { type Report, suggest } from './report.ts';
import type { Fold, PieceSpec, RecipeStepSpec, StripSpec } from './types.ts';
import { usedPieces } from './used-pieces.ts';

/** What a name stands for, or not known because its own text is faulty. */
export type Known = KnownKind | 'unsure';

/**
 * Checks every expression of a fold: its names, and that lengths and counts are not confused.
 *
 * `order` is the order in which parameters and values can be worked out; what is not in it needs itself.
 * `faulty` are names whose own text could not be read: nothing is said about them again.
 */
export function checkKinds(fold: Fold, order: readonly string[], faulty: ReadonlySet<string>, report: Report): void {
  const kinds = kindsOfNames(fold, order, faulty, report);
  const names = namesFor(fold, fold.pieces, kinds, faulty);
  const nameless = { ...names, measure: (): Slip => NO_PIECES_HERE };
  const lengths = (expressions: readonly (Expression | undefined)[], within: Names): void => {
    for (const expression of expressions) if (expression) checkKind(expression, 'length', within, report);
  };
  for (const parameter of fold.parameters) {
    const kind = kinds.get(parameter.name);
    const want = parameter.type === 'length' && kind === 'angle' ? 'angle' : wantOf(parameter);
    for (const limit of [parameter.from, parameter.to]) if (limit) checkKind(limit, want, nameless, report);
  }
  fold.pieces.forEach((piece, index) => {
    lengths(sizesOfPiece(piece), namesFor(fold, fold.pieces.slice(0, index), kinds, faulty, piece));
    const upon = namesFor(fold, fold.pieces.slice(0, index + 1), kinds, faulty);
    for (const { expression, want } of sizesUponPiece(piece)) checkKind(expression, want, upon, report);
    checkPlaces(piece, report);
  });
  for (const { expression, want } of expressionsOfParts(fold.parts)) checkKind(expression, want, names, report);
  for (const { left, right } of fold.require) checkBoth(left, right, names, report);
  for (const { measures } of fold.same)
    lengths(
      measures.map(({ expression }) => expression),
      names,
    );
  lengths(fold.recipe.flatMap(expressionsOfStep), names);
}

/** Works out what each parameter and value is, and checks the expressions that they are made from. */
export function kindsOfNames(
  fold: Fold,
  order: readonly string[],
  faulty: ReadonlySet<string>,
  report: Report,
): Map<string, Known> {
  const items = new Map([...fold.values, ...fold.parameters].map((item) => [item.name, item]));
  const kinds = new Map<string, Known>([...faulty, ...items.keys()].map((name) => [name, 'unsure']));
  const names = { ...namesFor(fold, [], kinds, faulty), measure: (): Slip => NO_PIECES_HERE };
  for (const name of order) {
    const item = items.get(name);
    if (item === undefined) continue;
    const free = 'value' in item || item.type === 'choice';
    const want = free ? 'any' : item.type === 'length' ? 'size' : wantOf(item);
    const found = sourcesOf(item).map((expression) => checkKind(expression, want, names, report));
    const first = found[0];
    if (first === undefined || found.includes(undefined)) continue;
    if (found.some((kind) => kind !== first)) {
      report.at(item.place, `parameters.${name}`, {
        code: 'mixed-choice',
        wrote: name,
        takes: 'words that all stand for lengths, for angles or for plain numbers',
        remedy: 'Multiply the plain numbers by a length.',
      });
    } else kinds.set(name, first);
  }
  return kinds;
}

export const NO_PIECES_HERE: Slip = {
  code: 'measure-too-early',
  takes: 'numbers, and names of parameters and values',
  remedy:
    'Pieces are made from these sizes, so they cannot be measured here. Use the size that the piece was made from.',
};

export function namesFor(
  fold: Fold,
  pieces: readonly PieceSpec[],
  kinds: ReadonlyMap<string, Known>,
  faulty: ReadonlySet<string>,
  own?: PieceSpec,
): Names {
  return {
    kindOf: (name) => kinds.get(name),
    measure: (path) => findMeasure(path, fold, [...usedPieces(fold), ...pieces], faulty, own),
    known: [...fold.parameters.map(({ name }) => name), ...fold.values.map(({ name }) => name)],
  };
}

function findMeasure(
  path: readonly string[],
  fold: Fold,
  pieces: readonly PieceSpec[],
  faulty: ReadonlySet<string>,
  own: PieceSpec | undefined,
): true | Slip {
  const [name = '', ...parts] = path;
  const wrote = path.join('.');
  const piece = pieces.find((candidate) => candidate.name === name);
  if (piece === undefined) {
    if (faulty.has(name)) return true;
    const band = own && bandsOf(own).includes(name) ? undefined : pieceOfBand(path, pieces);
    if (band !== undefined) return band;
    const later = fold.pieces.some((candidate) => candidate.name === name);
    const known = pieces.map((candidate) => candidate.name);
    const takes = known.length === 0 ? 'a size; no piece comes before this one' : `a measure of ${known.join(', ')}`;
    const remedyForOwn = ownBand(path, own);
    if (remedyForOwn !== undefined) return { code: 'measure-of-itself', takes, remedy: remedyForOwn };
    if (later) return { code: 'measure-too-early', takes, remedy: `Put \`${name}\` before this piece.` };
    return { code: 'unknown-piece', takes, remedy: suggest(name, known, `No piece is called \`${name}\`.`) };
  }
  const bands = bandsOf(piece);
  const takes =
    bands.length === 0 ? `\`${name}.width\` or \`${name}.height\`` : `${name}, or one of its bands ${bands.join(', ')}`;
  const [first, second] = parts;
  if (parts.length > 2) {
    return {
      code: 'unknown-band',
      takes,
      remedy: 'Name a piece, then a column, a row or both, then `width` or `height`.',
    };
  }
  const fits =
    second === undefined
      ? first === undefined || bands.includes(first)
      : bandNames(piece.across).includes(first ?? '') && bandNames(piece.down).includes(second);
  if (fits) return true;
  const wrong = parts.find((part) => !bands.includes(part)) ?? wrote;
  return {
    code: 'unknown-band',
    takes,
    remedy: suggest(wrong, bands, `\`${name}\` has no band called \`${wrong}\`.`),
  };
}

/** A band may go without its piece where only one piece has one of that name. Undefined when none has. */
function pieceOfBand(path: readonly string[], pieces: readonly PieceSpec[]): true | Slip | undefined {
  const [name = '', row, ...more] = path;
  const having = pieces.filter((piece) => bandsOf(piece).includes(name));
  const [only] = having;
  if (only === undefined) return undefined;
  const text = path.join('.');
  if (having.length > 1) {
    const remedy = `Write ${having.map((piece) => `\`${piece.name}.${text}\``).join(' or ')}.`;
    return { code: 'ambiguous-band', takes: 'a band, with its piece when two pieces have one of that name', remedy };
  }
  if (
    row === undefined ||
    (more.length === 0 && bandNames(only.across).includes(name) && bandNames(only.down).includes(row))
  )
    return true;
  const remedy = suggest(row, bandNames(only.down), `Write \`${only.name}.${name}\`, or a row after it.`);
  return { code: 'unknown-band', takes: `\`${name}\`, or one of its rows`, remedy };
}

/** A piece cannot be measured while it is being made, by its own name or by that of one of its bands. */
function ownBand([name = '']: readonly string[], own: PieceSpec | undefined): string | undefined {
  if (own === undefined) return undefined;
  if (name === own.name)
    return `\`${name}\` cannot be measured while it is being made. Use the size that it is made from.`;
  const bands = [...(own.across?.bands ?? []), ...(own.down?.bands ?? [])];
  const band = bands.find((candidate) => candidate.name === name);
  if (band === undefined) return undefined;
  return `\`${name}\` cannot be measured while its piece is being made. Use its size: \`${band.size?.text ?? 'rest'}\`.`;
}

function bandsOf(piece: PieceSpec): string[] {
  return [...bandNames(piece.across), ...bandNames(piece.down)];
}

function bandNames(strip: StripSpec | undefined): string[] {
  return (strip?.bands ?? []).flatMap(({ name }) => (name === undefined ? [] : [name]));
}

function expressionsOfStep(step: RecipeStepSpec): Expression[] {
  const along = step.along ? [step.along.length] : [];
  return [step.cut.width, step.cut.height, ...along, ...step.scores.map(({ at }) => at)];
}

/** A condition compares two lengths or two plain numbers; a bare number is whatever the other side is. */
function checkBoth(left: Expression, right: Expression, names: Names, report: Report): void {
  const shared = naturalKind(left, names) ?? naturalKind(right, names) ?? 'length';
  checkKind(left, shared, names, report);
  checkKind(right, shared, names, report);
}
