export * from './dry-fit.ts';
export { foldCard, type PaperInUse } from './fold-card.ts';
export { type CheckName, OUTCOME_STATES, type OutcomeName, type Outcomes } from './outcomes.ts';
export * from './types.ts';
