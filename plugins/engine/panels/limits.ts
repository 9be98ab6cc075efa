/** Panels in one card. Far more than any has; folding them would take for ever. */
export const PANEL_LIMIT = 500;

/** Places where the lines of one piece meet. */
export const MEETING_LIMIT = 4000;
