import { type MapNode, type SourceNode, type TextNode, valueAt } from '../diagnostics/index.ts';
import type { Unit } from '../units/index.ts';
import type { FormSpec } from './piece-specs.ts';
import { readAway, readSpots } from './read-away.ts';
import { FORM_KEYS, readForm } from './read-forms.ts';
import { LINE_KEYS, readLines } from './read-lines.ts';
import { expressionAt } from './read-parameters.ts';
import { checkName, mapOr, namedEntries, textOr } from './read-parts.ts';
import { readShapes } from './read-shapes.ts';
import { readSizeOf, TAKES_SIZE } from './read-size.ts';
import { readStrip } from './read-strip.ts';
import { oneOf } from './read-words.ts';
import { checkKeys, join, type Report, suggest } from './report.ts';
import type { PieceSpec } from './types.ts';
import { EDGES } from './words.ts';

const KEYS = [
  ...['size', 'circle', 'ellipse', 'rounded', 'radius', 'outline', 'across', 'down'],
  ...Object.keys(LINE_KEYS),
  ...['windows', 'shapes', 'corners', 'away', 'panels', 'stock', 'thick', 'grain'],
];

const TAKES_PIECE = 'a size as `4 1/4 x 5 1/2`, or a group with `across` and `down`';

/** A piece of which no more is said than its size. */
export const PLAIN = {
  ...{ form: undefined, lines: [], windows: [], shapes: [], away: [], corners: undefined, spots: [] },
  ...{ thick: undefined, grain: undefined },
} as const;

/** The role of the paper that a piece is cut from when it says nothing. */
export const USUAL_STOCK = 'cover';

/** `pieces`: each a plain size, or bands across and down. */
export function readPieces(
  node: SourceNode | undefined,
  path: string,
  units: Unit | undefined,
  report: Report,
): PieceSpec[] {
  const map = mapOr(node, path, 'a group of pieces by name', report);
  if (map === undefined) return [];
  return namedEntries(map, path, report).flatMap(({ key, value }) => {
    const here = join(path, key.text);
    const named = checkName(key, here, 'a name for the piece', false, report) && notAnEdge(key, here, report);
    const piece = readPiece(key, value, here, units, report);
    return named && piece ? [piece] : [];
  });
}

function notAnEdge(key: TextNode, path: string, report: Report): boolean {
  if (!(EDGES as readonly string[]).includes(key.text)) return true;
  const takes = 'a name for the piece other than left, right, top and bottom';
  report.at(key.place, path, {
    code: 'edge-name',
    wrote: key.text,
    takes,
    remedy: `Call it \`${key.text}-piece\`, say.`,
  });
  return false;
}

function readPiece(
  key: TextNode,
  node: SourceNode,
  path: string,
  units: Unit | undefined,
  report: Report,
): PieceSpec | undefined {
  const plain = { ...PLAIN, name: key.text, stock: USUAL_STOCK, across: undefined, down: undefined };
  const where = { place: key.place, path };
  if (node.kind === 'text' && node.text.trim() !== '') {
    const size = readSizeOf(node, path, units, report);
    return size && { ...plain, size, ...where };
  }
  const map = mapOr(node, path, TAKES_PIECE, report);
  if (map === undefined) return undefined;
  checkKeys(map, path, { known: KEYS }, report);
  const sizeText = textOr(valueAt(map, 'size'), join(path, 'size'), TAKES_SIZE, report);
  const size = sizeText && readSizeOf(sizeText, join(path, 'size'), units, report);
  const [acrossNode, downNode] = [valueAt(map, 'across'), valueAt(map, 'down')];
  const across = acrossNode && readStrip(acrossNode, 'across', join(path, 'across'), units, report);
  const down = downNode && readStrip(downNode, 'down', join(path, 'down'), units, report);
  const shaped = FORM_KEYS.some((name) => valueAt(map, name) !== undefined);
  const form = shaped ? readOwnForm(map, path, units, report) : undefined;
  if (!shaped) checkSides(map, path, { size: valueAt(map, 'size'), across: acrossNode, down: downNode }, report);
  const upon = readUpon(map, path, units, report);
  const failed = (shaped && !form) || (valueAt(map, 'size') && !size) || (acrossNode && !across) || (downNode && !down);
  if (failed || (!form && !size && !(across && down))) return undefined;
  const whole = form && 'width' in form ? { width: form.width, height: form.height, place: key.place } : size;
  const piece: PieceSpec = { name: key.text, size: whole, across, down, form, ...upon, ...where };
  checkRest(piece, report);
  return piece;
}

