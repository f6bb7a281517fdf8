import type { Problem, Told } from '../../problem';

/** Whether a media type is that of a drawing (SVG), with or without what follows it ("; charset=utf-8"). */
export const isDrawing = (mediaType: string): boolean => /^image\/svg\+xml\b/i.test(mediaType.trim());

/** A photo that comes as a drawing. */
export const drawingProblem = (where: string): Problem => ({ code: 'photo-is-drawing', where }) satisfies Told;
