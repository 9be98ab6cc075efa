import {
  type Card,
  type CardMass,
  type Finding,
  type FoldedBody,
  formatLength,
  formatMass,
  GRAMS_PER_OUNCE,
  Length,
  type Piece,
  type System,
  sayFinding,
  sayLayers,
  type Thickness,
} from '../engine/index.ts';
import type { CardEdition, Project, ProjectCard } from './project.ts';
import {
  type EditionSummary,
  type FigureSummary,
  type FindingSummary,
  type LengthSummary,
  type MassSummary,
  type ProjectSummary,
  SUMMARY_VERSION,
  type ThicknessSummary,
} from './schemas/summary.ts';

/** The project as plain data for `project.json`. The same project gives the same keys in the same order. */
export function summarise(project: Project): ProjectSummary {
  const { post } = project;
  return {
    schemaVersion: SUMMARY_VERSION,
    slug: project.slug,
    title: post.title,
    summary: post.summary,
    date: post.date,
    updated: post.updated ?? null,
    invented: post.invented,
    techniques: [...post.techniques],
    tools: [...post.tools],
    supplies: project.supplies.map(({ supply, use }) => ({
      id: supply.id,
      name: supply.name,
      category: supply.category,
      maker: supply.maker ?? null,
      for: use.for ?? null,
      amount: use.amount ?? null,
      discontinued: supply.discontinued,
      substitutes: [...supply.substitutes],
    })),
    cards: project.cards.map(summariseCard),
  };
}

function summariseCard(card: ProjectCard): ProjectSummary['cards'][number] {
  const { kind } = card;
  return {
    key: card.key,
    name: card.name,
    fold: kind === undefined ? null : { id: kind.id, name: kind.name, family: kind.family ?? null },
    stock: Object.fromEntries(Object.entries(card.stock).map(([role, supply]) => [role, supply.id])),
    editions: { inch: summariseEdition(card.editions.inch), metric: summariseEdition(card.editions.metric) },
  };
}

/** One edition of a card, of a post or of a kind at its defaults. */
export function summariseEdition(edition: CardEdition): EditionSummary {
  const { card, system } = edition;
  const length = (value: Length): LengthSummary => summariseLength(value, system);
  const figure = (value: Length | number | undefined): FigureSummary | null => summariseFigure(value, system);
  return {
    system,
    mark: length(card.mark),
    sheet: edition.sheetName,
    envelope: edition.envelopeName ?? null,
    parameters: card.parameters.map((parameter) => ({
      name: parameter.name,
      label: parameter.label,
      value: figure(parameter.value) ?? 0,
      word: parameter.word ?? null,
      from: figure(parameter.from),
      to: figure(parameter.to),
      local: parameter.local ?? null,
    })),
    pieces: card.pieces.map((piece) => summarisePiece(piece, length)),
    joins: card.joins.map(summariseJoin),
    layers: summariseLayers(edition),
    mass: summariseMass(edition.mass, system),
    closed: edition.bodies.flatMap((body) => summariseClosed(body, length)),
    findings: edition.findings.map((finding) => summariseFinding(finding, system)),
  };
}

function summarisePiece(piece: Piece, length: (value: Length) => LengthSummary): EditionSummary['pieces'][number] {
  const bands = (all: Piece['columns']) =>
    all.map((band) => ({
      name: band.name ?? null,
      start: length(band.start),
      size: length(band.size),
      exact: length(band.exact),
    }));
  return {
    name: piece.name,
    stock: piece.stock,
    grain: piece.grain ?? null,
    width: length(piece.width),
    height: length(piece.height),
    columns: bands(piece.columns),
    rows: bands(piece.rows),
    creases: piece.creases.map(({ name, runs, at, fold }) => ({ name, runs, at: length(at), fold })),
    lines: piece.lines.map((line) => summariseLine(line, length)),
  };
}

function summariseJoin({ is, text, part, onto, implied }: Card['joins'][number]): EditionSummary['joins'][number] {
  return { is, says: text, part: part.text, onto: onto.text, implied };
}

function summariseLine(
  { name, does, from, to, folds }: Piece['lines'][number],
  length: (value: Length) => LengthSummary,
): EditionSummary['pieces'][number]['lines'][number] {
  const point = ({ x, y }: typeof from) => ({ x: length(Length.fromMm(x)), y: length(Length.fromMm(y)) });
  return { name, does, from: point(from), to: point(to), folds: [...folds] };
}

function summariseLayers({ work, assembly, materials, system }: CardEdition): EditionSummary['layers'] {
  return sayLayers(work, assembly, materials).map(({ is, says, note, adds, unknown, assumed }) => ({
    is,
    says,
    note: note ?? null,
    adds: adds === undefined ? null : summariseLength(adds, system),
    unknown,
    assumed,
  }));
}

function summariseMass({ grams, parts, unknown, assumed }: CardMass, system: System): EditionSummary['mass'] {
  const mass = (of: CardMass['grams']): MassSummary => ({
    grams: of.toFraction(),
    ounces: of.div(GRAMS_PER_OUNCE).toFraction(),
    printed: formatMass(of, system),
  });
  return {
    all: mass(grams),
    parts: parts.map((part) => ({
      is: part.is,
      name: part.name,
      mass: part.grams === undefined ? null : mass(part.grams),
    })),
    unknown: [...unknown],
    assumed: assumed.map(({ role }) => role),
  };
}

function summariseThickness(
  { least, overall, compressible, springback, unknown, assumed }: Thickness,
  length: (value: Length) => LengthSummary,
): ThicknessSummary {
  return {
    least: length(least.local),
    greatest: length(overall),
    gives: length(compressible.high),
    springback: length(springback.high),
    unknown: [...unknown],
    assumed: assumed.map(({ role }) => role),
  };
}

function summariseClosed(
  { piece, body, pose, plies, thickness }: FoldedBody,
  length: (value: Length) => LengthSummary,
): EditionSummary['closed'] {
  if (pose === undefined) return [];
  const { left, top, right, bottom } = pose.box;
  return [
    {
      piece: piece.name,
      pieces: [...(body?.pieces ?? [])],
      pose: pose.pose,
      width: length(Length.fromMm(right.sub(left))),
      height: length(Length.fromMm(bottom.sub(top))),
      deep: length(Length.fromMm(pose.deep)),
      flat: pose.flat,
      thickness: thickness === undefined ? null : summariseThickness(thickness, length),
      orders: plies?.count?.toString() ?? null,
      plies: plies?.orders[0]?.plies === undefined ? null : [...plies.orders[0].plies],
    },
  ];
}

function summariseFinding(finding: Finding, system: System): FindingSummary {
  const { label, says, remedy } = sayFinding(finding, system);
  return {
    check: finding.check,
    outcome: finding.outcome,
    state: finding.state,
    label,
    says,
    remedy: remedy ?? null,
    figure: summariseFigure(finding.figure, system),
    limit: summariseFigure(finding.limit, system),
    witness: finding.witness ?? null,
    place: { file: finding.place.file, line: finding.place.line, column: finding.place.column },
    path: finding.path,
  };
}

function summariseLength(length: Length, system: System): LengthSummary {
  return {
    mm: length.mm.toFraction(),
    inches: length.inches.toFraction(),
    printed: formatLength(length, system),
  };
}

function summariseFigure(value: Length | number | undefined, system: System): FigureSummary | null {
  if (value === undefined) return null;
  return value instanceof Length ? summariseLength(value, system) : value;
}
