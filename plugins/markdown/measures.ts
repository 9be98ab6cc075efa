import type { PhrasingContent, Root, RootContent, Text } from 'mdast';
import { type Fault, findMeasures, type Measure, type Place, type Problem } from '../engine/index.ts';
import { type BodyContext, bodyContextOf, type MarkdownFile } from './body-context.ts';
import { ClosedHtml } from './closed-html.ts';
import { followHtml, type InlineRun, readRun, type Segment } from './inline-run.ts';
import { measureNode } from './measure-node.ts';
import { type SourceMap, sourceMap } from './source-map.ts';

/**
 * Remark plugin: every measure in the prose is given in both systems.
 *
 * Left alone: code, links, raw HTML that is closed (see `ClosedHtml`), headings (whose words make the page's addresses),
 * and a measure with a backslash before it or within it: `\5 1/2 in`, `5 1\/2 in`. The backslash itself is not shown. A
 * doubtful measure (`53/4 in`) stays as it was written, and is a warning.
 */
export function measures() {
  return (tree: Root, file: MarkdownFile): void => {
    const context = bodyContextOf(file);
    if (context === undefined) return;
    const html = new ClosedHtml();
    const source = String(file);
    const read = (node: RootContent): void => {
      if (node.type === 'paragraph' || node.type === 'tableCell' || node.type === 'heading') {
        markRun(readRun(node, html), node.type === 'heading', source, context);
      } else if ('children' in node) for (const child of node.children) read(child);
      else followHtml(node, html);
    };
    for (const child of tree.children) read(child);
  };
}

/** A stretch of a text node: a measure to mark, or an escaping backslash to take out. */
interface Change {
  readonly start: number;
  readonly end: number;
  readonly measure: Measure | undefined;
}

function markRun(run: InlineRun, heading: boolean, source: string, context: BodyContext): void {
  const changes = new Map<Segment, Change[]>();
  const maps = new Map<Segment, SourceMap | undefined>();
  const mapOf = (segment: Segment): SourceMap | undefined => {
    if (!maps.has(segment)) maps.set(segment, mapFor(segment.node, source));
    return maps.get(segment);
  };
  for (const measure of findMeasures(run.text, { decimalComma: context.decimalComma })) {
    const touched = run.segments.filter((segment) => segment.start < measure.end && measure.start < segment.end);
    const covered = touched.reduce(
      (sum, { start, end }) => sum + Math.min(end, measure.end) - Math.max(start, measure.start),
      0,
    );
    const [segment] = touched;
    // Partly in code or a link.
    if (segment === undefined || covered < measure.end - measure.start) continue;
    const start = measure.start - segment.start;
    const place = placeOf(segment, start, mapOf(segment), source, context);
    if (touched.length > 1) {
      context.problems.push(splitProblem(run.text.slice(measure.start, measure.end), place));
      continue;
    }
    const end = measure.end - segment.start;
    const escaping = escapeOf(segment.node.value, start, end, mapOf(segment));
    const found = changes.get(segment) ?? [];
    changes.set(segment, found);
    if (escaping === 'before') found.push({ start: start - 1, end: start, measure: undefined });
    if (escaping !== undefined) continue;
    for (const fault of measure.faults) context.problems.push(faultProblem(fault, place));
    if (measure.faults.length === 0 && measure.lengths.length > 0 && !heading) found.push({ start, end, measure });
  }
  for (const [segment, found] of changes) apply(segment, found, context);
}

/** Whether a backslash tells that the characters from `start` to `end` are no measure. */
function escapeOf(
  text: string,
  start: number,
  end: number,
  map: SourceMap | undefined,
): 'before' | 'within' | undefined {
  if (text[start - 1] === '\\' && map?.escaped[start - 1] !== true) return 'before';
  return map?.escaped.slice(start, end).includes(true) ? 'within' : undefined;
}

function mapFor(node: Text, source: string): SourceMap | undefined {
  const from = node.position?.start.offset;
  const to = node.position?.end.offset;
  return from === undefined || to === undefined ? undefined : sourceMap(node.value, source.slice(from, to));
}

/** Where the character at `offset` of a segment stands in the file; the segment's beginning when that is all there is. */
function placeOf(
  segment: Segment,
  offset: number,
  map: SourceMap | undefined,
  source: string,
  { file }: BodyContext,
): Place {
  const start = segment.node.position?.start ?? segment.parent.position?.start;
  if (start === undefined) return { file, line: 1, column: 1 };
  const within = map?.offsets[offset];
  if (within === undefined || start.offset === undefined) return { file, line: start.line, column: start.column };
  const lines = source.slice(start.offset, start.offset + within).split('\n');
  const last = lines.at(-1)?.length ?? 0;
  return { file, line: start.line + lines.length - 1, column: lines.length === 1 ? start.column + last : last + 1 };
}

function faultProblem({ code, wrote, takes, remedy }: Fault, place: Place): Problem {
  return { code, severity: 'warning', place, path: '', wrote, takes, remedy };
}

function splitProblem(written: string, place: Place): Problem {
  return {
    code: 'measure-split',
    severity: 'warning',
    place,
    path: '',
    wrote: `${written.trim()}, with part of it emphasised or in a tag`,
    takes: 'a measure in one piece, so that it can be given in both systems',
    remedy: 'Put the stars or tags round the whole measure, or a backslash before it to leave it as it is.',
  };
}

function apply(segment: Segment, changes: readonly Change[], context: BodyContext): void {
  const { node, parent } = segment;
  if (changes.length === 0) return;
  const parts: PhrasingContent[] = [];
  let done = 0;
  const keep = (to: number): void => {
    if (to > done) parts.push({ type: 'text', value: node.value.slice(done, to) });
  };
  for (const { start, end, measure } of changes) {
    keep(start);
    if (measure !== undefined) parts.push(measureNode(measure, node.value.slice(start, end), context.marks));
    done = end;
  }
  keep(node.value.length);
  const siblings = parent.children as PhrasingContent[];
  siblings.splice(siblings.indexOf(node), 1, ...parts);
}
