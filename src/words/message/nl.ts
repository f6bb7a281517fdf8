import type { MessageWords } from './topics';

export const dutch: MessageWords = {
  greeting: (name) => (name ? `Beste ${name},` : 'Goedendag,'),
  lead: (title, count) =>
    `Ik heb belangstelling voor ${title ? `‘${title}’` : 'uw stuk'} en heb vooraf ${count === 1 ? 'een vraag' : `${count} vragen`}:`,
  thanks: 'Hartelijk dank voor uw hulp.',
  part: (part) =>
    `Kunt u een scherpe foto van dit deel toevoegen: ${part}? Is er ooit iets aan gerepareerd of vervangen?`,
  parts: {
    body: 'de buitenkant',
    lining: 'de voering',
    stitching: 'het stiksel',
    trim: 'de bies',
    hardware: 'de metalen delen',
    zip: 'de rits',
    handle: 'de hengsels',
    strap: 'de schouderriem',
    base: 'de bodem',
    edge: 'de randen',
    tab: 'het lipje',
    lock: 'het slot',
    'dust-bag': 'de stofzak',
    pattern: 'het patroon',
  },
  quote: (words) => `‘${words}’`,
  codeSits: (places) => `Die hoort hier te zitten: ${places}.`,
  asks: {
    'stamp-photo':
      'Kunt u een scherpe foto van dichtbij van de gestempelde code toevoegen, recht van boven en bij daglicht?',
    'whole-stamp': 'Kunt u een foto toevoegen waarop de hele gestempelde code staat, met wat ruimte aan alle kanten?',
    'made-date': 'Hoe weet u wanneer het gemaakt is, en wanneer en waar is het gekocht?',
    origin: 'Waar staat in welk land het gemaakt is? Een foto van dat label zou helpen.',
    measures: 'Kunt u de breedte, hoogte en diepte bij de bodem meten, met het meetlint op de foto?',
    returns: 'Neemt u het stuk terug, en binnen hoeveel dagen?',
    'not-as-described': 'U schrijft dat u niets terugneemt: geldt dat ook als het stuk niet is zoals beschreven?',
    purchase: 'Hebt u de bon of een ander papier van de aankoop?',
    payment: 'Ik wil graag via het platform betalen. Vindt u dat goed?',
    parts:
      'Kunt u foto’s toevoegen van de delen die nog niet te zien zijn (voorkant, achterkant, bodem, hoeken, hengsels, metaal, binnenkant, code)?',
    leather: 'Welke delen zijn van leer en welke niet? Een foto van een onafgewerkte rand zou het goed tonen.',
    aging:
      'Kunt u bij daglicht een foto van de hengsels, de rand en de klinknagels toevoegen? Is er iets van vervangen?',
    'own-photo': 'Kunt u foto’s van het stuk zelf toevoegen, één ervan met de datum van vandaag op een briefje?',
    'larger-photos': 'Kunt u grotere foto’s sturen, vooral van de code, de hengsels en de hoeken?',
    'gone-photos': 'Kunt u mij de foto’s sturen die eerder in de advertentie stonden?',
    'what-comes': 'Kunt u mij zeggen wat er precies bij de verkoop hoort, en of het stuk zelf erbij is?',
    'remade-by': 'Kunt u mij zeggen wie het vermaakt heeft, en waarvan het gemaakt is?',
    authorship: 'Kunt u schriftelijk bevestigen wie het gemaakt heeft, en hoe u dat weet?',
    assurance: 'Waarop berust dat: een bon, de code of het oordeel van een deskundige?',
    condition: 'Kunt u elk gebruiksspoor beschrijven, met van elk een foto?',
    description: 'Kunt u schriftelijk de maker, de leeftijd, het materiaal, de maten en de staat beschrijven?',
    seller: 'Hebt u al eerder soortgelijke stukken verkocht, hier of elders?',
    trader: 'Verkoopt u als particulier of als bedrijf?',
    model: 'Hoe weet u welk model het is?',
    price: 'Kunt u de prijs bevestigen en mij zeggen hoe die tot stand komt?',
    changes: 'Kunt u mij zeggen waarom de advertentie is gewijzigd?',
  },
};
