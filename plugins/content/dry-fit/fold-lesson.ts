import { hasErrors, type LessonReading, type Problem, readLesson, type System, systemOf } from '../../engine/index.ts';
import { blogOfDefaults } from '../entries/blog.ts';
import { cardsOf } from '../entries/cards.ts';
import type { Post } from '../entries/types.ts';
import type { Library } from '../library.ts';
import { type CardEdition, computeProject } from '../project.ts';
import { readYaml } from '../reader.ts';
import type { SourceFile } from '../source-file.ts';

/** A lesson's prose with the recipe that was made of it, folded. */
export interface FoldedLesson {
  readonly file: string;
  readonly text: string;
  readonly reading: LessonReading;
  /** The card of the recipe in the edition that it is written for; undefined without a recipe. */
  readonly edition: CardEdition | undefined;
  /** Of the recipe: their places count in its text. */
  readonly problems: readonly Problem[];
}

/** What problems and findings of the recipe call the file that they stand in. */
const RECIPE_FILE = 'recipe';

/**
 * Reads a lesson and folds its recipe, as a post would that it is pasted into. Only the edition in the lesson's own units
 * counts: what it says is not re-applied to the other one.
 */
export function foldLesson(file: SourceFile, library: Library | undefined): FoldedLesson {
  const reading = readLesson(file.text);
  const lesson = { file: file.path, text: file.text, reading };
  if (reading.lines.length === 0) return { ...lesson, edition: undefined, problems: [] };
  const { tree, problems } = readYaml(reading.recipe, RECIPE_FILE);
  if (tree?.kind !== 'map') return { ...lesson, edition: undefined, problems };
  const { cards, problems: ofCards } = cardsOf(tree, undefined);
  const post: Post = {
    slug: 'lesson',
    file: RECIPE_FILE,
    title: 'Lesson',
    summary: '',
    date: '',
    updated: undefined,
    units: undefined,
    techniques: [],
    supplies: [],
    tools: [],
    cards,
    invented: false,
  };
  const { project, problems: ofProject } = computeProject(library ?? emptyLibrary(), post);
  const all = [...problems, ...ofCards, ...ofProject];
  const edition = hasErrors(all) ? undefined : project.cards[0]?.editions[systemOfRecipe(reading)];
  return { ...lesson, edition, problems: all };
}

/** The system of the first sheet. */
function systemOfRecipe({ lines }: LessonReading): System {
  return systemOf(/ (mm|cm)$/u.test(lines[0]?.cut ?? '') ? 'mm' : 'in');
}

function emptyLibrary(): Library {
  const none = new Map<string, never>();
  return { blog: blogOfDefaults(), posts: none, folds: none, supplies: none, techniques: none };
}

/** 2 when nothing could be read or made, 1 when the dry fit fails, else 0. */
export function exitCodeOfLesson({ edition }: FoldedLesson): 0 | 1 | 2 {
  if (edition === undefined) return 2;
  return edition.findings.some(({ state }) => state === 'fail') ? 1 : 0;
}
