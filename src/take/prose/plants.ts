import { unknownPlace } from '../../place';
import { doubtedBy } from '../said/doubted';
import { readPlace } from '../said/place';
import { withoutPeriods } from '../said/used-text';
import { tellingFinder } from '../words';
import { codesNamed } from './codes-named';
import { placeAround, readSegment } from './plant-place';
import { type InSlots, plantsInSlots } from './plant-slots';
import { timeAhead, withTimeBefore } from './plant-time';
import { plantsByNumber } from './plants-by-number';
import { placesInBracketsBehind, plantsInBrackets } from './plants-in-brackets';
import { plantsInTurn } from './plants-in-turn';
import { farthestTold, type SaidPlant } from './said-plant';

/** What is known before a sentence is read. */
export interface Before {
  /** Whether the page writes codes of one letter. */
  oneLetter: boolean;
  /** How many letters its codes have, where it writes them with several. */
  written?: ReadonlySet<number>;
  /** Whether the writer has just said to have been wrong. */
  confessed: boolean;
  /** The code that the sentence before took back without saying what it is instead. */
  takenBack: string | null;
}

const verbs = tellingFinder('stands-for', 'strong-stands-for');
const plantWords = tellingFinder('plant');
const letterWords = tellingFinder('letters');
const produced = tellingFinder('produced');
const withdrawn = tellingFinder('withdrawn', 'mistaken');
/** "I got H wrong": right behind the code. */
const wrongBehind = tellingFinder('wrong-behind');
const denied = tellingFinder('is-not');
const instead = tellingFinder('but-this');
const deniedPlace = /^[^.;]{2,44}$/u;
/** What is said of a code ends with the clause, and where another letter's turn comes: "R for Romans, P at Poitiers". */
const nextLetter = /[;。].{0,200}$|,\s(?:\p{Ll}{1,3}\s)?\p{Lu}\s\p{L}.{0,200}$/su;
const madeAt = tellingFinder('made-at');
const closesList = /(?:を(?:示|表|指)|の(?:工場|工房)|です|\p{Script=Han}で[、。])/u;

