import type { RehypePlugins, RemarkPlugin, RemarkPlugins, UnifiedProcessorOptions } from '@astrojs/markdown-remark';
import remarkSmartypants from 'remark-smartypants';
import { blockDirectives, measures, places } from '../markdown/index.ts';

/**
 * How all texts are read: the project's own plugins, then the given ones.
 *
 * Typographic quotes come last: they would turn the inch mark of `5 1/2"` into a closing quote, and change the length of
 * texts before their places were taken.
 */
export function processorOptions(remark: RemarkPlugins, rehype: RehypePlugins): UnifiedProcessorOptions {
  const own = [blockDirectives, places, measures] as RemarkPlugins;
  return {
    smartypants: false,
    remarkPlugins: [...own, ...remark, remarkSmartypants as RemarkPlugin],
    rehypePlugins: rehype,
  };
}
