import { placeWithin, type SourceNode, type TextNode } from '../diagnostics/index.ts';
import type { Unit } from '../units/index.ts';
import { readExpression } from './parse.ts';
import { textOr } from './read-parts.ts';
import { join, type Report, suggest } from './report.ts';
import type { RecipeStepSpec } from './types.ts';

export const TAKES_SCORES = 'positions from the top or left end, as `2 1/8, 6 3/8 mountain`';

/** More than any card has. Keeps every walk over a recipe short. */
const MOST_SCORES = 200;

type Score = RecipeStepSpec['scores'][number];

/** The scores of a step: a list, or a text with commas, which is what YAML makes of `score: 4 1/4, 5` outside brackets. */
export function readScores(
  node: SourceNode | undefined,
  path: string,
  units: Unit | undefined,
  report: Report,
): Score[] {
  if (node === undefined) return [];
  if (node.kind === 'list') {
    return node.items.slice(0, MOST_SCORES).flatMap((item, index) => {
      const text = textOr(item, join(path, index), TAKES_SCORES, report);
      return text ? readScore(text, 0, text.text, join(path, index), units, report) : [];
    });
  }
  const text = textOr(node, path, TAKES_SCORES, report);
  if (text === undefined) return [];
  const glued = /\d,(?=\d)/u.exec(text.text);
  if (glued) {
    const remedy = 'For two scores put a space after the comma. A decimal point is a point: `10.5`.';
    const place = placeWithin(text, glued.index + 1);
    report.at(place, path, { code: 'comma-in-number', wrote: text.text, takes: TAKES_SCORES, remedy });
    return [];
  }
  let offset = 0;
  return text.text
    .split(',')
    .slice(0, MOST_SCORES)
    .flatMap((part) => {
      const score = readScore(text, offset, part, path, units, report);
      offset += part.length + 1;
      return score;
    });
}

/** `2 3/4 mountain`: a position, then its direction unless it is a valley. */
function readScore(
  node: TextNode,
  offset: number,
  part: string,
  path: string,
  units: Unit | undefined,
  report: Report,
): Score[] {
  const lead = part.length - part.trimStart().length;
  const text = part.trim();
  const start = offset + lead;
  const place = placeWithin(node, start);
  const say = (code: string, remedy: string): never[] => {
    report.at(place, path, { code, wrote: text === '' ? 'nothing' : text, takes: TAKES_SCORES, remedy });
    return [];
  };
  if (text === '') return say('nothing-written', 'Write a position, or take the comma out.');
  if (/\s(?:and|&)\s/u.test(text) && !text.includes(' of ')) {
    return say('and-between-scores', `Put a comma between the scores: \`${text.replace(/\s(?:and|&)\s/gu, ', ')}\`.`);
  }
  const first = /^(valley|mountain)\s+(\S.*)$/u.exec(text);
  if (first) return say('direction-first', `Write the position first: \`${first[2]} ${first[1]}\`.`);
  const last = /^(.*\S)\s+(\p{L}{4,})$/u.exec(text);
  const direction = last?.[2] === 'valley' || last?.[2] === 'mountain' ? last[2] : undefined;
  const near = last?.[2] && !direction ? suggest(last[2], ['valley', 'mountain'], '') : '';
  if (near !== '' && /^\d/u.test(text)) return say('unknown-word', near);
  const position = direction ? (last?.[1] ?? '') : text;
  const at = readExpression({ node, offset: start, path }, position, units, report);
  return at ? [{ at, fold: direction ?? 'valley', text, place }] : [];
}
