export * from './drawings.ts';
export * from './drawings-legend.ts';
export * from './drawings-names.ts';
export * from './drawings-template.ts';
export * from './findings/index.ts';
