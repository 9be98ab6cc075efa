import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import ts from 'typescript';
import { PROJECT } from '../../plugins/commands/support/project.ts';

/*
 * What the readers of the fold language can say and understand, gathered from their own source. A page that explains the language
 * is compared with this, so that a reader cannot learn a word that the page does not know.
 */

const SPEC = join(PROJECT, 'plugins/engine/spec');
const YAML = join(PROJECT, 'plugins/content/yaml');
const UNITS = join(PROJECT, 'plugins/engine/units');

/** Files of the readers: all of the stage but what reads a lesson's prose, the numerals that expressions are made of, weights,
 * and YAML. */
export function readerFiles(): readonly string[] {
  const within = (folder: string, wanted: (name: string) => boolean): string[] =>
    readdirSync(folder)
      .filter((name) => name.endsWith('.ts') && wanted(name))
      .map((name) => join(folder, name));
  return [
    ...within(SPEC, (name) => !name.startsWith('read-lesson')),
    ...within(UNITS, (name) => name.startsWith('numeral') || name === 'mass.ts'),
    ...within(YAML, () => true),
  ];
}

function sourceOf(file: string): ts.SourceFile {
  return ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest, true);
}

function* nodesIn(node: ts.Node): Generator<ts.Node> {
  yield node;
  const children: ts.Node[] = [];
  node.forEachChild((child) => {
    children.push(child);
  });
  for (const child of children) yield* nodesIn(child);
}

/** Texts that an expression may come out as: a text itself, or those on both sides of a choice. */
function textsOf(node: ts.Node): string[] {
  if (ts.isStringLiteralLike(node)) return [node.text];
  if (ts.isParenthesizedExpression(node)) return textsOf(node.expression);
  return ts.isConditionalExpression(node) ? [...textsOf(node.whenTrue), ...textsOf(node.whenFalse)] : [];
}

/** Where a function takes a `code`: its name, and the position among its arguments. */
function takersIn(sources: readonly ts.SourceFile[]): ReadonlyMap<string, number> {
  const takers = new Map<string, number>();
  for (const node of sources.flatMap((source) => [...nodesIn(source)])) {
    if (!ts.isFunctionDeclaration(node) && !ts.isArrowFunction(node) && !ts.isMethodDeclaration(node)) continue;
    const position = node.parameters.findIndex(({ name }) => name.getText() === 'code');
    const name = ts.isArrowFunction(node)
      ? ts.isVariableDeclaration(node.parent)
        ? node.parent.name.getText()
        : undefined
      : node.name?.getText();
    if (position >= 0 && name !== undefined) takers.set(name, position);
  }
  return takers;
}

/** Every code of a problem that these files write down, with the files that do. */
export function codesIn(files: readonly string[]): ReadonlyMap<string, readonly string[]> {
  const sources = files.map(sourceOf);
  const takers = takersIn(sources);
  const codes = new Map<string, string[]>();
  const add = (file: string, texts: readonly string[]): void => {
    for (const text of texts) codes.set(text, [...(codes.get(text) ?? []), basename(file)]);
  };
  for (const source of sources) {
    for (const node of nodesIn(source)) {
      if (ts.isPropertyAssignment(node) && node.name.getText() === 'code')
        add(source.fileName, textsOf(node.initializer));
      if (ts.isVariableDeclaration(node) && node.name.getText() === 'code' && node.initializer) {
        add(source.fileName, textsOf(node.initializer));
      }
      if (!ts.isCallExpression(node)) continue;
      const position = takers.get(node.expression.getText().split('.').at(-1) ?? '');
      const given = position === undefined ? undefined : node.arguments[position];
      if (given) add(source.fileName, textsOf(given));
    }
  }
  return codes;
}

/** Every text within what a constant of a file begins as: the words of a list, a set or a map. */
export function wordsOf(file: string, constant: string): readonly string[] {
  const source = sourceOf(join(SPEC, file));
  const declared = [...nodesIn(source)].find(
    (node): node is ts.VariableDeclaration => ts.isVariableDeclaration(node) && node.name.getText() === constant,
  );
  if (declared?.initializer === undefined) throw new Error(`${file} has no constant ${constant}`);
  const keys = [...nodesIn(declared.initializer)].flatMap((node) =>
    ts.isPropertyAssignment(node) && (ts.isStringLiteral(node.name) || ts.isIdentifier(node.name))
      ? [node.name.text]
      : [],
  );
  const texts = [...nodesIn(declared.initializer)].flatMap((node) => (ts.isStringLiteral(node) ? [node.text] : []));
  return [...new Set([...keys, ...texts])];
}

/** Files that check the names of a group, and so know names. */
export function filesThatCheckKeys(): readonly string[] {
  return readerFiles()
    .filter((file) => /\bcheckKeys\(/u.test(readFileSync(file, 'utf8')))
    .map((file) => basename(file))
    .filter((name) => name !== 'report.ts')
    .sort();
}
