import { readFoldWord, settleFolds, settlePleats } from './read-lesson-folds.ts';
import { cutInHalf, readNamedSheet } from './read-lesson-known.ts';
import { leftOf } from './read-lesson-left.ts';
import { sheetNamed } from './read-lesson-names.ts';
import { sayWhatIsOpen } from './read-lesson-open.ts';
import { foldInHalf, readScoreAt, shareUnits } from './read-lesson-scores.ts';
import { sayAmount } from './read-lesson-sheets.ts';
import { readAround, readSideAt } from './read-lesson-sides.ts';
import { readCount, readSizeAt } from './read-lesson-sizes.ts';
import { LessonState, numberAt, type Sentence, wordAt } from './read-lesson-state.ts';
import { type Stretch, sentencesOf, type Token } from './read-lesson-tokens.ts';
import type { LessonNote, LessonReading } from './read-lesson-types.ts';
import { CUTTING, FINISHING, FOLDING, SCORING, TURNING } from './read-lesson-words.ts';
import { linesOfSheets, recipeText } from './read-lesson-write.ts';

/** The longest lesson that is looked at, in characters. */
const LONGEST_LESSON = 100_000;

/**
 * A recipe from a lesson's prose, as it is pasted: sheets to cut, scores, and which way they fold.
 *
 * Nothing is guessed silently: what the lesson leaves open and was decided here is in `assumed`, and every word and
 * number that did not go into the recipe is in `left`, with a question where a number can be read in two ways. Never
 * throws; time grows with the length of the text.
 */
export function readLesson(lesson: string): LessonReading {
  const text = lesson.slice(0, LONGEST_LESSON);
  const sentences = sentencesOf(text);
  const state = new LessonState(sentences.flatMap(({ tokens }) => tokens));
  for (const { tokens } of sentences) readSentence(tokens, state);
  for (const sheet of state.sheets) settlePleats(sheet);
  const lines = linesOfSheets(state.sheets);
  sayWhatIsOpen(state);
  const finished = lines.length === 0 ? undefined : finishedText(state);
  const note = ({ start, end, says }: Stretch & { says: string }): LessonNote => ({
    start,
    end,
    text: lesson.slice(start, end).replace(/\s+/gu, ' '),
    says,
  });
  const beyond =
    lesson.length > LONGEST_LESSON
      ? [
          note({
            start: LONGEST_LESSON,
            end: LONGEST_LESSON,
            says: `Only the first ${LONGEST_LESSON} characters are read.`,
          }),
        ]
      : [];
  return {
    lines,
    finished,
    recipe: recipeText(lines, finished),
    understood: [...state.used].map(({ start, end }) => ({ start, end })).sort((a, b) => a.start - b.start),
    assumed: lines.length === 0 ? [] : [...state.assumed].sort((a, b) => a.start - b.start).map(note),
    left: [...sentences.flatMap(({ tokens, stretch }) => leftOf(tokens, stretch, state)).map(note), ...beyond],
  };
}

function finishedText({ finished }: LessonState): string | undefined {
  if (finished === undefined) return undefined;
  const { width, height } = finished;
  if (width.unit !== height.unit) return undefined;
  return `${sayAmount(width)} x ${sayAmount(height)} ${width.unit}`;
}

function readSentence(tokens: readonly Token[], state: LessonState): void {
  const sentence: Sentence = {
    tokens,
    hasNumber: tokens.some(({ kind }) => kind === 'number'),
    mode: undefined,
    verbs: [],
    count: undefined,
    at: false,
    every: undefined,
    around: undefined,
    events: [],
    fresh: [],
  };
  for (let index = 0; index < tokens.length; ) index = readToken(sentence, index, state);
  shareUnits(sentence, state);
  settleFolds(sentence, state);
}

