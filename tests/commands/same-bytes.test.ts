import { afterAll, beforeAll, expect, test } from 'vitest';
import { describeSite, type SiteManifest } from '../../plugins/astro/site-manifest.ts';
import { ProjectCopy } from '../support/project-copy.ts';

/*
 * The same content and the same SOURCE_DATE_EPOCH give the same bytes: in another folder, with empty caches, at another
 * time of day (reproducible-builds.org, definition and "SOURCE_DATE_EPOCH").
 */

const CONTENT = ['blog.yaml', 'folds', 'supplies', 'techniques', 'posts'];
const copies: ProjectCopy[] = [];
afterAll(() => {
  for (const copy of copies) copy.discard();
});

let first: SiteManifest;
let second: SiteManifest;
let warm: SiteManifest;

beforeAll(async () => {
  const [one, two] = [new ProjectCopy(CONTENT), new ProjectCopy(CONTENT)];
  copies.push(one, two);
  await one.build();
  first = describeSite(one.dist);
  await new Promise((resolve) => setTimeout(resolve, 1100)); // a clock read anywhere would show
  await two.build();
  second = describeSite(two.dist);
  await two.build();
  warm = describeSite(two.dist);
});

test('the site has pages, templates and summaries to compare', () => {
  const files = Object.keys(first);
  for (const ending of ['.html', '.css', '.pdf', '.json']) {
    expect(files.filter((file) => file.endsWith(ending)).length, ending).toBeGreaterThan(0);
  }
});

test('two builds from clean caches in two folders give the same bytes', () => {
  expect(second).toEqual(first);
});

test('a build with warm caches gives the same bytes as one without', () => {
  expect(warm).toEqual(second);
});
