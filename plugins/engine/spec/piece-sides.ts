import { Length } from '../units/index.ts';
import { creaseName } from './crease-name.ts';
import type { Ledger, Worked } from './ledger.ts';
import { reachOfPath } from './piece-outline.ts';
import type { Measured } from './piece-scope.ts';
import type { Report } from './report.ts';
import { type Both, workedOf } from './sizes.ts';
import type { Band, BandSpec, Crease, PieceSpec, StripSpec } from './types.ts';

/** A side of a piece worked out, before a side that is one measure has been put on marks. */
export interface Side {
  readonly spec: StripSpec;
  readonly bands: readonly Worked[];
  /** Printed sizes of a strip; undefined for one measure, which follows the strips. */
  readonly sizes: readonly Length[] | undefined;
}

/** A piece whose sides have been worked out. */
export interface Draft {
  readonly spec: PieceSpec;
  readonly columns: Side;
  readonly rows: Side;
  readonly declared: { readonly width: Worked; readonly height: Worked } | undefined;
}

export function draftOf(spec: PieceSpec, scopes: Both, ledger: Ledger, report: Report): Draft | undefined {
  if (spec.form?.is === 'outline') {
    const reach = reachOfPath(spec.form.path, scopes, report);
    return (
      reach && { spec, columns: plainSide(reach.width, spec), rows: plainSide(reach.height, spec), declared: undefined }
    );
  }
  const width = spec.size && workedOf(spec.size.width, scopes, report);
  const height = spec.size && workedOf(spec.size.height, scopes, report);
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
  if (strip === undefined) return whole && plainSide(whole, piece);
  const stated = strip.bands.map((band) => band.size && workedOf(band.size, scopes, report));
  const rest = whole && restOf(whole, stated);
  const bands = strip.bands.flatMap((band, index) => (band.size ? (stated[index] ?? []) : (rest ?? [])));
  if (bands.length < strip.bands.length) return undefined;
  return { spec: strip, bands, sizes: bands.length > 1 ? ledger.enterStrip(bands) : undefined };
}

/** A side that is one measure: one band without a name. */
function plainSide(whole: Worked, piece: PieceSpec): Side {
  const place = piece.size?.place ?? piece.place;
  const band: BandSpec = { name: undefined, size: undefined, place, path: piece.path };
  return { spec: { bands: [band], creases: [], place }, bands: [whole], sizes: undefined };
}

function restOf(whole: Worked, stated: readonly (Worked | undefined)[]): Worked {
  const known = stated.filter((band) => band !== undefined);
  return {
    written: whole.written.minus(Length.sum(known.map(({ written }) => written))),
    edition: whole.edition.minus(Length.sum(known.map(({ edition }) => edition))),
  };
}

/** The bands of a side with their printed sizes. */
export function bandsOf({ spec, bands }: Side, sizes: readonly Length[]): Band[] {
  let end = Length.zero;
  return spec.bands.map(({ name, place, path }, index) => {
    const [start, size] = [end, sizes[index] ?? Length.zero];
    end = end.plus(size);
    return { name, start, size, exact: bands[index]?.written ?? size, place, path };
  });
}

/** The creases between the bands of a side. */
export function creasesOf({ spec }: Side, sizes: readonly Length[], runs: Crease['runs']): Crease[] {
  let at = Length.zero;
  return spec.creases.map((crease, index) => {
    at = at.plus(sizes[index] ?? Length.zero);
    const { fold, place, path } = crease;
    return { name: creaseName(spec, crease, index), runs, at, fold, place, path };
  });
}

/** A piece as far as it can be measured while the others are being made. */
export function measured({ spec, columns, rows }: Draft, read: (band: Worked) => Length): Measured {
  const bands = ({ spec: strip, bands: all }: Side): Measured['columns'] =>
    all.map((band, index) => ({ name: strip.bands[index]?.name, size: read(band) }));
  return { name: spec.name, columns: bands(columns), rows: bands(rows) };
}