/** Reads on from one token; the index to go on at. */
function readToken(sentence: Sentence, index: number, state: LessonState): number {
  const { tokens } = sentence;
  if (numberAt(tokens, index)) return readNumber(sentence, index, state);
  const word = wordAt(tokens, index);
  const token = tokens[index];
  if (word === undefined || token === undefined) return index + 1;
  const special =
    readNamedSheet(sentence, index, state) ??
    readSideAt(sentence, index, state) ??
    readAround(sentence, index) ??
    readCount(sentence, index) ??
    readHalf(sentence, index, state) ??
    readTurn(sentence, index, state) ??
    readFoldWord(sentence, index);
  if (special !== undefined) return special;
  const mode = modeOf(sentence, word);
  if (mode) {
    sentence.mode = mode;
    sentence.verbs = [...(mode === 'finished' ? sentence.verbs : []), token];
    sentence.at = false;
    sentence.every = undefined;
    sentence.around = undefined;
  } else if (word === 'at' || word === 'on') sentence.at = true;
  if (sentence.mode === 'score' || sentence.mode === 'fold') {
    const sheet = sentence.fresh.length === 0 ? sheetNamed(sentence, index, state) : undefined;
    if (sheet) {
      state.current = sheet;
      state.use(token);
    }
  }
  return index + 1;
}

function modeOf({ mode, hasNumber }: Sentence, word: string): Sentence['mode'] {
  if (SCORING.has(word)) return 'score';
  if (FOLDING.has(word)) return mode === 'score' ? undefined : 'fold';
  if (FINISHING.has(word)) return 'finished';
  // `use a bone folder` brings no sheet, but `use a piece 5 x 7` does.
  if (CUTTING.has(word) && mode !== 'score' && hasNumber) return 'cut';
  return CUTTING.has(word) && /^(?:cut|trim)/u.test(word) ? 'cut' : undefined;
}

function readNumber(sentence: Sentence, index: number, state: LessonState): number {
  const read = readSideAt(sentence, index, state) ?? readSizeAt(sentence, index, state) ?? readCount(sentence, index);
  if (read !== undefined) return read;
  const before = sentence.tokens[index - 1];
  if (before?.kind === 'word' && (before.word === 'every' || before.word === 'each')) sentence.every = before;
  const scores = sentence.mode === 'score' || sentence.mode === 'fold';
  if (scores) return readScoreAt(sentence, index, state);
  const number = numberAt(sentence.tokens, index);
  if (number?.refused) state.whys.set(number, number.refused.remedy);
  return index + 1;
}

/** `in half`, `down the middle`, `in the centre`. */
function readHalf(sentence: Sentence, index: number, state: LessonState): number | undefined {
  const { tokens, mode } = sentence;
  const word = wordAt(tokens, index) ?? '';
  const half = word === 'half' && /^(?:in|at)$/u.test(wordAt(tokens, index - 1) ?? '');
  const middle = /^(?:middle|cent(?:re|er)|halfway|midpoint)$/u.test(word) && (mode === 'score' || mode === 'fold');
  if (!half && !middle) return undefined;
  const taken = tokens.slice(index, index + 1);
  const [token] = taken;
  if (token === undefined) return undefined;
  if (mode === 'cut') {
    if (cutInHalf(token, state)) {
      state.use(token, ...sentence.verbs);
      sentence.verbs = [];
    }
  } else if (mode === 'score' || mode === 'fold') foldInHalf(sentence, taken, state);
  return index + 1;
}

/** How far behind `turn` the scoring may be spoken of, in words. */
const TURN_REACH = 16;

/** `turn it a quarter`, `rotate 90 degrees`; turning it over is another matter. */
function readTurn(sentence: Sentence, index: number, state: LessonState): number | undefined {
  const { tokens } = sentence;
  if (!TURNING.has(wordAt(tokens, index) ?? '')) return undefined;
  let last = index;
  for (let at = index + 1; at < tokens.length && at <= index + 7; at++) {
    const word = wordAt(tokens, at) ?? '';
    if (/^(?:over|round|around|upside|inside)$/u.test(word)) return index + 1;
    if (SCORING.has(word)) break;
    const number = numberAt(tokens, at);
    const degrees = number?.unit === undefined && number?.value.equals(90) === true;
    if (degrees || /^(?:quarter|sideways|degrees|clockwise|turn)$/u.test(word)) last = at;
  }
  if (
    last === index &&
    !tokens.slice(index, index + TURN_REACH).some((token) => token.kind === 'word' && SCORING.has(token.word))
  )
    return index + 1;
  if (state.current?.scorings.length) state.turned = tokens.slice(index, last + 1);
  return last + 1;
}
