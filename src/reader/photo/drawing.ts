import type { Problem } from '../../problem';

/** Whether a media type is that of a drawing (SVG), with or without what follows it ("; charset=utf-8"). */
export const isDrawing = (mediaType: string): boolean => /^image\/svg\+xml\b/i.test(mediaType.trim());

/** What a buyer can do about a photo that comes as a drawing: there is nowhere to hand in a file of one's own. */
export const drawingProblem = (where: string): Problem => ({
  code: 'photo-is-drawing',
  where,
  what: 'the page gives it as a drawing (SVG), not as a photograph',
  remedy: 'If it shows the stamp, type the code by hand, or ask the seller for the photo as a JPEG or PNG.',
});
