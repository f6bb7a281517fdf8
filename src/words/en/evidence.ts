import type { EvidenceWords } from '../evidence-words';
import type { Kit } from '../kit';
import { sayMark } from '../say-mark';
import { filePart } from './parts';

interface Said {
  field: string;
  words: string;
}

const speakers: Record<string, string> = { reply: "The seller's reply says", user: 'The note says' };
const said = ({ field, words }: Said, kit: Kit) => `${speakers[field] ?? 'The listing says'} ${kit.quote(words)}`;
/** The words and, where they are not the same, what they mean. */
const meant = (one: Said, meaning: string, kit: Kit) =>
  one.words.includes(meaning) ? said(one, kit) : `${said(one, kit)} (${meaning})`;

const seen = { photo: 'The stamp reads', typed: 'The typed code is', claim: 'The listing quotes the code' } as const;

function readBy(by: readonly { maker: string | null; invented: boolean }[], kit: Kit): string {
  const ways = by.map(({ maker, invented }) =>
    maker === null ? 'by its shape alone' : `by the ${invented ? 'invented ' : ''}maker file of ${maker}`,
  );
  return ways.length === 0 ? '' : `, ${kit.either(ways)}`;
}

export const evidence: EvidenceWords = {
  stated: {
    made: (says, dates, _places, kit) => meant(says, dates, kit),
    bought: (says, dates, _places, kit) => meant(says, dates, kit),
    origin: (says, _dates, places, kit) => meant(says, places, kit),
    country: (says, dates, _places, kit) => `${said(says, kit)}, and ${kit.place(says.place)} existed ${dates}`,
    code: ({ from, code, by }, dates, places, kit) =>
      `${seen[from]} ${kit.code(code)}${readBy(by, kit)}: ${[dates, places].filter(Boolean).join(', ')}`,
    system: ({ code }, dates, _places, kit) => `The way that ${kit.code(code)} is written was in use ${dates}`,
    plant: ({ plants }, dates, _places, kit) => `The workshop ${kit.either(plants)} was at work ${dates}`,
    mark: ({ tells }, _dates, _places, kit) => sayMark(tells, kit.language),
    material: (says, dates, _places, kit) =>
      `${said(says, kit)}, and ${says.maker} used ${filePart(says.part)} of ${kit.either(says.is)} ${dates}`,
    'other-material': (says, _dates, _places, kit) =>
      `${said(says, kit)}, and ${says.maker}'s ${filePart(says.part)} was ${kit.either(says.is)} ${kit.either(says.used.map((one) => kit.during(one)))}`,
    model: (says, dates, _places, kit) => `${said(says, kit)}, and ${says.maker} made the ${says.model} ${dates}`,
  },
  // A leading "The" loses its capital, names keep theirs.
  clause: (statement) => statement.replace(/^(?:The|A|An|With)\b/, (word) => word.toLowerCase()),
  anyDateAndPlace: 'any date and place',
  facts: {
    code: 'the code as it was read',
    mark: 'the mark',
    model: 'the model claimed',
    material: 'the material claimed',
    origin: 'the origin claimed',
    purchase: 'the date of purchase claimed',
    year: 'the year claimed',
    date: 'the date claimed',
  },
  conflict(over, hard, clauses) {
    const which = clauses.length === 1 ? 'this' : clauses.length === 2 ? 'both' : 'all of these';
    return `${hard ? `No one ${over} fits` : `Hardly any ${over} fits`} ${which}: ${clauses.join('; ')}`;
  },
  apartByShape: (clauses) =>
    `No maker file knows this code, and what its shape alone would give does not fit: ${clauses.join('; ')}`,
  agreeing({ read, seen, said: claimed }, stretch, kit) {
    const parts = [
      read.length > 0 ? `what the code reads (${kit.list(read)})` : '',
      seen.length > 0 ? `what the piece shows (${kit.list(seen)})` : '',
      claimed.length > 0 ? `what the listing says (${kit.list(claimed)})` : '',
    ].filter(Boolean);
    return `${kit.sentence(kit.list(parts))} ${parts.length > 1 ? 'agree' : 'agrees'} on ${stretch}`;
  },
  informs: {
    'another-date': 'Each gives a date, and each could have given another.',
    'closed-period': 'The period has a beginning and an end, and the date could have lain outside it.',
    'former-country': 'The country named began or ended, and the date could have lain outside its days.',
    'bought-new': 'A purchase so soon after the making is one of a new piece.',
    'another-place': 'Each gives a country, and each could have given another.',
    'another-length': 'Each gives a length, and each could have given another.',
    'another-number': 'Each gives a number of the same part, and each could have given another.',
    'another-code': 'The code that is quoted could have been another.',
  },
  narrows: {
    counts: 'It counts where several facts agree.',
    little: 'It excludes little by itself, and is not counted where several facts agree.',
  },
  explanation: (fact, clause, rest, stretch) =>
    `If ${fact} is wrong (${clause}), ${rest === 'all' ? 'all the rest agrees' : 'all other hard facts agree'}: ${stretch}`,
  weight: {
    bare: 'It rests on what the page or the photos show, not on dates or places.',
    hard: 'It rests on hard facts only: no habit is needed.',
    soft: (unverified, clause) =>
      `It is lighter because one of the facts ${unverified ? 'was not verified' : 'is a habit or a loose statement'}: ${clause}.`,
    counted: (facts, again) =>
      `It rests on ${facts === 1 ? '1 fact' : `${facts} independent facts`}${again ? '; what is said again counts once' : ''}.`,
    agree: (facts) => `${facts} other ${facts === 1 ? 'fact agrees' : 'facts agree'} with it.`,
    against: (facts, clause) =>
      `${facts} other ${facts === 1 ? 'fact stands' : 'facts stand'} against the same one: ${clause}.`,
    source: {
      published: 'The rule has a published source.',
      'maker-file': 'The rule stands in the maker file.',
      photo: 'It was read from a photo.',
      listing: 'It stands in the listing.',
      user: 'It was given by you.',
      practice: 'The rule is common practice, with no source.',
      memory: 'The rule stands from memory and was not verified, which makes it lighter.',
    },
  },
};
