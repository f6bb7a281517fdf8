import type { EvidenceWords } from '../evidence-words';
import type { Kit } from '../kit';
import { sayMark } from '../say-mark';
import { filePart } from './parts';

interface Said {
  field: string;
  words: string;
}

const speakers: Record<string, string> = { reply: 'In der Antwort steht', user: 'In der Notiz steht' };
const said = ({ field, words }: Said, kit: Kit) => `${speakers[field] ?? 'Im Angebot steht'} ${kit.quote(words)}`;
/** The words and, where they are not the same, what they mean. */
const meant = (one: Said, meaning: string, kit: Kit) =>
  one.words.includes(meaning) ? said(one, kit) : `${said(one, kit)} (${meaning})`;

const seen = {
  photo: 'Der Stempel lautet',
  typed: 'Der eingegebene Code ist',
  claim: 'Das Angebot zitiert den Code',
} as const;

function readBy(by: readonly { maker: string | null; invented: boolean }[], kit: Kit): string {
  const ways = by.map(({ maker, invented }) =>
    maker === null
      ? 'allein nach seiner Form'
      : `nach der ${invented ? 'erfundenen ' : ''}Herstellerdatei von ${maker}`,
  );
  return ways.length === 0 ? '' : `, ${kit.either(ways)}`;
}

export const evidence: EvidenceWords = {
  stated: {
    made: (says, dates, _places, kit) => meant(says, dates, kit),
    bought: (says, dates, _places, kit) => meant(says, dates, kit),
    origin: (says, _dates, places, kit) => meant(says, places, kit),
    country: (says, dates, _places, kit) => `${said(says, kit)}, und ${kit.place(says.place)} bestand ${dates}`,
    code: ({ from, code, by }, dates, places, kit) =>
      `${seen[from]} ${kit.code(code)}${readBy(by, kit)}: ${[dates, places].filter(Boolean).join(', ')}`,
    system: ({ code }, dates, _places, kit) => `Die Schreibweise von ${kit.code(code)} war ${dates} in Gebrauch`,
    plant: ({ plants }, dates, _places, kit) => `Die Werkstatt ${kit.either(plants)} arbeitete ${dates}`,
    mark: ({ tells }, _dates, _places, kit) => sayMark(tells, kit.language),
    material: (says, dates, _places, kit) =>
      `${said(says, kit)}, und ${says.maker} verwendete ${filePart(says.part)} aus ${kit.either(says.is)} ${dates}`,
    'other-material': (says, _dates, _places, kit) =>
      `${said(says, kit)}, und ${says.maker} verwendete ${kit.either(says.used.map((one) => kit.during(one)))} ${filePart(says.part)} aus ${kit.either(says.is)}`,
    model: (says, dates, _places, kit) => `${said(says, kit)}, und ${says.maker} fertigte ${says.model} ${dates}`,
  },
  clause: (statement) => statement.replace(/^(?:Der|Die|Das|Im|In|Ein)\b/, (word) => word.toLowerCase()),
  anyDateAndPlace: 'jede Zeit und jeder Ort',
  facts: {
    code: 'der Code, wie er gelesen wurde,',
    mark: 'das Zeichen',
    model: 'das genannte Modell',
    material: 'das genannte Material',
    origin: 'das genannte Land',
    purchase: 'die genannte Zeit des Kaufs',
    year: 'das genannte Jahr',
    date: 'die genannte Zeit',
  },
  conflict(over, hard, clauses) {
    const one = over === 'date' ? 'Zeit' : 'Ort';
    const none = over === 'date' ? 'Keine Zeit' : 'Kein Ort';
    const which = clauses.length === 1 ? 'dazu' : clauses.length === 2 ? 'zu beidem' : 'zu allem';
    return `${hard ? none : `Kaum ${over === 'date' ? 'eine' : 'ein'} ${one}`} passt ${which}: ${clauses.join('; ')}`;
  },
  apartByShape: (clauses) =>
    `Keine Herstellerdatei kennt diesen Code, und was seine Form allein ergäbe, passt nicht dazu: ${clauses.join('; ')}`,
  agreeing({ read, seen, said: claimed }, stretch, kit) {
    const parts = [
      read.length > 0 ? `der Code (${kit.list(read)})` : '',
      seen.length > 0 ? `was am Stück zu sehen ist (${kit.list(seen)})` : '',
      claimed.length > 0 ? `was im Angebot steht (${kit.list(claimed)})` : '',
    ].filter(Boolean);
    return `${kit.sentence(kit.list(parts))} ${parts.length > 1 ? 'sprechen gemeinsam' : 'spricht'} für ${stretch}`;
  },
  informs: {
    'another-date': 'Beides nennt eine Zeit, und beides hätte eine andere nennen können.',
    'closed-period': 'Der Zeitraum hat Anfang und Ende, und die Zeit hätte außerhalb liegen können.',
    'former-country': 'Das genannte Land hatte Anfang oder Ende, und die Zeit hätte außerhalb liegen können.',
    'bought-new': 'So bald nach der Herstellung gekauft, war das Stück neu.',
    'another-place': 'Beides nennt ein Land, und beides hätte ein anderes nennen können.',
    'another-length': 'Beides nennt eine Länge, und beides hätte eine andere nennen können.',
    'another-number': 'Beides nennt eine Zahl für denselben Teil, und beides hätte eine andere nennen können.',
    'another-code': 'Der Code, der im Angebot steht, hätte ein anderer sein können.',
  },
  narrows: {
    counts: 'Wo mehrere Angaben übereinstimmen, zählt es mit.',
    little: 'Für sich schließt es wenig aus; wo mehrere Angaben übereinstimmen, zählt es nicht mit.',
  },
  explanation: (fact, clause, rest, stretch) =>
    `Wenn ${fact} falsch ist (${clause}), ${rest === 'all' ? 'passt alles Übrige' : 'passen alle anderen festen Angaben'} zusammen: ${stretch}`,
  weight: {
    bare: 'Es beruht darauf, was die Seite oder die Fotos zeigen, nicht auf Zeiten oder Orten.',
    hard: 'Es beruht nur auf festen Angaben: keine Gewohnheit wird gebraucht.',
    soft: (unverified, clause) =>
      `Es wiegt weniger, weil eine der Angaben ${unverified ? 'nicht geprüft ist' : 'eine Gewohnheit oder ungefähr ist'}: ${clause}.`,
    counted: (facts, again) =>
      `Es beruht auf ${facts === 1 ? '1 Angabe' : `${facts} unabhängigen Angaben`}${again ? '; Wiederholtes zählt einmal' : ''}.`,
    agree: (facts) => `${facts === 1 ? '1 weitere Angabe passt' : `${facts} weitere Angaben passen`} dazu.`,
    against: (facts, clause) =>
      `${facts === 1 ? '1 weitere Angabe steht' : `${facts} weitere Angaben stehen`} gegen dieselbe: ${clause}.`,
    source: {
      published: 'Die Regel hat eine veröffentlichte Quelle.',
      'maker-file': 'Die Regel steht in der Herstellerdatei.',
      photo: 'Es wurde in einem Foto gelesen.',
      listing: 'Es steht im Angebot.',
      user: 'Es stammt von Ihnen.',
      practice: 'Die Regel ist allgemein üblich, ohne Quelle.',
      memory: 'Die Regel ist aus dem Gedächtnis und nicht geprüft; darum wiegt es weniger.',
    },
  },
};
