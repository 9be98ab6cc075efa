export * from './nearest.ts';
export * from './place.ts';
export * from './problem.ts';
export * from './tree.ts';
