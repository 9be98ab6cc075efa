/** Which way a crease folds, seen from the face: a valley brings the faces together, a mountain the backs. */
export type FoldDirection = 'valley' | 'mountain';
