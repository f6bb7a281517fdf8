import type { CaseHead } from '../case';
import type { Finding } from '../check';
import { nameOfCheck, sayFinding, sayReason } from './say';
import { chosenLanguage, strings } from './screens';

/** Which line of the head it is; the screens mark each at its side. */
export type HeadLine = 'against' | 'open' | 'not-looked-at';

/** A head as far as its sentences need it: a saved one holds no more of its findings. */
type KeptHead = Pick<CaseHead, 'aside' | 'notLookedAt'> & { measured?: boolean } & Record<
    'against' | 'open',
    Pick<Finding, 'check' | 'kind' | 'data'>[]
  >;

/** The sentences of one line, and whether more of the kind stands below. */
export interface HeadSaid {
  line: HeadLine;
  name: string;
  sentences: string[];
  /** False when the line only says that there is nothing. */
  holds: boolean;
}

/**
 * The three lines of a case's head, always all three and always in words: a case in which nothing was found still says
 * what nobody has looked at. `most` sentences of a kind stand there, and that there are more is said.
 */
export function sayHead({ against, open, aside, measured = false, notLookedAt }: KeptHead, most = 2): HeadSaid[] {
  const words = strings.head;
  const language = chosenLanguage();
  const some = (sentences: string[]) =>
    sentences.length > most ? [...sentences.slice(0, most), words.more] : sentences;
  const { photos, failed, withoutFile, reasons } = notLookedAt;
  const statements = (findings: KeptHead['against']) =>
    some(findings.map((finding) => sayFinding(finding, language).statement));
  const nothing = withoutFile === null ? words.nothing : words.nothingWithoutFile;
  const unlooked = [
    ...(failed.length > 0 ? [words.failed(failed.map((id) => nameOfCheck(id, language)))] : []),
    ...(photos.length > 0 ? [words.photos(photos)] : []),
    ...(withoutFile === null ? [] : [words.withoutFile(withoutFile.slice(0, 60))]),
    ...(reasons.length > 0
      ? [
          words.untold(
            reasons.slice(0, most).map((reason) => sayReason(reason, language)),
            reasons.length > most,
          ),
        ]
      : []),
    measured ? words.onlyMarked : words.never,
  ];
  return [
    {
      line: 'against',
      name: words.against,
      sentences: [
        ...(against.length > 0 ? statements(against) : aside ? [] : [nothing]),
        ...(aside ? [words.aside] : []),
      ],
      holds: against.length > 0 || aside,
    },
    {
      line: 'open',
      name: words.open,
      sentences: open.length > 0 ? statements(open) : [words.nothingOpen],
      holds: open.length > 0,
    },
    { line: 'not-looked-at', name: words.notLookedAt, sentences: unlooked, holds: true },
  ];
}
