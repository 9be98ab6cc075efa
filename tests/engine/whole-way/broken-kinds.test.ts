import { it } from 'vitest';
import { kindTexts } from '../support/kind-texts.ts';
import { surviveTexts } from '../support/survive-texts.ts';

const RUNS = 7000;

/** For the runner alone, in case a run never ends; many times what the runs need. */
const PATIENCE_MS = 1_800_000;

it('the kinds of the content, broken at random, end in a located problem or a result', { timeout: PATIENCE_MS }, () => {
  surviveTexts(kindTexts(), RUNS);
});
