import { type CardParts, makeAssemblyParts } from './card-assembly-parts.ts';
import { checkEqualities, checkRequirements } from './card-conditions.ts';
import { type Settled, settleParameters } from './card-parameters.ts';
import { type EarlierPieces, type MadePieces, makePieces } from './card-pieces.ts';
import type { Join } from './card-types.ts';
import type { NamedPieces } from './find-references.ts';
import { Ledger } from './ledger.ts';
import { mergeParts } from './merge-parts.ts';
import type { FoldBody } from './read-body.ts';
import { bodyFor } from './repeated-body.ts';
import { type Report, suggest } from './report.ts';
import { namedSlots, piecesIn, Slot, type Slots } from './slots.ts';
import type { Card, CardRequest, Fold, ReplaceSpec, UseSpec } from './types.ts';
import { givenByUse } from './use-parameters.ts';

/** What a card has from the kinds that it uses. */
export interface Used extends Pick<Card, 'pieces' | 'requirements' | 'equalities'> {
  /** Their pieces by the names that the using kind has for them; a replaced one by what stands for it. */
  readonly named: NamedPieces;
  readonly parts: CardParts | undefined;
  readonly earlier: EarlierPieces;
}

/** The edition, and the ledger and report that all its kinds share. */
interface Making {
  readonly request: CardRequest;
  readonly ledger: Ledger;
  readonly report: Report;
}

/** A used kind with its own pieces made, before anything is joined. */
interface Kind {
  readonly use: UseSpec;
  readonly body: FoldBody;
  readonly made: MadePieces;
  readonly inner: Level;
  /** Its own pieces and those of the kinds that it uses, by the names that it has for them. */
  readonly slots: Slots;
}

/** All kinds that one fold uses. */
interface Level {
  readonly kinds: readonly Kind[];
  readonly slots: Slots;
  readonly replaces: readonly { readonly slot: Slot; readonly by: Kind; readonly spec: ReplaceSpec }[];
  readonly earlier: EarlierPieces;
}

/**
 * The kinds that a fold uses: their pieces under names of the card, and their joins and poses together.
 *
 * A piece keeps its name. Where a kind further up has one of that name already, the later one has the id of its kind before it:
 * `shaker-base`. A replaced piece keeps its name too, and means what stands for it.
 */
export function makeUsed(fold: Fold, settled: Settled, request: CardRequest, report: Report): Used {
  const making = { request, ledger: new Ledger(request.mark), report };
  const level = makeLevel(fold, settled, making);
  for (const [name, slot] of level.slots) slot.piece = { ...slot.piece, name };
  const parts = mergeParts(joinLevel(level, report));
  const kinds = allKinds(level);
  return {
    pieces: piecesIn(level.slots),
    requirements: kinds.flatMap(({ body, made }) => checkRequirements(body.require, made.printed, report)),
    equalities: kinds.flatMap(({ body, made }) => checkEqualities(body.same, made, report)),
    named: namedSlots(level.slots),
    parts,
    earlier: level.earlier,
  };
}

function allKinds(level: Level): Kind[] {
  return level.kinds.flatMap((kind) => [...allKinds(kind.inner), kind]);
}

/** The pieces of all kinds that a fold uses, and which of them give way. */
function makeLevel(fold: Fold, settled: Settled, making: Making): Level {
  const kinds = (fold.uses ?? []).map((use) => makeKind(use, fold, settled, making));
  const slots = new Map<string, Slot>();
  /** Who measures a piece, and what it is called there. */
  const homes = new Map<string, { readonly kind: Kind; readonly name: string }>();
  for (const kind of kinds) {
    for (const [name, slot] of kind.slots) {
      const called = slots.has(name) ? `${kind.use.id}-${name}` : name;
      if (slots.has(called)) nameTaken(called, kind.use, making.report);
      slots.set(called, slot);
      homes.set(called, { kind, name });
    }
  }
  const measure =
    (scope: 'written' | 'printed'): EarlierPieces['written'] =>
    ([called = '', ...rest], side) => {
      const home = homes.get(called);
      if (home) return home.kind.made[scope].measure([home.name, ...rest], side);
      // A band without its piece, where only one kind has one of that name.
      const found = kinds.flatMap(({ made }) => made[scope].measure([called, ...rest], side) ?? []);
      return found.length === 1 ? found[0] : undefined;
    };
  const earlier = { ledger: making.ledger, written: measure('written'), printed: measure('printed') };
  return { kinds, slots, replaces: replacesIn(fold, slots, kinds, making.report), earlier };
}

