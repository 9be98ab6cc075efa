import { readYaml } from '../../../plugins/content/index.ts';
import {
  type Card,
  closedPoses,
  cuttingDrawing,
  DEFAULT_MARKS,
  dryFit,
  type Fold,
  foldCard,
  isKnown,
  type Kinds,
  Length,
  type MapNode,
  makeCard,
  orderPlies,
  type PaperInUse,
  type PlyOrders,
  type Problem,
  readFold,
  recipeOf,
  type Scene,
  type SceneItem,
  SYSTEMS,
  type System,
  sayFinding,
  templatePages,
} from '../../../plugins/engine/index.ts';

/** How far a text went: no YAML, no fold, no card in some edition, or all the way in both. */
export type End = 'no-yaml' | 'no-fold' | 'no-card' | 'folded';

/** How far a text went, and the processor's milliseconds: for reading, for each edition up to its dry fit, and for drawings. */
export interface Journey {
  readonly end: End;
  readonly problems: readonly Problem[];
  readonly findings: number;
  readonly ms: Readonly<Record<Leg, number>>;
}

type Leg = 'reading' | System | `${System} drawings`;

/**
 * More of the processor than this no file may take, however slow the machine: it would be a file that never ends. That none takes
 * more than two seconds is for the benchmark to tell (`tests/bench/worst-times.ts`).
 */
export const RUNAWAY_MS = 20_000;

export function sumOf(ms: Journey['ms']): number {
  return Object.values(ms).reduce((sum, one) => sum + one, 0);
}

export interface Road {
  readonly kinds?: Kinds;
  /** Every piece is drawn as well, and printed as a template. */
  readonly draws?: boolean;
  /** Parameters that a post gives. */
  readonly given?: MapNode | undefined;
}

/** Keys of a kind's file that are for its page and not for the engine. */
const PAGE_KEYS = ['summary', 'difficulty', 'sheet', 'invented'];

/**
 * A text from YAML to the order of plies, the dry fit and its sentences, in both editions and every pose.
 *
 * Throws when it ends in neither a located problem nor a result that can be said and drawn.
 */
