import { type LessonSheet, lengthOfAmount, type Scoring, sayAmount, sideOfScoring } from './read-lesson-sheets.ts';
import type { RecipeLine } from './recipe-of.ts';

/** The steps of a recipe for the sheets of a lesson. Sheets that are cut several times are several pieces. */
export function linesOfSheets(sheets: readonly LessonSheet[]): RecipeLine[] {
  const taken = new Set<string>();
  return sheets
    .filter(({ refused }) => !refused)
    .flatMap((sheet, index, all) => {
      const named = all.length > 1 || sheet.count > 1;
      const name = named || sheet.scorings.length > 1 ? (sheet.name ?? (index === 0 ? 'base' : 'piece')) : undefined;
      return Array.from({ length: sheet.count }, (_, copy) => {
        const wanted = name !== undefined && sheet.count > 1 ? `${name}-${copy + 1}` : name;
        return linesOf(sheet, wanted === undefined ? undefined : unused(wanted, taken));
      }).flat();
    });
}

function unused(name: string, taken: Set<string>): string {
  let free = name;
  for (let number = 2; taken.has(free); number++) free = `${name}-${number}`;
  taken.add(free);
  return free;
}

function linesOf(sheet: LessonSheet, name: string | undefined): RecipeLine[] {
  const piece = name === undefined ? {} : { piece: name };
  const { width, height } = sheet;
  const alike = width.unit === height.unit;
  const cut = alike
    ? `${sayAmount(width)} x ${sayAmount(height)} ${width.unit}`
    : `${sayAmount(width)} ${width.unit} x ${sayAmount(height)} ${height.unit}`;
  const scored = sheet.scorings.filter(({ scores }) => scores.length > 0);
  if (scored.length === 0) return [{ ...piece, cut }];
  return scored.map((scoring) => ({ ...piece, cut, ...along(sheet, scoring), score: scoresOf(sheet, scoring) }));
}

/** The side, where the lesson names it by its length, or where it is not the one that a recipe takes by itself. */
function along(sheet: LessonSheet, scoring: Scoring): { along?: string } {
  const { side } = scoring;
  if (typeof side === 'object') {
    return { along: side.unit === sheet.height.unit ? sayAmount(side) : `${sayAmount(side)} ${side.unit}` };
  }
  const usual = sideOfScoring(sheet, { side: undefined, scores: [] });
  const chosen = sideOfScoring(sheet, scoring);
  if (chosen === usual) return {};
  return { along: lengthOfAmount(sheet.width).equals(lengthOfAmount(sheet.height)) ? chosen : 'short side' };
}

function scoresOf(sheet: LessonSheet, { scores }: Scoring): string {
  return scores
    .map(({ at, fold }) => {
      const unit = at.unit === sheet.height.unit ? '' : ` ${at.unit}`;
      return `${sayAmount(at)}${unit}${fold === 'mountain' ? ' mountain' : ''}`;
    })
    .join(', ');
}

/** `recipe:` for the frontmatter of a post, and `finished:` where a size is promised. */
export function recipeText(lines: readonly RecipeLine[], finished: string | undefined): string {
  if (lines.length === 0) return '';
  const steps = lines.flatMap(({ piece, cut, along: side, score }) => {
    const keys = [
      ...(piece === undefined ? [] : [`piece: ${piece}`]),
      `cut: ${cut}`,
      ...(side === undefined ? [] : [`along: ${side}`]),
      ...(score === undefined ? [] : [`score: ${score}`]),
    ];
    return keys.map((key, index) => `${index === 0 ? '  - ' : '    '}${key}`);
  });
  return `${['recipe:', ...steps, ...(finished === undefined ? [] : [`finished: ${finished}`])].join('\n')}\n`;
}
