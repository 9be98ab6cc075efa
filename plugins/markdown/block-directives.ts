import type { Root } from 'mdast';
import remarkDirective from 'remark-directive';
import type {} from 'remark-parse';
import type { Processor } from 'unified';

/**
 * Remark plugin: `::name{...}` on a line of its own, and nothing within a line.
 *
 * remark-directive also reads `:name` within a line, and so swallows the `30` of `10:30`, the `4` of `3:4` and the
 * `score` of `in:score`. That part of its syntax is taken out before anything is parsed, so that such text stays as it
 * was written, with the Markdown in it.
 */
export function blockDirectives(this: Processor<Root>): undefined {
  remarkDirective.call(this);
  const extensions = this.data().micromarkExtensions ?? [];
  const added = extensions.pop();
  if (added === undefined) throw new Error('remark-directive added no syntax');
  const { text: _withinLines, ...blocks } = added as { text?: unknown };
  extensions.push(blocks);
  return undefined;
}