function makeKind(use: UseSpec, by: Fold, settled: Settled, making: Making): Kind {
  const { request, ledger, report } = making;
  const given = givenByUse(use, by, settled, report);
  const asked = { ...request, units: use.fold.units, parameters: undefined, own: undefined, recipe: [] };
  const own = settleParameters(use.fold, asked, report, given);
  const inner = makeLevel(use.fold, own, making);
  const body = bodyFor(use.fold, own.written, report);
  const made = makePieces(body.pieces, own, request.mark, report, { ...inner.earlier, ledger });
  const slots = new Map(inner.slots);
  for (const piece of made.pieces) {
    if (slots.has(piece.name)) nameTaken(piece.name, piece, report);
    slots.set(piece.name, new Slot(piece));
  }
  return { use, body, made, inner, slots };
}

/** Two pieces of one name: reported where the later one, or the use that brings it, was written. */
export function nameTaken(name: string, at: Pick<UseSpec, 'place' | 'path'>, report: Report): void {
  report.at(at.place, at.path, {
    code: 'name-clash',
    wrote: name,
    takes: 'a name that no piece of a used kind has',
    remedy: `Give it another name, as \`${name}-2\`.`,
  });
}

function replacesIn(fold: Fold, slots: Slots, kinds: readonly Kind[], report: Report): Level['replaces'] {
  return (fold.replaces ?? []).flatMap((spec) => {
    const slot = slots.get(spec.name.text);
    const by = kinds.find(({ use }) => use.id === spec.by.text);
    if (by === undefined) return [];
    const own = slot !== undefined && [...by.slots.values()].includes(slot);
    if (slot === undefined || own) {
      const known = [...slots].flatMap(([name, one]) => ([...by.slots.values()].includes(one) ? [] : [name]));
      const takes = `a piece of another used kind: ${known.join(', ')}`;
      const remedy = own
        ? `\`${spec.name.text}\` is a piece of \`${spec.by.text}\` itself.`
        : suggest(spec.name.text, known, `No used kind has a piece called \`${spec.name.text}\`.`);
      report.at(spec.name.place, spec.path, {
        code: 'unknown-piece',
        wrote: spec.name.text || 'nothing',
        takes,
        remedy,
      });
      return [];
    }
    slot.replaced = true;
    return [{ slot, by, spec }];
  });
}

/** Joins and poses of each kind of a level, those that stand for a piece of another first. */
function joinLevel(level: Level, report: Report): CardParts[] {
  const done = new Map<Kind, CardParts>();
  const started = new Set<Kind>();
  const partsOf = (kind: Kind): CardParts => {
    const ready = done.get(kind);
    if (ready) return ready;
    started.add(kind);
    for (const replace of level.replaces) {
      if (![...kind.slots.values()].includes(replace.slot)) continue;
      if (started.has(replace.by) && !done.has(replace.by)) swapped(replace.spec, report);
      else standIn(replace, partsOf(replace.by), report);
    }
    const parts = joinKind(kind, report);
    done.set(kind, parts);
    return parts;
  };
  return level.kinds.map(partsOf);
}

function swapped({ name, by, place, path }: ReplaceSpec, report: Report): void {
  report.at(place, path, {
    code: 'circle',
    wrote: `${name.text}: ${by.text}`,
    takes: 'kinds that do not stand for pieces of each other',
    remedy: 'Take one of the two replacements out.',
  });
}

/** Puts a kind in the place of a piece. */
function standIn({ slot, by, spec }: Level['replaces'][number], { actsAs }: CardParts, report: Report): void {
  const slots = [...by.slots.values()];
  const live = slots.filter(({ replaced }) => !replaced);
  const [only] = live;
  const called = (name: string | undefined): Slot | undefined => live.find(({ piece }) => piece.name === name);
  const body = actsAs ? called(actsAs.piece) : live.length === 1 ? only : undefined;
  const top = actsAs ? called(actsAs.top) : body;
  if (body && top) {
    slot.standIn = { body, top, whole: live };
    return;
  }
  report.at(spec.by.place, spec.path, {
    code: 'no-acts-as',
    wrote: spec.by.text,
    takes: 'a kind that says which piece stands for it',
    remedy: `Add \`acts-as:\` to \`${spec.by.text}\`, with the piece whose edges and back it offers.`,
  });
}

function joinKind({ use, body, made, inner, slots }: Kind, report: Report): CardParts {
  return makeAssemblyParts(body.parts, {
    all: piecesIn(slots),
    pieces: namedSlots(slots),
    sizes: made.sizes,
    report,
    place: use.fold.place,
    implied: made.implied.flatMap((one) => renamed(one, slots)),
    earlier: mergeParts(joinLevel(inner, report)),
  });
}

/** A join within a piece, under the name that the piece has in the card; none where the piece gave way. */
function renamed(one: Join, slots: Slots): Join[] {
  const slot = slots.get(one.part.piece);
  if (slot === undefined || slot.replaced) return [];
  const { name } = slot.piece;
  return [{ ...one, part: { ...one.part, piece: name }, onto: { ...one.onto, piece: name } }];
}
