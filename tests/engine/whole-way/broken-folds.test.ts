import { it } from 'vitest';
import { surviveTexts } from '../support/survive-texts.ts';
import * as FOLDS from '../support/ten-folds.ts';

const RUNS = 7000;

/** For the runner alone, in case a run never ends; many times what the runs need. */
const PATIENCE_MS = 1_800_000;

it('folds that use the whole language, broken at random, end in a located problem or a result', {
  timeout: PATIENCE_MS,
}, () => {
  surviveTexts(Object.values(FOLDS), RUNS);
});
