import { type MapNode, type Problem, type SourceNode, valueAt } from '../diagnostics/index.ts';
import type { Unit } from '../units/index.ts';
import { readPair, readText } from './parse.ts';
import { checkName, mapOr, textOr, wrongShape } from './read-parts.ts';
import { readScores, TAKES_SCORES } from './read-scores.ts';
import { checkKeys, join, Report } from './report.ts';
import type { RecipeStepSpec } from './types.ts';

const KEYS = { known: ['cut', 'score', 'along', 'piece'] };
const TAKES_RECIPE = 'a list of steps: `- { cut: 8 1/2 x 5 1/2, score: 4 1/4 }`';

/** More than any card has. Keeps every walk over a recipe short. */
const MOST_STEPS = 100;

/**
 * A recipe as makers say it: sheets to cut, and scores along one side of each.
 *
 * `units` is the unit of bare numbers; where a step's `cut` states its own, that serves the step's scores too.
 */
export function readRecipe(
  node: SourceNode,
  units: Unit | undefined,
  path = 'recipe',
): { steps: RecipeStepSpec[]; problems: Problem[] } {
  const report = new Report();
  const items = node.kind === 'list' ? node.items : [node];
  if (node.kind === 'list' && (items.length === 0 || items.length > MOST_STEPS)) {
    report.at(node.place, path, wrongShape(node, TAKES_RECIPE));
  }
  const steps = items.slice(0, MOST_STEPS).flatMap((item, index) => {
    const here = node.kind === 'list' ? join(path, index) : path;
    const map = mapOr(item, here, TAKES_RECIPE, report);
    const step = map && readStep(map, here, units, report);
    return step ? [step] : [];
  });
  checkSameSheets(steps, report);
  return { steps, problems: report.problems };
}

function readStep(map: MapNode, path: string, units: Unit | undefined, report: Report): RecipeStepSpec | undefined {
  const loose = looseScores(map);
  const scoreNode = valueAt(map, 'score');
  if (loose.length > 0 && scoreNode) {
    const wrote = [scoreNode.kind === 'text' ? scoreNode.text : '', ...loose].join(', ');
    const remedy = `Inside { } a comma starts a new item. Write \`score: [${wrote}]\`.`;
    report.at(scoreNode.place, join(path, 'score'), { code: 'split-by-comma', wrote, takes: TAKES_SCORES, remedy });
  }
  checkKeys(map, path, { ...KEYS, others: loose }, report);
  const cutNode = textOr(valueAt(map, 'cut'), join(path, 'cut'), 'a size as `8 1/2 x 5 1/2`', report);
  if (valueAt(map, 'cut') === undefined) {
    const remedy = 'Add `cut:` with the size of the sheet.';
    report.at(map.place, path, { code: 'cut-missing', wrote: 'a step without `cut`', takes: TAKES_RECIPE, remedy });
  }
  const cutPath = join(path, 'cut');
  const cut = cutNode && readPair({ node: cutNode, offset: 0, path: cutPath }, cutNode.text, units, report);
  const stated = cut?.height.root.is === 'number' ? cut.height.root.unit : undefined;
  const scores = readScores(scoreNode, join(path, 'score'), stated ?? units, report);
  const along = readAlong(map, join(path, 'along'), stated ?? units, report);
  const pieceNode = textOr(valueAt(map, 'piece'), join(path, 'piece'), 'the name of a piece', report);
  const named =
    pieceNode === undefined || checkName(pieceNode, join(path, 'piece'), 'the name of a piece', false, report);
  if (!cut || !cutNode || !named) return undefined;
  return { piece: pieceNode?.text, cut: { ...cut, text: cutNode.text }, ...along, scores, place: map.place, path };
}

/** Keys that are really scores: what YAML makes of `{ score: 4 1/4, 5 }`. */
function looseScores(map: MapNode): string[] {
  const isScore = /^[\d.\u00bc-\u00be\u2150-\u215e]/u;
  return map.entries.flatMap(({ key, value }) =>
    isScore.test(key.text) && value.kind === 'text' && value.text === '' ? [key.text] : [],
  );
}

const SIDES: Readonly<Record<string, NonNullable<RecipeStepSpec['side']>>> = {
  across: 'across',
  down: 'down',
  long: 'long',
  'long side': 'long',
  short: 'short',
  'short side': 'short',
};

/** `along`: the side that the scores are measured along, by its length or by a word. */
function readAlong(
  map: MapNode,
  path: string,
  units: Unit | undefined,
  report: Report,
): Pick<RecipeStepSpec, 'along' | 'side'> {
  const node = textOr(valueAt(map, 'along'), path, 'the length of a side, or `long side` or `short side`', report);
  if (node === undefined) return { along: undefined, side: undefined };
  const word = node.text.trim();
  const side = Object.hasOwn(SIDES, word) ? SIDES[word] : undefined;
  if (side) return { along: undefined, side };
  const length = readText(node, path, units, report);
  return { along: length && { length, text: node.text, place: node.place }, side: undefined };
}

/** Two steps for one piece are two scorings of one sheet, so they must cut it alike. */
function checkSameSheets(steps: readonly RecipeStepSpec[], report: Report): void {
  for (const [index, step] of steps.entries()) {
    const first = steps.slice(0, index).find((other) => other.piece !== undefined && other.piece === step.piece);
    if (!first || normal(first.cut.text) === normal(step.cut.text)) continue;
    const remedy = `Cut \`${step.piece}\` alike in both steps, or give the second sheet another name.`;
    const takes = `${first.cut.text}, as in the step before`;
    report.at(step.cut.width.written.node.place, join(step.path, 'cut'), {
      code: 'two-cuts',
      wrote: step.cut.text,
      takes,
      remedy,
    });
  }
}

function normal(text: string): string {
  return text.replace(/\s+/gu, ' ').trim();
}
