import type Fraction from 'fraction.js';
import type { Outline } from '../geometry/index.ts';
import { Length } from '../units/index.ts';
import { outlineWithin } from './card-outlines.ts';
import { onMarks, type Settled } from './card-parameters.ts';
import type { Join } from './card-types.ts';
import { type Upon, withAllUpon } from './card-upon.ts';
import { tabJoins } from './corner-cells.ts';
import type { Scope } from './evaluate.ts';
import { Ledger, type Worked } from './ledger.ts';
import { hasArea, rectangleOutline } from './outlines.ts';
import { drawnOutline } from './piece-outline.ts';
import { scopeOf } from './piece-scope.ts';
import { bandsOf, creasesOf, type Draft, draftOf, measured, type Side } from './piece-sides.ts';
import { ZERO } from './plane.ts';
import type { Sizes } from './point-on.ts';
import type { Report } from './report.ts';
import { type Both, sizesOf } from './sizes.ts';
import type { Piece, PieceSpec } from './types.ts';

export interface MadePieces {
  readonly pieces: readonly Piece[];
  /** Names and measures as they were written. */
  readonly written: Scope;
  /** Names on the edition's marks, and measures as printed. */
  readonly printed: Scope;
  readonly ledger: Ledger;
  /** Every length of the card as it is printed, with all pieces to be measured. */
  readonly sizes: Sizes;
  /** Glue that pieces bring with them. */
  readonly implied: readonly Join[];
}

/** Pieces that a card has before its own: those of the kinds that it uses, by the names that it has for them. */
export interface EarlierPieces {
  readonly ledger: Ledger;
  readonly written: Scope['measure'];
  readonly printed: Scope['measure'];
}

/** The pieces of a card: worked out as written and for the edition, then put on marks together. */
export function makePieces(
  specs: readonly PieceSpec[],
  settled: Settled,
  mark: Length,
  report: Report,
  earlier?: EarlierPieces,
): MadePieces {
  const ledger = earlier?.ledger ?? new Ledger(mark);
  const drafts: Draft[] = [];
  const settle = (length: Length): Length => onMarks(length, mark);
  const written = scopeOf(
    () => drafts.map((draft) => measured(draft, (band) => band.written)),
    settled.written,
    (length) => length,
    earlier?.written,
  );
  const edition = scopeOf(
    () => drafts.map((draft) => measured(draft, (band) => ledger.look(band))),
    settled.printed,
    settle,
    earlier?.printed,
  );
  const both: Both = { written, edition };
  for (const spec of specs) {
    const draft = draftOf(spec, both, ledger, report);
    if (draft) drafts.push(draft);
  }
  const put = (worked: Worked): Length => ledger.look(worked);
  const onGivenMarks = (mm: Fraction): Fraction => settle(Length.fromMm(mm)).mm;
  const making: Upon = { sizes: sizesOf(both, put, report), onMarks: onGivenMarks, report };
  const bare = drafts.flatMap((draft) => bareOf(draft, making, ledger) ?? []);
  const printed = scopeOf(() => bare, settled.printed, settle, earlier?.printed);
  const sizes = sizesOf({ written, edition: printed }, put, report);
  const specOf = (piece: Piece): PieceSpec | undefined =>
    specs.find(({ path, name }) => path === piece.path && name === piece.name);
  const pieces = bare.map((piece) => {
    const spec = specOf(piece);
    return spec ? withAllUpon(spec, piece, { sizes, onMarks: onGivenMarks, report }) : piece;
  });
  const implied = pieces.flatMap((piece) => {
    const spec = specOf(piece);
    return spec ? tabJoins(spec, piece) : [];
  });
  return { pieces, written, printed, ledger, sizes, implied };
}

/** A piece with its bands and its edge, on which nothing lies yet. */
function bareOf(draft: Draft, upon: Upon, ledger: Ledger): Piece | undefined {
  const { spec, columns, rows, declared } = draft;
  const { name, stock, grain, place, path, form } = spec;
  const { sizes, report } = upon;
  const drawn = form?.is === 'outline' ? drawnOutline(spec, form.path, sizes, ledger.mark, report) : undefined;
  if (form?.is === 'outline' && drawn === undefined) return undefined;
  const printed = ({ sizes: own, bands }: Side): readonly Length[] => own ?? bands.map((band) => ledger.enter(band));
  const widths = drawn ? [drawn.width] : printed(columns);
  const heights = drawn ? [drawn.height] : printed(rows);
  const [width, height] = [Length.sum(widths), Length.sum(heights)];
  const outline = drawn?.outline ?? edgeOf(spec, width, height, upon);
  if (outline === undefined) return undefined;
  return {
    name,
    width,
    height,
    declared: declared && {
      width: ledger.look(declared.width),
      height: ledger.look(declared.height),
      place: spec.size?.place ?? place,
    },
    columns: bandsOf(columns, widths),
    rows: bandsOf(rows, heights),
    creases: [...creasesOf(columns, widths, 'down'), ...creasesOf(rows, heights, 'across')],
    outline,
    ...{ lines: [], windows: [], away: [], shapes: [], spots: [] },
    stock,
    thick: undefined,
    grain,
    place,
    path,
  };
}

/** The edge of a sheet, a circle, an ellipse or a rounded sheet. */
function edgeOf(spec: PieceSpec, width: Length, height: Length, upon: Upon): Outline | undefined {
  const rectangle = { left: ZERO, top: ZERO, width: width.mm, height: height.mm };
  const { form, name, place, path } = spec;
  if (hasArea(rectangle)) {
    const whole = form && 'width' in form ? form : undefined;
    return whole
      ? outlineWithin(whole, rectangle, spec, { ...upon, pointOf: () => undefined })
      : rectangleOutline(rectangle);
  }
  upon.report.at(place, path, {
    code: 'no-paper',
    wrote: `\`${name}\`, which is less than half a mark wide or high`,
    takes: 'a piece of paper larger than nothing',
    remedy: `Change the sizes that \`${name}\` is made from.`,
  });
  return undefined;
}
