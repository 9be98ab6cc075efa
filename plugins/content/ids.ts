import { slug } from 'github-slugger';
import type { Problem } from '../engine/index.ts';

/**
 * The id of an entry, from its path: the file name without its ending, or the folder's name for an `index.md`.
 * `content/posts/lantern-night/index.md` is `lantern-night`.
 */
export function idOfPath(path: string): string {
  const parts = path.split(/[/\\]/).filter((part) => part !== '');
  const name = parts.at(-1)?.replace(/\.(md|yaml|yml)$/i, '') ?? '';
  return name === 'index' && parts.length > 1 ? (parts.at(-2) ?? '') : name;
}

/** Ids stand in web addresses, so they are made of small letters, figures and single hyphens. */
export function idProblems(path: string): readonly Problem[] {
  const id = idOfPath(path);
  if (/^[a-z0-9]+(-[a-z0-9]+)*$/.test(id)) return [];
  const better = slugOf(id);
  return [
    {
      code: 'file-name',
      severity: 'error',
      place: { file: path, line: 1, column: 1 },
      path: '',
      wrote: `a file or folder called ${id}`,
      takes: 'small letters a to z, figures and hyphens, because the name becomes part of a web address',
      remedy: better === '' ? 'Give it another name.' : `Rename it to ${better}.`,
    },
  ];
}

/** A name as small letters, figures and hyphens: `The ferry card` is `the-ferry-card`. Empty when nothing is left. */
export function slugOf(name: string): string {
  const plain = name.normalize('NFKD').replace(/[\u0300-\u036f]/g, '');
  return slug(plain)
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
}
