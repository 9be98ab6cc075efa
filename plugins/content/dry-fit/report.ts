import type { Problem } from '../../engine/index.ts';
import { sortedProblems } from '../distinct.ts';
import { DRY_FIT_VERSION, type DryFitReport } from '../schemas/dry-fit-report.ts';
import { summariseEdition } from '../summary.ts';
import type { FoldedFile } from './fold-files.ts';

/** The findings of some files, as plain data. */
export function reportOf(files: readonly FoldedFile[], problems: readonly Problem[]): DryFitReport {
  const sorted = sortedProblems(problems);
  const folded = files.map((file) => ({
    ...file,
    cards: file.cards.map(({ key, name, editions }) => ({
      key,
      name,
      editions: { inch: summariseEdition(editions.inch), metric: summariseEdition(editions.metric) },
    })),
  }));
  const findings = folded.flatMap(({ cards }) =>
    cards.flatMap(({ editions }) => [...editions.inch.findings, ...editions.metric.findings]),
  );
  const having = (state: (typeof findings)[number]['state']): number =>
    findings.filter((finding) => finding.state === state).length;
  const weighing = (severity: Problem['severity']): number =>
    sorted.filter((problem) => problem.severity === severity).length;
  return {
    schemaVersion: DRY_FIT_VERSION,
    counts: {
      pass: having('pass'),
      question: having('question'),
      fail: having('fail'),
      untested: having('untested'),
      errors: weighing('error'),
      warnings: weighing('warning'),
    },
    problems: sorted.map(({ code, severity, place, path, wrote, takes, remedy }) => ({
      code,
      severity,
      file: place.file,
      line: place.line,
      column: place.column,
      path,
      wrote,
      takes,
      remedy,
    })),
    files: folded,
  };
}

/** 2 when a file could not be read, else 1 when a finding fails, else 0. */
export function exitCodeOf({ counts }: DryFitReport): 0 | 1 | 2 {
  if (counts.errors > 0) return 2;
  return counts.fail > 0 ? 1 : 0;
}
