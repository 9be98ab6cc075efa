import {
  type Assembly,
  type Card,
  type CardMass,
  type ClosedPose,
  dryFit,
  type Finding,
  type FoldedBody,
  foldCard,
  type Materials,
  type Panelling,
  type PaperInUse,
  type Problem,
  type System,
  type WorkOrder,
} from '../engine/index.ts';
import { distinct, distinctSlips } from './distinct.ts';
import { foldOf } from './entries/fold.ts';
import type { CardSpec, FoldKind, Post, Supply, SupplyUse } from './entries/types.ts';
import type { Library } from './library.ts';
import { editionsFrom, makeEdition, makeKind, ruleOf } from './make-edition.ts';
import { paperOf } from './paper.ts';

/** A post with its cards computed in both editions. */
export interface Project {
  readonly slug: string;
  readonly post: Post;
  /** None, one or several, in the order of the post. */
  readonly cards: readonly ProjectCard[];
  /** What the post needs, in its order, with the products themselves. */
  readonly supplies: readonly ProjectSupply[];
}

export interface ProjectSupply {
  readonly supply: Supply;
  readonly use: SupplyUse;
}

export interface ProjectCard {
  /** `card`, or made from the name. */
  readonly key: string;
  /** The post's name for the card, else the kind's, else the title of the post. */
  readonly name: string;
  /** Undefined when the card is a recipe alone. */
  readonly kind: FoldKind | undefined;
  readonly editions: Readonly<Record<System, CardEdition>>;
  /** Role of a paper to its supply. */
  readonly stock: Readonly<Record<string, Supply>>;
}

/** One card, sized and dry-fitted for one way of measuring. */
export interface CardEdition {
  readonly system: System;
  readonly card: Card;
  readonly panelling: Panelling;
  readonly assembly: Assembly;
  /** By the roles of its papers, and by the names that its layers give. */
  readonly materials: Materials;
  /** Coats, joins and fillings in the order of work. */
  readonly work: WorkOrder;
  readonly mass: CardMass;
  /** What folds or is joined, as posted, with its order of plies and how thick it is. */
  readonly bodies: readonly FoldedBody[];
  /** Those of them whose closed pose is known. */
  readonly closed: readonly ClosedPose[];
  readonly findings: readonly Finding[];
  /** The sheet that the first piece is cut from. */
  readonly sheetName: string;
  readonly envelopeName: string | undefined;
}

/** A fold kind at its defaults in both editions. */
export interface KindProject {
  readonly kind: FoldKind;
  readonly editions: Readonly<Record<System, CardEdition>>;
}

/** Computes every card of a post. A card that the engine refuses is left out and its problems are given. Pure. */
export function computeProject(library: Library, post: Post): { project: Project; problems: readonly Problem[] } {
  const cards: ProjectCard[] = [];
  const problems: Problem[] = [];
  for (const spec of post.cards) {
    const computed = computeCard(library, post, spec);
    problems.push(...computed.problems);
    if (computed.card !== undefined) cards.push(computed.card);
  }
  const supplies = post.supplies.flatMap((use) => {
    const supply = library.supplies.get(use.use);
    return supply === undefined ? [] : [{ supply, use }];
  });
  return { project: { slug: post.slug, post, cards, supplies }, problems: distinct(problems) };
}

function computeCard(
  library: Library,
  post: Post,
  spec: CardSpec,
): { card: ProjectCard | undefined; problems: readonly Problem[] } {
  const { blog } = library;
  const kind = spec.kind === undefined ? undefined : library.folds.get(spec.kind.text);
  if (spec.kind !== undefined && kind === undefined) return { card: undefined, problems: [] };
  const stock = stockOf(library, spec);
  const rule = ruleOf(spec, kind, post.units);
  const made = eachSystem((system) => {
    const { card, problems } = makeEdition(rule, system, blog);
    const edition = card && editionOf(card, paperOf(card, spec, kind, stock, post.units, library));
    return { edition, problems };
  });
  const ofEditions = editionsFrom(post.units).flatMap((system) => made[system].problems);
  const problems = [...rule.problems, ...distinctSlips(ofEditions)];
  const { inch, metric } = made;
  if (inch.edition === undefined || metric.edition === undefined) return { card: undefined, problems };
  const editions = { inch: inch.edition, metric: metric.edition };
  return { card: { key: spec.key, name: spec.name ?? kind?.name ?? post.title, kind, editions, stock }, problems };
}

/** Dry-fits a kind at its defaults, in both editions. */
export function computeKind(
  library: Pick<Library, 'blog' | 'supplies'>,
  kind: FoldKind,
): { project: KindProject | undefined; problems: readonly Problem[] } {
  const fold = foldOf(kind);
  const made = eachSystem((system) => {
    const { card, problems } = makeKind(fold, system, library.blog);
    const edition = card && editionOf(card, paperOf(card, undefined, kind, {}, undefined, library));
    return { edition, problems };
  });
  const problems = distinctSlips(editionsFrom(fold.units).flatMap((system) => made[system].problems));
  const { inch, metric } = made;
  if (inch.edition === undefined || metric.edition === undefined) return { project: undefined, problems };
  return { project: { kind, editions: { inch: inch.edition, metric: metric.edition } }, problems };
}

function editionOf(card: Card, paper: PaperInUse): CardEdition {
  const folded = foldCard(card, paper);
  const role = card.pieces[0]?.stock ?? '';
  return {
    system: card.system,
    card,
    panelling: folded.panelling,
    bodies: folded.closed,
    closed: folded.closed.flatMap(({ pose }) => pose ?? []),
    assembly: folded.assembly,
    materials: folded.materials,
    work: folded.work,
    mass: folded.mass,
    findings: dryFit(folded),
    sheetName: (paper.sheets[role] ?? paper.sheets[''])?.name ?? '',
    envelopeName: paper.envelope?.size.name,
  };
}

function stockOf(library: Library, spec: CardSpec): Readonly<Record<string, Supply>> {
  const stock: Record<string, Supply> = {};
  for (const role of Object.keys(spec.stock).sort()) {
    const supply = library.supplies.get(spec.stock[role]?.text ?? '');
    if (supply !== undefined) stock[role] = supply;
  }
  return stock;
}

function eachSystem<T>(make: (system: System) => T): Readonly<Record<System, T>> {
  return { inch: make('inch'), metric: make('metric') };
}
