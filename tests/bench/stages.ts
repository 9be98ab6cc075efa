import {
  computeProject,
  foldOf,
  type Library,
  type Post,
  type Project,
  readPost,
  type SourceFile,
  summarise,
} from '../../plugins/content/index.ts';
import {
  type Card,
  cuttingDrawing,
  dryFit,
  type FoldedCard,
  foldCard,
  Length,
  makeCard,
  type PageScene,
  panelsOf,
  renderSvg,
  type Scene,
  templatePages,
} from '../../plugins/engine/index.ts';

/** Milliseconds a post by stage, over all posts; each stage is run for all before the next begins. */
export type StageTimes = Readonly<Record<string, number>>;

export interface StagesInput {
  readonly library: Library;
  readonly files: readonly SourceFile[];
  /** Renders the pages of one template; PDF needs fonts and a library that the engine does not have. */
  readonly renderPages: (pages: readonly PageScene[], title: string) => Promise<unknown>;
}

/** Puts every post through every stage, in the inch edition with its template on Letter. */
export async function timeStages({ library, files, renderPages }: StagesInput): Promise<StageTimes> {
  const times: Record<string, number> = {};
  const stage = async <In, Out>(
    name: string,
    inputs: readonly In[],
    work: (input: In) => Out | Promise<Out>,
  ): Promise<Out[]> => {
    const begin = performance.now();
    const outputs: Out[] = [];
    for (const input of inputs) outputs.push(await work(input));
    times[name] = (performance.now() - begin) / files.length;
    return outputs;
  };

  const posts = present(await stage('read', files, (file) => readPost(file).entry));
  const cards = present(await stage('spec', posts, (post) => cardOf(library, post)));
  await stage('panels', cards, (card) => panelsOf(card));
  // Folding cuts into panels again, so its own part is what it takes beyond them.
  const folded = await stage('assembly', cards, (card) => foldCard(card, PAPER));
  times['assembly'] = Math.max(0, (times['assembly'] ?? 0) - (times['panels'] ?? 0));
  await stage('dryfit', folded, (card) => dryFit(card));
  const scenes = await stage('drawings', folded, (card) => drawingsOf(card));
  await stage('svg', scenes, ({ cutting }) => cutting.map((scene, i) => renderSvg(scene, { idPrefix: `bench-${i}` })));
  await stage('pdf', scenes, ({ pages }) => renderPages(pages, 'Bench'));
  const projects: Project[] = posts.map((post) => computeProject(library, post).project);
  await stage('json', projects, (project) => JSON.stringify(summarise(project)));
  return times;
}

const PAPER: Omit<FoldedCard, 'card' | 'panelling' | 'closed'> = {
  envelope: undefined,
  clearance: Length.fromInches('1/8'),
  sheets: {},
  promised: undefined,
};

function cardOf(library: Library, post: Post): Card | undefined {
  const [spec] = post.cards;
  const kind = library.folds.get(spec?.kind?.text ?? '');
  if (spec === undefined || kind === undefined) return undefined;
  return makeCard(foldOf(kind), {
    system: 'inch',
    mark: Length.fromInches('1/16'),
    units: post.units,
    parameters: spec.parameters,
    own: spec.own.inch,
    recipe: [],
  }).card;
}

function drawingsOf({ card, panelling }: FoldedCard): { cutting: Scene[]; pages: readonly PageScene[] } {
  return {
    cutting: card.pieces.map((piece) => cuttingDrawing(piece, panelling, { system: 'inch' })),
    pages: templatePages({ card, panelling, sheet: 'letter', title: 'Bench' }),
  };
}

function present<T>(values: readonly (T | undefined)[]): T[] {
  return values.filter((value) => value !== undefined);
}

/** A fixed piece of work, in milliseconds: what this machine is like now, to compare runs by. */
export function timeReferenceLoop(): number {
  const begin = performance.now();
  let sum = 0;
  for (let i = 1; i <= 50_000_000; i++) sum += 1 / i;
  if (sum < 18) throw new Error('the harmonic sum of fifty million terms is above 18');
  return performance.now() - begin;
}
