import { count } from './count';

/** The next step, and the message that asks the seller. */
export const messageStrings = {
  next: 'Next:',
  ask: (questions: number, photos: number, against: boolean) => {
    const asked = [
      questions > 0 ? count(questions, 'question', 'questions') : '',
      photos > 0 ? count(photos, 'request for photos', 'requests for photos') : '',
    ].filter(Boolean);
    return `${asked.join(' and ')} would clear up ${against ? 'what speaks against it and what is open' : 'what is open'}.`;
  },
  choose: 'Choose the piece, or say that it is one: then it is known what to ask.',
  sound: 'That things fit is what an honest listing shows, and what a careful copy shows too.',
  look: 'Look at the message',
  title: 'Message to the seller',
  notSent: 'Not sent by Tellstamp: you copy it and paste it into the marketplace’s own messages.',
  toAsk: 'What to ask',
  askedOn: (day: string) => `asked on ${day}`,
  replies: {
    title: 'What the seller replied',
    titleNone: 'The seller replied? Add it here',
    paste: 'Paste a reply: what it claims is read with the listing’s own words.',
    keep: 'Keep the reply',
  },
  clearsUp: (what: string) => `clears up: ${what}`,
  photo: 'asks for a photo',
  up: (words: string) => `Move up: ${words}`,
  upShort: 'Up',
  change: (words: string) => `Change the words: ${words}`,
  changeShort: 'Change',
  changed: 'The words of this question',
  asBefore: 'As it was',
  own: 'A question of your own',
  addOwn: 'Add it',
  removeOwn: (words: string) => `Take out: ${words}`,
  removeShort: 'Take out',
  text: 'The message',
  inYours: 'The same in your language',
  language: 'Language of the message',
  length: (characters: number) => count(characters, 'character', 'characters'),
  limit: 'Most characters that the marketplace takes, if it has a limit',
  split: (parts: number) => `It goes in ${parts} parts, split between questions: copy and send each on its own.`,
  part: (at: number, of: number, characters: number) =>
    `Part ${at} of ${of}, ${count(characters, 'character', 'characters')}`,
  partTooLong: 'This part is over the limit by itself: shorten its words.',
  copyPart: (at: number) => `Copy part ${at}`,
  copiedPart: (at: number, of: number) =>
    at < of ? `Part ${at} is copied. Paste it, then copy part ${at + 1}.` : `Part ${at}, the last, is copied.`,
  edited: 'Changed by hand: ticks no longer change it.',
  later: 'What is ticked has changed since you edited the message.',
  addAtEnd: 'Add what is new at the end',
  writeAnew: 'Write it anew',
  copy: 'Copy the message',
  copied: 'Copied. Paste it into the marketplace’s own messages.',
  notCopied: 'The browser did not allow copying. The text is selected: press Ctrl C.',
  nothing: 'The listing answers what can be asked. You can add a question of your own.',
  inMessage: 'In the message',
  showWords: (words: string) => `“${words}” on the page`,
  notOnPage: 'These words are no longer on the page.',
  photoOf: (number: number) => `Photo ${number}`,
} as const;
