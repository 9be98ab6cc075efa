export { closedPose } from './closed-pose.ts';
export { type Bounds, boundsOf } from './measure.ts';
export { samePlacement } from './placement.ts';
export * from './types.ts';
