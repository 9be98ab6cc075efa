import {
  type CardEdition,
  computeKind,
  computeProject,
  type FoldKind,
  foldFiles,
  type ReadLibrary,
  readLibrary,
  type SourceFile,
} from '../../../plugins/content/index.ts';
import { formatProblems, hasErrors, type Problem, type System, systemOf } from '../../../plugins/engine/index.ts';
import type { Slip, Slips, Step } from './data.ts';

/** An example, read and folded. */
export interface Worked {
  readonly step: Step;
  /** The edition of the file's own unit. */
  readonly home: System;
  readonly editions: Readonly<Record<System, CardEdition>>;
}

/** A slip with what is said about it, and the line of its text that this is about; undefined when it is about the whole. */
export interface ToldSlip {
  readonly slip: Slip;
  readonly problem: Problem;
  readonly line: number | undefined;
}

const TRIAL = 'trial';
const FENCE = '---';

/** The examples as the files of a small blog, so that they are read as a maker's are and may use each other. */
export class Workshop {
  private readonly read: ReadLibrary;

  /** Throws with every problem when an example cannot be read. */
  constructor(blog: string, steps: readonly Step[]) {
    const files = (kind: Step['is']): SourceFile[] => steps.flatMap((step) => (step.is === kind ? fileOf(step) : []));
    this.read = readLibrary({
      blog: { path: 'content/blog.yaml', text: blog },
      folds: files('fold'),
      posts: files('post'),
      supplies: files('supply'),
      techniques: [],
    });
    if (this.read.problems.length > 0) throw new Error(formatProblems(this.read.problems));
  }

  /** Undefined for a step that has no card. Throws when its card cannot be made. */
  work(step: Step): Worked | undefined {
    if (step.example === undefined || step.is === 'supply') return undefined;
    const { library } = this.read;
    const [kind, post] = [library?.folds.get(step.id), library?.posts.get(step.id)];
    const made = library && (kind ? foldKind(library, kind) : post && computeProject(library, post));
    const card = made && 'cards' in made.project ? made.project.cards[0] : undefined;
    const editions = card?.editions ?? (made && 'editions' in made.project ? made.project.editions : undefined);
    if (made === undefined || editions === undefined || made.problems.length > 0) {
      throw new Error(`${step.id} makes no card.\n${formatProblems(made?.problems ?? [])}`);
    }
    const units = kind?.units ?? post?.units;
    return { step, home: units === undefined ? 'inch' : systemOf(units), editions };
  }

  /** Reads a slip as the command for trying a file does. Throws unless just the problem comes that it names. */
  tell(slip: Slip, group: Slips): ToldSlip {
    const text = wholeOf(slip, group);
    const path = slip.is === 'fold' ? `content/folds/${TRIAL}.md` : `content/posts/${TRIAL}/index.md`;
    const { problems } = foldFiles([{ path, text }], this.read);
    const [problem] = problems;
    if (problem === undefined || problems.length > 1 || problem.code !== slip.code) {
      throw new Error(`${group.id}, ${slip.title}: expected one ${slip.code}\n${text}\n${formatProblems(problems)}`);
    }
    const line = problem.place.line - 2;
    return { slip, problem, line: line < linesOf(slip.write).length ? line : undefined };
  }
}

function foldKind(library: NonNullable<ReadLibrary['library']>, kind: FoldKind) {
  const { project, problems } = computeKind(library, kind);
  if (project === undefined || hasErrors(problems)) throw new Error(`${kind.file}\n${formatProblems(problems)}`);
  return { project, problems };
}

function fileOf({ id, is, example }: Step): SourceFile[] {
  if (example === undefined) return [];
  const text = example.startsWith(FENCE) || is === 'supply' ? example : `${FENCE}\n${example}\n${FENCE}\n`;
  const path = { fold: `folds/${id}.md`, post: `posts/${id}/index.md`, supply: `supplies/${id}.yaml` }[is];
  return [{ path: `content/${path}`, text }];
}

/** The lines of a slip first, so that they keep their numbers; then what is given, but for what the slip writes itself. */
function wholeOf({ write, given: own }: Slip, { given }: Slips): string {
  const written = entriesOf(write).map(({ key }) => key);
  const rest = entriesOf(own ?? given).flatMap(({ key, text }) => (written.includes(key) ? [] : [text]));
  return [FENCE, write.trimEnd(), ...rest, FENCE, ''].join('\n');
}

/** The entries of a file at the left margin, each with the lines that are set further in. */
function entriesOf(text: string): { readonly key: string; readonly text: string }[] {
  const entries: { key: string; text: string }[] = [];
  for (const line of linesOf(text)) {
    const key = /^[\p{L}-]+(?=:)/u.exec(line)?.[0];
    const last = entries.at(-1);
    if (key !== undefined) entries.push({ key, text: line });
    else if (last) last.text += `\n${line}`;
  }
  return entries;
}

/** Lines of a block of data, without the empty ones at its end. */
export function linesOf(text: string): string[] {
  return text.trimEnd().split('\n');
}
