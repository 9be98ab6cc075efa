import { type MapNode, type SourceNode, type TextNode, valueAt } from '../diagnostics/index.ts';
import type { Members } from './each-header.ts';
import { textOr, wrongShape } from './read-parts.ts';
import { checkKeys, join, type Report } from './report.ts';

const TAKES_TURNS = '`valley`, `mountain`, or a list of them that is gone through in turn';

/**
 * Bands that repeat, with creases between them: `{ each: i from 1 to 3, panel: page(i) 4, between: fold(i), in-turn: [valley, mountain] }`
 * gives `page(1) 4`, `valley fold(1)`, `page(2) 4`, `mountain fold(2)`, `page(3) 4`. A crease has the number of the band before it.
 */
export function expandStrip(
  node: MapNode,
  path: string,
  members: Members,
  fill: (text: TextNode, value: string) => TextNode,
  report: Report,
): SourceNode[] {
  checkKeys(node, path, { known: ['each', 'panel', 'between', 'in-turn'] }, report);
  const panel = textOr(valueAt(node, 'panel'), join(path, 'panel'), 'a band as `page(i) 4 1/4`', report);
  const between = textOr(valueAt(node, 'between'), join(path, 'between'), 'a name as `fold(i)`', report);
  const turns = turnsOf(valueAt(node, 'in-turn'), join(path, 'in-turn'), report);
  if (panel === undefined) return [];
  return members.flatMap((value, index): SourceNode[] => {
    const band = fill(panel, value);
    if (index === members.length - 1) return [band];
    const turn = turns[index % turns.length];
    const crease = creaseOf(turn?.text.trim() ?? 'valley', turn ?? node, between && fill(between, value));
    return [band, crease];
  });
}

/** A crease as a strip has it, `valley fold(1)`, that remembers where its name was written. */
function creaseOf(direction: string, where: SourceNode, name: TextNode | undefined): TextNode {
  if (name === undefined) return { kind: 'text', text: direction, place: where.place, quoted: false };
  const text = `${direction} ${name.text}`;
  return {
    ...name,
    text,
    filled: {
      from: name,
      parts: [
        { at: 0, from: 0 },
        { at: direction.length + 1, from: 0 },
      ],
    },
  };
}

function turnsOf(node: SourceNode | undefined, path: string, report: Report): TextNode[] {
  if (node === undefined) return [];
  const items = node.kind === 'list' ? node.items : [node];
  if (items.length === 0) report.at(node.place, path, wrongShape(node, TAKES_TURNS));
  return items.flatMap((item, index) => {
    const here = node.kind === 'list' ? join(path, index) : path;
    const text = textOr(item, here, TAKES_TURNS, report);
    if (text === undefined) return [];
    if (['valley', 'mountain'].includes(text.text.trim())) return [text];
    const remedy = 'Write `valley` or `mountain`.';
    report.at(text.place, here, { code: 'unknown-word', wrote: text.text, takes: TAKES_TURNS, remedy });
    return [];
  });
}
