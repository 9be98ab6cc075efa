import { formatPlace, formatProblem, type LessonNote, type Place } from '../../engine/index.ts';
import { summariseEdition } from '../summary.ts';
import type { FoldedLesson } from './fold-lesson.ts';
import { type Paint, sayEdition } from './say-report.ts';

/**
 * A lesson's recipe to paste into a post, what was assumed for it, its dry fit, and what of the lesson is not in it. Places
 * count in the lesson, those of the dry fit in the recipe.
 */
export function sayLesson(lesson: FoldedLesson, paint: Paint = (text) => text): string {
  const { file, reading, edition, problems } = lesson;
  const place = placesIn(lesson);
  const notes = (heading: string, list: readonly LessonNote[]): string[] =>
    list.length === 0 ? [] : [[heading, ...list.flatMap((note) => sayNote(note, place(note.start)))].join('\n')];
  const recipe =
    reading.recipe === ''
      ? `No recipe could be read in ${file}: it takes a sheet with its size, such as \`cut 5 1/2 x 11 in, score at 5 1/2\`.`
      : reading.recipe.trimEnd();
  const fit = edition && sayEdition('The recipe', summariseEdition(edition), paint).join('\n');
  return `${[
    recipe,
    ...notes('Assumed, since the lesson does not say:', reading.assumed),
    ...problems.map((problem) => paint(formatProblem(problem), 'error')),
    ...(fit === undefined ? [] : [`Dry fit\n${fit}`]),
    ...notes('Not in the recipe:', reading.left),
  ].join('\n\n')}\n`;
}

function sayNote({ text, says }: LessonNote, place: Place): string[] {
  return [`  ${formatPlace(place)}  ${shortened(text)}`, ...(says === '' ? [] : [`      ${says}`])];
}

/** Longer parts of a lesson are cut in the middle of what is shown. */
const LONGEST_SHOWN = 140;

function shortened(text: string): string {
  const characters = [...text];
  return characters.length <= LONGEST_SHOWN ? text : `${characters.slice(0, LONGEST_SHOWN).join('')}…`;
}

/** From an offset in the lesson to its line and column. */
function placesIn({ file, text }: FoldedLesson): (offset: number) => Place {
  const starts = [0];
  for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) starts.push(at + 1);
  return (offset) => {
    const line = starts.findLastIndex((start) => start <= offset);
    return { file, line: line + 1, column: offset - (starts[line] ?? 0) + 1 };
  };
}
