import { readdirSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { makeSmallSite, type SmallSite } from './small-site.ts';

/*
 * Real builds by Astro of a small site, one after the other, so that each finds what the one before has left in its
 * caches. Nothing of the project is stood in for.
 */

const BUILD_MS = 180_000;
const CURLEW = 'dist/projects/curlew/index.html';
const TEXTS = ['folds/side-fold.md', 'posts/curlew/index.md', 'posts/ferry/index.md', 'techniques/scoring.md'];

const SINKING_PAGE = `---
import { getProjects } from '../lib/library.ts';
await new Promise((resolve) => setTimeout(resolve, 1500));
if ((await getProjects()).some(({ post }) => post.title === 'Sinking')) throw new Error('it sank');
---
<p>Afloat</p>
`;

let site: SmallSite;

beforeAll(() => {
  site = makeSmallSite();
});

afterAll(() => site.discard());

async function build(): Promise<string> {
  const { code, output } = await site.build();
  expect(output).not.toMatch(/\bat .*node_modules/);
  expect({ code, output }).toEqual({ code: 0, output });
  return output;
}

/** Every file of the built site with its bytes. */
function everyFile(): Readonly<Record<string, string>> {
  const dist = path.join(site.root, 'dist');
  const files = readdirSync(dist, { recursive: true })
    .map(String)
    .filter((file) => statSync(path.join(dist, file)).isFile());
  return Object.fromEntries(files.sort().map((file) => [file, readFileSync(path.join(dist, file), 'base64')]));
}

describe('a site built again and again', () => {
  test(
    'cold: pages, and the files beside them',
    async () => {
      await build();
      expect(site.rendered()).toEqual(TEXTS);
      const page = site.read(CURLEW);
      expect(page).toContain('Side fold: Heavy kraft');
      expect(page).toContain('<span class="measure-figure" aria-hidden="true">139.5 mm</span>');
      expect(page).toContain('<b>drawing of card</b>');
      expect(page).toContain('Then score at 10:30.');
      expect(site.read('dist/index.html')).toContain(
        '<p>curlew, ferry</p><p>Side fold</p><p>Heavy kraft</p><p>Scoring</p>',
      );
      expect(site.read('dist/projects/ferry/index.html')).toMatch(
        /<img alt="Low water"[^>]* src="\/_astro\/low-water\.[\w.-]+"/,
      );
      expect(site.read('dist/projects/curlew/template-letter.pdf').slice(0, 5)).toBe('%PDF-');
      expect(site.read('dist/projects/curlew/template-a4.pdf').slice(0, 5)).toBe('%PDF-');
      expect(JSON.parse(site.read('dist/projects/curlew/project.json'))).toMatchObject({ slug: 'curlew' });
      expect(JSON.parse(site.read('dist/project.schema.json'))).toHaveProperty('$schema');
    },
    BUILD_MS,
  );

  test(
    'warm: nothing is rendered, and every byte is the same',
    async () => {
      const before = everyFile();
      await build();
      expect(site.rendered()).toEqual([]);
      expect(everyFile()).toEqual(before);
    },
    BUILD_MS,
  );

  test(
    'warm: a page that nothing has changed for is taken from the build before, and no other is',
    async () => {
      const kept = `.cache/astro/${CURLEW}`;
      const page = site.read(kept);
      site.write(kept, page.replace('<title>', '<title>Kept: '));
      await build();
      expect(site.read(CURLEW)).toContain('<title>Kept: ');
      const parts = site.read('site/parts.astro');
      site.write('site/parts.astro', parts.replace('<b>', '<b class="tide">'));
      await build();
      expect(site.read(CURLEW)).toContain('<b class="tide">');
      expect(site.read(CURLEW)).not.toContain('Kept: ');
      site.write('site/parts.astro', parts);
      await build();
      expect(site.read(CURLEW)).toBe(page);
    },
    BUILD_MS,
  );

  test(
    'a page of a build that failed later is not taken',
    async () => {
      const post = 'content/posts/curlew/index.md';
      const [good, page] = [site.read(post), site.read(CURLEW)];
      // Fails when the other pages have been made and kept.
      site.write('site/pages/zz.astro', SINKING_PAGE);
      site.write(post, good.replace('title: Curlew', 'title: Sinking'));
      const { code } = await site.build();
      expect(code).not.toBe(0);
      expect(site.read(`.cache/astro/${CURLEW}`)).toContain('Sinking');
      site.write(post, good);
      site.remove('site/pages/zz.astro');
      await build();
      expect(site.read(CURLEW)).toBe(page);
      site.rendered();
    },
    BUILD_MS,
  );

  test(
    'a changed supply and a changed fold show everywhere, and no other text is rendered',
    async () => {
      site.write(
        'content/supplies/kraft.yaml',
        site.read('content/supplies/kraft.yaml').replace('Heavy kraft', 'Driftwood kraft'),
      );
      site.write(
        'content/folds/side-fold.md',
        site
          .read('content/folds/side-fold.md')
          .replace('name: Side fold', 'name: Tide fold')
          .replace('default: 5 1/2', 'default: 5'),
      );
      const template = site.read('dist/projects/curlew/template-letter.pdf');
      await build();
      expect(site.read(CURLEW)).toContain('Tide fold: Driftwood kraft');
      expect(site.read('dist/index.html')).toContain('<p>Tide fold</p><p>Driftwood kraft</p>');
      expect(site.read('dist/projects/curlew/project.json')).toContain('Driftwood kraft');
      expect(site.read('dist/projects/curlew/template-letter.pdf')).not.toBe(template);
      expect(site.rendered()).toEqual(['folds/side-fold.md']);
    },
    BUILD_MS,
  );

  test(
    'a changed plugin and a removed post',
    async () => {
      const plugin = 'plugins/markdown/measure-node.ts';
      site.write(plugin, site.read(plugin).replace("bracket(' (')", "bracket(' [')"));
      site.remove('content/posts/ferry');
      await build();
      expect(site.read(CURLEW)).toContain('<span class="measure-bracket"> [</span>');
      expect(site.rendered()).toEqual(TEXTS.filter((file) => !file.includes('ferry')));
      expect(site.has('dist/projects/ferry')).toBe(false);
      expect(site.read('dist/index.html')).toContain('<p>curlew</p>');
    },
    BUILD_MS,
  );

  test(
    'every problem of every file, at once, and no site',
    async () => {
      site.remove('dist');
      site.write(
        'content/posts/curlew/index.md',
        site.read('content/posts/curlew/index.md').replace('card=card', 'card=cart'),
      );
      site.write(
        'content/posts/heron/index.md',
        '---\ntitle: Heron\nsummary: One.\ndate: 2026-10-03\nfold: side-fod\n---\n\ntext\n\n::drawings\n\n![tide](./tide.png)\n',
      );
      site.write('content/supplies/kraft.yaml', 'name: Heavy kraft\ncategory: cardstok\n');
      const { code, output } = await site.build();
      expect(code).not.toBe(0);
      for (const part of [
        'curlew/index.md:14:1',
        'card=cart',
        'heron/index.md:5:7',
        'heron/index.md:10:1',
        'heron/index.md:12:9',
        '::drawings',
        'kraft.yaml:2:11',
      ]) {
        expect(output).toContain(part);
      }
      expect(output).not.toMatch(/^\s+at /m);
      expect(site.has('dist/index.html')).toBe(false);
      site.remove('content/posts/heron');
      site.write(
        'content/posts/curlew/index.md',
        site.read('content/posts/curlew/index.md').replace('card=cart', 'card=card'),
      );
      site.write('content/supplies/kraft.yaml', 'name: Heavy kraft\ncategory: cardstock\n');
    },
    BUILD_MS,
  );

  test(
    'a Markdown plugin that throws',
    async () => {
      const config = site.read('astro.config.mjs');
      const throwing = `() => (tree, file) => { if (String(file).includes('10:30')) throw new Error('the tide came in'); }`;
      site.write('astro.config.mjs', config.replace('[watch]', `[${throwing}]`));
      const { code, output } = await site.build();
      expect(code).not.toBe(0);
      expect(output).toContain('content/posts/curlew/index.md');
      expect(output).toContain('the tide came in');
      site.write('astro.config.mjs', config);
      await build();
    },
    BUILD_MS,
  );
});
