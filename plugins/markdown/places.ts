import type { Root, RootContent } from 'mdast';
import type {} from 'mdast-util-to-hast';
import { SKIP, visit } from 'unist-util-visit';
import type { Place, Problem } from '../engine/index.ts';
import { type BodyContext, bodyContextOf, type MarkdownFile } from './body-context.ts';
import { isPlaceName, type PlaceName } from './place-names.ts';
import * as problems from './place-problems.ts';

type Directive = Extract<RootContent, { type: 'leafDirective' | 'containerDirective' }>;

/** Line on which each thing stands, by place and card. */
type Placed = Map<string, number>;

/**
 * Remark plugin: a line such as `::drawing` or `::template{card=ferry}` at the margin becomes
 * `<div data-place="template" data-card="ferry"></div>` at the top level of the page, where the page's template puts the
 * thing itself. Anything else that was meant so is an error. Needs `blockDirectives`.
 */
export function places() {
  return (tree: Root, file: MarkdownFile): void => {
    const context = bodyContextOf(file);
    if (context === undefined) return;
    const source = String(file);
    const placed: Placed = new Map();
    visit(tree, (node, _index, parent) => {
      if (node.type === 'leafDirective' || node.type === 'containerDirective') {
        context.problems.push(...readPlace(node, parent?.type !== 'root', source, placed, context));
        return SKIP;
      }
      if (node.type === 'text' && parent?.type === 'paragraph' && node.position !== undefined) {
        context.problems.push(...malformedIn(source, node.position, context));
      }
      return undefined;
    });
  };
}

function readPlace(node: Directive, nested: boolean, source: string, placed: Placed, context: BodyContext): Problem[] {
  const begin = node.position?.start;
  const place: Place = { file: context.file, line: begin?.line ?? 1, column: begin?.column ?? 1 };
  const wrote =
    source
      .slice(begin?.offset ?? 0)
      .split('\n', 1)[0]
      ?.trim() ?? '';
  const { name } = node;
  if (node.type === 'containerDirective') return [problems.wrongColons(wrote, name, place)];
  if (!isPlaceName(name)) return [problems.unknownPlace(wrote, name, place)];
  if (!context.placing) return [problems.placeOutsidePost(wrote, place)];
  const found: Problem[] = [];
  if (nested) found.push(problems.nestedPlace(wrote, place));
  if (node.children.length > 0) found.push(problems.placeWithLabel(wrote, name, place));
  const { card, ...others } = node.attributes ?? {};
  for (const attribute of Object.keys(others)) found.push(problems.unknownAttribute(wrote, attribute, place));
  const { cards } = context;
  if (typeof card === 'string' && cards?.includes(card) === false) {
    found.push(problems.unknownCard(wrote, card, cards, place));
  } else if (cards?.length === 0 && name !== 'supplies') found.push(problems.placeWithoutCard(wrote, place));
  const earlier = earlierLine(placed, name, card ?? undefined);
  if (earlier !== undefined) found.push(problems.placedTwice(wrote, earlier, place));
  placed.set(`${name} ${card ?? ''}`, place.line);
  node.data = { hName: 'div', hProperties: { dataPlace: name, ...(card ? { dataCard: card } : {}) } };
  node.children = [];
  return found;
}

/** The line on which this thing stands already: itself, or the same of all cards, or of one when this is of all. */
function earlierLine(placed: Placed, name: PlaceName, card: string | undefined): number | undefined {
  if (card !== undefined) return placed.get(`${name} ${card}`) ?? placed.get(`${name} `);
  for (const [key, line] of placed) if (key.startsWith(`${name} `)) return line;
  return undefined;
}

const MEANT = /^[ \t]{0,3}:{2,}[ \t]*([\p{L}][\p{L}\p{N}-]*)/u;

/** What may stand before the first words of a line: spaces, and the marks of lists and quotations. */
const BEFORE = /^[\s>*+\d.)-]*$/;

/** Lines of a paragraph that begin like a place and are none, such as `::drawing {card=ferry}`. */
function malformedIn(source: string, at: NonNullable<Root['position']>, context: BodyContext): Problem[] {
  const found: Problem[] = [];
  const lines = source.slice(at.start.offset, at.end.offset).split('\n');
  lines.forEach((line, i) => {
    const meant = MEANT.exec(line);
    const startsLine = i > 0 || BEFORE.test(source.slice(0, at.start.offset).split('\n').at(-1) ?? '');
    if (meant?.[1] === undefined || !startsLine) return;
    const column = (i === 0 ? at.start.column : 1) + line.length - line.trimStart().length;
    const place = { file: context.file, line: at.start.line + i, column };
    found.push(problems.malformedPlace(line.trim(), meant[1], place));
  });
  return found;
}
