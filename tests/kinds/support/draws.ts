import {
  type CardParameter,
  DEFAULT_MARKS,
  type Fold,
  formatProblems,
  Length,
  type System,
  toMarks,
} from '../../../plugins/engine/index.ts';
import { type Settings, tryCard } from './catalogue.ts';

/** A size somewhere in its range: `share` from 0 to 1; on a mark of the ruler or wherever it falls. */
export interface Draw {
  readonly share: number;
  readonly onMark: boolean;
}

/**
 * Settings for all parameters of a fold, each drawn within the range that it has beside those before it. Throws when sizes in their
 * ranges leave no room for a later default: that has to fit whatever the sizes before it are.
 */
export function settingsDrawn(fold: Fold, system: System, draws: readonly Draw[]): Settings {
  const rule = withoutPaper(fold);
  let settings: Settings = {};
  for (const [i, { name }] of fold.parameters.entries()) {
    const { card, problems } = tryCard(rule, system, settings);
    if (card === undefined) throw new Error(`${JSON.stringify(settings)} leaves no card: ${formatProblems(problems)}`);
    const parameter = card.parameters.find((one) => one.name === name);
    const draw = draws[i];
    if (parameter === undefined || draw === undefined) throw new Error(`no draw for ${name}`);
    settings = { ...settings, [name]: valueAt(parameter, fold, system, draw) };
  }
  return settings;
}

/** The parameters of a fold and nothing else: ranges are wanted several times for each card, and paper once. */
function withoutPaper(fold: Fold): Fold {
  const nothing = { joins: [], stack: [], fillings: [], poses: [], motions: [], closesWithin: [] };
  const parts = { ...fold.parts, ...nothing, actsAs: undefined, posts: undefined };
  return { ...fold, pieces: [], parts, require: [], same: [], recipe: [], repeats: undefined };
}

/** The text of a parameter at a share of its range: a word for a choice. */
export function valueAt(parameter: CardParameter, fold: Fold, system: System, { share, onMark }: Draw): string {
  const words = wordsOf(fold, parameter.name);
  if (words.length > 0) return words[Math.min(words.length - 1, Math.floor(share * words.length))] ?? '';
  const { from, to } = parameter;
  if (from instanceof Length && to instanceof Length) {
    const mark = DEFAULT_MARKS[system];
    const steps = Math.round(share * 1e6);
    const exact = from.plus(to.minus(from).times(`${steps}/1000000`));
    return textOf(onMark ? toMarks(exact, mark, 'nearest') : exact, system);
  }
  if (typeof from !== 'number' || typeof to !== 'number') throw new Error(`${parameter.name} has no range`);
  const value = from + (to - from) * share;
  if (parameter.angle && !onMark) return `${value.toFixed(1)} deg`;
  const whole = Math.min(Math.floor(to), Math.max(Math.ceil(from), Math.round(value)));
  return parameter.angle ? `${whole} deg` : String(whole);
}

/** Exactly, as a fraction with its unit. */
export function textOf(length: Length, system: System): string {
  return system === 'inch' ? `${length.inches.toFraction(true)} in` : `${length.mm.toFraction(true)} mm`;
}

export function wordsOf(fold: Fold, name: string): readonly string[] {
  return fold.parameters.find((one) => one.name === name)?.choices.map(({ word }) => word) ?? [];
}
