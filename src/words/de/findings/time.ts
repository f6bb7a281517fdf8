import type { WordsFor } from '../../finding-words';
import { sayAgreeing, sayApartByShape, sayConflict, sayExplanation } from '../../say-evidence';
import { systemName } from '../../system-name';
import { codeShown, readingsSaid } from '../codes';
import { claimed, datedSaid, markSaid } from '../dates';

export const time: WordsFor<
  | 'code-against-claimed-date'
  | 'code-system-in-use'
  | 'plant-in-use'
  | 'code-before-stamping'
  | 'bought-after-making'
  | 'claimed-dates-agree'
  | 'date-not-in-future'
  | 'evidence-agrees'
  | 'mark-against-claimed-date'
  | 'mark-against-code-date'
  | 'model-made-then'
> = {
  'code-against-claimed-date': {
    title: 'Die Zeit des Codes ist die genannte Zeit',
    failureTitle: 'Die Zeit des Codes ist nicht die genannte Zeit',
    rule: 'Ein Stück entstand, wann sein Code es sagt, und nicht vorher.',
    statement: ({ shown, readings, claim, inside }, kit, kind) => {
      const said = `${kit.sentence(codeShown(shown, kit))}: ${readingsSaid(readings, kit)}`;
      if (kind !== 'agreement') return `${said}. Das Angebot sagt ${claimed(claim, kit)}.`;
      return inside
        ? `${said}; das liegt in der Zeit, die das Angebot nennt: ${claimed(claim, kit)}.`
        : `${said}; damit ist die Zeit möglich, die das Angebot nennt: ${claimed(claim, kit)}.`;
    },
    basis: ({ system, date, claim }, kit) => [
      `der Aufbau ${kit.quote(systemName(system))}: ${kit.span(date)}`,
      `die Worte des Angebots: ${claimed(claim, kit)}`,
    ],
    innocent:
      'Vielleicht ist das Kaufjahr genannt, die Angabe stammt von früher, oder der Code wurde beim Verkauf falsch gelesen.',
    settles: 'Der Code, wie ihn der Verkäufer liest, und woher das Jahr bekannt ist.',
  },
  'code-system-in-use': {
    title: 'Der Aufbau des Codes war zur Zeit des Codes in Gebrauch',
    failureTitle: 'Der Aufbau des Codes war zur Zeit des Codes nicht in Gebrauch',
    rule: 'Ein Hersteller stempelt nach dem Aufbau seiner Zeit.',
    statement: ({ shown, date, system, maker, used }, kit) =>
      `${kit.sentence(codeShown(shown, kit))}: ${kit.span(date)} nach dem Aufbau ${kit.quote(systemName(system))}, den ${maker} ${kit.during(used)} verwendete.`,
    innocent:
      'Vielleicht liegen Anfang oder Ende eines Aufbaus in der Herstellerdatei um Monate daneben, oder ein Zeichen ist falsch gelesen.',
    settles: 'Ein schärferes Foto des Stempels, und ein anderes Stück dieser Zeit zum Vergleich.',
  },
  'plant-in-use': {
    title: 'Die Werkstatt arbeitete zur Zeit des Codes',
    failureTitle: 'Die Werkstatt arbeitete zur Zeit des Codes nicht',
    rule: 'Eine Werkstatt stempelt nur, solange sie für den Hersteller arbeitet.',
    statement: ({ shown, date, plant, place, used }, kit, kind) => {
      const years = kit.list(used.map((one) => kit.span(one)));
      const named = `Werkstatt ${plant} (${kit.place(place)})`;
      return kind === 'agreement'
        ? `${kit.sentence(codeShown(shown, kit))}: Die ${named} arbeitete damals (${years}).`
        : `${kit.sentence(codeShown(shown, kit))}: ${kit.span(date)}, aber die ${named} arbeitete ${years}.`;
    },
    innocent:
      'Vielleicht ist das erste oder letzte Jahr der Werkstatt in der Herstellerdatei ungenau, oder ein Zeichen des Codes ist falsch gelesen.',
    settles: 'Ein schärferes Foto des Stempels.',
  },
  'code-before-stamping': {
    title: 'Der Hersteller stempelte zur genannten Zeit',
    failureTitle: 'Das Stück trägt einen Code aus der Zeit, bevor der Hersteller stempelte',
    rule: 'Ein Stück aus der Zeit vor den ersten Stempeln trägt keinen Code.',
    statement: ({ shown, claim, maker, stamped }, kit) =>
      `${kit.sentence(codeShown(shown, kit))}, aber das Angebot sagt ${claimed(claim, kit)}, und ${maker} stempelte nur ${kit.during(stamped)}.`,
    innocent: 'Vielleicht ist das Jahr geraten, oder der Stempel stammt von einer späteren Reparatur beim Hersteller.',
    settles: 'Woher das Jahr bekannt ist, und ein Foto des ganzen Stempels.',
  },
  'bought-after-making': {
    title: 'Der Kauf liegt nach der Herstellung',
    failureTitle: 'Der Kauf soll vor der Herstellung gewesen sein',
    rule: 'Ein Stück wird gekauft, wenn es hergestellt ist.',
    statement: ({ making, purchase }, kit, kind) =>
      kind === 'agreement'
        ? `Das Angebot sagt ${claimed(making, kit)} und ${claimed(purchase, kit)}; das passt zusammen.`
        : `Das Angebot sagt ${claimed(making, kit)} und ${claimed(purchase, kit)}: gekauft, bevor es hergestellt war.`,
    innocent: 'Eines der beiden Jahre ist vielleicht falsch erinnert.',
    settles: 'Der Beleg, oder woher das Jahr der Herstellung bekannt ist.',
  },
  'claimed-dates-agree': {
    title: 'Die Zeiten, die das Angebot nennt, passen zusammen',
    failureTitle: 'Das Angebot nennt Zeiten, die nicht zusammenpassen',
    rule: 'Ein Stück hat eine Zeit der Herstellung.',
    statement: ({ dates }, kit, kind) => {
      const said = dates.map((one) => claimed(one, kit));
      return kind === 'agreement'
        ? `Die Zeiten des Angebots passen zusammen: ${said.join(', ')}.`
        : `Das Angebot sagt ${said.join(' und auch ')}.`;
    },
    innocent: 'Eine der Zeiten ist vielleicht die eines ähnlichen Stücks oder ein Schreibfehler.',
    settles: 'Welche Zeit gemeint ist, und woher sie bekannt ist.',
  },
  'date-not-in-future': {
    title: 'Die Zeiten liegen vor dem Angebot',
    failureTitle: 'Eine Zeit liegt nach dem Tag, an dem das Stück angeboten wird',
    rule: 'Was angeboten wird, ist hergestellt.',
    statement: (data, kit) =>
      'claim' in data
        ? `Das Angebot sagt ${claimed(data.claim, kit)}, also nach dem ${kit.day(data.today)}.`
        : `${kit.sentence(codeShown(data.shown, kit))}: ${readingsSaid(data.readings, kit)}, also nach dem ${kit.day(data.today)}.`,
    innocent: 'Vielleicht ist eine Ziffer des Codes falsch gelesen, oder das Angebot hat einen Schreibfehler.',
    settles: 'Ein schärferes Foto des Stempels.',
  },
  'evidence-agrees': {
    title: 'Alles, was Zeit oder Ort des Stücks angibt, passt zusammen',
    failureTitle: 'Was Zeit oder Ort des Stücks angibt, passt nicht alles zusammen',
    rule: 'Ein Stück entstand zu einer Zeit und an einem Ort, die alles an ihm erlaubt.',
    statement(data) {
      if (!('facts' in data)) return `${sayAgreeing(data, 'de')}.`;
      return `${data.byShape ? sayApartByShape(data, 'de') : sayConflict(data, 'de')}.`;
    },
    innocent: 'Vielleicht ist eine der Angaben falsch gelesen, oder ein Teil stammt von einer späteren Reparatur.',
    explained(data) {
      if (!('facts' in data)) return null;
      if (data.byShape)
        return 'Vielleicht schreibt dieser Hersteller seine Codes anders: Das sagt nur seine eigene Liste.';
      return data.explained ? `${sayExplanation(data.explained, data.explained.fact, 'de')}.` : null;
    },
    settles: 'Die der genannten Angaben, die sich am leichtesten in einem scharfen Foto zeigen lässt.',
  },
  'mark-against-claimed-date': {
    title: 'Die Zeichen erlauben die genannte Zeit',
    failureTitle: 'Die Zeit eines Zeichens passt nicht zur genannten Zeit',
    rule: 'Eine Patentnummer, ein Geschmacksmuster oder ein Silberstempel datiert ein Stück, wer immer es gemacht hat.',
    statement: ({ mark, claim }, kit, kind) =>
      kind === 'agreement'
        ? `${kit.sentence(markSaid(mark, kit))}; damit ist die Zeit möglich, die das Angebot nennt: ${claimed(claim, kit)}.`
        : `${kit.sentence(markSaid(mark, kit))}. Das Angebot sagt ${claimed(claim, kit)}.`,
    innocent:
      'Vielleicht wurde das Teil mit dem Zeichen (Reißverschluss, Schloss, Etikett) später ersetzt oder die Nummer falsch gelesen.',
    settles: 'Ein scharfes Foto des Zeichens und des Teils, an dem es ist.',
  },
  'mark-against-code-date': {
    title: 'Die Zeichen erlauben die Zeit des Codes',
    failureTitle: 'Die Zeit eines Zeichens passt nicht zur Zeit des Codes',
    rule: 'Der Code und die öffentlichen Zeichen eines Stücks datieren dieselbe Herstellung.',
    statement: ({ shown, readings, mark }, kit) =>
      `${kit.sentence(codeShown(shown, kit))}: ${readingsSaid(readings, kit)}; ${markSaid(mark, kit)}.`,
    innocent: 'Vielleicht wurde das Teil mit dem Zeichen später ersetzt, oder eines von beiden ist falsch gelesen.',
    settles: 'Scharfe Fotos des Stempels und des Zeichens.',
  },
  'model-made-then': {
    title: 'Das Modell wurde zu der Zeit gefertigt',
    failureTitle: 'Das Modell wurde zu der Zeit nicht gefertigt',
    rule: 'Ein Modell wird von seinem ersten bis zu seinem letzten Jahr gefertigt.',
    statement: ({ maker, model, made, again = [], dated }, kit, kind) =>
      `${maker} fertigte ${model} ${kit.either([made, ...again].map((one) => kit.during(one)))}, ${kind === 'agreement' ? 'und' : 'aber'} ${datedSaid(dated, kit)}.`,
    innocent: 'Vielleicht ist ein ähnliches Modell gemeint, oder die Jahre der Datei sind ungenau.',
    settles: 'Woher das Modell bekannt ist, und ein Foto des ganzen Stücks.',
  },
};
