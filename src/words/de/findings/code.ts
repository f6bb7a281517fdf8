import type { PlaceOfCode } from '../../../code';
import type { WordsFor } from '../../finding-words';
import { systemName } from '../../system-name';
import { codeShown, differencesSaid, expectedSaid, nearest, readingsSaid } from '../codes';
import { claimed } from '../dates';

/** What a place of a code holds, as the object of "gibt es nicht". */
const slots: Record<PlaceOfCode, string> = {
  year: 'das Jahr',
  month: 'den Monat',
  week: 'die Woche',
  quarter: 'das Quartal',
  day: 'den Tag',
  'day of year': 'den Tag im Jahr',
  plant: 'die Werkstatt',
  serial: 'die laufende Nummer',
  check: 'das Prüfzeichen',
};
export const code: WordsFor<'codes-agree' | 'code-denied' | 'code-shown' | 'code-fits-maker' | 'code-slot-possible'> = {
  'codes-agree': {
    title: 'Der gezeigte Code ist der zitierte',
    failureTitle: 'Das Angebot zitiert einen anderen Code, als das Foto zeigt',
    rule: 'Ein zitierter Code soll der am Stück sein. Ein Stück kann weitere Zeichen tragen, deshalb ist das nie ein Widerspruch.',
    statement: ({ shown, quoted }, kit, kind) =>
      kind === 'agreement'
        ? `${kit.sentence(codeShown(shown, kit))}, wie im Angebot zitiert.`
        : `${kit.sentence(codeShown(shown, kit))}, aber das Angebot zitiert ${kit.code(quoted)}.`,
    innocent:
      'Vielleicht wurde ein abgenutzter Stempel falsch abgeschrieben, ein anderes Zeichen zitiert oder der Text eines früheren Angebots übernommen.',
    settles: 'Ein scharfes Foto des Stempels, und der Code, wie ihn der Verkäufer liest.',
  },
  'code-denied': {
    title: 'Wo der Verkäufer keinen Code findet, ist keiner zu sehen',
    failureTitle: 'Ein Foto zeigt einen Code, wo der Verkäufer keinen findet',
    rule: 'Wer keinen Code findet, zeigt keinen. Er ist leicht zu übersehen, und was ein Foto zeigt, kann ein anderes Zeichen sein.',
    statement: ({ shown, denied }, kit) =>
      `${kit.sentence(codeShown(shown, kit))}, aber der Verkäufer findet keinen Code: ${kit.quote(denied)}.`,
    innocent:
      'Vielleicht hat er ihn übersehen oder hält ihn nicht für einen Datumscode; es kann auch ein Zeichen eines Reißverschlusses oder einer Reparatur sein.',
    settles: 'Ein Foto, auf dem zu sehen ist, wo am Stück das Zeichen sitzt.',
  },
  'code-shown': {
    title: 'Ein Code ist zu sehen oder zitiert',
    failureTitle: 'Kein Code ist zu sehen, obwohl der Hersteller zu der Zeit stempelte',
    rule: 'Ein Hersteller, der zur genannten Zeit stempelte, stempelte jedes Stück.',
    statement: ({ claim, maker, stamped, denied }, kit) =>
      denied === null
        ? `Das Angebot sagt ${claimed(claim, kit)}, und damals stempelte ${maker} (${kit.span(stamped)}). Kein Foto zeigt einen Code, und der Text zitiert keinen.`
        : `Das Angebot sagt ${claimed(claim, kit)}, und damals stempelte ${maker} (${kit.span(stamped)}), aber der Verkäufer findet keinen Code: ${kit.quote(denied)}.`,
    innocent: 'Der Stempel ist vielleicht flach gerieben, in einer Tasche versteckt oder nur nicht fotografiert.',
    settles: 'Ein Foto der Stelle, an der dieser Hersteller stempelt.',
  },
  'code-fits-maker': {
    title: 'Der Code ist nach einem Aufbau des Herstellers lesbar',
    failureTitle: 'Der Code ist nach keinem Aufbau des Herstellers lesbar',
    rule: 'Ein Code des Herstellers folgt einem seiner Muster.',
    statement: ({ shown, maker, system, readings, near }, kit) => {
      const said = kit.sentence(codeShown(shown, kit));
      if (system !== null)
        return `${said}: ${readingsSaid(readings, kit)}, nach dem Aufbau ${kit.quote(systemName(system))} von ${maker}.`;
      return `${said}; das passt zu keinem Aufbau von ${maker}.${near ? ` ${nearest(near, kit)}` : ''}`;
    },
    innocent:
      'Vielleicht ist ein Zeichen falsch gelesen, es ist eine Reparatur- oder Losnummer, oder der Herstellerdatei fehlt ein Aufbau.',
    settles: 'Ein schärferes Foto des Stempels, gerade von oben.',
  },
  'code-slot-possible': {
    title: 'Monat, Woche und Werkstatt des Codes gibt es',
    failureTitle: 'Der Code nennt einen Monat, eine Woche oder eine Werkstatt, die es nicht gibt',
    rule: 'Ein Jahr hat 12 Monate und 52 oder 53 Wochen (ISO 8601). Eine Werkstatt, die in der Herstellerdatei fehlt, spricht nur dann gegen den Code, wenn die Datei alle zu nennen erklärt.',
    statement: ({ shown, slot, value, expected, unlistedBy, near }, kit) => {
      const wrong =
        unlistedBy === null
          ? `${slots[slot]} ${kit.quote(value)} gibt es nicht, erwartet ${expectedSaid(expected, kit)}`
          : `die Datei von ${unlistedBy} nennt keine Werkstatt ${kit.quote(value)} und sagt nicht, dass sie alle nennt`;
      const hint = near ? ` ${kit.code(near.code)} wäre lesbar${differencesSaid(near.differences, kit)}.` : '';
      return `${kit.sentence(codeShown(shown, kit))}: ${wrong}.${hint}`;
    },
    innocent: 'Vielleicht ist ein abgenutztes oder schlecht beleuchtetes Zeichen für ein anderes gehalten.',
    explained: ({ unlistedBy }) =>
      unlistedBy === null ? null : 'Vielleicht gab es Werkstätten, die noch niemand in die Datei eingetragen hat.',
    settles: 'Ein schärferes Foto des Stempels, gerade von oben.',
    settled: ({ unlistedBy }) =>
      unlistedBy === null
        ? null
        : 'Eine Herstellerdatei, die alle Werkstätten nennt, oder ein weiteres Stück, das bekanntlich aus dieser stammt.',
  },
};
