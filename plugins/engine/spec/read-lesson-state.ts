import type { LessonAmount, LessonSheet, LessonSide } from './read-lesson-sheets.ts';
import type { Stretch, Token } from './read-lesson-tokens.ts';
import { LessonUnits } from './read-lesson-units.ts';

/** More than any card has: they keep every walk over a lesson short. */
export const MOST_SHEETS = 100;
export const MOST_SCORES = 200;

/** What a number of a sentence is about, by the last word that says. */
export type Mode = 'cut' | 'score' | 'fold' | 'finished' | undefined;

/** What has been read of a lesson so far. */
export class LessonState {
  readonly sheets: LessonSheet[] = [];
  readonly units: LessonUnits;
  readonly used = new Set<Token>();
  /** Why a token is not in the recipe, where there is something to say. */
  readonly whys = new Map<Token, string>();
  readonly assumed: (Stretch & { readonly says: string })[] = [];
  /** The sheet that is spoken of. */
  current: LessonSheet | undefined;
  finished: { readonly width: LessonAmount; readonly height: LessonAmount } | undefined;
  /** A side that has been named, for the scores to come. */
  side: { readonly side: LessonSide; readonly tokens: readonly Token[] } | undefined;
  /** The sheet has been turned by a quarter, for the scores to come. */
  turned: readonly Token[] | undefined;

  constructor(tokens: readonly Token[]) {
    this.units = new LessonUnits(tokens);
  }

  use(...tokens: readonly (Token | undefined)[]): void {
    for (const token of tokens) if (token) this.used.add(token);
  }

  assume({ start, end }: Stretch, says: string): void {
    this.assumed.push({ start, end, says });
  }

  begin(sheet: LessonSheet): void {
    this.sheets.push(sheet);
    this.current = sheet;
    this.side = undefined;
    this.turned = undefined;
  }
}

/** One sentence, and where its reading stands. */
export interface Sentence {
  readonly tokens: readonly Token[];
  readonly hasNumber: boolean;
  mode: Mode;
  /** Words such as `score` that belong to whatever is read after them. */
  verbs: Token[];
  /** A number of sheets, said before their size. */
  count: { readonly count: number; readonly tokens: readonly Token[] } | undefined;
  /** `at` has been said since the last verb: what follows is a position. */
  at: boolean;
  /** `every` has been said since the last verb: what follows is a step. */
  every: Token | undefined;
  /** `all four sides`, `both ends`: the scores to come count from these. */
  around: { readonly from: 'both' | 'four'; readonly tokens: readonly Token[] } | undefined;
  /** Creases and directions, in the order in which they are spoken of. */
  readonly events: FoldEvent[];
  /** Scores read in this sentence. */
  fresh: { readonly token: Token & { kind: 'number' }; readonly index: number }[];
}

export type FoldEvent =
  | { readonly is: 'fold'; readonly fold: 'valley' | 'mountain'; readonly tokens: readonly Token[] }
  | { readonly is: 'pleat'; readonly tokens: readonly Token[] }
  /** A crease by its number; from the end below zero. */
  | { readonly is: 'nth'; readonly index: number; readonly tokens: readonly Token[] }
  | { readonly is: 'every'; readonly tokens: readonly Token[] }
  | { readonly is: 'others'; readonly tokens: readonly Token[] }
  /** A crease by its position, said before or just now. */
  | { readonly is: 'score'; readonly index: number; readonly fresh: boolean; readonly tokens: readonly Token[] };

export function wordAt(tokens: readonly Token[], index: number): string | undefined {
  const token = tokens[index];
  return token?.kind === 'word' ? token.word : undefined;
}

export function markAt(tokens: readonly Token[], index: number): string | undefined {
  const token = tokens[index];
  return token?.kind === 'mark' ? token.mark : undefined;
}

export function numberAt(tokens: readonly Token[], index: number): (Token & { kind: 'number' }) | undefined {
  const token = tokens[index];
  return token?.kind === 'number' ? token : undefined;
}
