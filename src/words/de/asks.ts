import type { AskWords } from '../asks-words';
import { namedPart, namedParts, parts } from './parts';
import { subjects } from './subjects';

export const asks: AskWords = {
  'stamp-photo': ({ where = [] }, kit) =>
    `Könnten Sie ein scharfes Foto des geprägten Codes ergänzen, nah, gerade von oben und bei Tageslicht?${where.length > 0 ? ` Er sollte hier sitzen: ${kit.either(where.map(kit.quote))}.` : ''}`,
  'whole-stamp': () =>
    'Könnten Sie ein Foto ergänzen, das den ganzen geprägten Code mit etwas Rand an allen Seiten zeigt?',
  'made-date': ({ told }) =>
    told
      ? 'Woher wissen Sie, wann das Stück hergestellt wurde, und wo wurde es gekauft?'
      : 'Woher wissen Sie, wann das Stück hergestellt wurde, und wann und wo wurde es gekauft?',
  origin: () => 'Wo steht, in welchem Land es hergestellt wurde? Ein Foto dieses Etiketts würde helfen.',
  measures: () => 'Könnten Sie Breite, Höhe und Tiefe am Boden messen, mit dem Maßband im Bild?',
  returns: () => 'Nehmen Sie das Stück zurück, und innerhalb von wie vielen Tagen?',
  'not-as-described': () =>
    'Sie schreiben, dass Sie nichts zurücknehmen: gilt das auch, wenn das Stück von der Beschreibung abweicht?',
  purchase: ({ told }) =>
    told
      ? 'Könnten Sie ein Foto des Papiers vom Kauf ergänzen, den Namen verdeckt?'
      : 'Haben Sie den Kaufbeleg oder ein anderes Papier vom Kauf?',
  payment: () => 'Ich möchte gern über den Marktplatz bezahlen. Ist Ihnen das recht?',
  'larger-photos': () => 'Könnten Sie größere Fotos schicken, vor allem vom Code, von den Henkeln und den Ecken?',
  price: () => 'Könnten Sie den verlangten Preis bestätigen?',
  'lower-price': () => 'Gibt es einen Grund für den niedrigeren Preis?',
  'parts-not-shown': () => 'Könnten Sie Fotos von Teilen ergänzen, die noch nicht zu sehen sind?',
  'parts-to-show': ({ parts: shown }, kit) =>
    `Könnten Sie Fotos ergänzen, soweit noch nicht zu sehen: ${kit.list([...shown.map((part) => parts(part)), 'der Stempel'])}?`,
  'first-photos': () => 'Könnten Sie Fotos von Vorderseite, Rückseite, Boden, Innenseite und Stempel ergänzen?',
  'which-one': () => 'Welches der Stücke würde ich bekommen, und könnten Sie Fotos von genau diesem ergänzen?',
  'own-photo': () =>
    'Könnten Sie Fotos des Stücks selbst ergänzen, eines davon mit dem heutigen Datum auf einem Zettel?',
  'gone-photos': () => 'Könnten Sie mir die Fotos schicken, die vorher in der Anzeige waren?',
  description: () => 'Könnten Sie Hersteller, Alter, Material, Maße und Zustand schriftlich beschreiben?',
  'why-changed': ({ subject }) => `Könnten Sie mir sagen, warum in der Anzeige geändert wurde: ${subjects[subject]}?`,
  'changed-hands': () => 'Hat das Stück seit der ersten Anzeige den Besitz gewechselt?',
  part: ({ part, told }) =>
    `Könnten Sie ein scharfes Foto ergänzen: ${namedParts[part]}?${told ? '' : ' Wurde dort je etwas repariert oder ersetzt?'}`,
  'measured-part': ({ part }) =>
    `Könnten Sie ein scharfes, genau von oben aufgenommenes Foto ergänzen: ${namedPart(part)}? Wurde dort je etwas repariert oder ersetzt?`,
  'what-comes': () => 'Könnten Sie mir sagen, was genau zum Kauf gehört und ob das Stück selbst dabei ist?',
  'remade-by': () => 'Könnten Sie mir sagen, wer das Stück umgearbeitet hat und woraus es gemacht wurde?',
  authorship: () => 'Könnten Sie schriftlich bestätigen, wer es hergestellt hat, und woher Sie das wissen?',
  trader: () => 'Verkaufen Sie privat oder gewerblich?',
  seller: () => 'Haben Sie schon ähnliche Stücke verkauft, hier oder anderswo?',
  assurance: () => 'Worauf beruht das: auf einem Beleg, dem Code oder dem Urteil einer fachkundigen Person?',
  condition: () => 'Könnten Sie jede Gebrauchsspur beschreiben, mit je einem Foto?',
  leather: () => 'Welche Teile sind aus Leder und welche nicht? Ein Foto einer offenen Kante würde es gut zeigen.',
  aging: ({ told }) =>
    `Könnten Sie ein Foto der Henkel, des Besatzes und der Nieten bei Tageslicht ergänzen?${told ? '' : ' Wurde etwas davon je ersetzt?'}`,
  model: () => 'Woher wissen Sie, welches Modell es ist?',
  'worn-metal': () => 'Könnten Sie ein nahes Foto der Metallteile ergänzen, dort, wo sie am meisten abgenutzt sind?',
};
