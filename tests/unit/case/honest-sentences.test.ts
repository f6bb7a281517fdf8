import { describe, expect, it } from 'vitest';
import { doubtsOn, type Sentence, sellersMakers } from '../../messy-pages/sentences';

type Case = [Sentence['language'], string];
const doubts = async ([language, text]: Case) =>
  (await Promise.all(sellersMakers.map((maker) => doubtsOn({ language, text }, maker)))).flat();

describe('what an honest seller says of something else is held against nobody', () => {
  it.each<Case>([
    // A year that only stands in a clause, with a noun of its own or none.
    ['en', 'The café downstairs is from 2009.'],
    ['nl', 'In 2017 laten opfrissen.'],
    ['de', 'Meine Mutter (Jg. 1938) hat sie ausgesucht.'],
    ['fr', 'Le parapluie est de 2011.'],
    // What others hold.
    ['it', 'Secondo la vicina è del 1978.'],
    ['en', 'The gentleman who sold it to my nan said 1961.'],
    ['ja', '知人によると1981年だそうです。'],
    // New once, nearly, in part, or to somebody's wish.
    ['en', 'It was brand new the day she carried it home.'],
    ['fr', 'Presque jamais utilisée.'],
    ['es', 'Nuevo solo está el cordón.'],
    ['it', 'Catenella nuova, mai usata.'],
    ['de', 'Wer Neuware sucht, ist hier falsch.'],
    ['ja', '新品を希望の方はご遠慮ください。'],
    // Shops and clearances that are only named.
    ['en', 'We live near the outlet.'],
    ['nl', 'Opruiming van mijn kledingkast.'],
    // A copy, a box and a part that are not the piece.
    ['en', 'Years ago I was sold a replica.'],
    ['es', 'Falta solo la caja.'],
    ['de', 'Die leere Schachtel lege ich dazu.'],
    ['nl', 'Handvat nagemaakt naar het oude.'],
    // Where a part was made, and how tall it is when open.
    ['en', 'The zip is made in Switzerland.'],
    ['ja', 'ファスナーはスイス製です。'],
    ['de', 'Mit offener Klappe 43 cm hoch.'],
    ['it', 'Tracolla da 90 a 120.'],
    // A number that is somebody else's.
    ['fr', 'Le numéro 7713 est du cordonnier.'],
    ['it', 'I manici chiari si sono imbruniti.'],
  ])('%s: %s', async (language, text) => expect(await doubts([language, text])).toEqual([]));
});

describe('what founds a doubt is told as before', () => {
  it.each<[...Case, string]>([
    ['en', 'Made in 2008.', 'claimed-dates-agree'],
    ['de', 'Die Tasche ist unbenutzt.', 'condition-words-agree'],
    ['fr', 'Sac neuf, jamais porté.', 'condition-words-agree'],
    ['en', 'This is a replica.', 'grade-words'],
    ['it', 'Vendo una replica.', 'grade-words'],
    ['en', 'Empty box only.', 'packaging-only'],
    ['es', 'El bolso está hecho en Portugal.', 'origin-claims-agree'],
    ['en', 'Bought at the outlet.', 'sale-channel'],
    ['ja', '2007年製です。', 'claimed-dates-agree'],
  ])('%s: %s', async (language, text, check) => expect(await doubts([language, text])).toContain(check));
});
