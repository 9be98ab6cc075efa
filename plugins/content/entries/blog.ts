import { valueAt } from '../../engine/index.ts';
import { measureProblems } from '../measures.ts';
import { readYaml } from '../reader.ts';
import { blogSchema } from '../schemas/blog.ts';
import type { SourceFile } from '../source-file.ts';
import { editionsWritten } from './editions-written.ts';
import { emptyFile } from './empty-file.ts';
import { finish, readMap } from './read-map.ts';
import type { Blog, ReadEntry } from './types.ts';
import { unitsOf } from './units-of.ts';

/** What holds where the blog says nothing. Common practice, no source. */
const BLOG_DEFAULTS = {
  marks: { inch: '1/16 in', metric: '0.5 mm' },
  sheets: { inch: 'US Letter', metric: 'ISO A4' },
  envelopeClearance: { inch: '1/8 in', metric: '3 mm' },
} as const;

/** A blog for card files that lie outside any. */
export function blogOfDefaults(): Blog {
  return {
    file: '',
    title: '',
    tagline: undefined,
    author: '',
    address: '',
    language: 'en',
    units: 'in',
    ...BLOG_DEFAULTS,
    disclosure: { gifted: undefined, affiliate: undefined },
    invented: false,
  };
}

export function readBlog(file: SourceFile): ReadEntry<Blog> {
  const { tree, problems } = readYaml(file.text, file.path);
  const { map, value, problems: shape } = readMap(blogSchema, tree, file.path);
  const units = unitsOf(map);
  const measures =
    map === undefined
      ? []
      : [
          ...measureProblems(valueAt(map, 'marks'), 'marks', 'length above zero', units),
          ...measureProblems(valueAt(map, 'sheets'), 'sheets', 'sheet', units),
          ...measureProblems(valueAt(map, 'envelope-clearance'), 'envelope-clearance', 'length', units),
        ];
  const entry: Blog | undefined = value && {
    file: file.path,
    title: value.title,
    tagline: value.tagline,
    author: value.author,
    address: value.address.replace(/\/+$/, ''),
    language: value.language,
    units: value.units,
    marks: { ...BLOG_DEFAULTS.marks, ...editionsWritten(value.marks) },
    sheets: { ...BLOG_DEFAULTS.sheets, ...editionsWritten(value.sheets) },
    envelopeClearance: { ...BLOG_DEFAULTS.envelopeClearance, ...editionsWritten(value['envelope-clearance']) },
    disclosure: { gifted: value.disclosure?.gifted, affiliate: value.disclosure?.affiliate },
    invented: value.invented,
  };
  return finish(entry, tree, [...problems, ...emptyFile(tree, problems, file), ...shape, ...measures]);
}