/** "B isn't Bodmin, which only had the warehouse": what sentences say that a code is not, of towns. */
export function deniedIn(sentence: string, oneLetter: boolean): { code: string; name: string }[] {
  if (denied(sentence).length === 0 && !notThis.test(sentence)) return [];
  return codesNamed(sentence, oneLetter).flatMap(({ code, end }) => {
    const segment = sentence.slice(end, end + farthestTold);
    const not = denied(segment).find((hit) => hit.start <= 1 && /\p{Script=Latin}/u.test(hit.words));
    const name = not
      ? readPlace(
          segment
            .slice(not.end)
            .split(/[,.;:!]/u, 1)[0]!
            .slice(0, 60),
        )?.name
      : undefined;
    const [, other] = notThis.exec(segment.slice(0, farthestDenied)) ?? [];
    return [name, other].flatMap((one) => (one === undefined ? [] : [{ code, name: one }]));
  });
}
/** "D is Dronfield, not Derby". */
const notThis =
  /(?<=\p{L}\p{L},?\s(?:and\s|und\s|et\s|e\s|y\s|en\s)?)(?:not|nicht|pas|non|no|niet)\s(?:[àa]\s|in\s)?(\p{Lu}\p{Ll}[\p{L}’'-]{1,30})/u;
const farthestDenied = 70;

/** What a sentence says of plants' codes, and the codes of which it takes an earlier statement back. */
export function plantsIn(sentence: string, before: Before): { plants: SaidPlant[]; retracted: string[] } {
  // "Copyright (C) 2004–2018": a sign, and no code.
  if (/copyright/iu.test(sentence)) return { plants: [], retracted: [] };
  const ofPlants = plantWords(sentence).length > 0;
  const ofLetters = ofPlants || letterWords(sentence).length > 0;
  const listed = ofLetters ? placesInBracketsBehind(sentence) : [];
  if (listed.length > 1) return { plants: listed, retracted: [] };
  const bracketed = ofPlants ? plantsInBrackets(sentence) : [];
  if (bracketed.length > 1) return { plants: bracketed, retracted: [] };
  const isCertain = withdrawn(sentence).length === 0 && doubtedBy(sentence).length === 0;
  const inTurn = isCertain ? plantsInTurn(sentence) : null;
  if (inTurn) return { plants: inTurn, retracted: [] };
  const named = codesNamed(sentence, before.oneLetter);
  const plants: SaidPlant[] = [];
  const retracted: string[] = [];
  if (named.length === 0) {
    const isPlain = withdrawn(sentence).length === 0 && doubtedBy(sentence).length === 0;
    const slots = before.oneLetter && isPlain ? plantsInSlots(sentence).plants : [];
    if (slots.length > 0) return { plants: slots, retracted };
    const numbered = isPlain ? plantsByNumber(sentence) : [];
    if (numbered.length > 0) return { plants: numbered, retracted };
    const meant = before.takenBack === null ? null : readSegment(sentence, null, true);
    if (meant) plants.push({ own: { kind: 'plant', code: before.takenBack!, ...meant.fields }, doubts: [], at: 0 });
    return { plants, retracted };
  }
  const made = ofPlants || produced(sentence).length > 0 || madeAt(sentence).length > 0;
  const taken = withdrawn(sentence);
  const isDoubted = (from: number, to: number) => doubtedBy(sentence.slice(from, to)).includes('disputed');
  const disputed = isDoubted(0, sentence.length);
  const doubtedAhead = disputed && isDoubted(0, named[0]!.start);
  const doubtedLast = disputed && isDoubted(named.at(-1)!.start, sentence.length);
  // "Nは奈良、Hは姫路を示します": several in one sentence are a list of workshops.
  const listsInHan = named.length > 1 && closesList.test(sentence);
  const leads = named.map(({ start }, index) => timeAhead(sentence, named[index - 1]?.end, start));
  for (const [index, token] of named.entries()) {
    const { code, start, end } = token;
    const next = leads[index + 1]?.start ?? named[index + 1]?.start ?? sentence.length;
    const segment = withoutRelative(sentence.slice(end, Math.min(next, end + farthestTold)).replace(nextLetter, ''));
    // "I was wrong about BC": what was said before is taken back, not what follows.
    const back =
      taken.find((hit) => hit.end <= start && start - hit.end <= 16) ??
      wrongBehind(segment.slice(0, 24)).find((hit) => hit.start <= 1);
    if (back) retracted.push(code);
    const other = insteadIn(segment);
    if (other) {
      if (other.takesBack) retracted.push(code);
      const place = readPlace(other.text);
      const doubt = other.takesBack && !before.confessed && !back && 'disputed';
      if (place)
        plants.push({ own: { kind: 'plant', code, ...place }, doubts: [doubt], at: start, corrects: doubt !== false });
      continue;
    }
    const follows = plants.length > 0 && plants.at(-1)!.at === named[index - 1]?.start;
    const plant =
      placeAround(sentence, start, segment, made) ??
      readSegment(segment, token, Boolean(back), {
        follows,
        ofPlants: ofPlants || listsInHan,
        ofCodes: before.oneLetter || (before.written?.has(code.length) ?? false),
      });
    if (!plant) continue;
    const lead = plant.fields.used ? null : leads[index];
    const untrue = taken.some((hit) => hit !== back && hit.start > end);
    plants.push({
      own: { kind: 'plant', code, ...plant.fields, ...lead?.used },
      doubts: [
        (lead?.backwards ?? false) && 'backwards',
        token.lookAlike && 'look-alike',
        untrue && 'withdrawn',
        (doubtedAhead || (disputed && isDoubted(start, named[index + 1]?.start ?? sentence.length))) && 'disputed',
        plant.backwards && 'backwards',
      ],
      at: start,
    });
  }
  // "K is Kendal and L is Lorton, as far as I know": what closes the list is said of all of it.
  const all = doubtedLast && plants.length === named.length ? plants.map(asDisputed) : plants;
  const dated = named.length === 1 ? all.map((plant) => withTimeBefore(plant, sentence)) : all;
  const isPlain = taken.length === 0 && !disputed && denied(sentence).length === 0;
  const known = withoutBareNames(dated, ofPlants);
  return { plants: before.oneLetter && isPlain ? withSlots(known, plantsInSlots(sentence)) : known, retracted };
}

/**
 * Workshops as verbs tell them, with those that their places in the sentence tell as well. Where these are all of its codes,
 * a time that is of one of them is of no other.
 */
function withSlots(plants: readonly SaidPlant[], { plants: slots, whole }: InSlots): SaidPlant[] {
  const timeOf = ({ own }: SaidPlant) => JSON.stringify(own.used);
  const more = slots.filter((slot) => !plants.some(({ own }) => own.code === slot.own.code));
  const known = plants.map((plant) => {
    const slot = slots.find(({ own }) => own.code === plant.own.code && own.name === plant.own.name);
    const isOther = slots.some((other) => other !== slot && other.own.used && timeOf(other) === timeOf(plant));
    const isTold =
      whole && slot !== undefined && slot.own.place === plant.own.place && plant.doubts.every((doubt) => !doubt);
    return isTold && (slot.own.used || isOther) ? slot : plant;
  });
  return [...known, ...more].sort((a, b) => a.at - b.at);
}

const asDisputed = (plant: SaidPlant): SaidPlant =>
  plant.doubts.includes('disputed') ? plant : { ...plant, doubts: [...plant.doubts, 'disputed'] };

const relative = tellingFinder('which-is');
/** "RO, which is Romania": a pronoun, or "that is", between a code and what it is. */
function withoutRelative(segment: string): string {
  if (!/^\s?,\s/.test(segment)) return segment;
  const pronoun = relative(segment).find(({ start }) => start <= 2);
  if (!pronoun) return segment;
  // "K, which occurs from 1974, means Finland".
  const clause = /^[^,.;]{4,60},(?=\s)/u.exec(segment.slice(pronoun.end))?.[0];
  const rest = clause === undefined ? '' : segment.slice(pronoun.end + clause.length);
  const goesOn = clause !== undefined && verbs(rest).some(({ start }) => start <= 2);
  return goesOn ? `${rest.replace(/[.;].{0,200}$/su, '')}, ${begun(clause.slice(0, -1))}` : segment.slice(pronoun.end);
}

const came = tellingFinder('introduced', 'launched');
/** "Which came in with the new owners in 1982": since then. */
const begun = (clause: string): string =>
  came(clause).length > 0 ? clause.replace(/(?<!\p{L})\p{L}{2,3}\s(?=(?:1[89]|20)\d\d$)/u, 'since ') : clause;

/** A name in katakana may be any thing: beside a country, or where workshops are spoken of, it is a town. */
function withoutBareNames(plants: readonly SaidPlant[], ofPlants: boolean): SaidPlant[] {
  const listed = ofPlants || plants.some(({ own }) => own.place !== unknownPlace);
  return plants.filter(
    ({ own }) => listed || own.place !== unknownPlace || !/^\p{Script=Katakana}/u.test(own.name ?? ''),
  );
}

/**
 * "AB is not Aubagne but Abbeville": what the place is instead; the sentence takes the other one back. "AB is not Aubagne,
 * it is Abbeville" says against another what it is, and leaves both standing.
 */
function insteadIn(segment: string): { text: string; takesBack: boolean } | null {
  const not = denied(segment).find(({ start }) => start <= 1);
  if (!not) return null;
  const but = instead(segment).find(({ start }) => deniedPlace.test(segment.slice(not.end, start)));
  const comma = but ? null : /^[^.;,]{2,44},\s/u.exec(segment.slice(not.end));
  const from = comma ? not.end + comma[0].length : null;
  const is = from === null ? undefined : verbs(segment).find(({ start }) => start >= from && start - from <= 8);
  const rest = but ? segment.slice(but.end) : is ? segment.slice(is.end) : '';
  if (!/^\s?\p{L}/u.test(rest)) return null;
  const { text } = withoutPeriods(rest);
  return { text: text.slice(0, 90).replace(/[.,;].{0,90}$/su, ''), takesBack: Boolean(but) };
}
