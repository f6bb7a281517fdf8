import type { CheckData } from '../../../check';
import type { Span } from '../../../span';
import type { WordsFor } from '../../finding-words';
import type { Kit } from '../../kit';
import { between, factor, inBoth } from '../../lengths';

type Sizes =
  | 'measures-stated'
  | 'measures-agree'
  | 'measures-proportion'
  | 'named-width'
  | 'size-against-model'
  | 'size-plausible';

type Mistaken = Extract<CheckData['measures-proportion'], { fault: 'unit' }>['mistaken'];
const mistaken: Record<Mistaken, string> = {
  'inches-as-cm': 'Zoll als Zentimeter',
  'cm-as-inches': 'Zentimeter als Zoll',
  'cm-as-mm': 'Zentimeter als Millimeter',
  'mm-as-cm': 'Millimeter als Zentimeter',
};
type Side = CheckData['measures-agree']['side'];
const sideNames: Record<Side, string> = {
  width: 'Breite',
  height: 'Höhe',
  depth: 'Tiefe',
  strap: 'Länge des Riemens',
};
const long = (mm: number, kit: Kit) => inBoth(mm, 'Zoll', kit);
const stated = ({ words, mm }: { words: string; mm: number }, kit: Kit) => `${kit.quote(words)} = ${long(mm, kit)}`;
const sided = ({ side, mm }: { side: Side; mm: number }, kit: Kit) => `${sideNames[side]} ${long(mm, kit)}`;

/** Which of its sizes, where the model had several by year. */
const sizeOf = (made: Span | undefined, kit: Kit) => (made ? ` (gefertigt ${kit.during(made)})` : '');

export const size: WordsFor<Sizes> = {
  'measures-stated': {
    title: 'Maße sind angegeben',
    failureTitle: 'Es sind keine Maße angegeben',
    rule: 'Breite, Höhe und Tiefe unterscheiden ein Modell und eine Größe von der anderen.',
    statement: () => 'Das Angebot nennt weder Breite noch Höhe noch Tiefe.',
    innocent: 'Vielleicht wird erwartet, dass man das Modell kennt.',
    settles: 'Breite, Höhe und Tiefe mit dem Maßband im Foto.',
  },
  'size-plausible': {
    title: 'Die Maße sind die eines Stücks, das man trägt',
    failureTitle: 'Ein Maß ist für ein Stück, das man trägt, kaum möglich',
    rule: 'Vom Schlüsselanhänger bis zum Schrankkoffer ist nichts, was man trägt, unter 1 cm oder über 2 m breit oder hoch.',
    statement: ({ side, limit, ...said }, kit) =>
      `Die ${sideNames[side]} ist mit ${stated(said, kit)} angegeben, das ist ${limit === 'largest' ? 'über 2 m' : 'unter 1 cm'}.`,
    innocent: 'Vielleicht stimmt die Einheit nicht: Zoll als Zentimeter geschrieben, oder Millimeter als Zentimeter.',
    settles: 'Das Maß mit seiner Einheit.',
  },
  'measures-agree': {
    title: 'Ein doppelt angegebenes Maß ist in beiden Einheiten dasselbe',
    failureTitle: 'Ein Maß ist zweimal verschieden angegeben',
    rule: '1 Zoll sind 25,4 mm; dieselbe Seite hat eine Länge.',
    statement: ({ side, one, other }, kit) =>
      `Die ${sideNames[side]} ist einmal mit ${stated(one, kit)} und einmal mit ${stated(other, kit)} angegeben.`,
    innocent: 'Vielleicht ist einmal oben und einmal am Boden gemessen, oder im Kopf umgerechnet.',
    settles: 'Die Seite mit dem Maßband im Foto.',
  },
  'named-width': {
    title: 'Die Zahl im Namen des Modells ist seine Breite',
    failureTitle: 'Die Zahl im Namen des Modells ist nicht seine Breite',
    rule: 'Die Zahl im Namen eines Modells ist oft seine Breite in Zentimetern.',
    statement: ({ name, mm, number }, kit, kind) =>
      kind === 'agreement'
        ? `${kit.quote(name)} ist ${long(mm, kit)} breit, wie die Zahl im Namen sagt.`
        : `${kit.quote(name)} soll ${long(mm, kit)} breit sein, die Zahl im Namen sagt aber etwa ${number} cm.`,
    innocent: 'Die Zahl ist vielleicht ein Jahr, eine Serie oder eine anderswo gemessene Breite.',
    settles: 'Die Breite am Boden mit dem Maßband im Foto.',
  },
  'size-against-model': {
    title: 'Die angegebenen Maße sind die des Modells',
    failureTitle: 'Die angegebenen Maße sind nicht die des Modells',
    rule: 'Ein Modell hat die Größe seiner Zeit; die Maße eines Stücks bleiben in deren Spielraum.',
    statement: ({ model, made, off, fits }, kit) =>
      off.length > 0
        ? `Das Angebot nennt ${model}, gibt aber an: ${kit.list(off.map(({ side, expectedMm, ...said }) => `${sideNames[side]} ${stated(said, kit)} statt ${long(expectedMm, kit)}`))}${sizeOf(made, kit)}.`
        : `Angegeben: ${kit.list(fits.map((one) => sided(one, kit)))}. Das sind die Maße von ${model}${sizeOf(made, kit)}.`,
    innocent: 'Vielleicht ist oben statt am Boden gemessen, oder eine andere Größe des Modells genannt.',
    settles: 'Breite, Höhe und Tiefe mit dem Maßband im Foto.',
  },
  'measures-proportion': {
    title: 'Die Maße stehen im Verhältnis des Modells',
    failureTitle: 'Die Maße stehen nicht im Verhältnis des Modells',
    rule: 'Die Größen eines Modells behalten seine Form; eine falsche Einheit macht jede Seite um denselben Faktor falsch.',
    statement: (data, kit) => {
      if (data.fault === 'unit') {
        const { factor: by } = data;
        const how =
          by > 1 ? `das ${factor(by, kit)}-Fache von` : `um den Faktor ${factor(1 / by, kit)} kleiner als bei`;
        return `Angegeben: ${kit.list(data.sides.map((one) => sided(one, kit)))}, jeweils ${how} ${data.model}. Das wäre erklärt, wenn ${mistaken[data.mistaken]} geschrieben sind.`;
      }
      const { one, other, models, least, most } = data;
      return `${sided(one, kit)} ist das ${kit.number(one.mm / other.mm, 1)}-Fache von ${sided(other, kit)}; bei ${kit.list(models)} ist es das ${between(least, most, 'bis', kit)}-Fache.`;
    },
    innocent:
      'Vielleicht sind Zoll und Zentimeter verwechselt, oder ein weiches Stück ist an der breitesten Stelle gemessen.',
    settles: 'Breite, Höhe und Tiefe mit dem Maßband und seiner Einheit im Foto.',
  },
};
