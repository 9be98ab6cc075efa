export { closedPoses, isKnown } from './closed-poses.ts';
export { MEET_MM } from './gaps.ts';
export { frameOf } from './joint-frame.ts';
export { closedOutline, OVERHANG_MM, overhangs } from './overhangs.ts';
export { type Area, type AreaPoint, commonTo, outsideOf, type Shape, squareMm, unionOf } from './polygons.ts';
export { type PoseSettings, settingsOf } from './pose-settings.ts';
export { ringOf } from './rings.ts';
export type * from './types.ts';
