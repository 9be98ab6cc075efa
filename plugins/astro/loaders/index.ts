export * from './collection-loader.ts';
