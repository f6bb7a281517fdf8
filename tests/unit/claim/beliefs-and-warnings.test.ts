import { describe, expect, it } from 'vitest';
import { claimsBeginning as heard } from './listing-of';

describe('what was once thought is not said', () => {
  it.each([
    ['en', 'I had assumed it was a bag from the sixties.', 'made'],
    ['en', 'We thought it was an outlet piece.', 'channel'],
    ['de', 'Ich dachte immer, die Tasche sei aus den Sechzigern.', 'made'],
    ['fr', 'Je croyais que le sac datait des années soixante.', 'made'],
    ['it', 'Pensavo che la borsa fosse degli anni Sessanta.', 'made'],
    ['es', 'Siempre creí que el bolso era de los sesenta.', 'made'],
    ['nl', 'Ik dacht altijd dat de tas uit de jaren zestig kwam.', 'made'],
    ['ja', '60年代のバッグだと思っていました。', 'made'],
  ])('%s: %s', (language, words, short) => expect(heard(short, words, language)).toEqual([]));
  it('but what is thought now is, and what the belief gave way to', () => {
    expect(heard('made', 'I think it is a bag from the sixties.', 'en')).toHaveLength(1);
    expect(heard('made', 'I thought it was old, but it was made in 1994.', 'en')).toEqual(['made 1994-1994']);
  });
});

describe('what others may ask for, and what is paid at the door', () => {
  it.each([
    ['en', 'If anyone asks you to pay outside the site, report it.'],
    ['de', 'Falls jemand außerhalb der Plattform Geld verlangt: nicht ich.'],
    ['fr', 'Si on vous demande un virement en mon nom, signalez-le.'],
    ['it', 'Se qualcuno chiede un bonifico per me, non rispondete.'],
    ['es', 'Si alguien os pide una transferencia, avisad.'],
    ['nl', 'Als iemand om een overboeking vraagt, meld het.'],
    ['ja', '私の名前で直接取引を求められても応じないでください。'],
    ['en', 'Bank transfer when we meet is fine.'],
    ['de', 'Überweisung gern, sobald Sie die Tasche in der Hand haben.'],
    ['fr', 'Virement possible une fois le sac entre vos mains.'],
    ['nl', 'Overboeking mag aan de deur.'],
    ['de', 'Lastschrift oder Vorkasse.'],
    ['it', 'Contrassegno o bonifico.'],
    ['ja', 'サイト外でのやり取りには応じておりません。'],
  ])('%s: %s', (language, words) => expect(heard('payment', words, language)).toEqual([]));
  it.each([
    ['en', 'Bank transfer or in person.'],
    ['de', 'Überweisung vorab, sonst Abholung.'],
    ['fr', 'Si vous payez par virement je baisse de dix euros.'],
    ['it', 'Bonifico, non di persona.'],
  ])('but a transfer ahead is asked for (%s): %s', (language, words) =>
    expect(heard('payment', words, language)).not.toEqual([]),
  );
});

describe('what is of another thing or another time', () => {
  it.each([
    ['en', 'Suede linings are only in the newer ones.', 'lining'],
    ['de', 'Ein rotes Satinfutter haben nur die neueren Modelle.', 'lining'],
    ['fr', 'La doublure en satin est sur les modèles récents.', 'lining'],
    ['it', 'La fodera in raso è dei modelli successivi.', 'lining'],
    ['es', 'El forro de raso es de los más nuevos.', 'lining'],
    ['nl', 'Een satijnen voering zit in nieuwere modellen.', 'lining'],
    ['en', 'The invoice in the box is for a lamp bought in 1981.', 'bought'],
    ['fr', "La facture jointe est celle d'un manteau acheté en 1981.", 'bought'],
    ['it', 'Lo scontrino dentro è di un cappotto comprato nel 1981.', 'bought'],
    ['es', 'El recibo de dentro es de un abrigo comprado en 1981.', 'bought'],
    ['nl', 'De kassabon erin is van een jas gekocht in 1981.', 'bought'],
    ['en', 'New it costs 890 today.', 'condition new'],
    ['fr', 'Neuf, le même vaut 890 € en magasin.', 'condition new'],
    ['de', 'Neu kostet sie heute 890 Euro.', 'condition new'],
    ['it', 'Nuova oggi viene 890 euro.', 'condition new'],
    ['es', 'Nuevo vale hoy 890 euros.', 'condition new'],
    ['nl', 'Nieuw kost hij nu 890 euro.', 'condition new'],
    ['ja', '新品は定価12万円です。', 'condition new'],
    ['ja', '返品は未使用に限ります。', 'condition unused'],
    ['en', 'Rumour has it that it came from an outlet.', 'channel'],
    ['es', 'Me contaron que venía de un outlet.', 'channel'],
  ])('%s: %s', (language, words, short) => expect(heard(short, words, language)).toEqual([]));
  it('but the receipt of the bag is its purchase', () =>
    expect(heard('bought', 'The receipt is for a bag bought in 1981.', 'en')).toHaveLength(1));
});

describe('what is asked, what others have, and what a shop does not ask', () => {
  it.each([
    ['en', 'Is it made in Portugal? Several asked: no.', 'origin'],
    ['de', 'Wird sie in Portugal hergestellt? Nein.', 'origin'],
    ['it', "Mia sorella ce l'ha identica in nylon.", 'body'],
    ['es', 'Mi prima tiene otro igual de nailon.', 'body'],
    ['en', 'My niece has one just like it in nylon.', 'body'],
    ['fr', 'Trouvé dans une braderie du quartier.', 'channel'],
    ['ja', 'アウトレットかと質問されましたが、いいえ。', 'channel'],
    ['ja', '中の領収書は1983年に買った靴のものです。', 'bought'],
    ['nl', 'Een overboeking is echt niet nodig, dat hoeft niet.', 'payment'],
    ['de', 'Überweisung im Voraus ist nicht nötig.', 'payment'],
    ['es', 'Transferencia no hace falta.', 'payment'],
    ['en', 'You have 30 days to send it back, no questions asked.', 'hurry'],
    ['es', 'Puedes devolverlo en 14 días, sin preguntas.', 'hurry'],
  ])('%s: %s', (language, words, short) => expect(heard(short, words, language)).toEqual([]));
  it('but no questions at all is', () => expect(heard('hurry', 'Sold today, no questions.', 'en')).toHaveLength(1));
});
