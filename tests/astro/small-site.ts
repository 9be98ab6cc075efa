import { spawn } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';

const ROOT = path.resolve(import.meta.dirname, '../..');

/** A small site of its own in a temporary folder, with a copy of the project's plugins that a test may change. */
export interface SmallSite {
  readonly root: string;
  write(file: string, text: string): void;
  read(file: string): string;
  has(file: string): boolean;
  remove(file: string): void;
  /** Runs `astro build` in a process of its own. */
  build(): Promise<{ readonly code: number | null; readonly output: string }>;
  /** Files whose text went through the Markdown plugins since this was last asked, sorted. */
  rendered(): readonly string[];
  discard(): void;
}

export function makeSmallSite(): SmallSite {
  const root = mkdtempSync(path.join(tmpdir(), 'creasewright-'));
  const at = (file: string): string => path.join(root, file);
  const site: SmallSite = {
    root,
    write(file, text) {
      mkdirSync(path.dirname(at(file)), { recursive: true });
      writeFileSync(at(file), text);
    },
    read: (file) => readFileSync(at(file), 'utf8'),
    has: (file) => existsSync(at(file)),
    remove: (file) => rmSync(at(file), { recursive: true }),
    build: () => run(root, ['build']),
    rendered() {
      const log = at('rendered.log');
      const names = existsSync(log) ? readFileSync(log, 'utf8').trim().split('\n') : [];
      rmSync(log, { force: true });
      return names.sort();
    },
    discard: () => rmSync(root, { recursive: true, force: true }),
  };
  cpSync(path.join(ROOT, 'plugins'), at('plugins'), { recursive: true });
  for (const file of [
    'package.json',
    'package-lock.json',
    'tsconfig.json',
    'site/content.config.ts',
    'site/lib/library.ts',
    'site/lib/places.ts',
  ]) {
    cpSync(path.join(ROOT, file), at(file));
  }
  symlinkSync(path.join(ROOT, 'node_modules'), at('node_modules'), 'dir');
  for (const [file, text] of Object.entries(FILES)) site.write(file, text);
  writeFileSync(at('content/posts/ferry/low-water.png'), Buffer.from(GREY_PIXEL, 'base64'));
  return site;
}

/** The command line of Astro, run by this Node. Resolves when it has ended. */
export function astroProcess(root: string, args: readonly string[]) {
  return spawn(process.execPath, [path.join(ROOT, 'node_modules/astro/bin/astro.mjs'), ...args], {
    cwd: root,
    env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', NO_COLOR: '1', FORCE_COLOR: '0', NODE_ENV: '', VITEST: '' },
  });
}

function run(root: string, args: readonly string[]): Promise<{ code: number | null; output: string }> {
  const child = astroProcess(root, args);
  let output = '';
  child.stdout.on('data', (part) => (output += part));
  child.stderr.on('data', (part) => (output += part));
  return new Promise((resolve, reject) => {
    child.on('error', reject);
    child.on('close', (code) => resolve({ code, output }));
  });
}

/** A PNG of one grey pixel. */
const GREY_PIXEL = 'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg==';

const POST = (title: string, text: string): string => `---
title: ${title}
summary: A small card.
date: 2026-10-03
units: in
supplies:
  - { use: kraft, for: The card base }
fold: { side-fold: { width: 5 } }
stock: { cover: kraft }
---

${text}
`;

const FILES: Readonly<Record<string, string>> = {
  'astro.config.mjs': `
import { appendFileSync } from 'node:fs';
import { defineConfig } from 'astro/config';
import { creasewright } from './plugins/astro/index.ts';

const watch = () => (tree, file) => appendFileSync(new URL('rendered.log', import.meta.url), file.path.split('/content/')[1] + '\\n');

export default defineConfig({
  srcDir: './site',
  cacheDir: './.cache/astro',
  devToolbar: { enabled: false },
  vite: { cacheDir: './.cache/vite' },
  integrations: [creasewright({ remarkPlugins: [watch] })],
});
`,
  'site/pages/projects/[slug].astro': `---
import { getBody, getProjects, pageKeyOf } from '../../lib/library.ts';
import Parts from '../../parts.astro';

export async function getStaticPaths() {
  const projects = await getProjects();
  return Promise.all(
    projects.map(async (project) => ({
      params: { slug: project.slug },
      props: { project },
      cacheKey: await pageKeyOf(project.slug),
    })),
  );
}
const { project } = Astro.props;
const { Content } = await getBody('posts', project.slug);
---
<!doctype html>
<html lang="en"><head><title>{project.post.title}</title></head><body>
<ul>{project.cards.map((card) => <li>{card.kind.name}: {Object.values(card.stock).map(({ name }) => name)}</li>)}</ul>
<Parts><Content /></Parts>
</body></html>
`,
  'site/pages/index.astro': `---
import { getBlog, getKinds, getProjects, getSupplies, getTechniques } from '../lib/library.ts';
const lists = [await getProjects(), await getKinds(), await getSupplies(), await getTechniques()];
---
<!doctype html>
<html lang="en"><head><title>{(await getBlog()).title}</title></head><body>
{lists.map((list) => <p>{list.map((entry) => entry.slug ?? entry.name).join(', ')}</p>)}
</body></html>
`,
  'site/parts.astro': `---
import { splitPlaces } from './lib/library.ts';
const parts = splitPlaces(await Astro.slots.render('default'));
---
{parts.map((part) => part.kind === 'html' ? <Fragment set:html={part.html} /> : <b>{part.place} of {part.card}</b>)}
`,
  'content/blog.yaml': `title: Saltmarsh Paper
author: The studio
address: https://saltmarsh-paper.example
language: en-GB
units: in
invented: yes
`,
  'content/folds/side-fold.md': `---
name: Side fold
units: in
parameters:
  width: { default: 4 1/4, from: 2, to: 8, label: Width of the closed card }
  height: { default: 5 1/2, from: 2, to: 11, label: Height of the closed card }
pieces:
  base: { across: [front width, valley spine, back width], down: height }
poses:
  open: { all: flat }
  closed: {}
---

One crease down the middle.
`,
  'content/supplies/kraft.yaml': 'name: Heavy kraft\ncategory: cardstock\nweight: 80 lb cover\ninvented: yes\n',
  'content/techniques/scoring.md':
    '---\nname: Scoring\nsummary: A line pressed into the paper.\n---\n\nPress lightly.\n',
  'content/posts/curlew/index.md': POST(
    'Curlew',
    'Cut the mat 5 1/2 in wide.\n\n::drawing{card=card}\n\nThen score at 10:30.',
  ),
  'content/posts/ferry/index.md': POST('Ferry', 'A ferry at low water.\n\n![Low water](./low-water.png)'),
};
