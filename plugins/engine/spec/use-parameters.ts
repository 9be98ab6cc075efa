import { Length } from '../units/index.ts';
import { Angle } from './angle.ts';
import type { Settled } from './card-parameters.ts';
import { type Known, kindsOfNames, NO_PIECES_HERE, namesFor } from './check-kinds.ts';
import { checkCircles } from './check-names.ts';
import { type Amount, evaluate, type Scope } from './evaluate.ts';
import type { Expression, Term } from './expression.ts';
import type { Given } from './given-parameters.ts';
import { checkKind } from './kinds.ts';
import { wantOf } from './parameter-want.ts';
import { readText } from './parse.ts';
import { textOr } from './read-parts.ts';
import { checkKeys, join, Report, suggest } from './report.ts';
import type { Fold, UseSpec } from './types.ts';

/**
 * What a kind gives for the parameters of a kind that it uses, worked out in its own sizes as they were written: the used kind then puts
 * them on marks by itself, as it would those of a post.
 */
export function givenByUse(use: UseSpec, by: Fold, settled: Settled, report: Report): Map<string, Given> {
  const given = new Map<string, Given>();
  if (use.given === undefined) return given;
  checkKeys(use.given, use.path, { known: use.fold.parameters.map(({ name }) => name) }, report);
  const kinds: ReadonlyMap<string, Known> = kindsOfNames(by, checkCircles(by, new Report()), new Set(), new Report());
  const names = { ...namesFor(by, [], kinds, new Set()), measure: () => NO_PIECES_HERE };
  const scope: Scope = {
    amount: (name) => settled.written.get(name),
    measure: () => undefined,
    settle: (length) => length,
  };
  for (const { key, value } of use.given.entries) {
    const path = join(use.path, key.text);
    const parameter = use.fold.parameters.find(({ name }) => name === key.text);
    const node = textOr(value, path, 'a size of this kind, as `width`', report);
    if (parameter === undefined || node === undefined) continue;
    const origin = { node, path, edition: true };
    if (parameter.type === 'choice') {
      const word = node.text.trim();
      const words = parameter.choices.map((choice) => choice.word);
      if (words.includes(word)) given.set(key.text, { ...origin, word, expression: undefined });
      else {
        const takes = `one of ${words.join(', ')}`;
        const remedy = suggest(word, words, `Write ${takes}.`);
        report.at(node.place, path, { code: 'unknown-word', wrote: word, takes, remedy });
      }
      continue;
    }
    const expression = readText(node, path, by.units, report);
    const want = wantOf(parameter);
    if (expression === undefined || checkKind(expression, want, names, report) === undefined) continue;
    const amount = evaluate(expression, want, scope, report);
    if (amount) given.set(key.text, { ...origin, word: undefined, expression: literal(expression, amount) });
  }
  return given;
}

/** An amount as an expression that needs no names. */
function literal(expression: Expression, amount: Amount): Expression {
  const { start, end } = expression.root;
  const root: Term =
    amount instanceof Length
      ? { is: 'number', value: amount.mm, unit: 'mm', start, end }
      : amount instanceof Angle
        ? { is: 'angle', degrees: amount.degrees, start, end }
        : { is: 'number', value: amount, unit: undefined, start, end };
  return { ...expression, root };
}
