import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { Cache, digestOf } from '../../plugins/astro/cache.ts';
import { ContentReader } from '../../plugins/astro/content-reader.ts';
import { ContentError, overlayOf, renderingProblem } from '../../plugins/astro/errors.ts';
import { COLLECTIONS } from '../../plugins/astro/loaders/collections.ts';
import type { Reading } from '../../plugins/astro/reading.ts';
import type { Problem } from '../../plugins/engine/index.ts';
import { splitPlaces } from '../../site/lib/places.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'creasewright-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

describe('the cache', () => {
  test('keeps what was put, leaves nothing aside, and forgets what was not used', async () => {
    const first = new Cache(folder);
    expect(await first.get('a')).toBeUndefined();
    await Promise.all([first.put('a', 'tide'), first.put('b', 'kelp'), first.put('b', 'kelp')]);
    expect(readdirSync(folder).sort()).toEqual(['a', 'b']);
    const second = new Cache(folder);
    expect(Buffer.from((await second.get('a')) ?? []).toString()).toBe('tide');
    writeFileSync(path.join(folder, '.b.left-by-a-killed-process'), 'half');
    await second.prune();
    expect(readdirSync(folder)).toEqual(['a']);
  });

  test('an entry that is no JSON counts as missing', async () => {
    const cache = new Cache(folder);
    await cache.put('a', '{"half');
    expect(await cache.getJson('a')).toBeUndefined();
  });

  test('keys tell apart what reads the same when run together', () => {
    expect(digestOf('ab', 'c')).not.toBe(digestOf('a', 'bc'));
    expect(digestOf('a', '')).not.toBe(digestOf('a'));
    expect(digestOf('1 a')).not.toBe(digestOf('', 'a'));
    expect(digestOf('a', 'b')).toBe(digestOf('a', 'b'));
  });
});

describe('one reading for all collections', () => {
  const readingOf = (name: string): Reading =>
    ({
      entries: Object.fromEntries(COLLECTIONS.map((collection) => [collection, [{ id: name }]])),
    }) as unknown as Reading;

  test('each collection takes it once; asking again reads again', async () => {
    let count = 0;
    const reader = new ContentReader({
      read: async () => readingOf(`reading ${++count}`),
      whenRead: () => {},
      whenFailed: (error) => {
        throw error;
      },
    });
    const round = async () =>
      (await Promise.all(COLLECTIONS.map((name) => reader.entriesOf(name)))).flat().map((entry) => entry?.id);
    expect(new Set(await round())).toEqual(new Set(['reading 1']));
    expect(new Set(await round())).toEqual(new Set(['reading 2']));
    // A load of some collections only, cut short: the next full round is still of one reading.
    await reader.entriesOf('posts');
    expect(new Set(await round()).size).toBeLessThanOrEqual(2);
    expect(reader.last?.entries.posts[0]?.id).toBe(`reading ${count}`);
  });

  test('a failed reading fails every collection, or leaves the last good one', async () => {
    let good = true;
    let forgiving = true;
    const reader = new ContentReader({
      read: async () => {
        if (!good) throw new Error('the tide came in');
        return readingOf('good');
      },
      whenRead: () => {},
      whenFailed: (error) => {
        if (!forgiving) throw error;
      },
    });
    expect(await reader.entriesOf('posts')).toMatchObject([{ id: 'good' }]);
    good = false;
    expect(await reader.entriesOf('posts')).toMatchObject([{ id: 'good' }]);
    forgiving = false;
    await expect(reader.entriesOf('posts')).rejects.toThrow('the tide came in');
    await expect(reader.entriesOf('folds')).rejects.toThrow('the tide came in');
  });
});

describe('errors', () => {
  const problem = (file: string, line: number, severity: Problem['severity'] = 'error'): Problem => ({
    code: 'x',
    severity,
    place: { file, line, column: 2 },
    path: '',
    wrote: 'w',
    takes: 't',
    remedy: 'r',
  });

  test('one error tells all problems in reading order and counts those that stop the build', () => {
    const error = new ContentError([problem('b.md', 1), problem('a.md', 9), problem('a.md', 3, 'warning')]);
    expect(error.message).toMatch(
      /^2 things need your attention\.\n\na\.md:3:2 \(warning\)[\s\S]*\n\na\.md:9:2\n[\s\S]*\n\nb\.md:1:2\n/,
    );
    expect(overlayOf(error)).toMatchObject({ loc: { file: 'b.md', line: 1 }, stack: '' });
  });

  test('a plugin that throws something else than an error', () => {
    expect(renderingProblem('a.md', 7, 'kelp').takes).toContain('kelp');
    expect(renderingProblem('a.md', 7, undefined).place.line).toBe(7);
    expect(renderingProblem('a.md', 7, Object.assign(new Error('x'), { line: 12 })).place.line).toBe(12);
  });
});

describe('splitting a body at its places', () => {
  test.each<[string, unknown[]]>([
    ['', []],
    ['<p>a</p>', [{ kind: 'html', html: '<p>a</p>' }]],
    [
      '<p>a</p>\n<div data-place="drawing"></div>\n<div data-place="dry-fit" data-card="ferry"></div>\n<p>b</p>',
      [
        { kind: 'html', html: '<p>a</p>\n' },
        { kind: 'place', place: 'drawing', card: undefined },
        { kind: 'place', place: 'dry-fit', card: 'ferry' },
        { kind: 'html', html: '\n<p>b</p>' },
      ],
    ],
    [
      '<pre>&#x3C;div data-place="drawing"></div></pre>',
      [{ kind: 'html', html: '<pre>&#x3C;div data-place="drawing"></div></pre>' }],
    ],
  ])('%j', (html, parts) => {
    expect(splitPlaces(html)).toEqual(parts);
  });
});
