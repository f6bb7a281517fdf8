import { readPage } from '../../src/take';
import {
  asideNames,
  fifthAsideNames,
  fifthNames,
  fourthAsideNames,
  fourthNames,
  isNamedRight,
  laterNames,
  type NameCase,
  pageOfNames,
  seenNames,
  seventhAsideNames,
  seventhNames,
  sixthAsideNames,
  sixthNames,
  thirdNames,
} from '../take-pages/names';
import {
  asidePages,
  drifterAsidePages,
  drifterSeenPages,
  freshAsidePages,
  freshSeenPages,
  guestAsidePages,
  guestSeenPages,
  homecomerPages,
  inProse,
  inTables,
  latecomerPages,
  laterPages,
  latestPages,
  lodgerAsidePages,
  lodgerSeenPages,
  newestPages,
  type PageScore,
  pilgrimAsidePages,
  pilgrimSeenPages,
  ramblerAsidePages,
  ramblerSeenPages,
  scorePage,
  seenPages,
  sharesOf,
  source,
  strangerAsidePages,
  strangerSeenPages,
  travellerAsidePages,
  travellerSeenPages,
  visitorPages,
  voiceAsidePages,
  voiceSeenPages,
  wayfarerAsidePages,
  wayfarerSeenPages,
} from '../take-pages/score';

const percent = (share: number): string => `${(share * 100).toFixed(1)}%`;

function lineOf(pages: string, form: string, scores: readonly PageScore[]) {
  const { right, given, there, precision, recall } = sharesOf(scores);
  return {
    pages,
    form,
    count: scores.length,
    given,
    right,
    'of given': percent(precision),
    there,
    'of there': percent(recall),
  };
}

/** Of how many heads of pages the maker is named right, how many are asked for, and how many wrong ones are called sure. */
function namesOf(name: string, cases: readonly NameCase[]) {
  const named = cases.map((one) => ({ one, ...readPage(pageOfNames(one), source).named }));
  const isRight = ({ one, ...told }: (typeof named)[number]) => isNamedRight(one, told);
  return {
    names: name,
    count: cases.length,
    right: named.filter(isRight).length,
    asked: named.filter(({ sure }) => !sure).length,
    'sure and wrong': named.filter((one) => one.sure && !isRight(one)).length,
  };
}

/** What pages that tell of makers propose, against their truth: the pages seen while tuning, and those set aside, apart. */
export async function bench(): Promise<void> {
  const rows = [];
  for (const [name, pages] of [
    ['seen', seenPages],
    ['set aside', asidePages],
    ['written later', laterPages],
    ['fresh, seen', freshSeenPages],
    ['fresh, set aside', freshAsidePages],
    ['latest', latestPages],
    ['newest', newestPages],
    ['voices, seen', voiceSeenPages],
    ['voices, set aside', voiceAsidePages],
    ['guests, seen', guestSeenPages],
    ['guests, set aside', guestAsidePages],
    ['strangers, seen', strangerSeenPages],
    ['strangers, set aside', strangerAsidePages],
    ['visitors', visitorPages],
    ['travellers, seen', travellerSeenPages],
    ['travellers, set aside', travellerAsidePages],
    ['latecomers', latecomerPages],
    ['homecomers', homecomerPages],
    ['pilgrims, seen', pilgrimSeenPages],
    ['pilgrims, set aside', pilgrimAsidePages],
    ['wayfarers, seen', wayfarerSeenPages],
    ['wayfarers, set aside', wayfarerAsidePages],
    ['ramblers, seen', ramblerSeenPages],
    ['ramblers, set aside', ramblerAsidePages],
    ['lodgers, seen', lodgerSeenPages],
    ['lodgers, set aside', lodgerAsidePages],
    ['drifters, seen', drifterSeenPages],
    ['drifters, set aside', drifterAsidePages],
  ] as const) {
    const scores = pages.map(scorePage);
    rows.push(lineOf(name, 'tables and lists', scores.filter(inTables)));
    rows.push(lineOf(name, 'prose and threads', scores.filter(inProse)));
    rows.push(
      lineOf(
        name,
        'mentions only',
        scores.filter(({ form }) => form === 'none'),
      ),
    );
    if (name === 'seen') continue;
    for (const { page, wrong, missing } of scores) {
      for (const { at, also, source, ...one } of wrong) console.log(`${page}: wrong ${JSON.stringify(one)}`);
      for (const one of missing) console.log(`${page}: missing ${JSON.stringify(one)}`);
    }
  }
  console.table(rows);
  console.table([
    namesOf('seen', seenNames),
    namesOf('set aside', asideNames),
    namesOf('later', laterNames),
    namesOf('third', thirdNames),
    namesOf('fourth, seen', fourthNames),
    namesOf('fourth, set aside', fourthAsideNames),
    namesOf('fifth, seen', fifthNames),
    namesOf('fifth, set aside', fifthAsideNames),
    namesOf('sixth, seen', sixthNames),
    namesOf('sixth, written later', sixthAsideNames),
    namesOf('seventh, seen', seventhNames),
    namesOf('seventh, set aside', seventhAsideNames),
  ]);
}
