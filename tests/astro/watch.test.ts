import { EventEmitter } from 'node:events';
import path from 'node:path';
import { expect, test } from 'vitest';
import { ContentReader } from '../../plugins/astro/content-reader.ts';
import { type DevSetup, watchContent } from '../../plugins/astro/dev-server.ts';
import { PageGate } from '../../plugins/astro/page-gate.ts';
import type { Reading } from '../../plugins/astro/reading.ts';

/** A server that lets the first refreshes fall, as Astro does while it loads its own configuration. */
function watched(falls: number) {
  let wrong: unknown;
  let asked = 0;
  const sent: string[] = [];
  const gate = new PageGate(1000);
  const reader = new ContentReader({
    read: async () => ({ entries: { posts: [] } }) as unknown as Reading,
    whenRead: () => {
      wrong = undefined;
    },
    whenFailed: () => {},
  });
  const watcher = Object.assign(new EventEmitter(), { add: () => {} });
  const hot = { send: ({ type }: { type: string }) => sent.push(type) };
  watchContent({
    server: { watcher, environments: { client: { hot } } },
    logger: { error: () => {} },
    reader,
    standing: () => wrong,
    refresh: async () => {
      if (++asked > falls) await reader.entriesOf('posts');
    },
    gate,
    root: path.resolve('somewhere'),
    base: '/',
  } as unknown as DevSetup);
  const change = (file: string): void => {
    watcher.emit('all', 'change', path.resolve('somewhere', file));
  };
  return { reader, sent, change, gate, break: (error: Error) => (wrong = error), asked: () => asked };
}

async function until(holds: () => boolean): Promise<void> {
  while (!holds()) await new Promise((resolve) => setTimeout(resolve, 5));
}

test.each([0, 1, 3])(
  'a change is read although the first %d refreshes fall, and the page reloads when it is mended',
  async (falls) => {
    const site = watched(falls);
    site.break(new Error('a slip'));
    site.change('content/posts/gull/index.md');
    await until(() => site.sent.length > 0);
    expect(site.sent).toEqual(['full-reload']);
    expect([site.asked(), site.reader.begun]).toEqual([falls + 1, 1]);
  },
);

test('several saves at once are read once, and files elsewhere not at all', async () => {
  const site = watched(0);
  site.change('public/units.js');
  for (let i = 0; i < 5; i++) site.change('content/blog.yaml');
  await until(() => site.reader.begun > 0);
  await new Promise((resolve) => setTimeout(resolve, 200));
  expect([site.asked(), site.reader.begun]).toEqual([1, 1]);
});

test('a page waits until a change has been taken up, and a reading until the pages before it have been sent', async () => {
  const site = watched(0);
  const leave = await site.gate.enter();
  site.change('content/blog.yaml');
  let begunForSecond = -1;
  const second = site.gate.enter().then((done) => {
    begunForSecond = site.reader.begun;
    done();
  });
  await new Promise((resolve) => setTimeout(resolve, 200));
  expect([site.reader.begun, begunForSecond]).toEqual([0, -1]);
  leave();
  await second;
  expect([site.reader.begun, begunForSecond]).toEqual([1, 1]);
});

test('a page that is never sent stops neither the next reading nor the next page for long', async () => {
  const site = watched(0);
  await site.gate.enter();
  site.change('content/blog.yaml');
  await (await site.gate.enter())();
  await until(() => site.reader.begun === 1);
});

test('a change that comes while content is read is read as well', async () => {
  const site = watched(2);
  site.change('content/blog.yaml');
  await until(() => site.asked() === 1);
  site.change('content/posts/gull/index.md');
  await until(() => site.reader.begun > 0);
  await new Promise((resolve) => setTimeout(resolve, 200));
  expect(site.asked()).toBeGreaterThanOrEqual(3);
});
