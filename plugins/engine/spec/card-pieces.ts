import { Length } from '../units/index.ts';
import { onMarks, type Settled } from './card-parameters.ts';
import { evaluateLength, type Scope } from './evaluate.ts';
import type { Expression } from './expression.ts';
import { Ledger, type Worked } from './ledger.ts';
import { type Measured, scopeOf } from './piece-scope.ts';
import type { Report } from './report.ts';
import type { Band, BandSpec, Crease, CreaseSpec, Piece, PieceSpec, StripSpec } from './types.ts';

/** A side of a piece worked out, before a side that is one measure has been put on marks. */
interface Side {
  readonly spec: StripSpec;
  readonly bands: readonly Worked[];
  /** Printed sizes of a strip; undefined for one measure, which follows the strips. */
  readonly sizes: readonly Length[] | undefined;
}

interface Draft {
  readonly spec: PieceSpec;
  readonly columns: Side;
  readonly rows: Side;
  readonly declared: { readonly width: Worked; readonly height: Worked } | undefined;
}

export interface MadePieces {
  readonly pieces: readonly Piece[];
  /** Names and measures as they were written. */
  readonly written: Scope;
  /** Names on the edition's marks, and measures as printed. */
  readonly printed: Scope;
  readonly ledger: Ledger;
}

/** The pieces of a card: worked out as written and for the edition, then put on marks together. */
export function makePieces(specs: readonly PieceSpec[], settled: Settled, mark: Length, report: Report): MadePieces {
  const ledger = new Ledger(mark);
  const drafts: Draft[] = [];
  const settle = (length: Length): Length => onMarks(length, mark);
  const written = scopeOf(
    () => drafts.map((draft) => measured(draft, (band) => band.written)),
    settled.written,
    (length) => length,
  );
  const edition = scopeOf(
    () => drafts.map((draft) => measured(draft, (band) => ledger.look(band))),
    settled.printed,
    settle,
  );
  const both: Both = { written, edition };
  for (const spec of specs) {
    const draft = draftOf(spec, both, ledger, report);
    if (draft) drafts.push(draft);
  }
  const pieces = drafts.map((draft) => pieceOf(draft, ledger));
  return { pieces, written, printed: scopeOf(() => pieces, settled.printed, settle), ledger };
}

interface Both {
  readonly written: Scope;
  readonly edition: Scope;
}

function work(expression: Expression, scopes: Both, report: Report): Worked | undefined {
  const written = evaluateLength(expression, scopes.written, report);
  const edition = written && evaluateLength(expression, scopes.edition, report);
  return written && edition && { written, edition };
}

function draftOf(spec: PieceSpec, scopes: Both, ledger: Ledger, report: Report): Draft | undefined {
  const width = spec.size && work(spec.size.width, scopes, report);
  const height = spec.size && work(spec.size.height, scopes, report);
  const columns = sideOf(spec.across, width, spec, scopes, ledger, report);
  const rows = sideOf(spec.down, height, spec, scopes, ledger, report);
  if (columns === undefined || rows === undefined) return undefined;
  if (!hasPaper(columns, 'wide', spec, report) || !hasPaper(rows, 'high', spec, report)) return undefined;
  const declared = width && height && (spec.across || spec.down) ? { width, height } : undefined;
  return { spec, columns, rows, declared };
}

function hasPaper({ spec, bands }: Side, word: string, piece: PieceSpec, report: Report): boolean {
  const total = Length.sum(bands.map(({ written }) => written));
  if (total.isPositive) return true;
  report.at(spec.place, piece.path, {
    code: 'no-paper',
    wrote: `\`${piece.name}\`, which comes out ${total.isZero ? 'nothing' : 'less than nothing'} ${word}`,
    takes: 'a piece of paper larger than nothing',
    remedy: `Change the sizes that \`${piece.name}\` is made from.`,
  });
  return false;
}

function sideOf(
  strip: StripSpec | undefined,
  whole: Worked | undefined,
  piece: PieceSpec,
  scopes: Both,
  ledger: Ledger,
  report: Report,
): Side | undefined {
  if (strip === undefined) {
    const place = piece.size?.place ?? piece.place;
    const band: BandSpec = { name: undefined, size: undefined, place, path: piece.path };
    return whole && { spec: { bands: [band], creases: [], place }, bands: [whole], sizes: undefined };
  }
  const stated = strip.bands.map((band) => band.size && work(band.size, scopes, report));
  const rest = whole && restOf(whole, stated);
  const bands = strip.bands.flatMap((band, index) => (band.size ? (stated[index] ?? []) : (rest ?? [])));
  if (bands.length < strip.bands.length) return undefined;
  return { spec: strip, bands, sizes: bands.length > 1 ? ledger.enterStrip(bands) : undefined };
}

function restOf(whole: Worked, stated: readonly (Worked | undefined)[]): Worked {
  const known = stated.filter((band) => band !== undefined);
  return {
    written: whole.written.minus(Length.sum(known.map(({ written }) => written))),
    edition: whole.edition.minus(Length.sum(known.map(({ edition }) => edition))),
  };
}

function pieceOf({ spec, columns, rows, declared }: Draft, ledger: Ledger): Piece {
  const sizesOf = ({ sizes, bands }: Side): readonly Length[] => sizes ?? bands.map((band) => ledger.enter(band));
  const [widths, heights] = [sizesOf(columns), sizesOf(rows)];
  const { name, stock, grain, place, path } = spec;
  return {
    name,
    width: Length.sum(widths),
    height: Length.sum(heights),
    declared: declared && {
      width: ledger.look(declared.width),
      height: ledger.look(declared.height),
      place: spec.size?.place ?? place,
    },
    columns: bandsOf(columns, widths),
    rows: bandsOf(rows, heights),
    creases: [...creasesOf(columns, widths, 'down'), ...creasesOf(rows, heights, 'across')],
    stock,
    grain,
    place,
    path,
  };
}

function bandsOf({ spec, bands }: Side, sizes: readonly Length[]): Band[] {
  return spec.bands.map(({ name, place, path }, index) => {
    const size = sizes[index] ?? Length.zero;
    return { name, start: Length.sum(sizes.slice(0, index)), size, exact: bands[index]?.written ?? size, place, path };
  });
}

function creasesOf({ spec }: Side, sizes: readonly Length[], runs: Crease['runs']): Crease[] {
  return spec.creases.map((crease, index) => {
    const { fold, place, path } = crease;
    return {
      name: creaseName(spec, crease, index),
      runs,
      at: Length.sum(sizes.slice(0, index + 1)),
      fold,
      place,
      path,
    };
  });
}

/** An unnamed crease is called after the bands that it parts: `front|back`. */
export function creaseName(strip: StripSpec, crease: CreaseSpec, index: number): string {
  return crease.name ?? `${strip.bands[index]?.name ?? ''}|${strip.bands[index + 1]?.name ?? ''}`;
}

function measured({ spec, columns, rows }: Draft, read: (band: Worked) => Length): Measured {
  const bands = ({ spec: strip, bands: all }: Side): Measured['columns'] =>
    all.map((band, index) => ({ name: strip.bands[index]?.name, size: read(band) }));
  return { name: spec.name, columns: bands(columns), rows: bands(rows) };
}
