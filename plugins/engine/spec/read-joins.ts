import { entryAt, type MapNode, type SourceNode, type TextNode, valueAt } from '../diagnostics/index.ts';
import type { Unit } from '../units/index.ts';
import type { JoinSpec, LineWord, RefSpec } from './assembly-specs.ts';
import type { Expression } from './expression.ts';
import { TAKES_JOIN, WAYS, type Way, wayOf } from './join-ways.ts';
import { readText } from './parse.ts';
import { readFoam } from './read-foam.ts';
import { listOr, mapOr, textOr } from './read-parts.ts';
import { readLay, readReference, stretch, wordsOf } from './read-references.ts';
import { type PointSpec, readPoint } from './references.ts';
import { checkKeys, join, type Report, suggest } from './report.ts';

/** More joins than any card has. */
const MOST_JOINS = 500;

/** `joins`: how the pieces hold each other. */
export function readJoins(
  node: SourceNode | undefined,
  path: string,
  units: Unit | undefined,
  report: Report,
): JoinSpec[] {
  const list = listOr(node, path, 'a list of joins: `- { glue: tab, onto: base.back }`', report);
  if (list === undefined) return [];
  if (list.items.length > MOST_JOINS) {
    const remedy = 'Join fewer pieces in one card.';
    const wrote = `${list.items.length} joins`;
    report.at(list.place, path, { code: 'too-many', wrote, takes: `at most ${MOST_JOINS}`, remedy });
  }
  return list.items.slice(0, MOST_JOINS).flatMap((item, index) => {
    const here = join(path, index);
    const map = mapOr(item, here, TAKES_JOIN, report);
    const way = map && wayOf(map, here, report);
    const spec = map && way && new JoinReader(map, here, units, report).read(way);
    return spec ? [spec] : [];
  });
}

/** Reads one join. Everything wrong in it is reported; what cannot be read is left out, and then there is no join. */
class JoinReader {
  private readonly map: MapNode;
  private readonly path: string;
  private readonly units: Unit | undefined;
  private readonly report: Report;

  constructor(map: MapNode, path: string, units: Unit | undefined, report: Report) {
    this.map = map;
    this.path = path;
    this.units = units;
    this.report = report;
  }

  read(way: Way): JoinSpec | undefined {
    const { receiver, more } = WAYS[way];
    checkKeys(this.map, this.path, { known: [way, receiver, ...more] }, this.report);
    const part = this.ref(way, way);
    const onto = this.ref(receiver, way);
    const place = entryAt(this.map, way)?.key.place ?? this.map.place;
    return part && onto && this.rest(way, { part, onto, place, path: this.path });
  }

  private rest(
    way: Way,
    common: { part: RefSpec; onto: RefSpec; place: TextNode['place']; path: string },
  ): JoinSpec | undefined {
    switch (way) {
      case 'glue':
        return this.whole({
          is: way,
          ...common,
          lay: readLay(this.at('lay'), join(this.path, 'lay'), this.report),
          after: this.after('lay'),
          match: this.match(),
          turn: this.amount('turn'),
          foam: readFoam(this.at('foam'), join(this.path, 'foam'), this.units, this.report),
        });
      case 'pin':
        return { is: way, ...common, at: this.point('at'), by: this.point('by'), turn: this.amount('turn') };
      case 'slide': {
        const through = wordsOf(
          this.at('through'),
          join(this.path, 'through'),
          'the cuts it goes through',
          this.report,
        );
        if (this.at('through') === undefined) this.missing('through', way, 'the cuts that it goes through');
        return {
          is: way,
          ...common,
          through,
          shows: this.shows(),
          keep: this.amount('keep'),
          turn: this.amount('turn'),
        };
      }
      case 'slip':
        return { is: way, ...common, play: this.amount('play') };
      case 'slot':
        return { is: way, ...common, lay: readLay(this.at('lay'), join(this.path, 'lay'), this.report) };
      case 'rest': {
        return { is: way, ...common, from: this.word('from'), away: this.after('from', 'away') };
      }
      case 'hang':
        return { is: way, ...common, after: this.amount('after'), thread: this.amount('thread') };
    }
  }

