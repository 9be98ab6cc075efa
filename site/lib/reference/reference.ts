import { type Chapter, readChapter, readSlips, readWords, type Slips, type Step, type WordGroup } from './data.ts';
import { referenceFiles } from './files.ts';
import { type ToldSlip, type Worked, Workshop } from './workshop.ts';

/** The maker's reference of the fold language: what its pages show, all of it read and folded. */
export interface Reference {
  readonly chapters: readonly (Omit<Chapter, 'steps'> & { readonly steps: readonly ShownStep[] })[];
  readonly slips: readonly (Omit<Slips, 'slips'> & { readonly slips: readonly ToldSlip[] })[];
  readonly words: readonly WordGroup[];
}

export interface ShownStep {
  readonly step: Step;
  /** Undefined where nothing is folded. */
  readonly worked: Worked | undefined;
}

/** Reads the whole reference. Throws when an example makes no card, or a slip is not told as it says. */
export function readReference(files: ReadonlyMap<string, string> = referenceFiles()): Reference {
  const within = (folder: string): (readonly [string, string])[] =>
    [...files].filter(([path]) => path.startsWith(`${folder}/`));
  const chapters = within('chapters').map(([path, text]) => readChapter(path, text));
  const slips = within('slips').map(([path, text]) => readSlips(path, text));
  const workshop = new Workshop(
    files.get('blog.yaml') ?? '',
    chapters.flatMap(({ steps }) => steps),
  );
  return {
    chapters: chapters.map((chapter) => ({
      ...chapter,
      steps: chapter.steps.map((step) => ({ step, worked: workshop.work(step) })),
    })),
    slips: slips.map((group) => ({ ...group, slips: group.slips.map((slip) => workshop.tell(slip, group)) })),
    words: readWords('words.yaml', files.get('words.yaml') ?? ''),
  };
}

let read: Reference | undefined;

/** The reference as the pages of a build share it. */
export function getReference(): Reference {
  read ??= readReference();
  return read;
}
