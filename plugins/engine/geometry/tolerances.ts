/** Grid of coordinates that are no fractions. */
export const GRID_MM = 1e-12;

/** Two rounded points are one when nearer than this share of the larger side of their piece. */
export const SNAP = 1e-9;

/** How far a chord may leave the arc that it stands for in panels, layers and contact. Drawings keep the arcs. */
export const SAG_MM = 0.02;
