import type { Finding, FindingState } from '../../plugins/engine/index.ts';

/** How each state is told: in a word, never by colour alone. In order of urgency. */
export const STATE_WORDS: Readonly<Record<FindingState, string>> = {
  fail: 'Does not work',
  question: 'Look again',
  untested: 'Not tested',
  pass: 'Works',
};

/** What stops the card first, then what to look at again, what could not be tested, and what works. */
export function inOrderOfUrgency(findings: readonly Finding[]): readonly Finding[] {
  const order = Object.keys(STATE_WORDS);
  return [...findings].sort((a, b) => order.indexOf(a.state) - order.indexOf(b.state));
}
