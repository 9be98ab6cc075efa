import { createMarkdownProcessor, type MarkdownRenderer } from '@astrojs/markdown-remark';
import { typesetFractions } from '../../../plugins/engine/index.ts';

let processor: Promise<MarkdownRenderer> | undefined;

/** Markdown of the reference as HTML. Figures are typeset as elsewhere, but for what stands as it is written in a file. */
export async function proseOf(markdown: string): Promise<string> {
  processor ??= createMarkdownProcessor({ syntaxHighlight: false, smartypants: false });
  const { code: html } = await (await processor).render(markdown);
  return html
    .split(/(<code>.*?<\/code>|<[^>]*>)/su)
    .map((part, index) => (index % 2 === 1 ? part : typeset(part)))
    .join('');
}

function typeset(text: string): string {
  return typesetFractions(text).replace(/\d+\u2044\d+/gu, (fraction) => `<span class="fraction">${fraction}</span>`);
}
