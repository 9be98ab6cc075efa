import { describe, expect, it } from 'vitest';
import { referenceFiles } from '../../site/lib/reference/files.ts';
import { type Reference, readReference } from '../../site/lib/reference/reference.ts';

/** Every step of every chapter. */
const steps = ({ chapters }: Reference) => chapters.flatMap((chapter) => chapter.steps);

const reference = readReference();

/** The files with one of them changed. */
function changed(path: string, from: string, to: string): ReadonlyMap<string, string> {
  const files = new Map(referenceFiles());
  const text = files.get(path);
  if (text?.includes(from) !== true) throw new Error(`${path} does not hold: ${from}`);
  return files.set(path, text.replace(from, to));
}

describe('the examples', () => {
  it('all make a card in both editions', () => {
    const folded = steps(reference).filter(({ step }) => step.example !== undefined && step.is !== 'supply');
    expect(folded.length).toBeGreaterThan(40);
    for (const { step, worked } of folded) {
      expect({ step: step.id, pieces: worked?.editions.inch.card.pieces.length }).not.toMatchObject({ pieces: 0 });
      expect(worked?.editions.metric.card.system).toBe('metric');
    }
  });

  it('work, unless what fails is shown', () => {
    const hidden = steps(reference).flatMap(({ step, worked }) =>
      (worked?.editions[worked.home].findings ?? [])
        .filter(({ state, check }) => state === 'fail' && !step.fits.includes(check))
        .map(({ check, outcome }) => `${step.id}: ${check} ${outcome}`),
    );
    expect(hidden).toEqual([]);
  });

  it('show some findings that fail, for these teach', () => {
    const states = steps(reference).flatMap(({ worked }) => worked?.editions[worked.home].findings ?? []);
    expect(new Set(states.map(({ state }) => state))).toEqual(new Set(['pass', 'fail', 'question', 'untested']));
  });

  it('show findings of checks that there are, and draw pieces that they have', () => {
    for (const { step, worked } of steps(reference)) {
      const shown = worked && (step.editions ? Object.values(worked.editions) : [worked.editions[worked.home]]);
      const found = (shown ?? []).flatMap(({ findings }) => findings.map(({ check }) => check));
      expect({ step: step.id, lost: step.fits.filter((check) => !(found as string[]).includes(check)) }).toEqual({
        step: step.id,
        lost: [],
      });
      const pieces = (worked?.editions.inch.card.pieces ?? []).map(({ name }) => name);
      const draws = (step.draws ?? []).filter((name) => name !== 'none');
      expect({ step: step.id, lost: draws.filter((name) => !pieces.includes(name)) }).toEqual({
        step: step.id,
        lost: [],
      });
    }
  });

  it.each([
    ['a word that is not read', 'valley spine', 'valey spine', /Did you mean `valley spine`/],
    ['a size that is not there', 'down: 5 1/2', 'down: hight', /Nothing here is called `hight`/],
    ['broken YAML', 'back 4 1/4]', 'back 4 1/4', /bracket|\]/],
  ])('stop the reading with what is wrong: %s', (_what, from, to, message) => {
    expect(() => readReference(changed('chapters/02-folding.yaml', from, to))).toThrow(message);
  });

  it('stop the reading when they use a fold that is not there', () => {
    expect(() =>
      readReference(changed('chapters/13-made-of-others.yaml', 'framed-shaker: {', 'framed-shakr: {')),
    ).toThrow(/framed-shaker/);
  });
});

describe('the errors', () => {
  it('each come alone, with the code that they are shown for', () => {
    const told = reference.slips.flatMap(({ slips }) => slips);
    expect(told.length).toBeGreaterThan(150);
    for (const { slip, problem } of told)
      expect({ slip: slip.title, code: problem.code }).toEqual({ slip: slip.title, code: slip.code });
  });

  it('point at a line of what is shown', () => {
    const lost = reference.slips.flatMap(({ slips }) =>
      slips.flatMap(({ slip, line }) => (line === undefined || line < 0 ? [slip.title] : [])),
    );
    expect(lost).toEqual([]);
  });

  it.each([
    [
      'no error at all',
      'base: { across: [front 4, back 4], down: 5 }',
      'base: { across: [front 4, valley, back 4], down: 5 }',
    ],
    [
      'another error',
      'base: { across: [front 4, back 4], down: 5 }',
      'base: { across: [front 4, valey, back 4], down: 5 }',
    ],
    ['two errors', 'base: { across: [front 4, back 4], down: 5 }', 'base: { across: [front 4, back 4], down: 5 6 }'],
  ])('stop the reading when there is %s', (_what, from, to) => {
    expect(() => readReference(changed('slips/07-strips.yaml', from, to))).toThrow(/expected one two-bands/);
  });
});

describe('the addresses', () => {
  const ids = [...reference.chapters.map(({ id }) => id), ...steps(reference).map(({ step }) => step.id)];

  it('are each there once', () => {
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
    const groups = reference.slips.map(({ id }) => id);
    const codes = reference.slips.flatMap(({ slips }) => slips.map(({ slip }) => slip.code));
    expect(groups.filter((id, index) => groups.indexOf(id) !== index || codes.includes(id))).toEqual([]);
  });

  it('that the list of words leads to are all there', () => {
    const asked = reference.words.flatMap(({ see, words }) => [
      see,
      ...Object.values(words).flatMap((said) => (typeof said === 'string' ? [] : [said.see])),
    ]);
    expect(asked.filter((id) => !ids.includes(id))).toEqual([]);
  });
});
