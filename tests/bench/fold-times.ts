import { PROJECT } from '../../plugins/commands/support/project.ts';
import { buildLibrary, foldOf, readContent } from '../../plugins/content/index.ts';
import {
  assemble,
  closedPoses,
  type Fold,
  formatProblems,
  isKnown,
  Length,
  makeCard,
  orderPlies,
  panelsOf,
  readFold,
} from '../../plugins/engine/index.ts';
import { yamlMap } from '../engine/support/yaml-tree.ts';

/** From a fold and its sizes to the order of plies of its posted pose: median milliseconds by the clock. */
export interface FoldTime {
  readonly name: string;
  readonly panels: number;
  readonly ms: number;
}

const WARM_UPS = 40;
const RUNS = 25;

/** Every kind of the catalogue at its defaults, and an assembly of forty panels. */
export function timeFolds(): { kinds: FoldTime[]; large: FoldTime } {
  const { library, problems } = buildLibrary({ ...readContent(PROJECT), posts: [] });
  if (library === undefined) throw new Error(formatProblems(problems));
  return { kinds: [...library.folds.values()].map((kind) => timeOf(foldOf(kind))), large: timeOf(largeFold()) };
}

function timeOf(fold: Fold): FoldTime {
  const times: number[] = [];
  let panels = 0;
  for (let run = 0; run < WARM_UPS + RUNS; run++) {
    const begin = performance.now();
    panels = foldOnce(fold);
    if (run >= WARM_UPS) times.push(performance.now() - begin);
  }
  return { name: fold.name, panels, ms: medianOf(times) };
}

/** Answers with the number of panels. Throws when the fold does not close, since that would be another amount of work. */
function foldOnce(fold: Fold): number {
  const { card, problems } = makeCard(fold, {
    system: 'inch',
    mark: Length.fromInches('1/16'),
    units: fold.units,
    parameters: undefined,
    own: undefined,
    recipe: [],
  });
  if (card === undefined) throw new Error(formatProblems(problems));
  const assembly = assemble(card, panelsOf(card));
  const posted = card.poses.find(({ name }) => name === card.posts);
  if (posted === undefined) throw new Error(`${fold.name} has no pose ${card.posts}`);
  for (const pose of closedPoses(assembly, posted)) {
    if (!isKnown(pose)) throw new Error(`${fold.name} leaves creases to be solved`);
    const { orders, obstruction } = orderPlies(pose);
    if (orders.length === 0) throw new Error(`${fold.name} does not close: ${obstruction?.is}`);
  }
  return assembly.panels.size;
}

export function medianOf(times: readonly number[]): number {
  return times.toSorted((a, b) => a - b)[times.length >> 1] ?? Number.NaN;
}

/** Eight small accordions of five pages on the back of a side fold, one above the other: forty-two panels in one body. */
function largeFold(): Fold {
  const { fold, problems } = readFold(
    yamlMap(`
name: Eight accordions
units: in
pieces:
  base: { across: [front 8, valley spine, back 8], down: 10 }
  strip(k):
    each: k from 1 to 8
    across: [one 1, valley, two 1, mountain, three 1, valley, four 1, mountain, five 1]
    down: 1
joins:
  - { each: k from 1 to 8, glue: strip(k).one, onto: base.back, lay: left along spine, after: k }
poses:
  closed: {}
`),
  );
  if (fold === undefined) throw new Error(formatProblems(problems));
  return fold;
}
