import { readFileSync } from 'node:fs';
import { FOLD_PAGE_KEYS, readDocument } from '../../../plugins/content/index.ts';
import {
  type Band,
  type Card,
  DEFAULT_MARKS,
  type Fold,
  formatNumber,
  formatProblems,
  makeCard,
  type Problem,
  readFold,
  type System,
  type Unit,
} from '../../../plugins/engine/index.ts';
import { yamlMap } from './yaml-tree.ts';

/** A kind of the demo content, read; throws when it has a problem. */
export function kind(id: string): Fold {
  const path = `content/folds/${id}.md`;
  const { tree } = readDocument({ path, text: readFileSync(path, 'utf8') });
  if (tree?.kind !== 'map') throw new Error(`no frontmatter in ${path}`);
  return sound(readFold(tree, { alsoAllowed: FOLD_PAGE_KEYS }));
}

/** A fold written out in a test, read; throws when it has a problem. */
export function foldOf(yaml: string): Fold {
  return sound(readFold(yamlMap(yaml)));
}

function sound({ fold, problems }: { fold: Fold | undefined; problems: readonly Problem[] }): Fold {
  if (fold === undefined || problems.length > 0) throw new Error(formatProblems(problems));
  return fold;
}

export interface Asked {
  /** YAML of the post's parameters, and of those for this edition alone. */
  readonly given?: string;
  readonly own?: string;
  readonly units?: Unit;
}

/** A card of a fold with the usual marks: 1/16 in or 0.5 mm. */
export function make(
  fold: Fold,
  system: System,
  { given, own, units = 'in' }: Asked = {},
): ReturnType<typeof makeCard> {
  return makeCard(fold, {
    system,
    mark: DEFAULT_MARKS[system],
    units,
    parameters: given === undefined ? undefined : yamlMap(given, 'post.md'),
    own: own === undefined ? undefined : yamlMap(own, 'post.md'),
    recipe: [],
  });
}

/** As `make`; throws when there is a problem. */
export function cardOf(fold: Fold, system: System, asked: Asked = {}): Card {
  const { card, problems } = make(fold, system, asked);
  if (card === undefined || problems.length > 0) throw new Error(formatProblems(problems));
  return card;
}

/** Printed sizes of bands, as a maker reads them. */
export function printed(bands: readonly Band[], system: System): string {
  return bands.map((band) => formatNumber(band.size, system)).join(' | ');
}
