import { type MapNode, type SourceNode, type TextNode, valueAt } from '../diagnostics/index.ts';
import type { Unit } from '../units/index.ts';
import type { AssemblyParts, FillingSpec, MotionSpec } from './assembly-specs.ts';
import { readText } from './parse.ts';
import { readJoins } from './read-joins.ts';
import { readMassOf } from './read-mass.ts';
import { checkName, mapOr, namedEntries, textOr, wrongShape } from './read-parts.ts';
import { readPoses } from './read-poses.ts';
import { readReferences, trimmed, wordsOf } from './read-references.ts';
import { checkKeys, join, type Report } from './report.ts';

/** Keys of a fold that are read here. */
export const PART_KEYS: readonly string[] = [
  ...['joins', 'stack', 'fill', 'poses', 'motion', 'acts-as', 'posts', 'closes-within'],
];

/** Name of a motion that the file does not name. */
export const USUAL_MOTION = 'motion';

/**
 * `joins`, `stack`, `fill`, `poses`, `motion`, `acts-as`, `posts` and `closes-within` of a fold, from its tree with every `each`
 * already expanded. Problems are those of form; what names mean is asked of the pieces, in `makeAssemblyParts`.
 */
export function readAssemblyParts(tree: MapNode, units: Unit | undefined, report: Report, path = ''): AssemblyParts {
  const at = (key: string): SourceNode | undefined => valueAt(tree, key);
  const here = (key: string): string => join(path, key);
  return {
    joins: readJoins(at('joins'), here('joins'), units, report),
    stack: readStack(at('stack'), here('stack'), report),
    fillings: readFillings(at('fill'), here('fill'), units, report),
    poses: readPoses(at('poses'), here('poses'), units, report),
    motions: readMotions(at('motion'), here('motion'), report),
    actsAs: nameAt(at('acts-as'), here('acts-as'), 'a piece by its name', report),
    posts: nameAt(at('posts'), here('posts'), 'a pose by its name', report),
    closesWithin: readReferences(at('closes-within'), here('closes-within'), 'panels, as `base.front`', report),
  };
}

function nameAt(node: SourceNode | undefined, path: string, takes: string, report: Report): TextNode | undefined {
  const text = textOr(node, path, takes, report);
  return text && trimmed(text);
}

function readStack(node: SourceNode | undefined, path: string, report: Report): AssemblyParts['stack'] {
  const takes = 'pieces from the lowest to the topmost: `[backing, ring, frame]`';
  const pieces = readReferences(node, path, takes, report);
  const [only] = pieces;
  if (node && only && pieces.length === 1) {
    const remedy = 'Name at least two pieces, or leave `stack` out.';
    report.at(only.node.place, path, { code: 'stack-of-one', wrote: only.node.text, takes, remedy });
  }
  return pieces;
}

const TAKES_FILLING = 'a filling: `{ in: ring.chamber, stock: beads, full: 1/3 }`';

function readFillings(
  node: SourceNode | undefined,
  path: string,
  units: Unit | undefined,
  report: Report,
): FillingSpec[] {
  const map = mapOr(node, path, 'a group of fillings by name: `beads: { in: ring.chamber, stock: beads }`', report);
  if (map === undefined) return [];
  return namedEntries(map, path, report).flatMap(({ key, value }) => {
    const here = join(path, key.text);
    const named = checkName(key, here, 'a name for the filling', false, report);
    const filling = mapOr(value, here, TAKES_FILLING, report);
    if (filling === undefined) return [];
    checkKeys(filling, here, { known: ['in', 'stock', 'full', 'mass'] }, report);
    if (valueAt(filling, 'in') === undefined) {
      report.at(filling.place, here, {
        code: 'key-missing',
        wrote: 'a filling without `in`',
        takes: TAKES_FILLING,
        remedy: 'Add `in:` with the piece and its window, as `ring.chamber`.',
      });
    }
    const inside = nameAt(valueAt(filling, 'in'), join(here, 'in'), 'a window, as `ring.chamber`', report);
    const stock = textOr(valueAt(filling, 'stock'), join(here, 'stock'), 'what it is filled with', report);
    const fullNode = textOr(valueAt(filling, 'full'), join(here, 'full'), 'how full it is, as `1/3`', report);
    const full = fullNode && readText(fullNode, join(here, 'full'), units, report);
    const mass = readMassOf(valueAt(filling, 'mass'), join(here, 'mass'), report);
    if (!named || inside === undefined) return [];
    const said = { inside, stock: stock?.text.trim() ?? key.text, full, mass };
    return [{ name: key.text, ...said, place: key.place, path: here }];
  });
}

/** One list of poses, or several by name. */
function readMotions(node: SourceNode | undefined, path: string, report: Report): MotionSpec[] {
  if (node === undefined) return [];
  const takes = 'poses in the order of the hands: `[closed, half, open]`';
  const poses = (list: SourceNode, here: string): MotionSpec['poses'] => {
    const words = wordsOf(list, here, takes, report);
    if (words.length === 1) report.at(list.place, here, wrongShape(list, `${takes}, at least two`));
    return words;
  };
  if (node.kind !== 'map') return [{ name: USUAL_MOTION, poses: poses(node, path), place: node.place, path }];
  return namedEntries(node, path, report).flatMap(({ key, value }) => {
    const here = join(path, key.text);
    const named = checkName(key, here, 'a name for the motion', false, report);
    return named ? [{ name: key.text, poses: poses(value, here), place: key.place, path: here }] : [];
  });
}
