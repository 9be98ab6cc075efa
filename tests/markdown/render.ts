import { type MarkdownRenderer, unified } from '@astrojs/markdown-remark';
import { processorOptions } from '../../plugins/astro/markdown-processor.ts';
import { DEFAULT_MARKS, type Problem } from '../../plugins/engine/index.ts';
import { asFrontmatter, type BodyContext } from '../../plugins/markdown/index.ts';

export interface Rendered {
  readonly html: string;
  readonly problems: readonly Problem[];
  readonly headings: readonly { depth: number; slug: string; text: string }[];
}

/** Renders Markdown as the site does, with the same plugins in the same order. */
export async function render(markdown: string, context: Partial<BodyContext> = {}): Promise<Rendered> {
  const problems: Problem[] = [];
  const full = {
    file: 'post.md',
    placing: true,
    cards: ['card'],
    marks: DEFAULT_MARKS,
    decimalComma: false,
    ...context,
    problems,
  };
  const { code, metadata } = await (await renderer()).render(markdown, { frontmatter: asFrontmatter(full) });
  return { html: code, problems, headings: metadata.headings };
}

/** The same text through the same Markdown without the project's plugins. */
export async function renderPlain(markdown: string): Promise<string> {
  const plain = unified({ smartypants: true });
  const { code } = await (await plain.createRenderer({ syntaxHighlight: false })).render(markdown);
  return code;
}

function renderer(): Promise<MarkdownRenderer> {
  return unified(processorOptions([], [])).createRenderer({ syntaxHighlight: false });
}

/** What a reader sees: tags, screen readers' words and character references taken away. */
export function seen(html: string): string {
  return html
    .replace(/<span class="measure-spoken">.*?<\/span>/g, '')
    .replace(/<[^>]*>/g, '')
    .replaceAll('&#x3C;', '<')
    .replaceAll('&lt;', '<')
    .replaceAll('&amp;', '&')
    .replaceAll('&#x26;', '&');
}
