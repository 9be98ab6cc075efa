import type { MapNode, Place, Problem, SourceNode, System, Unit } from '../../engine/index.ts';

/*
 * Every entry is plain data that survives JSON. Lengths stay the texts that were written, already checked, and are read
 * when a card is computed.
 */

/** A text that the engine reads later, with its place for whatever is then found. */
export interface WrittenText {
  readonly text: string;
  readonly place: Place;
  readonly path: string;
}

/** One value for each edition, where there is one. */
export type PerEdition<T> = Readonly<Partial<Record<System, T>>>;

/** The blog itself, `content/blog.yaml`. */
export interface Blog {
  readonly file: string;
  readonly title: string;
  readonly tagline: string | undefined;
  readonly author: string;
  /** Base address of the site, without a slash at its end. */
  readonly address: string;
  /** Language tag, `en`. */
  readonly language: string;
  readonly units: Unit;
  /** Finest marks, as lengths in words: `1/16 in`. */
  readonly marks: Readonly<Record<System, string>>;
  /** Usual sheets, as named sizes or sizes. */
  readonly sheets: Readonly<Record<System, string>>;
  /** Least room in an envelope, as lengths in words. */
  readonly envelopeClearance: Readonly<Record<System, string>>;
  readonly disclosure: { readonly gifted: string | undefined; readonly affiliate: string | undefined };
  readonly invented: boolean;
}

export interface Post {
  readonly slug: string;
  readonly file: string;
  readonly title: string;
  readonly summary: string;
  /** `2026-10-03`. */
  readonly date: string;
  readonly updated: string | undefined;
  /** Unit of bare numbers in the file. */
  readonly units: Unit | undefined;
  /** Ids of techniques. */
  readonly techniques: readonly string[];
  readonly supplies: readonly SupplyUse[];
  readonly tools: readonly string[];
  /** None, one or several. */
  readonly cards: readonly CardSpec[];
  readonly invented: boolean;
}

export interface SupplyUse {
  /** Id of the supply. */
  readonly use: string;
  readonly for: string | undefined;
  readonly amount: string | undefined;
}

/** One card of a post, as asked for: a fold kind with what differs, or a recipe alone. */
export interface CardSpec {
  /** `card`, or made from the name: what directives and addresses use. */
  readonly key: string;
  readonly name: string | undefined;
  /** Path of the card in the frontmatter: empty at the top level, else `cards[1]`. */
  readonly path: string;
  readonly place: Place;
  /** Id of the fold kind; undefined when the recipe is the card. */
  readonly kind: WrittenText | undefined;
  /** Parameters that differ from the kind's defaults, and their path. */
  readonly parameters: MapNode | undefined;
  /** Parameters of one edition alone. */
  readonly own: PerEdition<MapNode>;
  readonly recipe: SourceNode | undefined;
  /** What the post adds to the fold. */
  readonly add: SourceNode | undefined;
  /** Inks, stencils, foils and the like that are laid on its panels. */
  readonly layers: SourceNode | undefined;
  /** Role of a paper, a foam or a filling to the id of a supply. */
  readonly stock: Readonly<Record<string, WrittenText>>;
  readonly envelope: PerEdition<WrittenText>;
  readonly sheet: PerEdition<WrittenText>;
  /** Closed size that the post promises. */
  readonly finished: PerEdition<WrittenText>;
}

/** A fold kind. Its rule stays the tree that was written; `foldOf` reads it. */
export interface FoldKind {
  readonly id: string;
  readonly file: string;
  readonly name: string;
  readonly family: string | undefined;
  readonly summary: string | undefined;
  readonly difficulty: 'easy' | 'moderate' | 'hard' | undefined;
  readonly units: Unit | undefined;
  /** The sheet it is cut from, where the kind says. */
  readonly sheet: PerEdition<WrittenText>;
  readonly tree: MapNode;
  /** The trees of the kinds that it is made of, by their ids; those of their own among them. */
  readonly uses: Readonly<Record<string, MapNode>>;
  readonly invented: boolean;
}

export interface Supply {
  readonly id: string;
  readonly file: string;
  readonly name: string;
  readonly category: string;
  readonly maker: string | undefined;
  readonly links: readonly { readonly shop: string; readonly address: string }[];
  readonly gifted: boolean;
  readonly affiliate: boolean;
  readonly discontinued: boolean;
  /** Ids of supplies that do the same job, the best first. */
  readonly substitutes: readonly string[];
  /** Unit of bare numbers in the file. */
  readonly units: Unit | undefined;
  /** Size of the sheet it is sold in, as a named size or a size. */
  readonly sheet: PerEdition<string>;
  /** As on the pack: `80 lb cover`. */
  readonly weight: string | undefined;
  /** Measured thickness of one sheet or one coat, as a length in words: `0.011 in`, `12 pt`. */
  readonly caliper: string | undefined;
  /** Of one layer of foam, or of an ornament as it lies. */
  readonly height: string | undefined;
  /** A loose filler's largest bead across. */
  readonly bead: string | undefined;
  /** Of filler as it is poured, of foam with its air: `1.5 g/cm³`. */
  readonly density: string | undefined;
  /** Of one ornament: `3 g`. */
  readonly mass: string | undefined;
  /** Whether it gives under pressure; undefined where it is as its category usually is. */
  readonly gives: boolean | undefined;
  readonly grain: 'long' | 'short' | undefined;
  readonly notes: string | undefined;
  /** What to take care of, for readers. */
  readonly caution: string | undefined;
  readonly invented: boolean;
}

export interface Technique {
  readonly id: string;
  readonly file: string;
  readonly name: string;
  readonly summary: string;
  readonly invented: boolean;
}

/** What reading one file gave. `tree` is there whenever the syntax is sound, `entry` only when there is no error. */
export interface ReadEntry<T> {
  readonly entry: T | undefined;
  readonly tree: SourceNode | undefined;
  readonly problems: readonly Problem[];
}