  /** `lay`, `match` and `turn` each say how the part comes to lie: `lay` and `match` exclude each other. */
  private whole(spec: JoinSpec): JoinSpec {
    for (const [one, other] of [
      ['lay', 'match'],
      ['lay', 'turn'],
    ] as const) {
      const second = entryAt(this.map, other)?.key;
      if (this.at(one) === undefined || second === undefined) continue;
      const remedy = `Keep \`${one}\` or \`${other}\`: each of them says how the piece lies.`;
      const complaint = { code: 'laid-twice', wrote: `${one} and ${other}`, takes: 'one of the two', remedy };
      this.report.at(second.place, join(this.path, other), complaint);
    }
    return spec;
  }

  private at(key: string): SourceNode | undefined {
    return valueAt(this.map, key);
  }

  private ref(key: string, way: Way): RefSpec | undefined {
    const takes = 'a piece or one of its bands, as `base.front`';
    if (this.at(key) === undefined) this.missing(key, way, 'a piece or one of its bands');
    return readReference(this.at(key), join(this.path, key), takes, this.report);
  }

  private missing(key: string, way: Way, what: string): void {
    this.report.at(this.map.place, this.path, {
      code: 'key-missing',
      wrote: `\`${way}\` without \`${key}\``,
      takes: `\`${WAYS[way].form}\``,
      remedy: `Add \`${key}:\` with ${what}.`,
    });
  }

  private amount(key: string): Expression | undefined {
    const here = join(this.path, key);
    const node = textOr(this.at(key), here, 'a size, as `1/2`', this.report);
    return node && readText(node, here, this.units, this.report);
  }

  private word(key: string): LineWord | undefined {
    const path = join(this.path, key);
    const takes = 'one line of what it rests upon, as `spine`';
    const [first, second] = wordsOf(this.at(key), path, takes, this.report);
    if (second) {
      const wrote = `${first?.node.text} ${second.node.text}`;
      this.report.at(second.node.place, path, { code: 'bad-reference', wrote, takes, remedy: 'Keep one of the two.' });
    }
    return first;
  }

  /** A distance that counts from a line, and so needs one. */
  private after(line: string, key = 'after'): Expression | undefined {
    const amount = this.amount(key);
    const entry = entryAt(this.map, key);
    if (entry && this.at(line) === undefined) {
      this.report.at(entry.key.place, join(this.path, key), {
        code: 'key-missing',
        wrote: `\`${key}\` without \`${line}\``,
        takes: `\`${key}\` beside the line that it counts from`,
        remedy: `Add \`${line}:\`, or leave \`${key}\` out.`,
      });
    }
    return amount;
  }

  private point(key: string): PointSpec | undefined {
    const node = this.at(key);
    return node && this.pointOf(node, join(this.path, key));
  }

  private pointOf(node: SourceNode, path: string): PointSpec | undefined {
    return readPoint(node, path, this.units, this.report);
  }

  private match(): Extract<JoinSpec, { is: 'glue' }>['match'] {
    const node = this.at('match');
    const path = join(this.path, 'match');
    if (node === undefined) return undefined;
    const parts = node.kind === 'text' ? /^(.*\S)\s+to\s+(\S.*)$/u.exec(node.text) : null;
    if (node.kind !== 'text' || parts === null) {
      const point = this.pointOf(node, path);
      return point && { point, to: undefined };
    }
    const [first, second] = [parts[1] ?? '', parts[2] ?? ''];
    const point = this.pointOf(stretch(node, 0, first.length), path);
    const to = this.pointOf(stretch(node, node.text.length - second.length, node.text.length), path);
    return point && to && { point, to };
  }

  private shows(): 'between' | 'outside' {
    const path = join(this.path, 'shows');
    const node = textOr(this.at('shows'), path, '`between` or `outside`', this.report);
    const word = node?.text.trim();
    if (word === undefined || word === 'between' || word === 'outside') return word ?? 'between';
    if (node) {
      const remedy = suggest(word, ['between', 'outside'], 'Write `between` when it shows between the cuts.');
      this.report.at(node.place, path, { code: 'unknown-word', wrote: word, takes: '`between` or `outside`', remedy });
    }
    return 'between';
  }
}
