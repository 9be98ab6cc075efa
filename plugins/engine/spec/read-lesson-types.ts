import type { Stretch } from './read-lesson-tokens.ts';
import type { RecipeLine } from './recipe-of.ts';

/** A part of the lesson with something to say about it. */
export interface LessonNote extends Stretch {
  /** As it stands in the lesson, line breaks as spaces. */
  readonly text: string;
  readonly says: string;
}

/** A lesson's prose as a recipe. Offsets count UTF-16 units in the text that was read. */
export interface LessonReading {
  /** The steps, as they are written in a post. None when nothing could be read. */
  readonly lines: readonly RecipeLine[];
  /** The closed size that the lesson promises, as `finished:` takes it. */
  readonly finished: string | undefined;
  /** YAML for the frontmatter of a post: `recipe:`, and `finished:` where the lesson says. Empty without a step. */
  readonly recipe: string;
  /** Parts of the text that the recipe was made from. */
  readonly understood: readonly Stretch[];
  /** What the lesson leaves open and was decided here. */
  readonly assumed: readonly LessonNote[];
  /** What is not in the recipe: not understood, or in question. `says` is empty where there is nothing to add. */
  readonly left: readonly LessonNote[];
}
