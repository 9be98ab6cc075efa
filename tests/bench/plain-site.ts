import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { PROJECT } from '../../plugins/commands/support/project.ts';
import type { GeneratedPost } from './generate-posts.ts';

const FILES: Readonly<Record<string, string>> = {
  'package.json': '{ "type": "module", "private": true }',
  'astro.config.mjs': `import { unified } from '@astrojs/markdown-remark';
import { defineConfig } from 'astro/config';
export default defineConfig({ cacheDir: './.cache', vite: { cacheDir: './.cache/vite' }, devToolbar: { enabled: false }, markdown: { processor: unified({}) }, build: { concurrency: 4 } });
`,
  'src/content.config.ts': `import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
export const collections = { posts: defineCollection({ loader: glob({ pattern: '*/index.md', base: './content/posts' }) }) };
`,
  'src/layout.astro': `---
const { title } = Astro.props;
---
<!doctype html>
<html lang="en"><head><meta charset="utf-8"><title>{title}</title></head><body><h1>{title}</h1><slot /></body></html>
`,
  'src/pages/index.astro': `---
import { getCollection } from 'astro:content';
import Layout from '../layout.astro';
const posts = await getCollection('posts');
---
<Layout title="Posts"><ul>{posts.map(({ id, data }) => <li><a href={\`/projects/\${id}/\`}>{data.title}</a></li>)}</ul></Layout>
`,
  'src/pages/projects/[...id].astro': `---
import { getCollection, render } from 'astro:content';
import Layout from '../../layout.astro';
export async function getStaticPaths() {
  return (await getCollection('posts')).map((post) => ({ params: { id: post.id }, props: { post } }));
}
const { post } = Astro.props;
const { Content } = await render(post);
---
<Layout title={post.data.title}><Content /></Layout>
`,
};

/** What is measured against: the same Markdown through plain Astro, a minimal layout and nothing else. */
export class PlainSite {
  readonly folder = mkdtempSync(join(tmpdir(), 'plain-'));
  readonly dist = join(this.folder, 'dist');

  constructor(posts: readonly GeneratedPost[]) {
    for (const [file, text] of Object.entries(FILES)) this.write(file, text);
    for (const { slug, text } of posts) this.write(`content/posts/${slug}/index.md`, text);
    symlinkSync(join(PROJECT, 'node_modules'), join(this.folder, 'node_modules'), 'dir');
  }

  write(file: string, text: string): void {
    mkdirSync(dirname(join(this.folder, file)), { recursive: true });
    writeFileSync(join(this.folder, file), text);
  }

  discard(): void {
    rmSync(this.folder, { recursive: true, force: true });
  }
}
