import { z } from 'zod';
import { describeNode, type MapNode, nearestName, type Problem, type SourceNode } from '../engine/index.ts';
import { shorten } from './lines.ts';
import { follow, formatPath, type Step } from './paths.ts';
import { plainOf } from './plain.ts';
import type { Refusal } from './schemas/fields.ts';

/**
 * Checks a tree against a schema; what does not fit comes back in the house form with its place.
 *
 * `value` is undefined when there is any problem.
 */
export function checkAgainst<S extends z.ZodType>(
  schema: S,
  tree: SourceNode,
): { value: z.output<S> | undefined; problems: readonly Problem[] } {
  const result = schema.safeParse(plainOf(tree));
  if (result.success) return { value: result.data, problems: [] };
  const problems = result.error.issues.flatMap((issue) => problemsOf(issue, schema, tree));
  const meant = new Set(problems.flatMap((problem) => (problem.meant === undefined ? [] : [problem.meant])));
  return {
    value: undefined,
    // `titel` instead of `title` is one slip, not two.
    problems: problems
      .filter((problem) => problem.code !== 'key-missing' || !meant.has(problem.path))
      .map(({ meant: _, ...problem }) => problem),
  };
}

interface Told extends Problem {
  /** For an unknown key: the path of the key that was most likely meant. */
  readonly meant?: string;
}

function problemsOf(issue: z.core.$ZodIssue, schema: z.ZodType, tree: SourceNode): Told[] {
  const path = issue.path.filter((step): step is Step => typeof step !== 'symbol');
  if (issue.code === 'unrecognized_keys') return issue.keys.map((key) => unknownKey(key, path, schema, tree));
  const { node, key, missing } = follow(tree, path);
  const field = fieldAt(schema, path);
  const takes = takesOf(field) ?? 'another value';
  const empty = missing.length === 0 && node.kind === 'text' && node.text.trim() === '';
  if (issue.code === 'invalid_type' && (empty || (missing.length > 0 && node.kind === 'map'))) {
    return [missingKey(path, missing, node, key?.place ?? node.place, takes)];
  }
  const refusal = issue.code === 'custom' ? (issue.params as Refusal | undefined) : undefined;
  return [
    {
      code: refusal?.code ?? 'value-shape',
      severity: 'error',
      place: node.place,
      path: formatPath(missing.length === 0 ? path : path.slice(0, path.length - missing.length)),
      wrote: shorten(describeNode(node)),
      takes: refusal?.takes ?? takes,
      remedy: refusal?.remedy ?? shapeRemedy(field, node, takes),
    },
  ];
}

function missingKey(
  path: readonly Step[],
  missing: readonly Step[],
  node: SourceNode,
  at: Problem['place'],
  takes: string,
): Told {
  const name = String(path.at(-1) ?? '');
  const absent = missing.length > 0;
  const others = node.kind === 'map' ? node.entries.map((entry) => entry.key.text).join(', ') : '';
  return {
    code: absent ? 'key-missing' : 'value-missing',
    severity: 'error',
    place: absent ? node.place : at,
    path: formatPath(path),
    wrote: absent ? shorten(others === '' ? 'nothing' : `${others}, but no \`${name}\``) : `nothing after \`${name}:\``,
    takes: `\`${name}\`: ${takes}`,
    remedy: absent ? `Add a line \`${name}: ...\` with ${takes}.` : `Write ${takes}.`,
  };
}

function unknownKey(name: string, path: readonly Step[], schema: z.ZodType, tree: SourceNode): Told {
  const { node } = follow(tree, path);
  const entry = node.kind === 'map' ? node.entries.find(({ key }) => key.text === name) : undefined;
  const known = Object.keys(shapeOf(fieldAt(schema, path)) ?? {});
  const free = known.filter((key) => node.kind !== 'map' || !node.entries.some((other) => other.key.text === key));
  const near = nearestName(name, free) ?? nearestName(name, known);
  const parent = formatPath(path);
  return {
    code: 'key-unknown',
    severity: 'error',
    place: entry?.key.place ?? node.place,
    path: formatPath([...path, name]),
    wrote: shorten(`${name}:`),
    takes: `${parent === '' ? 'the names' : `in \`${parent}\` the names`} ${known.join(', ')}`,
    remedy: near === undefined ? `Take \`${name}\` out, or write one of these names.` : `Did you mean \`${near}\`?`,
    ...(near === undefined ? {} : { meant: formatPath([...path, near]) }),
  };
}

/** A text where a list is wanted, and so on. */
function shapeRemedy(field: z.ZodType | undefined, node: SourceNode, takes: string): string {
  const kind = field === undefined ? undefined : baseOf(field)._zod.def.type;
  if (kind === 'array' && node.kind === 'text') return `Put it in square brackets: [${shorten(node.text)}].`;
  if (kind === 'array') return 'Begin each item with a hyphen and a space.';
  if (kind === 'string' && node.kind === 'list' && node.items.length === 1)
    return 'Take the brackets or the hyphen away.';
  if (kind === 'string' && node.kind === 'map' && isPlaceholder(node))
    return 'Put the value in quotes: { } begins a group.';
  return `Write ${takes}.`;
}

/** `{something}` is a group with one name and nothing in it. */
function isPlaceholder(node: MapNode): boolean {
  return node.entries.every(({ value }) => value.kind === 'text' && value.text === '');
}

/** The schema of the value at a path; undefined where the schema knows no such path. */
function fieldAt(schema: z.ZodType, path: readonly Step[]): z.ZodType | undefined {
  let field: z.ZodType | undefined = schema;
  for (const step of path) {
    if (field === undefined) return undefined;
    const { def } = baseOf(field)._zod as unknown as { def: Inner };
    if (def.type === 'object') field = def.shape?.[String(step)];
    else if (def.type === 'array') field = def.element;
    else if (def.type === 'record') field = def.valueType;
    else return undefined;
  }
  return field;
}

/** The parts of zod's definitions that are walked here. */
interface Inner {
  readonly type: string;
  readonly shape?: Readonly<Record<string, z.ZodType>>;
  readonly element?: z.ZodType;
  readonly valueType?: z.ZodType;
  readonly innerType?: z.ZodType;
  readonly in?: z.ZodType;
  readonly out?: z.ZodType;
}

function shapeOf(field: z.ZodType | undefined): Readonly<Record<string, z.ZodType>> | undefined {
  return field === undefined ? undefined : (baseOf(field)._zod as unknown as { def: Inner }).def.shape;
}

/** Without what wraps it: optional, default, transform, preprocess. */
function baseOf(field: z.ZodType): z.ZodType {
  const { def } = field._zod as unknown as { def: Inner };
  if (def.innerType !== undefined) return baseOf(def.innerType);
  // A transform has its input before it, a preprocess its schema behind it.
  if (def.type === 'pipe' && def.in !== undefined && def.out !== undefined) {
    return baseOf(def.in._zod.def.type === 'transform' ? def.out : def.in);
  }
  return field;
}

function takesOf(field: z.ZodType | undefined): string | undefined {
  let at = field;
  while (at !== undefined) {
    const { takes } = z.globalRegistry.get(at) ?? {};
    if (typeof takes === 'string') return takes;
    const { def }: { def: Inner } = at._zod as unknown as { def: Inner };
    at = def.innerType ?? def.in;
  }
  return undefined;
}
