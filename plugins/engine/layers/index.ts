export { orderPlies } from './order-plies.ts';
export type * from './types.ts';
