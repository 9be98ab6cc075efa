import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';

it('the gallery shows every kind in both editions, with its template pages', () => {
  const folder = mkdtempSync(join(tmpdir(), 'gallery-'));
  try {
    execFileSync(process.execPath, ['plugins/commands/gallery.ts', '--out', folder], { stdio: 'pipe' });
    const page = readFileSync(join(folder, 'index.html'), 'utf8');
    const kinds = [...page.matchAll(/<h2>([^<]+)<\/h2>/g)].map(([, name]) => name);
    expect(kinds).toEqual(expect.arrayContaining(['Gate', 'Short front', 'Side fold', 'Top fold']));
    for (const edition of ['inch', 'metric']) {
      expect(page.match(new RegExp(`<h3>defaults, ${edition}</h3>`, 'g'))).toHaveLength(kinds.length);
    }
    const ids = [...page.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(page.match(/class="scene page"/g)?.length).toBeGreaterThan(kinds.length * 4);
  } finally {
    rmSync(folder, { recursive: true });
  }
});
