import type { MapNode } from '../diagnostics/index.ts';
import { type Report, suggest } from './report.ts';

/** Every way to join two pieces: the word that names what receives, and what else may be said. */
export const WAYS = {
  glue: { receiver: 'onto', more: ['lay', 'after', 'match', 'turn', 'foam'], form: '{ glue: tab, onto: base.back }' },
  pin: { receiver: 'to', more: ['at', 'by', 'turn'], form: '{ pin: wheel, to: base.front, at: centre }' },
  slide: {
    receiver: 'in',
    more: ['through', 'shows', 'keep', 'turn'],
    form: '{ slide: strip, in: card.front, through: slit(1) slit(2) }',
  },
  slip: { receiver: 'over', more: ['play'], form: '{ slip: lid.middle, over: box }' },
  slot: { receiver: 'into', more: ['lay'], form: '{ slot: tree-front, into: tree-side, lay: slit along slit }' },
  rest: {
    receiver: 'upon',
    more: ['from', 'away'],
    form: '{ rest: front.bottom, upon: base.floor, from: spine, away: 2 }',
  },
  hang: { receiver: 'from', more: ['after', 'thread'], form: '{ hang: star.top, from: bridge.bottom, after: 3 }' },
} as const;

export type Way = keyof typeof WAYS;
const WAY_NAMES = Object.keys(WAYS) as Way[];
export const TAKES_JOIN = `a join: ${WAY_NAMES.join(', ')}`;

/** The way that a join names; reports one that names none, or two. */
export function wayOf(map: MapNode, path: string, report: Report): Way | undefined {
  const keys = map.entries.map(({ key }) => key);
  const ways = keys.filter(({ text }) => (WAY_NAMES as string[]).includes(text));
  const [first, second] = ways;
  if (first && second === undefined) return first.text as Way;
  if (first && second) {
    const remedy = 'Write two joins, each with its own dash.';
    const wrote = `${first.text} and ${second.text}`;
    report.at(second.place, path, { code: 'two-joins', wrote, takes: 'one way of joining each', remedy });
    return undefined;
  }
  const key = keys.find(({ text }) => suggest(text, WAY_NAMES, '') !== '') ?? keys[0];
  const remedy = suggest(key?.text ?? '', WAY_NAMES, `Write \`${WAYS.glue.form}\`, say.`);
  const wrote = key?.text || 'a join without a word for it';
  report.at(key?.place ?? map.place, path, { code: 'unknown-join', wrote, takes: TAKES_JOIN, remedy });
  return undefined;
}
