export * from './drawings.ts';
export { angleOf, type LineAngle } from './drawings-angles.ts';
export { type Form, type FormBox, formOf, nearly } from './drawings-forms.ts';
export * from './drawings-keys.ts';
export * from './drawings-legend.ts';
export {
  acrossFrom,
  type EndPlace,
  endPlace,
  type Hand,
  liesOn,
  type PieceStrokes,
  strokesOf,
  type WorkLine,
} from './drawings-lines.ts';
export { measureOf, type ReadMeasure, sayMeasure } from './drawings-measures.ts';
export * from './drawings-names.ts';
export * from './drawings-template.ts';
export * from './findings/index.ts';
export { type LayerLine, sayLayers } from './layers.ts';
export * from './local-size.ts';
