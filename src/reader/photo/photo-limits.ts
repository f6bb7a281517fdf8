/** The largest file of a photo, in bytes: more than any camera gives a marketplace. */
export const mostPhotoBytes = 24_000_000;

/** How long the bytes of one photo may take, over all the ways to them together. */
export const photoDeadlineMs = 20_000;
