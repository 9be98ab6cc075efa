import { createMarkdownProcessor, type MarkdownRenderer } from '@astrojs/markdown-remark';

let processor: Promise<MarkdownRenderer> | undefined;

/** Markdown of the reference as HTML. */
export async function proseOf(markdown: string): Promise<string> {
  processor ??= createMarkdownProcessor({ syntaxHighlight: false, smartypants: false });
  return (await (await processor).render(markdown)).code;
}
