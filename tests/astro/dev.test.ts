import type { ChildProcess } from 'node:child_process';
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { astroProcess, makeSmallSite, type SmallSite } from './small-site.ts';

/* A real development server, asked as a browser asks, while its files are changed under it. */

const PATIENCE_MS = 120_000;
const SUPPLY = 'content/supplies/kraft.yaml';
const POST = 'content/posts/curlew/index.md';

let site: SmallSite;
let server: ChildProcess;
let output = '';
let address = '';

beforeAll(async () => {
  site = makeSmallSite();
  // Wrong from the start: the server must come up all the same.
  site.write(SUPPLY, 'name: Heavy kraft\ncategory: cardstok\n');
  server = await start();
}, PATIENCE_MS);

afterAll(async () => {
  const ended = new Promise((resolve) => server.once('close', resolve));
  server.kill();
  await ended;
  site.discard();
});

async function start(): Promise<ChildProcess> {
  const child = astroProcess(site.root, ['dev', '--port', '0']);
  const hear = (part: Buffer): void => {
    output += part.toString();
    address = /http:\/\/[\w.:]+\d/.exec(output)?.[0] ?? '';
  };
  child.stdout.on('data', hear);
  child.stderr.on('data', hear);
  await until(() => address !== '');
  return child;
}

async function until(holds: () => boolean | Promise<boolean>): Promise<void> {
  const end = performance.now() + PATIENCE_MS;
  while (!(await holds())) {
    if (performance.now() > end) throw new Error(`waited in vain; the server said:\n${output}`);
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
}

async function page(place: string): Promise<{ status: number; text: string }> {
  const response = await fetch(`${address}${place}`, { headers: { accept: 'text/html' } });
  return { status: response.status, text: await response.text() };
}

const shows = (place: string, text: string) => () =>
  page(place).then((answer) => answer.status === 200 && answer.text.includes(text));

describe('while the maker writes', () => {
  test(
    'what is wrong at the start is shown on every page, and is gone when it is put right',
    async () => {
      const { status, text } = await page('/');
      expect(status).toBe(500);
      expect(text).toContain('content/supplies/kraft.yaml:2:11');
      expect(text).toContain('ErrorOverlay');
      site.write(SUPPLY, 'name: Heavy kraft\ncategory: cardstock\n');
      await until(shows('/projects/curlew/', 'Side fold: Heavy kraft'));
    },
    PATIENCE_MS,
  );

  test(
    'a changed supply, a changed text, a new post and a removed one',
    async () => {
      site.write(SUPPLY, site.read(SUPPLY).replace('Heavy', 'Driftwood'));
      await until(shows('/projects/curlew/', 'Side fold: Driftwood kraft'));
      site.write(POST, site.read(POST).replace('5 1/2 in wide', '140 mm wide'));
      await until(shows('/projects/curlew/', 'data-written="metric"'));
      // The ferry's picture stays with the ferry.
      const ferry = site.read('content/posts/ferry/index.md').replace(/!\[[^\]]*\]\([^)]*\)/, '');
      site.write('content/posts/heron/index.md', ferry.replace('Ferry', 'Heron'));
      await until(shows('/projects/heron/', '<title>Heron</title>'));
      site.remove('content/posts/ferry');
      await until(shows('/', '<p>curlew, heron</p>'));
    },
    PATIENCE_MS,
  );

  test(
    'an error in a text is shown, and the server lives on',
    async () => {
      const good = site.read(POST);
      site.write(POST, good.replace('::drawing{card=card}', '::drawings'));
      await until(async () => (await page('/projects/curlew/')).status === 500);
      const { text } = await page('/projects/curlew/');
      expect(text).toContain('content/posts/curlew/index.md:14:1');
      expect(text).toContain('Did you mean ::drawing?');
      site.write(POST, good);
      await until(shows('/projects/curlew/', 'drawing of card'));
      expect(server.exitCode).toBe(null);
    },
    PATIENCE_MS,
  );

  test(
    'the files beside a project are those that a build writes',
    async () => {
      const names = ['template-letter.pdf', 'template-a4.pdf', 'project.json'].map((name) => `projects/curlew/${name}`);
      const served: Record<string, string> = {};
      for (const name of [...names, 'project.schema.json']) {
        const response = await fetch(`${address}/${name}`);
        expect({ name, status: response.status }).toEqual({ name, status: 200 });
        expect(response.headers.get('content-type')).toMatch(
          name.endsWith('.pdf') ? 'application/pdf' : 'application/json',
        );
        served[name] = digest(Buffer.from(await response.arrayBuffer()));
      }
      expect((await fetch(`${address}/projects/gull/project.json`)).status).toBe(404);
      const { code } = await site.build();
      expect(code).toBe(0);
      for (const [name, made] of Object.entries(served)) {
        expect({ name, made: digest(readFileSync(path.join(site.root, 'dist', name))) }).toEqual({ name, made });
      }
    },
    PATIENCE_MS,
  );
});

function digest(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}
