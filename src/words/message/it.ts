import type { MessageWords } from './topics';

export const italian: MessageWords = {
  greeting: (name) => (name ? `Buongiorno ${name},` : 'Buongiorno,'),
  lead: (title, count) =>
    `mi interessa ${title ? `«${title}»` : 'il suo articolo'} e avrei ${count === 1 ? 'una domanda' : `${count} domande`} prima di decidere:`,
  thanks: 'Grazie mille per l’aiuto.',
  part: (part) => `Potrebbe aggiungere una foto nitida di questa parte: ${part}? È mai stata riparata o sostituita?`,
  parts: {
    body: 'l’esterno',
    lining: 'la fodera',
    stitching: 'le cuciture',
    trim: 'i profili',
    hardware: 'le parti metalliche',
    zip: 'la cerniera',
    handle: 'i manici',
    strap: 'la tracolla',
    base: 'il fondo',
    edge: 'i bordi',
    tab: 'la linguetta',
    lock: 'la chiusura',
    'dust-bag': 'il sacchetto antipolvere',
    pattern: 'il motivo',
  },
  quote: (words) => `«${words}»`,
  codeSits: (places) => `Dovrebbe trovarsi qui: ${places}.`,
  asks: {
    'stamp-photo':
      'Potrebbe aggiungere una foto nitida e ravvicinata del codice impresso, dall’alto e alla luce del giorno?',
    'whole-stamp':
      'Potrebbe aggiungere una foto che mostri tutto il codice impresso, con un po’ di margine su ogni lato?',
    'made-date': 'Come sa quando è stato fabbricato, e quando e dove è stato acquistato?',
    origin: 'Dove è scritto il paese di fabbricazione? Una foto di quell’etichetta aiuterebbe.',
    measures: 'Potrebbe misurare larghezza, altezza e profondità alla base, con il metro nella foto?',
    returns: 'Accetta resi, ed entro quanti giorni?',
    'not-as-described': 'Scrive che non accetta resi: vale anche se il pezzo non è come descritto?',
    purchase: 'Ha lo scontrino o un altro documento dell’acquisto?',
    payment: 'Vorrei pagare attraverso il sito. Per lei va bene?',
    parts:
      'Potrebbe aggiungere foto delle parti non ancora mostrate (davanti, dietro, base, angoli, manici, metallo, interno, codice)?',
    leather: 'Quali parti sono in pelle e quali no? Una foto di un bordo grezzo lo mostrerebbe bene.',
    aging:
      'Potrebbe aggiungere una foto alla luce del giorno dei manici, del bordo e dei rivetti? Qualcosa è stato sostituito?',
    'own-photo': 'Potrebbe aggiungere foto dell’articolo stesso, una delle quali con la data di oggi su un foglietto?',
    'larger-photos': 'Potrebbe inviare foto più grandi, soprattutto del codice, dei manici e degli angoli?',
    'gone-photos': 'Potrebbe inviarmi le foto che prima erano nell’annuncio?',
    'what-comes': 'Potrebbe dirmi che cosa comprende esattamente la vendita, e se è compreso l’articolo stesso?',
    'remade-by': 'Potrebbe dirmi chi lo ha rielaborato e da che cosa è stato ricavato?',
    authorship: 'Potrebbe confermare per iscritto chi l’ha fabbricato, e come lo sa?',
    assurance: 'Su che cosa si basa: uno scontrino, il codice o il parere di una persona qualificata?',
    condition: 'Potrebbe descrivere ogni segno d’uso, con una foto di ciascuno?',
    description: 'Potrebbe descrivere per iscritto casa, età, materiale, misure e condizioni?',
    seller: 'Ha già venduto articoli simili, qui o altrove?',
    trader: 'Vende come privato o come impresa?',
    model: 'Come sa di quale modello si tratta?',
    price: 'Potrebbe confermare il prezzo e dirmi come si spiega?',
    changes: 'Potrebbe dirmi perché l’annuncio è stato modificato?',
  },
};
