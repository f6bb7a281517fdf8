import type { MessageWords } from './topics';

export const german: MessageWords = {
  greeting: (name) => (name ? `Guten Tag ${name},` : 'Guten Tag,'),
  lead: (title, count) =>
    `ich interessiere mich für ${title ? `„${title}“` : 'Ihr Stück'} und habe vorher ${count === 1 ? 'eine Frage' : `${count} Fragen`}:`,
  thanks: 'Vielen Dank für Ihre Hilfe.',
  part: (part) =>
    `Könnten Sie ein scharfes Foto dieses Teils ergänzen: ${part}? Wurde daran je etwas repariert oder ersetzt?`,
  parts: {
    body: 'Außenseite',
    lining: 'Futter',
    stitching: 'Naht',
    trim: 'Besatz',
    hardware: 'Metallteile',
    zip: 'Reißverschluss',
    handle: 'Henkel',
    strap: 'Riemen',
    base: 'Boden',
    edge: 'Kanten',
    tab: 'Lasche',
    lock: 'Schloss',
    'dust-bag': 'Staubbeutel',
    pattern: 'Muster',
  },
  quote: (words) => `„${words}“`,
  codeSits: (places) => `Er sollte hier sitzen: ${places}.`,
  asks: {
    'stamp-photo':
      'Könnten Sie ein scharfes Foto des geprägten Codes ergänzen, nah, gerade von oben und bei Tageslicht?',
    'whole-stamp': 'Könnten Sie ein Foto ergänzen, das den ganzen geprägten Code mit etwas Rand an allen Seiten zeigt?',
    'made-date': 'Woher wissen Sie, wann das Stück hergestellt wurde, und wann und wo wurde es gekauft?',
    origin: 'Wo steht, in welchem Land es hergestellt wurde? Ein Foto dieses Etiketts würde helfen.',
    measures: 'Könnten Sie Breite, Höhe und Tiefe am Boden messen, mit dem Maßband im Bild?',
    returns: 'Nehmen Sie das Stück zurück, und innerhalb von wie vielen Tagen?',
    'not-as-described':
      'Sie schreiben, dass Sie nichts zurücknehmen: gilt das auch, wenn das Stück von der Beschreibung abweicht?',
    purchase: 'Haben Sie den Kaufbeleg oder ein anderes Papier vom Kauf?',
    payment: 'Ich möchte gern über den Marktplatz bezahlen. Ist Ihnen das recht?',
    parts:
      'Könnten Sie Fotos der Teile ergänzen, die noch nicht zu sehen sind (Vorderseite, Rückseite, Boden, Ecken, Henkel, Metall, Innenseite, Code)?',
    leather: 'Welche Teile sind aus Leder und welche nicht? Ein Foto einer offenen Kante würde es gut zeigen.',
    aging:
      'Könnten Sie ein Foto der Henkel, der Kanten und der Nieten bei Tageslicht ergänzen? Wurde etwas davon ersetzt?',
    'which-one': 'Welches der Stücke würde ich bekommen, und könnten Sie Fotos von genau diesem ergänzen?',
    'own-photo': 'Könnten Sie Fotos des Stücks selbst ergänzen, eines davon mit dem heutigen Datum auf einem Zettel?',
    'larger-photos': 'Könnten Sie größere Fotos schicken, vor allem vom Code, von den Henkeln und den Ecken?',
    'gone-photos': 'Könnten Sie mir die Fotos schicken, die vorher in der Anzeige waren?',
    'what-comes': 'Könnten Sie mir sagen, was genau zum Kauf gehört und ob das Stück selbst dabei ist?',
    'remade-by': 'Könnten Sie mir sagen, wer das Stück umgearbeitet hat und woraus es gemacht wurde?',
    authorship: 'Könnten Sie schriftlich bestätigen, wer es hergestellt hat, und woher Sie das wissen?',
    assurance: 'Worauf beruht das: auf einem Beleg, dem Code oder dem Urteil einer fachkundigen Person?',
    condition: 'Könnten Sie jede Gebrauchsspur beschreiben, mit je einem Foto?',
    description: 'Könnten Sie Hersteller, Alter, Material, Maße und Zustand schriftlich beschreiben?',
    seller: 'Haben Sie schon ähnliche Stücke verkauft, hier oder anderswo?',
    trader: 'Verkaufen Sie privat oder gewerblich?',
    model: 'Woher wissen Sie, welches Modell es ist?',
    price: 'Könnten Sie den Preis bestätigen und mir sagen, wie er zustande kommt?',
    changes: 'Könnten Sie mir sagen, warum die Anzeige geändert wurde?',
  },
  told: {
    'made-date': 'Woher wissen Sie, wann das Stück hergestellt wurde, und wo wurde es gekauft?',
    purchase: 'Könnten Sie ein Foto des Papiers vom Kauf ergänzen? Namen dürfen verdeckt sein.',
    aging: 'Könnten Sie ein Foto der Henkel, der Kanten und der Nieten bei Tageslicht ergänzen?',
  },
  partTold: (part) => `Könnten Sie ein scharfes Foto dieses Teils ergänzen: ${part}?`,
};
