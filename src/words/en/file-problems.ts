import type { ProblemWords } from '../problem-words';

const later = 'Try again later. Your own file stays as it is.';
const otherAddress = 'Check the address. Your own file stays as it is.';

/** Failures of the addresses that maker files come from. */
export const fileProblems = {
  'file-address': ['this is no web address', 'Write it whole, beginning with https://.'],
  'file-not-secure': [
    'the address is not an encrypted one',
    'Write https in place of http, or ask for such an address.',
  ],
  'file-with-password': [
    'the address holds a name or a password',
    'Leave it out, or save the file yourself and import it.',
  ],
  'file-not-allowed': [
    'asking this address was not allowed',
    'Press the button and allow it, or save the file yourself and import it.',
  ],
  'file-led-on': [
    'the address leads on to another, which was not asked',
    'Open it in a tab, and give the address that it ends at.',
  ],
  'file-too-large': ['more than 5 MB lie at the address: that is no maker file', otherAddress],
  'file-cut': ['the answer broke off before its end', later],
  'file-late': ['the file did not arrive within 30 seconds', later],
  'file-offline': ['this machine is not connected', 'Connect it and ask again. Your own file stays as it is.'],
  'file-unreachable': ['the server did not answer', later],
  'file-missing': ['there is no file at the address', otherAddress],
  'file-refused': ['the server gives the file to nobody it does not know', 'Save the file yourself and import it.'],
  'file-answer': [({ status }) => `the server answered ${status}`, later],
  'file-not-text': ['what lies at the address is no text', otherAddress],
  'file-is-page': [
    'the address shows a page, not a file',
    'Give the address of the file itself: on many sites it stands behind “raw” or “download”.',
  ],
  'file-other-maker': [
    ({ now, before }) => `the file at the address is now on ${now}, not on ${before}`,
    'Ask who keeps it. Your own file stays as it is.',
  ],
} satisfies Partial<ProblemWords>;

/** Sorts of faults of maker files, and what to do about them; what exactly is wrong, the fault's own sentence says. */
export const faultSorts = {
  'maker-file-double-model': [
    'two models of the file have one name',
    'Put the other years and sizes into the rows of the first.',
  ],
  'maker-file-newer': ['the file is of a newer format', 'Use a newer Tellstamp, or ask for the file in this format.'],
  'maker-file-part': ['a part is not known', 'Correct it, or add it to the parts of the file.'],
  'maker-file-range': [
    'the least is more than the most, or both are missing',
    'Give the least first and the most behind it.',
  ],
  'maker-file-system-unknown': ['a code system is not in the file', 'Name one of its code systems.'],
  'maker-file-double-id': ['two systems of the file have one id', 'Give each system its own id.'],
  'maker-file-example': [
    'an example reads otherwise than it says',
    'Correct the example, the layout, the plants or the period: one of them is wrong.',
  ],
  'maker-file-layout': ['a layout is not possible', 'Correct the slots of this layout.'],
  'maker-file-not-json': ['the file cannot be read', 'Check that the file is complete and is a maker file.'],
  'maker-file-period': ['a period is not written as one', 'Give the first date, then the last one or null.'],
  'maker-file-place': ['a country is not known', 'Look the country up and correct it; the United Kingdom is GB.'],
  'maker-file-slot': ['a slot of a layout is not known', 'Name a slot, as docs/maker-files.md has them.'],
  'maker-file-too-large': ['the file is too large', 'Split the file by maker, or keep a few examples of each layout.'],
  'maker-file-value': ['a value is not possible here', 'Correct this field.'],
  'maker-file-custom': ['a value is not possible here', 'Correct this field.'],
  'maker-file-invalid-format': ['a value is not written as it should be', 'Correct this field.'],
  'maker-file-invalid-type': ['a value is missing or of another kind', 'Add or correct this field.'],
  'maker-file-invalid-value': ['a value is not possible here', 'Correct this field.'],
  'maker-file-too-big': ['a value is too large or too long', 'Correct this field.'],
  'maker-file-too-small': ['a value is too small or too short', 'Correct this field.'],
  'maker-file-unrecognized-keys': ['a field does not belong here', 'Remove it or correct its name.'],
  'more-problems': ['more fields are wrong', 'Correct those above first.'],
} satisfies Record<string, readonly [what: string, remedy: string]>;