export function goTheWholeWay(text: string, road: Road = {}): Journey {
  const clock = new StageClock();
  const { tree, problems } = clock.during('yaml', () => readYaml(text, 'fold.md'));
  expectClear(problems);
  if (tree?.kind !== 'map') {
    const empty = /^(?:\s*(?:#.*)?\n)*\s*(?:#.*)?$/u.test(text);
    if (tree === undefined && problems.length === 0 && !empty) throw new Error('no tree and no problem');
    return { end: 'no-yaml', problems, findings: 0, ms: clock.ms };
  }
  return goOn(tree, road, clock, problems);
}

/** As `goTheWholeWay`, from a tree. */
export function goFromTree(tree: MapNode, road: Road = {}): Journey {
  return goOn(tree, road, new StageClock(), []);
}

function goOn(tree: MapNode, road: Road, clock: StageClock, ofYaml: readonly Problem[]): Journey {
  const { kinds, draws = false } = road;
  const { fold, problems: ofFold } = clock.during('fold', () =>
    readFold(tree, { alsoAllowed: PAGE_KEYS, ...(kinds && { kinds }) }),
  );
  expectClear(ofFold);
  expectAnswer(fold, ofFold);
  const problems = [...ofYaml, ...ofFold];
  if (fold === undefined) return { end: 'no-fold', problems, findings: 0, ms: clock.ms };
  let [end, findings]: [End, number] = ['folded', 0];
  for (const system of SYSTEMS) {
    clock.leg = system;
    const { card, problems: ofCard } = clock.during('card', () => makeCard(fold, requestFor(fold, system, road.given)));
    expectClear(ofCard);
    expectAnswer(card, ofCard);
    problems.push(...ofCard);
    if (card === undefined) end = 'no-card';
    else findings += followCard(card, draws, clock);
  }
  return { end, problems, findings, ms: clock.ms };
}

function requestFor(fold: Fold, system: System, parameters: MapNode | undefined): Parameters<typeof makeCard>[1] {
  return {
    system,
    mark: DEFAULT_MARKS[system],
    units: fold.units,
    parameters,
    own: undefined,
    recipe: fold.recipe,
  };
}

/** Answers with the number of findings. */
function followCard(card: Card, draws: boolean, clock: StageClock): number {
  recipeOf(card);
  const folded = clock.during('fold card', () => foldCard(card, paperFor(card)));
  const { panelling, assembly, posted } = folded;
  for (const { plies } of folded.closed) if (plies) expectOrders(plies);
  for (const stated of card.poses) {
    if (stated === posted) continue;
    for (const pose of clock.during('poses', () => closedPoses(assembly, stated))) {
      if (!isKnown(pose)) continue;
      if (pose.gaps.some(({ mm }) => !(mm >= 0 && Number.isFinite(mm)))) throw new Error(`a gap of ${stated.name}`);
      expectOrders(clock.during('plies', () => orderPlies(pose)));
    }
  }
  const findings = clock.during('dryfit', () => dryFit(folded));
  clock.during('wording', () => {
    for (const finding of findings) {
      const { says, remedy } = sayFinding(finding, card.system);
      expectSaid(says);
      if (remedy !== undefined) expectSaid(remedy);
      if (finding.place.line < 1 || finding.place.column < 1) throw new Error(`no place: ${says}`);
    }
  });
  if (draws) {
    clock.leg = `${card.system} drawings`;
    for (const piece of card.pieces)
      expectFinite(clock.during('drawing', () => cuttingDrawing(piece, panelling, { system: card.system })));
    const sheet = card.system === 'inch' ? 'letter' : 'a4';
    const pages = clock.during('template', () =>
      templatePages({ cards: [{ name: card.name, card, panelling }], system: card.system, sheet, title: card.name }),
    );
    pages.forEach(expectFinite);
  }
  return findings.length;
}

/** Ways to lie, or why there is none, or neither where finding out would take too much work. */
function expectOrders({ orders, count, obstruction }: PlyOrders): void {
  if (orders.length > 0 ? obstruction !== undefined || count === 0n : count !== (obstruction && 0n))
    throw new Error(`${orders.length} orders of ${count}, obstruction ${obstruction?.is}`);
}

/** Every stock is cut from US Letter, for no envelope. */
export function paperFor({ pieces }: Card): PaperInUse {
  const sheet = { name: 'US Letter', width: Length.fromInches('17/2'), height: Length.fromInches(11) };
  return {
    envelope: undefined,
    clearance: Length.fromInches('1/4'),
    sheets: Object.fromEntries(['', ...pieces.map(({ stock }) => stock)].map((role) => [role, sheet])),
    promised: undefined,
  };
}

/** A problem has a place, says what was written, what it takes and what to do. */
function expectClear(problems: readonly Problem[]): void {
  for (const { code, wrote, takes, remedy, place, path } of problems) {
    if (!code || !wrote || !takes || !remedy) throw new Error(`a dumb problem: ${code} at ${path}: ${wrote}`);
    if (!place.file || !(place.line >= 1) || !(place.column >= 1)) throw new Error(`${code} stands nowhere`);
    for (const said of [takes, remedy]) expectSaid(said);
  }
}

/** Either what was asked for or an error, never both and never neither. */
function expectAnswer(made: unknown, problems: readonly Problem[]): void {
  const failed = problems.some(({ severity }) => severity === 'error');
  if ((made === undefined) !== failed)
    throw new Error(made === undefined ? 'no answer and no error' : 'an answer and an error');
}

function expectSaid(sentence: string): void {
  if (sentence.trim() === '' || /\b(?:undefined|NaN|Infinity|null)\b|\[object/u.test(sentence))
    throw new Error(`no sentence: ${sentence}`);
}

function expectFinite(scene: Scene): void {
  const { width, height, items } = scene;
  if (!(width > 0 && height > 0 && Number.isFinite(width * height))) throw new Error(`a scene of ${width} x ${height}`);
  for (const item of items) if (!numbersOf(item).every(Number.isFinite)) throw new Error(`no place for a ${item.kind}`);
}

function numbersOf(value: SceneItem | object): number[] {
  return Object.values(value).flatMap((one: unknown) =>
    typeof one === 'number' ? [one] : typeof one === 'object' && one !== null ? numbersOf(one) : [],
  );
}

/** Adds up what each leg takes of the processor, and of nobody else's; tells which stage threw. */
class StageClock {
  leg: Leg = 'reading';
  readonly ms: Record<Leg, number> = { reading: 0, inch: 0, metric: 0, 'inch drawings': 0, 'metric drawings': 0 };

  during<T>(stage: string, work: () => T): T {
    const before = process.threadCpuUsage();
    try {
      return work();
    } catch (error) {
      throw new Error(`in ${stage}: ${error instanceof Error ? error.message : String(error)}`, { cause: error });
    } finally {
      const { user, system } = process.threadCpuUsage(before);
      this.ms[this.leg] += (user + system) / 1000;
    }
  }
}
