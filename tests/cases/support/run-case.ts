import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import {
  type CardEdition,
  computeKind,
  computeProject,
  looksLikeFold,
  readDocument,
  readLibrary,
  type SourceFile,
} from '../../../plugins/content/index.ts';
import { type Finding, type Problem, SYSTEMS, type System } from '../../../plugins/engine/index.ts';

/** An invented blog, so that the cases do not hang on the demo's settings. */
const BLOG = `
title: Saltmarsh Paper
tagline: Folded cards from a tidal coast
author: The Saltmarsh Paper studio
address: https://saltmarsh-paper.example
language: en
units: in
marks: { inch: 1/16 in, metric: 0.5 mm }
sheets: { inch: US Letter, metric: ISO A4 }
envelope-clearance: 1/8 in
invented: yes
`;

const PROJECT = new URL('../../../', import.meta.url);
const CASES = new URL('../', import.meta.url);

export interface Found {
  readonly findings: readonly { readonly edition: System; readonly finding: Finding }[];
  readonly problems: readonly Problem[];
}

/** The folders of this folder that hold a card, by name. */
export function caseNames(): string[] {
  return readdirSync(CASES, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && readdirSync(new URL(`${entry.name}/`, CASES)).includes('card.md'))
    .map(({ name }) => name)
    .sort();
}

export function caseText(name: string, file: string): string {
  return readFileSync(fileURLToPath(new URL(`${name}/${file}`, CASES)), 'utf8');
}

/** The kinds of the project, of which a case is given those that it names. */
const KINDS = readdirSync(new URL('content/folds/', PROJECT))
  .map((file) => file.replace(/\.md$/, ''))
  .sort();

/** Reads a case's post or fold file among the kinds of the project, and dry-fits it in both editions. */
export function runCase(name: string): Found {
  const file: SourceFile = { path: `${name}/card.md`, text: caseText(name, 'card.md') };
  const kinds = KINDS.filter((kind) => file.text.includes(kind)).map((kind) => {
    const path = `content/folds/${kind}.md`;
    return { path, text: readFileSync(fileURLToPath(new URL(path, PROJECT)), 'utf8') };
  });
  const { tree } = readDocument(file);
  const isFold = tree?.kind === 'map' && looksLikeFold(tree);
  const { library, problems } = readLibrary({
    blog: { path: 'content/blog.yaml', text: BLOG },
    folds: isFold ? [...kinds, { ...file, path: 'content/folds/card.md' }] : kinds,
    posts: isFold ? [] : [{ ...file, path: 'content/posts/card/index.md' }],
    supplies: [],
    techniques: [],
  });
  if (library === undefined) return { findings: [], problems };
  const kind = library.folds.get('card');
  const editions: Readonly<Record<System, CardEdition>>[] = [
    ...(kind === undefined ? [] : [computeKind(library, kind).project?.editions].filter((made) => made !== undefined)),
    ...[...library.posts.values()]
      .flatMap((post) => computeProject(library, post).project.cards)
      .map((card) => card.editions),
  ];
  const findings = editions.flatMap((edition) =>
    SYSTEMS.flatMap((system) => edition[system].findings.map((finding) => ({ edition: system, finding }))),
  );
  return { findings, problems };
}