/** A shape other than a plain sheet, which then has neither a size nor bands beside it. */
function readOwnForm(map: MapNode, path: string, units: Unit | undefined, report: Report): FormSpec | undefined {
  const sides = ['size', 'across', 'down'].filter((name) => valueAt(map, name) !== undefined);
  const form = readForm(map, path, [...FORM_KEYS, ...sides], 'one shape', units, report);
  return sides.length === 0 ? form : undefined;
}

/** What is done to a piece, and what it is made of. */
function readUpon(
  map: MapNode,
  path: string,
  units: Unit | undefined,
  report: Report,
): Omit<PieceSpec, 'name' | 'size' | 'across' | 'down' | 'form' | 'place' | 'path'> {
  const at = (key: string): [SourceNode | undefined, string] => [valueAt(map, key), join(path, key)];
  const cornersNode = textOr(...at('corners'), '`away` or `tabs`', report);
  const thick = valueAt(map, 'thick');
  return {
    lines: Object.entries(LINE_KEYS).flatMap(([key, does]) => readLines(...at(key), does, units, report)),
    windows: readShapes(...at('windows'), false, units, report),
    shapes: readShapes(...at('shapes'), true, units, report),
    away: readAway(...at('away'), units, report),
    corners: cornersNode && oneOf(cornersNode, ['away', 'tabs'] as const, join(path, 'corners'), report),
    spots: readSpots(...at('panels'), units, report),
    thick: thick && expressionAt(thick, join(path, 'thick'), units, report),
    stock: textOr(...at('stock'), 'the role of the paper, as `cover`', report)?.text.trim() ?? USUAL_STOCK,
    grain: readGrain(map, path, report),
  };
}

/** Both sides must be known: from `size`, or from `across` and `down`. */
function checkSides(
  map: MapNode,
  path: string,
  sides: Record<'size' | 'across' | 'down', SourceNode | undefined>,
  report: Report,
): void {
  if (sides.size || (sides.across && sides.down)) return;
  const missing = sides.across ? '`down`' : sides.down ? '`across`' : '`size`';
  const remedy = `Add ${missing}${missing === '`size`' ? ', or `across` and `down`' : ': the other side of the piece'}.`;
  report.at(map.place, path, { code: 'side-missing', wrote: `a piece without ${missing}`, takes: TAKES_PIECE, remedy });
}

/** One band a strip may be `rest`, and only where the whole is stated. */
function checkRest(piece: PieceSpec, report: Report): void {
  for (const strip of [piece.across, piece.down]) {
    const open = strip?.bands.filter((band) => band.size === undefined) ?? [];
    open.forEach((band, index) => {
      const wrote = `${band.name ?? ''} rest`;
      if (index > 0) {
        const remedy = 'Give one of the two bands its size.';
        report.at(band.place, band.path, { code: 'two-rests', wrote, takes: 'one `rest` a strip', remedy });
      } else if (piece.size === undefined) {
        const takes = '`rest` where the whole size is stated';
        const remedy = `Add \`size: A x B\` to \`${piece.name}\`, or give \`${band.name}\` its size.`;
        report.at(band.place, band.path, { code: 'rest-of-what', wrote, takes, remedy });
      }
    });
  }
}

function readGrain(map: MapNode, path: string, report: Report): 'across' | 'down' | undefined {
  const node = textOr(valueAt(map, 'grain'), join(path, 'grain'), '`across` or `down`', report);
  const word = node?.text.trim();
  if (word === undefined || word === 'across' || word === 'down') return word;
  if (node) {
    const remedy = suggest(
      word,
      ['across', 'down'],
      'Write `down` when the grain runs from top to bottom of the drawing.',
    );
    report.at(node.place, join(path, 'grain'), {
      code: 'unknown-word',
      wrote: word,
      takes: '`across` or `down`',
      remedy,
    });
  }
  return undefined;
}
