import type { Parents, PhrasingContent, RootContent, Text } from 'mdast';
import type { ClosedHtml } from './closed-html.ts';

/** A text node and the stretch of its run that it covers. */
export interface Segment {
  readonly node: Text;
  readonly parent: Parents;
  readonly start: number;
  readonly end: number;
}

/** The words of one paragraph, heading or table cell as a reader sees them, across emphasis, links and code. */
export interface InlineRun {
  readonly text: string;
  /** The text nodes that may be changed. Code, links and closed HTML are in `text` and have no segment. */
  readonly segments: readonly Segment[];
}

/** Stands in a run for something that is no text, such as an image. */
const OBJECT = '\uFFFC';

/**
 * Reads the run of a parent whose children are inline. `html` is told of raw HTML on the way.
 *
 * A backslash that Markdown left standing before a digit escapes a measure; it is a space in the run, so that the
 * measure is found and can be left alone.
 */
export function readRun(parent: Parents, html: ClosedHtml): InlineRun {
  const segments: Segment[] = [];
  let text = '';
  const read = (within: Parents): void => {
    for (const child of within.children as PhrasingContent[]) {
      if (child.type === 'text') {
        const start = text.length;
        text += child.value.replace(/\\(?=[\p{N}.,])/gu, ' ');
        if (!html.closed) segments.push({ node: child, parent: within, start, end: text.length });
      } else if (child.type === 'html') html.read(child.value);
      else if (child.type === 'break') text += '\n';
      else if (child.type === 'inlineCode' || child.type === 'link' || child.type === 'linkReference') {
        text += wordsOf(child) || OBJECT;
        followHtml(child, html);
      } else if ('children' in child) read(child);
      else text += OBJECT;
    }
  };
  read(parent);
  return { text, segments };
}

function wordsOf(node: RootContent): string {
  if (node.type === 'text' || node.type === 'inlineCode') return node.value;
  return 'children' in node ? node.children.map(wordsOf).join('') : '';
}

/** Tells `html` of the raw HTML in a node that is not read itself. */
export function followHtml(node: RootContent, html: ClosedHtml): void {
  if (node.type === 'html') html.read(node.value);
  else if ('children' in node) for (const child of node.children) followHtml(child, html);
}
