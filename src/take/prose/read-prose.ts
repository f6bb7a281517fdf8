import { makersIn } from '../name';
import type { Inline } from '../page/inline';
import { type Context, type OwnFields, propose } from '../propose';
import { codeShown, exactDates, readExamples } from '../said/example';
import type { SaidLayout } from '../said/layout-words';
import { partsIn } from '../said/part';
import { readPeriods, usedOf } from '../said/period';
import { isPeriod } from '../said/used-text';
import { beforeCode, besideCode, bidsToLook } from '../said/where';
import type { Retraction } from '../settle';
import type { Doubt, Proposal } from '../types';
import { tellingFinder } from '../words';
import { carrierOf } from './carriers';
import { codesNamed, lettersWritten, writesOneLetter } from './codes-named';
import { constructionIn } from './construction';
import { lettersIn } from './letters';
import { modelBefore, modelsIn, pricesIn } from './models';
import { type OpenOrder, ordersIn } from './orders';
import { lettersOf, plantOfCode } from './plant-of-code';
import { type Before, deniedIn, plantsIn } from './plants';
import type { SaidSystem, Section } from './said-system';
import { isAsked, type Sentence, sentencesOf } from './sentences';
import { deniesFigures, stampedSince } from './stamped';
import { timeAlone } from './system-time';
import { systemsIn } from './systems';
import { look } from './told-sentence';

const codeWords = tellingFinder('code');
const mistaken = tellingFinder('mistaken');
const speaksOfCode = tellingFinder('code', 'letters', 'digits', 'stamping');
const concedes = tellingFinder('mistaken', 'conceded');

/** "This was used …": what the paragraph before told. */
const meansBefore =
  /^(?:(?:yes|true|right|correct|oui|exact|ja|stimmt|richtig|genau|s[iì]|esatto|giusto|sí|cierto|correcto|klopt|juist)[,.]?\s(?:but\s|mais\s|aber\s|ma\s|però\s|pero\s|maar\s)?)?(?:this|that|these|it|they|ce|cela|ceci|cette|c['’]|il|elle|dies|das|es|sie|diese[rs]?|questo|questa|quest['’]|lo|la|los|las|este|esta|esto|se|dit|dat|deze|die|het|その|この|これ)(?!\p{L})/iu;

/** Words of a sentence that tells a time and hardly more: "Gab es so von 1965 bis 1993." */
const longestTime = 8;

const opensOrCloses = tellingFinder('ended', 'launched');
/** More workshops than a page has are a muddle. */
const mostOpen = 40;
const holdsName = (text: string, name: string): boolean => {
  const at = text.indexOf(name);
  return (
    at >= 0 && !/^\p{Script=Latin}/u.test(text.slice(at + name.length)) && !/\p{Script=Latin}$/u.test(text.slice(0, at))
  );
};

type Maker = string | null | undefined;

/** Reads paragraphs in order; what one sentence names, the next may mean by "it". */
export class ProseReader {
  readonly retractions: Retraction[] = [];
  /** When codes began, as sentences tell it that do not say that there were none before. */
  readonly beginnings = new Set<Proposal>();

  /** What sets another's statement right, and of it what the other agreed to. */
  private readonly corrections: Proposal[] = [];
  readonly conceded = new Set<Proposal>();

  /** What codes were said not to be, by whoever. */
  private denied: { code: string; name: string }[] = [];

  /** Orders of a code that paragraphs told without an example. */
  readonly orders: OpenOrder[] = [];

  /** Workshops that only the date of a code tells: what the page says of their letters elsewhere goes before. */
  readonly byExamples = new Set<Proposal>();

  /** The times that later paragraphs tell of forms told without one. */
  readonly times = new Map<Proposal, Pick<Extract<OwnFields, { kind: 'code-system' }>, 'used' | 'about'>>();
  /** Workshops told by name and without their time, which a later sentence may tell. */
  private readonly open: Proposal[] = [];
  /** The form of a code that a paragraph before told without its time. */
  private undated: Proposal | null = null;

  /** The form that paragraphs before told last. */
  private lastSystem: SaidSystem | undefined = undefined;

  /** A form told without its time that still wants an example. */
  private pending: SaidLayout | null = null;

  private readonly oneLetter: boolean;
  private readonly written: ReadonlySet<number>;
  /** Whether the sentence before spoke of the code. */
  private ofCodes = false;
  /** The code that the page showed last. */
  private shown: string | null = null;

  /** `text` is the page's own: what codes look like on it is told anywhere. */
  constructor(
    private readonly makers: readonly string[],
    private readonly day: string,
    text: string,
  ) {
    this.oneLetter = writesOneLetter(text);
    this.written = lettersWritten(text);
  }

  /** A heading that asks for the code, or where it sits: what follows means it by "it". */
  speakOfCodes(): void {
    this.ofCodes = true;
  }

