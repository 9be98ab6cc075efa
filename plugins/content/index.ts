export * from './disk.ts';
export { distinct } from './distinct.ts';
export * from './document.ts';
export { type FoldedFile, type FoldedFileCard, foldFiles } from './dry-fit/fold-files.ts';
export { exitCodeOfLesson, type FoldedLesson, foldLesson } from './dry-fit/fold-lesson.ts';
export { exitCodeOf, reportOf } from './dry-fit/report.ts';
export { sayLesson } from './dry-fit/say-lesson.ts';
export { type Paint, sayCounts, sayReport } from './dry-fit/say-report.ts';
export { readBlog } from './entries/blog.ts';
export { foldOf, readFoldFile } from './entries/fold.ts';
export { looksLikeFold, readPost } from './entries/post.ts';
export { readSupply } from './entries/supply.ts';
export { readTechnique } from './entries/technique.ts';
export * from './entries/types.ts';
export { idOfPath } from './ids.ts';
export * from './library.ts';
export { materialOfSupply, materialsOf, sortOf } from './materials.ts';
export * from './project.ts';
export * from './reader.ts';
export {
  DRY_FIT_VERSION,
  type DryFitReport,
  dryFitJsonSchema,
  dryFitReportSchema,
} from './schemas/dry-fit-report.ts';
export { FOLD_PAGE_KEYS } from './schemas/fold.ts';
export {
  type EditionSummary,
  type FigureSummary,
  type FindingSummary,
  type LengthSummary,
  type ProjectSummary,
  projectSummaryJsonSchema,
  projectSummarySchema,
  SUMMARY_VERSION,
} from './schemas/summary.ts';
export * from './source-file.ts';
export * from './summary.ts';
