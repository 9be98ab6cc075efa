import { describe, expect, it } from 'vitest';
import { type Finding, formatProblem, Length, type System, sayFinding } from '../../plugins/engine/index.ts';
import { type ExpectedFinding, millimetres, readExpectation } from './support/expectation.ts';
import { caseNames, caseText, type Found, runCase } from './support/run-case.ts';

const NAMES = caseNames();

describe('cases: a card as a maker wrote it, and what would have saved her', () => {
  it('holds the five printed slips with five variants each, and cards without a slip', () => {
    const slips = ['half-score-off', 'sheet-not-twice', 'wrong-side', 'broken-fraction', 'overlap-as-meeting'];
    for (const slip of slips) {
      expect(NAMES).toContain(slip);
      expect(NAMES.filter((name) => name.startsWith(`${slip}-`)).length, slip).toBeGreaterThanOrEqual(5);
    }
    expect(NAMES.filter((name) => name.startsWith('good-')).length).toBeGreaterThanOrEqual(5);
  });

  it.each(NAMES)('%s', (name) => {
    const expected = readExpectation(caseText(name, 'expect.yaml'));
    expect(caseText(name, 'note.md').trim()).not.toBe('');
    const { findings, problems } = runCase(name);
    expect(problems.map(({ code, severity, place }) => `${severity} ${code} ${place.line}:${place.column}`)).toEqual(
      expected.problems.map(({ code, severity, at }) => `${severity} ${code} ${at}`),
    );
    for (const [i, { says }] of expected.problems.entries()) {
      const problem = problems[i];
      for (const words of says) expect(problem && formatProblem(problem)).toContain(words);
    }
    const loud = findings.filter(({ finding }) => finding.state === 'fail' || finding.state === 'question');
    const listed = expected.findings.filter(({ state }) => state === 'fail' || state === 'question');
    expect(loud.map(({ edition, finding }) => title(edition, finding)).sort()).toEqual(
      listed.map((one) => title(one.edition, one)).sort(),
    );
    for (const one of expected.findings) expectFound(one, findings);
  });
});

function title(edition: System, { check, outcome, state }: Pick<Finding, 'check' | 'outcome' | 'state'>): string {
  return `${edition} ${check} ${outcome} ${state}`;
}

/** Some finding of that title has the figures, stands in that place and says all the words. */
function expectFound(one: ExpectedFinding, findings: Found['findings']): void {
  const candidates = findings.filter(({ edition, finding }) => title(edition, finding) === title(one.edition, one));
  const shown = candidates.map(({ edition, finding }) => {
    const { says, remedy } = sayFinding(finding, edition);
    const text = remedy === undefined ? says : `${says} ${remedy}`;
    return { text, at: `${finding.place.line}:${finding.place.column}`, finding };
  });
  const fits = shown.some(
    ({ text, at, finding }) =>
      one.says.every((words) => text.includes(words)) &&
      (one.at === undefined || one.at === at) &&
      (one.figure === undefined || isFigure(finding.figure, one.figure)) &&
      (one.limit === undefined || isFigure(finding.limit, one.limit)),
  );
  const seen = shown.map(({ text, at, finding }) => `${at} ${mmOf(finding.figure)} (${mmOf(finding.limit)}) ${text}`);
  expect(fits, `${JSON.stringify(one)}\nfound:\n${seen.join('\n')}`).toBe(true);
}

function isFigure(found: Finding['figure'], expected: string | number): boolean {
  if (typeof expected === 'number') return found === expected;
  return found instanceof Length && found.mm.equals(millimetres(expected));
}

function mmOf(figure: Finding['figure']): string {
  return figure instanceof Length ? `${figure.mm.toFraction()} mm` : String(figure);
}
