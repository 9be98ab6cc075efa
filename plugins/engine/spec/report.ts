import {
  formatPlace,
  type MapNode,
  nearestName,
  type Place,
  type Problem,
  placeWithin,
  type TextNode,
} from '../diagnostics/index.ts';
import type { Fault } from '../units/index.ts';

/** A stretch of a maker's text: where it stands, and under which path of the frontmatter. */
export interface Written {
  readonly node: TextNode;
  /** First character of the stretch within `node.text`. */
  readonly offset: number;
  readonly path: string;
}

export interface Complaint {
  readonly code: string;
  readonly wrote: string;
  readonly takes: string;
  readonly remedy: string;
  readonly severity?: 'error' | 'warning';
}

/** Collects the problems of one reading, so that none hides another. */
export class Report {
  readonly problems: Problem[] = [];
  private readonly known = new Set<string>();

  /** True once an error has been reported; warnings do not count. */
  get failed(): boolean {
    return this.problems.some((problem) => problem.severity === 'error');
  }

  at(place: Place, path: string, complaint: Complaint): void {
    this.push({ severity: 'error', ...complaint, place, path });
  }

  /** A fault found while reading a stretch of text; its offset counts from the start of that stretch. */
  fault(written: Written, fault: Fault): void {
    const { code, severity, wrote, takes, remedy } = fault;
    const place = placeWithin(written.node, written.offset + fault.offset);
    this.push({ code, severity, wrote, takes, remedy, place, path: written.path });
  }

  faults(written: Written, faults: readonly Fault[]): void {
    for (const fault of faults) this.fault(written, fault);
  }

  add(problems: readonly Problem[]): void {
    for (const problem of problems) this.push(problem);
  }

  /** A text that is worked out twice, for width and height or for each member, is still wrong only once. */
  private push(problem: Problem): void {
    const { code, path, wrote, place } = problem;
    const key = [code, formatPlace(place), withoutNumbers(path), withoutNumbers(wrote)].join('\n');
    if (this.known.has(key)) return;
    this.known.add(key);
    this.problems.push(problem);
  }
}

function withoutNumbers(text: string): string {
  return text.replace(/\d+/gu, '0');
}

/** Key of a map under the path of the map. */
export function join(path: string, key: string | number): string {
  if (typeof key === 'number') return `${path}[${key}]`;
  return path === '' ? key : `${path}.${key}`;
}

/** What a map may hold. */
export interface Keys {
  readonly known: readonly string[];
  /** Keys that belong to somebody else and are left alone. */
  readonly others?: readonly string[];
}

/** Reports every key of a map that is not understood, with the nearest name that is. */
export function checkKeys(map: MapNode, path: string, keys: Keys, report: Report): void {
  const { known, others = [] } = keys;
  const seen = new Set<string>();
  for (const { key } of map.entries) {
    const name = key.text;
    const takes = known.join(', ');
    if (seen.has(name)) {
      report.at(key.place, join(path, name), {
        code: 'written-twice',
        wrote: `${name} twice`,
        takes: 'each name once',
        remedy: `Keep one of the two \`${name}\` and delete the other.`,
      });
    }
    seen.add(name);
    if (known.includes(name) || others.includes(name)) continue;
    if (isSplitByComma(name)) {
      report.at(key.place, join(path, name), splitByComma(name, takes));
    } else {
      report.at(key.place, join(path, name), {
        code: 'unknown-key',
        wrote: name === '' ? 'an entry without a name' : name,
        takes,
        remedy: suggest(name, known, `Write one of: ${takes}.`),
      });
    }
  }
}

export function suggest(name: string, known: Iterable<string>, otherwise: string): string {
  const near = nearestName(name, known);
  return near === undefined ? otherwise : `Did you mean \`${near}\`?`;
}

/** True for the second half of a value that YAML has split at a comma: it closes what it never opened. */
export function isSplitByComma(text: string): boolean {
  return balance(text) < 0;
}

/** True for the first half: it opens what it never closes. */
export function isCutShort(text: string): boolean {
  return balance(text) > 0;
}

function balance(text: string): number {
  let open = 0;
  for (const character of text) {
    if (character === '(') open++;
    if (character === ')') open--;
  }
  return open;
}

export function splitByComma(wrote: string, takes: string): Complaint {
  return {
    code: 'split-by-comma',
    wrote,
    takes,
    remedy: 'Inside [ ] or { } a comma starts a new item. Put the whole value in quotes.',
  };
}
