/** The only door into the engine. */
export * from './assembly/index.ts';
export * from './diagnostics/index.ts';
export * from './drawings/index.ts';
export * from './dryfit/index.ts';
export type * from './geometry/types.ts';
export * from './layers/index.ts';
export * from './motion/index.ts';
export * from './panels/index.ts';
export * from './render/index.ts';
export * from './spec/index.ts';
export * from './units/index.ts';
export * from './wording/index.ts';
