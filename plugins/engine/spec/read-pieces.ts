import { type MapNode, type SourceNode, type TextNode, valueAt } from '../diagnostics/index.ts';
import type { Unit } from '../units/index.ts';
import { difference, type Expression } from './expression.ts';
import { readExpression, readPair } from './parse.ts';
import { checkName, mapOr, namedEntries, textOr } from './read-parts.ts';
import { readStrip } from './read-strip.ts';
import { checkKeys, join, type Report, suggest } from './report.ts';
import type { PieceSpec } from './types.ts';
import { EDGES } from './words.ts';

const KEYS = {
  known: ['size', 'across', 'down', 'stock', 'grain'],
  later: [
    ...['circle', 'ellipse', 'rounded', 'outline', 'creases', 'cuts', 'perforations', 'marks', 'windows', 'shapes'],
    ...['corners', 'away', 'thick', 'each', 'panels', 'stays-with', 'at', 'inset', 'acts-as'],
  ],
};

const TAKES_PIECE = 'a size as `4 1/4 x 5 1/2`, or a group with `across` and `down`';
const TAKES_SIZE = 'a size as `4 1/4 x 5 1/2`, or `base less 1/8`';

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
  const plain = { name: key.text, stock: USUAL_STOCK, grain: undefined, across: undefined, down: undefined };
  const where = { place: key.place, path };
  if (node.kind === 'text' && node.text.trim() !== '') {
    const size = readSizeOf(node, path, units, report);
    return size && { ...plain, size, ...where };
  }
  const map = mapOr(node, path, TAKES_PIECE, report);
  if (map === undefined) return undefined;
  checkKeys(map, path, KEYS, report);
  const sizeText = textOr(valueAt(map, 'size'), join(path, 'size'), TAKES_SIZE, report);
  const size = sizeText && readSizeOf(sizeText, join(path, 'size'), units, report);
  const [acrossNode, downNode] = [valueAt(map, 'across'), valueAt(map, 'down')];
  const across = acrossNode && readStrip(acrossNode, 'across', join(path, 'across'), units, report);
  const down = downNode && readStrip(downNode, 'down', join(path, 'down'), units, report);
  checkSides(map, path, { size: valueAt(map, 'size'), across: acrossNode, down: downNode }, report);
  const stock = textOr(
    valueAt(map, 'stock'),
    join(path, 'stock'),
    'the role of the paper, as `cover`',
    report,
  )?.text.trim();
  const grain = readGrain(map, path, report);
  const failed = (valueAt(map, 'size') && !size) || (acrossNode && !across) || (downNode && !down);
  if (failed || (!size && !(across && down))) return undefined;
  const piece: PieceSpec = { name: key.text, size, across, down, stock: stock ?? USUAL_STOCK, grain, ...where };
  checkRest(piece, report);
  return piece;
}

/** `A x B`, or `PIECE less D`: smaller by D all round. */
function readSizeOf(
  node: TextNode,
  path: string,
  units: Unit | undefined,
  report: Report,
): NonNullable<PieceSpec['size']> | undefined {
  const less = /^(\s*)([\p{L}][\p{L}\p{N}.-]*)(\s+less\s+)(\S.*)$/u.exec(node.text);
  if (!less) {
    const pair = readPair({ node, offset: 0, path }, node.text, units, report);
    return pair && { ...pair, place: node.place };
  }
  const [lead, piece, word, margin] = [less[1] ?? '', less[2] ?? '', less[3] ?? '', less[4] ?? ''];
  const written = { node, offset: lead.length + piece.length + word.length, path };
  const once = readExpression(written, margin, units, report);
  if (once === undefined) return undefined;
  const both: Expression = { ...once, root: twice(once) };
  const side = (name: 'width' | 'height'): Expression =>
    difference(measureOf({ node, offset: lead.length, path }, piece, name), both);
  return { width: side('width'), height: side('height'), place: node.place };
}

function twice(expression: Expression): Expression['root'] {
  const { start, end } = expression.root;
  return { is: 'operation', operator: '+', left: expression.root, right: expression.root, start, end };
}

function measureOf(written: Expression['written'], piece: string, side: 'width' | 'height'): Expression {
  const root = { is: 'measure', path: piece.split('.'), side, start: 0, end: piece.length } as const;
  return { written, text: piece, units: undefined, root };
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
