const ofPhoto = (photo: number | null) => (photo === null ? 'a photo that is gone' : `photo ${photo}`);

/** What the buyer set, added or left out by hand. */
export const byHandStrings = {
  title: 'Set by you',
  undo: 'Undo',
  undoNamed: (what: string) => `Undo: ${what}`,
  code: (code: string) => `You typed the code ${code}.`,
  codeSet: (was: string, code: string) => `You read ${code} where ${was} was read.`,
  lineStruck: (photo: number | null, text: string) => `In ${ofPhoto(photo)}, ${text} is not taken for a code.`,
  seenStruck: (photo: number | null, what: string) => `In ${ofPhoto(photo)}, this is left out: ${what}.`,
  seenSet: (photo: number | null, what: string) => `In ${ofPhoto(photo)}, this is set as you see it: ${what}.`,
  part: (photo: number | null) => `Of ${ofPhoto(photo)}, only the part that you chose is read for a stamp.`,
  claimStruck: (words: string) => `Left out of what the listing claims: “${words}”.`,
  claimSet: (words: string, now: string) => `What the listing claims with “${words}” is taken as “${now}”.`,
  maker: (maker: string) => `You say that it is by ${maker}.`,
  claimAdded: (words: string) => `Added to what the listing claims: “${words}”.`,
  aside: (statement: string, reason: string) => `You set aside: ${statement} Your reason: ${reason}`,
  piece: (piece: string) => `Of the pieces on offer you look at: ${piece}.`,
  stampOn: (photo: number | null, piece: string) => `The stamp in ${ofPhoto(photo)} is on: ${piece}.`,
  shows: (photo: number | null, part: string) => `You say that ${ofPhoto(photo)} shows ${part}.`,
  onePiece: 'You say that it is one piece.',
  noCode: 'This is no code',
  leaveOut: 'Leave out',
  leaveOutNamed: (statement: string) => `Leave out: ${statement}`,
} as const;
