/**
 * How near two points or lines must be to be one, in millimetres: far finer than paper is cut, far coarser than what is
 * lost when exact coordinates become floats (1e-12 of them) or stand on the grid of rounded ones.
 */
export const TOUCH_MM = 1e-6;

/** How near two directions must be to be one: the sine of the angle between them. */
export const PARALLEL = 1e-7;
