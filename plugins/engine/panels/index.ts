export { panelName } from './names.ts';
export * from './panels-of.ts';
export * from './types.ts';
