import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import { buildLibrary, readContent, readLibrary } from '../../plugins/content/index.ts';
import { hasErrors } from '../../plugins/engine/index.ts';
import { BLOG, contentOf, file, only, page, placesAndCodes, post, SCORING, SIDE_FOLD, SLATE_CARD } from './support.ts';

describe('a library', () => {
  test('holds everything by id, in the order of the ids', () => {
    const { library, problems } = buildLibrary(contentOf([post('b', 'fold: side-fold'), post('a', '')]));
    expect(problems).toEqual([]);
    expect([...(library?.posts.keys() ?? [])]).toEqual(['a', 'b']);
    expect([...(library?.folds.keys() ?? [])]).toEqual(['side-fold']);
    expect([...(library?.supplies.keys() ?? [])]).toEqual(['slate-card']);
    expect([...(library?.techniques.keys() ?? [])]).toEqual(['scoring']);
  });

  test('tells all problems of all files in one run, in reading order, each once', () => {
    const files = contentOf(
      [
        post('a', 'techniques: [scorin]\nsupplies: [slat-card]\nfold: { side-fold: { widht: 5 in } }'),
        post('b', 'fold: { side-fold: { width: 50 in } }\nstock: { covr: slate-card }\nenvelope: US A77'),
        post('c', 'title: again'),
        post('d', 'fold: sidefold'),
      ],
      {
        supplies: [SLATE_CARD, file('content/supplies/x.yaml', 'name: X\ncategory: ink\nsubstitutes: [slate-crad]\n')],
        techniques: [SCORING, page('content/techniques/y.md', 'nmae: Y\nsummary: Z')],
      },
    );
    const { library, problems } = buildLibrary(files);
    expect(library).toBeUndefined();
    expect(placesAndCodes(problems).map((told) => told.replace('content/', '').replace('/index.md', ''))).toEqual([
      'posts/a:6:14 technique-unknown',
      'posts/a:7:12 supply-unknown',
      expect.stringMatching(/^posts\/a:8:22 /),
      expect.stringMatching(/^posts\/b:6:2\d /),
      'posts/b:7:16 stock-role-unknown',
      'posts/b:8:11 size-unknown',
      'posts/c:6:1 key-twice',
      'posts/d:6:7 fold-unknown',
      'supplies/x.yaml:3:15 supply-unknown',
      'techniques/y.md:2:1 key-unknown',
    ]);
    for (const name of ['`scoring`', '`slate-card`', 'width', '8 in', '`cover: slate-card`', 'US A7', '`side-fold`']) {
      expect(
        problems.some(({ remedy, takes }) => `${takes} ${remedy}`.includes(name)),
        name,
      ).toBe(true);
    }
  });

  test('gives problems of the engine the path that they stand at', () => {
    const { problems } = buildLibrary(
      contentOf([
        post(
          'a',
          `cards:
  - { name: One, fold: side-fold }
  - name: Two
    fold: { side-fold: { width: 50 in } }
    recipe:
      - { cut: 10 x 7, score: 5 }
      - { cut: 10 x 7, skore: 5 }
    metric: { hieght: 148 mm }`,
        ),
      ]),
    );
    expect(problems.map(({ path, place }) => `${place.line} ${path}`)).toEqual([
      '9 cards[1].fold.side-fold.width',
      '12 cards[1].recipe[1].skore',
      '13 cards[1].metric.hieght',
    ]);
  });

  test('does not tell a broken kind again wherever it is used', () => {
    const broken = file(SIDE_FOLD.path, SIDE_FOLD.text.replace('pieces:', 'peices:'));
    const { problems } = buildLibrary(
      contentOf([post('a', 'fold: side-fold'), post('b', 'fold: side-fold')], { folds: [broken] }),
    );
    expect(new Set(problems.map(({ place }) => place.file))).toEqual(new Set([SIDE_FOLD.path]));
  });

  test('stands with warnings', () => {
    const { library, problems } = buildLibrary(contentOf([post('a', 'fold: side-fold\nenvelope: 5 1/4 x 53/4 in')]));
    expect(problems.map(({ severity }) => severity)).toEqual(['warning']);
    expect(library).toBeDefined();
  });

  test('needs its blog', () => {
    const { library, problems } = readLibrary(contentOf([post('a', 'date: x')], { blog: undefined }));
    expect(library).toBeUndefined();
    expect(placesAndCodes(problems)).toEqual([
      'content/blog.yaml:1:1 blog-missing',
      'content/posts/a/index.md:6:1 key-twice',
    ]);
  });

  test('can be had without the entries that have errors', () => {
    const { library, known, problems } = readLibrary(contentOf([post('a', ''), post('b', 'fold: [x]')]));
    expect(hasErrors(problems)).toBe(true);
    expect([...(library?.posts.keys() ?? [])]).toEqual(['a']);
    expect(known.fold).toEqual(['side-fold']);
  });

  test('has one file to an id, and ids that suit an address', () => {
    const { problems } = buildLibrary(
      contentOf([post('a', ''), file('content/posts/a.md', post('a', '').text), post('Two Cards', '')]),
    );
    expect(only(problems, 'id-twice')).toMatchObject({ place: { file: 'content/posts/a.md' } });
    expect(only(problems, 'file-name').remedy).toContain('two-cards');
  });

  test('stays the same when built twice', () => {
    const files = contentOf([post('a', 'fold: { side-fold: { widht: 1 } }'), post('b', 'fold: x')]);
    expect(buildLibrary(files)).toEqual(buildLibrary(files));
  });
});

describe('reading from disk', () => {
  const folders: string[] = [];
  afterEach(() => {
    for (const folder of folders.splice(0)) rmSync(folder, { recursive: true });
  });

  function project(files: Readonly<Record<string, string>>): string {
    const root = mkdtempSync(join(tmpdir(), 'content-'));
    folders.push(root);
    for (const [path, text] of Object.entries(files)) {
      mkdirSync(dirname(join(root, path)), { recursive: true });
      writeFileSync(join(root, path), text);
    }
    return root;
  }

  test('finds every file of the content, sorted, and no other', () => {
    const root = project({
      'content/blog.yaml': BLOG.text,
      'content/posts/b/index.md': 'b',
      'content/posts/a.md': 'a',
      'content/posts/b/photo.jpg': 'x',
      'content/posts/_draft.md': 'x',
      'content/posts/.hidden.md': 'x',
      'content/folds/side-fold.md': 'x',
      'content/supplies/x.yaml': 'x',
      'content/supplies/y.yml': 'x',
      'content/techniques/t.md': 'x',
      'content/other/z.md': 'x',
      'posts/z.md': 'x',
    });
    const content = readContent(root);
    expect(content.blog?.text).toBe(BLOG.text);
    expect(content.posts.map(({ path }) => path)).toEqual(['content/posts/a.md', 'content/posts/b/index.md']);
    expect(content.folds).toEqual([{ path: 'content/folds/side-fold.md', text: 'x' }]);
    expect(content.supplies.map(({ path }) => path)).toEqual(['content/supplies/x.yaml', 'content/supplies/y.yml']);
    expect(content.techniques.map(({ path }) => path)).toEqual(['content/techniques/t.md']);
  });

  test('an empty project has no files', () => {
    expect(readContent(project({}))).toEqual({ blog: undefined, posts: [], folds: [], supplies: [], techniques: [] });
  });
});
