export { assemble } from './assemble.ts';
export { groundOf } from './ground.ts';
export { type SpanningTree, spanningTree } from './spanning-tree.ts';
export type * from './types.ts';
