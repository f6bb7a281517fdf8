import { count } from './count';

/** The words of maker files that come in and that change where they are from. */
export const travelStrings = {
  more: 'From an address, or as pasted text',
  address: 'Address of the file',
  addressHow:
    'Your browser asks you for the right to this one address. The file is asked for when you press the button, without cookies.',
  fetch: 'Fetch and look',
  asking: 'Asking the server…',
  paste: 'Text of the file. You can also paste it anywhere on this page.',
  pasted: 'pasted text',
  openText: 'Open this text',
  fetched: (maker: string) => `A file on ${maker}. Nothing of it is kept yet.`,
  kilobytes: (number: string) => `${number} kB.`,
  by: (authors: string) => `Written by ${authors}.`,
  byNobody: 'It does not say who wrote it.',
  licence: (licence: string) => `Licence: ${licence}.`,
  noLicence: 'It states no licence: ask before you pass it on.',
  fromAddress: (address: string) => `From ${address}`,
  sha256: (hash: string) => `SHA-256 ${hash}`,
  daily: 'Look there for changes once a day, when Tellstamp is opened',
  use: 'Use this file',
  leave: 'Leave it',
  originTitle: 'Where this file is from',
  usedOn: (day: string) => `Used as it was on ${day}.`,
  foundOn: (day: string) => `As it was on ${day}.`,
  look: 'Look for changes now',
  looked: 'Asked.',
  undoUpdate: 'Undo the last update',
  forget: 'Forget this address',
  waiting: (number: number, day: string) =>
    number === 0
      ? `Nothing is waiting. Last asked on ${day}.`
      : `${count(number, 'change waits', 'changes wait')}; not used yet.`,
  waitingShort: (number: number) => (number === 0 ? '' : `${count(number, 'change waits', 'changes wait')}.`),
  fromHost: (host: string) => `From ${host}.`,
  lastFailed: 'The last time nothing could be fetched: open it to see why.',
  unfinished: 'Changes wait until this file has nothing left to correct.',
  changesTitle: 'What changed there',
  plain: (number: number) => (number === 1 ? 'This is taken over as it stands' : 'These are taken over as they stand'),
  tickAll: 'Tick all',
  tickNone: 'Tick none',
  kinds: { added: 'added', changed: 'changed', removed: 'removed' },
  fromTo: (old: string, now: string) => `${old} → ${now}`,
  conflict: (title: string) => `${title}: you changed it too`,
  before: 'Before:',
  theirs: (kind: string) => `From the address (${kind})`,
  useChanges: (number: number) => (number === 0 ? 'Keep mine' : `Use ${count(number, 'change', 'changes')}`),
  useHow:
    'What you leave unticked is shown again another time. Your own changes stay on top. The update can be undone, and what you change afterwards stays.',
  updated: (number: number) => `${count(number, 'change', 'changes')} used.`,
  undone: (kept: number) =>
    kept === 0
      ? 'The last update is undone.'
      : `The last update is undone, but for ${count(kept, 'entry', 'entries')} that you changed since.`,
  steps: { update: 'update from the address', undoUpdate: 'undo the update' },
} as const;
