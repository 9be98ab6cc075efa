import { type LessonSheet, lengthOfAmount, reachOf, sayAmount, sideOfScoring } from './read-lesson-sheets.ts';
import type { LessonState } from './read-lesson-state.ts';

/** What no word of the lesson says, and the recipe takes for granted. */
export function sayWhatIsOpen(state: LessonState): void {
  const { assumedFor } = state.units;
  if (assumedFor) state.assume(assumedFor.number, assumedFor.says);
  for (const sheet of state.sheets) {
    if (sheet.refused) continue;
    saySides(sheet, state);
    const open = sheet.scorings.flatMap(({ scores }) => scores.filter(({ fold }) => fold === undefined));
    const [first] = open;
    if (first === undefined) continue;
    const which = open.map(({ at }) => `${sayAmount(at)} ${at.unit}`).join(', ');
    state.assume(
      first.at,
      `The lesson does not say which way it folds at ${which}: taken as ${open.length === 1 ? 'a valley' : 'valleys'}.`,
    );
  }
}

function saySides(sheet: LessonSheet, state: LessonState): void {
  for (const scoring of sheet.scorings) {
    const [first] = scoring.scores;
    if (scoring.side !== undefined || first === undefined) continue;
    const reach = reachOf(sheet, scoring);
    const square = lengthOfAmount(sheet.width).equals(lengthOfAmount(sheet.height));
    const chosen = square ? 'the sheet is square' : `taken as the long one, ${sayAmount(reach)} ${reach.unit}`;
    const runs = sideOfScoring(sheet, scoring) === 'across' ? 'from the left' : 'from the top';
    state.assume(first.at, `The lesson does not say which side is scored: ${chosen}. It is measured ${runs}.`);
  }
}
