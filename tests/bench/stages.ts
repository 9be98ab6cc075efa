import {
  computeProject,
  foldOf,
  type Library,
  type Post,
  readPost,
  type SourceFile,
  summarise,
} from '../../plugins/content/index.ts';
import {
  type Card,
  cuttingDrawing,
  dryFit,
  foldCard,
  Length,
  makeCard,
  type PageScene,
  type Panelling,
  type PaperInUse,
  panelsOf,
  renderSvg,
  type Scene,
  templatePages,
} from '../../plugins/engine/index.ts';

/** The stages in the order in which a post goes through them. */
export const STAGES = ['read', 'spec', 'panels', 'assembly', 'dryfit', 'drawings', 'svg', 'pdf', 'json'] as const;

/** Milliseconds of the processor, a post, by stage: the same whatever else the machine does. */
export type StageTimes = Readonly<Record<(typeof STAGES)[number], number>>;

export interface StagesInput {
  readonly library: Library;
  readonly files: readonly SourceFile[];
  /** Makes a PDF of pages: needs fonts and a library that the engine does not have. */
  readonly makePdf: (pages: readonly PageScene[]) => Promise<unknown>;
}

/**
 * Puts every post through every stage, in the inch edition with its template on Letter. Each stage is run for all posts
 * before the next begins.
 */
export async function timeStages({ library, files, makePdf }: StagesInput): Promise<StageTimes> {
  const read = await timeEach(files, (file) => readPost(file).entry);
  const posts = present(read.outputs);
  const spec = await timeEach(posts, (post) => cardOf(library, post));
  const cards = present(spec.outputs);
  const panels = await timeEach(cards, (card) => panelsOf(card));
  const folding = await timeEach(cards, (card) => foldCard(card, PAPER));
  const fitting = await timeEach(folding.outputs, (folded) => dryFit(folded));
  const drawing = await timeEach(folding.outputs, (folded) => drawingsOf(folded));
  const svg = await timeEach(drawing.outputs, ({ cutting }) =>
    cutting.map((scene) => renderSvg(scene, { idPrefix: 'a' })),
  );
  const pdf = await timeEach(drawing.outputs, ({ pages }) => makePdf(pages));
  const projects = posts.map((post) => computeProject(library, post).project);
  const json = await timeEach(projects, (project) => JSON.stringify(summarise(project)));
  return {
    read: read.ms,
    spec: spec.ms,
    panels: panels.ms,
    // Folding cuts into panels again, so its own part is what it takes beyond them.
    assembly: Math.max(0, folding.ms - panels.ms),
    dryfit: fitting.ms,
    drawings: drawing.ms,
    svg: svg.ms,
    pdf: pdf.ms,
    json: json.ms,
  };
}

async function timeEach<In, Out>(
  inputs: readonly In[],
  work: (input: In) => Out | Promise<Out>,
): Promise<{ outputs: Out[]; ms: number }> {
  const begin = process.cpuUsage();
  const outputs: Out[] = [];
  for (const input of inputs) outputs.push(await work(input));
  const { user, system } = process.cpuUsage(begin);
  return { outputs, ms: (user + system) / 1000 / inputs.length };
}

const PAPER: PaperInUse = {
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

function drawingsOf(folded: { card: Card; panelling: Panelling }): { cutting: Scene[]; pages: readonly PageScene[] } {
  const { card, panelling } = folded;
  return {
    cutting: card.pieces.map((piece) => cuttingDrawing(piece, panelling, { system: 'inch' })),
    pages: templatePages({ cards: [{ name: 'Bench', ...folded }], system: 'inch', sheet: 'letter', title: 'Bench' }),
  };
}

function present<T>(values: readonly (T | undefined)[]): T[] {
  return values.filter((value) => value !== undefined);
}