  /** A heading that shows a code: answers are of that one. */
  show(text: string): void {
    const code = codeShown(text, this.day);
    if (code !== null) this.ofCodes = true;
    this.shown = code ?? this.shown;
  }

  /** What a paragraph proposes; `count` is how many proposals the page has made before, `above` what its heading tells. */
  read(words: Inline, context: Context, count: number, above: Section | null = null): Proposal[] {
    const sentences = sentencesOf(words.text);
    const makerOf = this.makersBySentence(sentences, context.maker);
    const found: Proposal[] = [];
    const add = (own: OwnFields, told: readonly Sentence[], doubts: readonly (Doubt | false)[] = []) => {
      const [first] = told;
      const last = told.at(-1)!;
      const range = { start: first!.start, end: last.start + last.text.length };
      const struck = words.struck.some(({ start, end }) => start <= range.start + 2 && end >= range.end - 2);
      const said = { words: words.text.slice(range.start, range.end), selector: words.selector };
      const maker = makerOf.get(first!);
      const proposal = propose(context, own, {
        ...said,
        doubts: [...doubts, struck && 'withdrawn'],
        ...(maker !== undefined && { maker }),
      });
      found.push(proposal);
      return proposal;
    };
    this.date(sentences);
    const systems = systemsIn(sentences, this.day, above, context.earlier, this.shown, this.pending, this.lastSystem);
    this.lastSystem = systems.found.findLast(({ own }) => own.kind === 'code-system') ?? this.lastSystem;
    this.shown = codeShown(words.text, this.day) ?? this.shown;
    this.pending = systems.pending;
    for (const { own, doubts, sentences: told } of systems.found) {
      const proposal = add(own, told, doubts);
      if (own.kind === 'code-system') this.undated = own.used ? null : proposal;
    }
    const told = new Set(systems.found.flatMap(({ sentences: own }) => own.map(({ start }) => start)));
    for (const sentence of sentences)
      if (!told.has(sentence.start) && !isAsked(sentence.text))
        this.keepOrders(sentence, words, context, makerOf.get(sentence));
    const answered = systems.found
      .flatMap(({ own }) => (own.kind === 'code-system' ? own.examples : []))
      .find(({ code }) => !words.text.includes(code));
    let model: string | null = null;
    let before: Before = { oneLetter: this.oneLetter, written: this.written, confessed: false, takenBack: null };
    for (const [at, sentence] of sentences.entries()) {
      const { text } = sentence;
      if (isAsked(text)) {
        const shown = besideCode(text) ?? beforeCode(text);
        if (shown) add({ kind: 'carrier', where: shown.where, ...(shown.on && { on: shown.on }) }, [sentence]);
        continue;
      }
      const { plants, retracted } = plantsIn(text, before);
      before = {
        ...before,
        confessed: before.confessed || mistaken(text).length > 0,
        takenBack: plants.length === 0 ? (retracted.at(-1) ?? null) : null,
      };
      this.denied.push(...deniedIn(text, this.oneLetter));
      if (concedes(text).length > 0) this.concede(text, count + found.length);
      for (const code of retracted) this.retractions.push({ code, before: count + found.length });
      for (const { own, doubts, corrects } of plants) {
        const plant = add(own, [sentence], doubts);
        if (corrects) this.corrections.push(plant);
        if (own.name !== undefined && !own.used && plant.doubts.length === 0 && this.open.length < mostOpen)
          this.open.push(plant);
      }
      const ofCode = plants.length === 0 ? this.plantOfExample(text, answered?.code ?? null, systems.known) : null;
      if (ofCode) this.byExamples.add(add(ofCode.own, [sentence], ofCode.doubts));
      if (plants.length === 0 && retracted.length === 0) this.datePlant(text);
      if (plants.length === 0 && this.corrections.length > 0 && concedes(text).length > 0)
        for (const plant of this.corrections.splice(0)) this.conceded.add(plant);
      const next = sentences[at + 1]?.text ?? '';
      const asksToLook = bidsToLook(text).length > 0 && speaksOfCode(next).length > 0;
      const carrier = carrierOf(text, this.ofCodes || asksToLook, this.makers);
      const marksOnly = deniesFigures(next);
      const since = plants.length > 0 || marksOnly ? null : stampedSince(text, this.day, carrier !== null);
      if (carrier) {
        const { used: _, ...placed } = carrier.own;
        add(since ? placed : carrier.own, [sentence], [carrier.backwards && 'backwards']);
      }
      if (since) this.beginnings.add(add(since, [sentence]));
      this.ofCodes =
        carrier !== null || plants.length > 0 || codeWords(text).length > 0 || readExamples(text, this.day).length > 0;
      const told = modelsIn(text, model, this.makers);
      for (const { backwards, ...own } of told) add({ kind: 'model', ...own }, [sentence], [backwards && 'backwards']);
      for (const letter of lettersIn(text)) add(letter, [sentence]);
      for (const price of pricesIn(text, model, this.makers, context.francs)) add(price, [sentence]);
      for (const { own, backwards } of constructionIn(text)) add(own, [sentence], [backwards && 'backwards']);
      model = told.at(-1)?.name ?? modelBefore(text, text.length, this.makers) ?? model;
    }
    if (systems.found.some(({ own }) => own.kind === 'code-system')) this.ofCodes = true;
    return found;
  }

