import type { RefSpec } from './assembly-specs.ts';
import type { PanelPart, PanelRef } from './card-types.ts';
import { familyOf } from './line-named.ts';
import { partNames, partOf } from './references.ts';
import { type Report, suggest } from './report.ts';
import type { Piece } from './types.ts';

/** What of a piece is meant where another card stands for it: what it offers below and at its edges, or what lies on top. */
export type Role = 'body' | 'top';

/** The pieces that the names of one fold mean. */
export interface NamedPieces {
  /** In file order. */
  readonly names: readonly string[];
  find(name: string, role: Role): Piece | undefined;
  /** A piece, or all of the kind that stands for it. */
  whole(name: string): readonly Piece[];
}

export function namedPieces(pieces: readonly Piece[]): NamedPieces {
  const whole = (name: string): readonly Piece[] => pieces.filter((piece) => piece.name === name);
  return { names: pieces.map(({ name }) => name), find: (name) => whole(name)[0], whole };
}

/** The names of two folds, of which the second sees those of the first. */
export function namedTogether(first: NamedPieces, second: NamedPieces): NamedPieces {
  return {
    names: [...first.names, ...second.names],
    find: (name, role) => second.find(name, role) ?? first.find(name, role),
    whole: (name) => (second.names.includes(name) ? second : first).whole(name),
  };
}

/** A panel that was found, with its piece. */
export interface Found {
  readonly piece: Piece;
  readonly ref: PanelRef;
}

/** The panel that a reference means; reports a name that nothing has, or that several have. */
export function findPanel(spec: RefSpec, role: Role, pieces: NamedPieces, report: Report): Found | undefined {
  const text = spec.node.text;
  const [name = '', ...parts] = text.split('.');
  const piece = pieces.find(name, role) ?? onlyMember(name, role, pieces);
  const found = (found: Piece, part: PanelPart): Found => ({
    piece: found,
    ref: { piece: found.name, part, text, place: spec.node.place, path: spec.path },
  });
  if (piece) {
    const part = partOf(piece, parts);
    if (part) return found(piece, part);
    const known = partNames(piece);
    const wrong = parts.find((candidate) => !known.includes(candidate)) ?? parts.join('.');
    const takes = `\`${name}\`, or one of its parts: ${known.join(', ')}`;
    const otherwise =
      parts.length > 2 ? `Write \`${name}.column.row\`.` : `\`${name}\` has no panel called \`${parts.join('.')}\`.`;
    const remedy = suggest(wrong, known, otherwise);
    report.at(spec.node.place, spec.path, { code: 'unknown-panel', wrote: text, takes, remedy });
    return undefined;
  }
  const bands = bandsCalled([name, ...parts], role, pieces);
  const [only] = bands;
  if (only && bands.length === 1) return found(only.piece, only.part);
  const members = pieces.names.filter((known) => familyOf(known) === name);
  const choices = bands.length > 0 ? bands.map((band) => `${band.piece.name}.${text}`) : members;
  if (choices.length > 0) {
    const listed = choices.map((choice) => `\`${choice}\``).join(' or ');
    const takes = 'one piece or panel';
    report.at(spec.node.place, spec.path, { code: 'ambiguous-panel', wrote: text, takes, remedy: `Write ${listed}.` });
    return undefined;
  }
  reportUnknown(spec, name, pieces, report);
  return undefined;
}

/** A piece by its name alone. */
export function findPiece(spec: RefSpec, role: Role, pieces: NamedPieces, report: Report): Piece | undefined {
  const name = spec.node.text;
  const piece = pieces.find(name, role) ?? onlyMember(name, role, pieces);
  if (piece === undefined) reportUnknown(spec, name, pieces, report);
  return piece;
}

function reportUnknown(spec: RefSpec, name: string, pieces: NamedPieces, report: Report): void {
  const bands = pieces.names.flatMap((known) => bandNames(pieces.find(known, 'body')));
  const takes = `a piece, or a panel of one: ${pieces.names.join(', ')}`;
  const remedy = suggest(
    name,
    [...pieces.names, ...bands],
    `Nothing here is called \`${name}\`. Write one of ${pieces.names.join(', ')}.`,
  );
  report.at(spec.node.place, spec.path, { code: 'unknown-piece', wrote: spec.node.text || 'nothing', takes, remedy });
}

function onlyMember(name: string, role: Role, pieces: NamedPieces): Piece | undefined {
  const members = pieces.names.filter((known) => known !== name && familyOf(known) === name);
  return members.length === 1 && members[0] !== undefined ? pieces.find(members[0], role) : undefined;
}

/** Bands and named panels that may be meant by a name without its piece. */
function bandsCalled(parts: readonly string[], role: Role, pieces: NamedPieces): { piece: Piece; part: PanelPart }[] {
  return pieces.names.flatMap((known) => {
    const piece = pieces.find(known, role);
    if (piece === undefined || !bandNames(piece).includes(parts[0] ?? '')) return [];
    const part = partOf(piece, parts);
    return part ? [{ piece, part }] : [];
  });
}

function bandNames(piece: Piece | undefined): string[] {
  if (piece === undefined) return [];
  const bands = [...piece.columns, ...piece.rows].flatMap(({ name }) => (name === undefined ? [] : [name]));
  return [...bands, ...[...piece.spots, ...piece.shapes].map(({ name }) => name)];
}
