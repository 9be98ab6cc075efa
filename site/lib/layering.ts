import type { CardEdition, ProjectCard } from '../../plugins/content/index.ts';
import {
  type CardMass,
  type LayerLine,
  type MassPart,
  type System,
  sayLayers,
  sayList,
  sayName,
} from '../../plugins/engine/index.ts';
import { capital } from './capital.ts';
import { homeFirst } from './editions.ts';
import type { Figure } from './figure.ts';

type Grams = CardMass['grams'];

/** A line of the layer list in the editions that it is told for. */
export type LineInEditions = readonly { readonly system: System; readonly line: LayerLine; readonly grams?: Grams }[];

/**
 * The layer lists of a card: one for both editions where they have the same layers, else one for each. The editions of one line
 * differ in figures alone.
 */
export function layerLists(card: ProjectCard, home: System): readonly (readonly LineInEditions[])[] {
  const [first, second] = homeFirst(home).map((system) => linesOf(card.editions[system], system));
  if (first === undefined || second === undefined) return [];
  const alike = first.length === second.length && first.every(({ line }, i) => line.says === second[i]?.line.says);
  if (!alike) return [first.map((told) => [told]), second.map((told) => [told])];
  return [first.map((told, i) => [told, second[i] ?? told])];
}

function linesOf(edition: CardEdition, system: System): LineInEditions {
  return sayLayers(edition.work, edition.assembly, edition.materials).map((line) => {
    const filling = line.filling === undefined ? undefined : massOfFilling(edition, line.filling);
    return { system, line, ...(filling === undefined ? {} : { grams: filling }) };
  });
}

function massOfFilling({ mass }: CardEdition, name: string): Grams | undefined {
  return mass.parts.find((part) => part.is === 'filling' && part.name === name)?.grams;
}

export interface FigureRow {
  readonly label: string;
  readonly figures: Readonly<Partial<Record<System, Figure>>>;
  readonly total?: boolean;
}

export interface FigureGroup {
  readonly heading: string;
  readonly rows: readonly FigureRow[];
}

/** How thick a card is when it is posted and what it weighs, in both editions. */
export function figuresOf(card: ProjectCard): readonly FigureGroup[] {
  const thickness = bothOf(card, thicknessOf).map(({ key: heading, values }) => ({
    heading,
    rows: rowsOf(values.inch ?? [], values.metric ?? []),
  }));
  const weight = rowsOf(massOf(card.editions.inch), massOf(card.editions.metric));
  return [...thickness, { heading: 'Weight', rows: weight }];
}

type Told = readonly { readonly label: string; readonly figure: Figure; readonly total?: boolean }[];

function bothOf(
  card: ProjectCard,
  read: (edition: CardEdition) => readonly (readonly [string, Told])[],
): readonly { readonly key: string; readonly values: Readonly<Partial<Record<System, Told>>> }[] {
  const inch = new Map(read(card.editions.inch));
  const metric = new Map(read(card.editions.metric));
  return [...new Set([...inch.keys(), ...metric.keys()])].map((key) => ({
    key,
    values: { inch: inch.get(key) ?? [], metric: metric.get(key) ?? [] },
  }));
}

function rowsOf(inch: Told, metric: Told): readonly FigureRow[] {
  const labels = [...new Set([...inch, ...metric].map(({ label }) => label))];
  return labels.map((label) => {
    const [of, om] = [inch.find((row) => row.label === label), metric.find((row) => row.label === label)];
    const figures = { ...(of && { inch: of.figure }), ...(om && { metric: om.figure }) };
    return { label, figures, total: of?.total ?? om?.total ?? false };
  });
}

function thicknessOf(edition: CardEdition): readonly (readonly [string, Told])[] {
  const several = edition.bodies.filter(({ thickness }) => thickness !== undefined).length > 1;
  return edition.bodies.flatMap(({ piece, thickness }) => {
    if (thickness === undefined) return [];
    const { least, overall, compressible, springback } = thickness;
    const rows: Told = [
      { label: 'Thinnest', figure: { height: least.local } },
      { label: 'Thickest', figure: { height: overall }, total: true },
      ...(compressible.high.isZero
        ? []
        : [
            {
              label: `Of that, gives when pressed: ${sayList(compressible.roles)}`,
              figure: { height: compressible.high },
            },
          ]),
      ...(springback.high.isZero
        ? []
        : [{ label: 'More, until its folds are pressed', figure: { height: springback.high } }]),
    ];
    return [[several ? `Closed, ${sayName(piece.name)}` : 'Closed', rows] as const];
  });
}

/** By piece, with what is laid on it; then what sticks pieces together, then fillings, then all. */
function massOf({ mass, assembly }: CardEdition): Told {
  const sums = new Map<string, Grams>();
  for (const part of mass.parts) {
    if (part.grams === undefined) continue;
    const label = labelOf(part, assembly.panels.get(part.panel)?.piece ?? part.name);
    sums.set(label, sums.get(label)?.add(part.grams) ?? part.grams);
  }
  const rows = [...sums].map(([label, grams]) => ({ label, figure: { grams } }));
  return [...(rows.length > 1 ? rows : []), { label: 'All of it', figure: { grams: mass.grams }, total: true }];
}

function labelOf(part: MassPart, piece: string): string {
  if (part.is === 'filling') return capital(sayName(part.name));
  return part.is === 'glue' || part.is === 'foam' ? 'Between pieces' : capital(sayName(piece));
}

/** Some layer in words, with its height in the editions that it is told for. */
export interface ToldHeight {
  readonly name: string;
  readonly figures: readonly { readonly system: System; readonly figure: Figure }[];
}

/** Each thing that a card is made of once, with its height and where that is known from, as far as it has one. */
export function sourcesOf(
  lists: readonly (readonly LineInEditions[])[],
): readonly (ToldHeight & { readonly source: string })[] {
  const seen = new Set<string>();
  return lists.flat().flatMap((told) => {
    const made = told[0]?.line.made;
    if (made === undefined || seen.has(made.name)) return [];
    seen.add(made.name);
    const figures = told.flatMap(({ system, line: { adds } }) => (adds ? [{ system, figure: { height: adds } }] : []));
    return figures.length === 0 ? [] : [{ name: capital(made.name), source: made.source, figures }];
  });
}

/**
 * What lies over each other where a card is thickest, from the table up: one list for both editions where they have the same layers,
 * else one for each; none where nothing does.
 */
export function tallestOf(card: ProjectCard, home: System): readonly (readonly ToldHeight[])[] {
  const [first, second] = homeFirst(home).map((system) => tallestIn(card.editions[system], system));
  if (first === undefined || second === undefined || first.length < 2) return [];
  const alike = first.length === second.length && first.every(({ name }, i) => name === second[i]?.name);
  if (!alike) return [first, second];
  return [first.map(({ name, figures }, i) => ({ name, figures: [...figures, ...(second[i]?.figures ?? [])] }))];
}

function tallestIn({ bodies }: CardEdition, system: System): readonly ToldHeight[] {
  const thickness = bodies.find((body) => body.thickness !== undefined)?.thickness;
  return (thickness?.tallest ?? []).flatMap(({ name, material, high }) =>
    high === undefined || high.isZero
      ? []
      : [{ name: `${capital(material.name)} (${sayName(name)})`, figures: [{ system, figure: { height: high } }] }],
  );
}