  /** Keeps the orders that a sentence tells for the codes that the page shows elsewhere. */
  private keepOrders(sentence: Sentence, words: Inline, context: Context, named: Maker): void {
    const maker = named === undefined ? context.maker : named;
    if (maker === undefined) return;
    const said = { words: sentence.text, selector: words.selector, maker };
    for (const order of ordersIn(sentence))
      this.orders.push({
        ...order,
        maker,
        propose: (own, doubts) => propose(context, { kind: 'code-system', ...own }, { ...said, doubts }),
      });
  }

  /** "You're right, I was wrong about Bodmin": what another denied is taken back, of the town that is named or of all of them. */
  private concede(text: string, before: number): void {
    const named = this.denied.filter(({ name }) => holdsName(text, name));
    const own = named.length > 0 ? named : this.denied;
    for (const { code, name } of own) this.retractions.push({ code, name, before });
    this.denied = this.denied.filter((one) => !own.includes(one));
  }

  /** The workshop that a sentence tells beside the date of a code: of its own one, or of that which was asked for. */
  private plantOfExample(text: string, asked: string | null, known: SaidLayout | null): ReturnType<typeof plantOfCode> {
    const [example, ...more] = readExamples(text, this.day);
    const isAnswer = !example && asked !== null && exactDates(text, this.day).length === 1;
    const code = example?.code ?? (isAnswer ? asked : null);
    const letters = code === null || more.length > 0 ? null : lettersOf(code);
    const isOfPlants = known?.layout.some((slot) => 'plant' in slot && slot.plant === letters?.length);
    return letters !== null && isOfPlants ? plantOfCode(text, letters, example?.start ?? 0, this.makers) : null;
  }

  /** "Stroud had shut in 1980": the time of the one workshop whose town a later sentence names, and of no code. */
  private datePlant(text: string): void {
    if (this.open.length === 0) return;
    const named = this.open.filter((one) => one.kind === 'plant' && holdsName(text, one.name!));
    const [plant, ...more] = named;
    if (!plant || more.length > 0 || this.times.has(plant) || opensOrCloses(text).length === 0) return;
    const [period, ...others] = readPeriods(text);
    if (!period || others.length > 0 || period.form === 'year' || period.backwards) return;
    const { backwards: _, ...used } = usedOf([period]);
    this.times.set(plant, used);
  }

  /** "This was used from 1968 to 1990.", or that time alone, opens the paragraph behind the one that told the form. */
  private date(sentences: readonly Sentence[]): void {
    const looks = this.undated === null ? [] : sentences.map((sentence) => look(sentence, this.day));
    // A paragraph that tells a form of its own opens with the time of that one.
    const ofOwn = looks.some(({ counts, examples, describes }) => counts > 0 || examples.length > 0 || describes);
    for (const one of looks.slice(0, 2)) {
      const { sentence } = one;
      if (this.undated === null || (ofOwn && !meansBefore.test(sentence.text))) return;
      const bare = isPeriod(sentence.text.replace(/[.!\s]{1,4}$/, '')) ? readPeriods(sentence.text) : [];
      const brief = sentence.text.split(' ').length <= longestTime && partsIn(sentence.text).length === 0;
      const meant = meansBefore.test(sentence.text) || codeWords(sentence.text).length > 0 ? timeAlone(one) : null;
      const range = brief
        ? one.periods.filter(({ form }) => form === 'range')
        : bare.filter(({ form }) => form === 'range');
      const told = meant ?? range;
      if (told.length !== 1 || told[0]!.backwards || codesNamed(sentence.text, this.oneLetter).length > 0) continue;
      const { backwards: _, ...used } = usedOf(told);
      this.times.set(this.undated, used);
      this.undated = null;
    }
  }

  /** Where a page tells of several makers, a sentence is of the one it names, else of the one named before it. */
  private makersBySentence(sentences: readonly Sentence[], above: Maker): Map<Sentence, Maker> {
    let maker = above;
    return new Map(
      sentences.map((sentence) => {
        const named = makersIn(sentence.text, this.makers);
        if (named.length === 1) maker = named[0]!;
        else if (named.length > 1) maker = undefined;
        return [sentence, maker];
      }),
    );
  }
}
