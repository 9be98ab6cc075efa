import { formatPlace, formatProblem } from '../../engine/index.ts';
import type { DryFitReport } from '../schemas/dry-fit-report.ts';
import type { EditionSummary, FindingSummary } from '../schemas/summary.ts';

type State = FindingSummary['state'];

/** How a word is made to stand out; the plain report leaves it as it is. */
export type Paint = (text: string, state: State | 'error') => string;

/** What needs the maker's hand comes first. */
const ORDER: readonly State[] = ['fail', 'question', 'untested', 'pass'];

const WORDS: Readonly<Record<State, string>> = {
  fail: 'FAILS',
  question: 'QUESTION',
  untested: 'NOT TESTED',
  pass: 'works',
};

/** Room for the longest of the words. */
const WORD_WIDTH = Math.max(...Object.values(WORDS).map((word) => word.length)) + 2;

const EDITIONS = { inch: 'inch edition', metric: 'metric edition' } as const;

/** The report for reading: problems first, then each file by card and edition, what fails before what works. */
export function sayReport(report: DryFitReport, paint: Paint = (text) => text): string {
  const problems = report.problems.map(({ file, line, column, ...problem }) => {
    const said = formatProblem({ ...problem, place: { file, line, column } });
    return problem.severity === 'error' ? paint(said, 'error') : said;
  });
  const files = report.files.map((file) => {
    const head = `${file.title}  (${file.file})`;
    if (file.cards.length === 0) return `${head}\n  no card in this post: nothing to fold`;
    return [head, ...file.cards.flatMap((card) => sayCard(card, paint))].join('\n');
  });
  return `${[...problems, ...files, sayCounts(report)].join('\n\n')}\n`;
}

function sayCard(card: DryFitReport['files'][number]['cards'][number], paint: Paint): string[] {
  return (['inch', 'metric'] as const).flatMap((system) => [
    '',
    ...sayEdition(card.name, card.editions[system], paint),
  ]);
}

/** One edition of a card, a line or more for each finding. */
export function sayEdition(name: string, edition: EditionSummary, paint: Paint): string[] {
  return [`  ${name}, ${EDITIONS[edition.system]}`, ...sayFindings(edition, paint)];
}

function sayFindings({ findings }: EditionSummary, paint: Paint): string[] {
  return ORDER.flatMap((state) =>
    findings.filter((finding) => finding.state === state).flatMap((finding) => sayOne(finding, paint)),
  );
}

function sayOne(finding: FindingSummary, paint: Paint): string[] {
  const word = WORDS[finding.state];
  const indent = ' '.repeat(4 + WORD_WIDTH);
  const lines = [
    `    ${paint(word, finding.state)}${' '.repeat(WORD_WIDTH - word.length)}${finding.label}: ${finding.says}`,
  ];
  if (finding.state === 'pass') return lines;
  if (finding.remedy !== null) lines.push(`${indent}Do this: ${finding.remedy}`);
  if (finding.state !== 'untested')
    lines.push(`${indent}${[formatPlace(finding.place), finding.path].join('  ').trimEnd()}`);
  return lines;
}

/** One line: `2 fail, 1 question, 40 work.` */
export function sayCounts({ counts, files }: DryFitReport): string {
  const parts = [
    counts.errors > 0 ? `${counts.errors} to correct before folding` : '',
    counts.fail > 0 ? `${counts.fail} fail` : '',
    counts.question > 0 ? `${counts.question} in question` : '',
    counts.untested > 0 ? `${counts.untested} not tested` : '',
    `${counts.pass} work`,
  ].filter((part) => part !== '');
  return `${files.length} ${files.length === 1 ? 'file' : 'files'} folded: ${parts.join(', ')}.`;
}
