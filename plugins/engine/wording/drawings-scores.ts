import { angleOf, type LineAngle } from './drawings-angles.ts';
import type { WorkLine } from './drawings-lines.ts';
import { sayFloat } from './drawings-measures.ts';
import { foldNoun, isNamed, sayCrease, sayName } from './drawings-names.ts';
import { sayAcross, sayDown, sayExtent, sayPoint, type Telling } from './drawings-points.ts';

/** No sentence of the words of a drawing is longer. */
const MOST_WORDS = 25;

/** Whether an upright or level line stops short of the edges, so that its ends must be measured too. */
export function isPart(line: WorkLine, telling: Telling): boolean {
  return / (down|across)$/.test(sayExtent(line, telling)) && !sayExtent(line, telling).startsWith('from edge');
}

/**
 * An upright or level line: "Score a valley fold, the spine, at 4 1/4 in, from top to bottom." Among lines that are measured both
 * ways, "at 4 1/4 in across".
 */
export function sayStraight(line: WorkLine, bothWays: boolean, telling: Telling): readonly string[] {
  const down = line.runs === 'down';
  const measure = down ? sayAcross(line.from, telling) : sayDown(line.from, telling);
  const at = bothWays ? `${measure} ${down ? 'across' : 'down'}` : measure;
  const extent = sayExtent(line, telling);
  const one = `${sayWork(line)} at ${at}, ${extent}.`;
  if (one.split(' ').length <= MOST_WORDS) return [one];
  return [`${sayWork(line).replace(/,$/, '')}.`, `It is at ${at}, ${extent}.`];
}

/** A sloping line, by its ends, its angle and its length. */
export function saySlope(line: WorkLine, lines: readonly WorkLine[], telling: Telling): readonly string[] {
  const { from, to } = line;
  const length = Math.hypot(to.x.valueOf() - from.x.valueOf(), to.y.valueOf() - from.y.valueOf());
  const long = `${sayFloat(length, telling.system)} long`;
  const angle = angleOf(line, lines, telling.piece);
  return [
    `${sayWork(line).replace(/,$/, '')}.`,
    `It starts at ${sayPoint(from, telling)}.`,
    `It ends at ${sayPoint(to, telling)}.`,
    angle === undefined ? `It is ${long}.` : `It makes ${sayDegrees(angle)}, and is ${long}.`,
  ];
}

/** "an angle of 50 degrees with the spine". */
function sayDegrees({ degrees, with: other }: LineAngle): string {
  const angle = `an angle of ${degrees} degrees`;
  if (other === undefined) return `${angle} with a level line`;
  if (other === 'edge') return `${angle} with the edge`;
  if (typeof other === 'string') return `${angle} with the ${other} edge`;
  if (isNamed(other)) return `${angle} with the ${sayName(other.name)}`;
  return `${angle} with ${foldNoun(other.fold ?? 'valley')}`;
}

/** What is done along a line, to its name and the comma after it. */
function sayWork(line: WorkLine): string {
  const name = sayName(line.name);
  switch (line.does) {
    case 'crease':
      return `Score ${sayCrease({ name: line.name, fold: line.fold ?? 'valley' })}`;
    case 'cut':
      return `Cut a slit, the ${name},`;
    case 'perforation':
      return `Perforate a line, the ${name},`;
    case 'mark':
      return `Mark a light line, the ${name},`;
  }
}
