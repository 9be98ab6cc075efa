import { buildLibrary, type FoldKind, foldOf, type Library, readContent } from '../../../plugins/content/index.ts';
import type { Card } from '../../../plugins/engine/index.ts';
import {
  DEFAULT_MARKS,
  type Fold,
  formatProblems,
  type MapNode,
  makeCard,
  type Problem,
  type System,
} from '../../../plugins/engine/index.ts';

/** A fold kind of the catalogue, read. */
export interface CatalogueKind {
  readonly id: string;
  readonly kind: FoldKind;
  readonly fold: Fold;
}

const { library, problems } = buildLibrary({ ...readContent('.'), posts: [] });
if (library === undefined) throw new Error(formatProblems(problems));

/** The demo blog's kinds and supplies, without its posts. */
export const LIBRARY: Library = library;

/** Every kind of the demo blog. */
export const CATALOGUE: readonly CatalogueKind[] = [...library.folds.values()].map((kind) => ({
  id: kind.id,
  kind,
  fold: foldOf(kind),
}));

export function kindOf(id: string): CatalogueKind {
  const found = CATALOGUE.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no kind ${id}`);
  return found;
}

/** Parameters as a post gives them: `{ width: '5 in' }`. */
export type Settings = Readonly<Record<string, string>>;

/** The card of a kind with these parameters; no card, and the problems, where a size is out of its range. */
export function tryCard(
  fold: Fold,
  system: System,
  settings: Settings = {},
): { card: Card | undefined; problems: readonly Problem[] } {
  const plain = Object.keys(settings).length === 0;
  return makeCard(fold, {
    system,
    mark: DEFAULT_MARKS[system],
    units: fold.units,
    parameters: plain ? undefined : mapOf(settings, fold),
    own: undefined,
    recipe: plain ? fold.recipe : [],
  });
}

/** As `tryCard`; throws when there is no card. */
export function cardWith(fold: Fold, system: System, settings: Settings = {}): Card {
  const { card, problems: found } = tryCard(fold, system, settings);
  if (card === undefined) throw new Error(`${fold.name} ${JSON.stringify(settings)}: ${formatProblems(found)}`);
  return card;
}

function mapOf(settings: Settings, { place }: Fold): MapNode {
  const text = (written: string) => ({ kind: 'text' as const, text: written, place, quoted: false });
  const entries = Object.entries(settings).map(([name, value]) => ({ key: text(name), value: text(value) }));
  return { kind: 'map', entries, place };
}
