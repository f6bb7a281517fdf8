/** What lies on a photo, and the handles that move it. */
export const overlayStrings = {
  handle: 'handle',
  named: (label: string, handle: string) => `${label}, ${handle}`,
  whole: 'all of it',
  point: 'point',
  start: 'start',
  end: 'end',
  topLeft: 'top left',
  topRight: 'top right',
  bottomRight: 'bottom right',
  bottomLeft: 'bottom left',
  corner: (number: number, of: number) => `corner ${number} of ${of}`,
  at: (across: number, down: number) => `${across}% from the left, ${down}% from the top`,
  hint: 'Drag a handle, or choose one and move it with the arrow keys; with Shift it goes further.',
} as const;
