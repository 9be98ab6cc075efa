import type { LessonState } from './read-lesson-state.ts';
import type { Stretch, Token } from './read-lesson-tokens.ts';
import { FILLER } from './read-lesson-words.ts';

/** The runs of words and numbers of a sentence that are not in the recipe; the whole sentence when none of it is. */
export function leftOf(tokens: readonly Token[], stretch: Stretch, state: LessonState): (Stretch & { says: string })[] {
  const open = (token: Token): boolean => !state.used.has(token) && !isFiller(token);
  if (!tokens.some(open)) return [];
  const questions = tokens.flatMap((token) => {
    const says = state.used.has(token) ? undefined : state.whys.get(token);
    return says === undefined || says === '' ? [] : [{ start: token.start, end: token.end, says }];
  });
  if (!tokens.some((token) => state.used.has(token)))
    return [{ ...stretch, says: unique(questions.map(({ says }) => says)) }];
  const left: (Stretch & { says: string })[] = [];
  let run: Token[] = [];
  const close = (): void => {
    while (run.length > 0 && isFiller(run.at(-1))) run.pop();
    const [first, last] = [run[0], run.at(-1)];
    if (first && last) {
      const inside = questions.filter(({ start, end }) => start >= first.start && end <= last.end);
      left.push({ start: first.start, end: last.end, says: unique(inside.map(({ says }) => says)) });
    }
    run = [];
  };
  for (const token of tokens) {
    if (state.used.has(token)) close();
    else if (open(token) || run.length > 0) run.push(token);
  }
  close();
  return left;
}

function unique(says: readonly string[]): string {
  return [...new Set(says)].join(' ');
}

function isFiller(token: Token | undefined): boolean {
  if (token?.kind === 'mark') return true;
  return token?.kind === 'word' && FILLER.has(token.word);
}
