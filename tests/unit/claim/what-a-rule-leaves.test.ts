import { describe, expect, it } from 'vitest';
import { claimsOf } from './listing-of';

/*
 * For each rule that takes words from the piece, or leaves them to it, a pair: the same words once of something else and
 * once of the piece.
 */

/** The claims of a text whose short form begins with one of these. */
const told = (text: string, kinds: string[], title: string, language: string | null) =>
  claimsOf(text, language, title).filter((claim) => kinds.some((kind) => claim.startsWith(kind)));

type Row = [text: string, wanted: string[], title?: string];
const rows = (kinds: string[], language: string | null, list: Row[]) =>
  it.each(list)('%s', (text, wanted, title = '') => {
    expect(told(text, kinds, title, language)).toEqual(wanted);
  });

describe('where a year is of something else', () => {
  rows(['made', 'bought'], null, [
    ['Comes with the suitcase, which is from 1988.', []],
    ['I sell the satchel, which is from 1988.', ['made 1988-1988']],
    ['2019年の箱が付きます。', []],
    ['The carton is from 2019.', []],
    ['With carton, it is from 1994.', ['made 1994-1994']],
    ['The zip is from 2010.', []],
    ['The strap was exchanged in 2016, I bought it in 1994.', ['bought 1994-1994']],
    ['The strap was sewn by a saddler in 2014.', []],
    ['Die Schachtel, von 2012.', []],
    ['La scatola è del 2012, la borsa del 1996.', ['made 1996-1996']],
    ['The model was built from 1985 to 2012.', []],
    ['The model is of 1975, mine is younger.', []],
    ['The model is of 1975.', ['made 1975-1975']],
    ['The original run ended in 1984.', []],
    ['A re-issue of the basket of the 1970s.', []],
    ['A basket bag of the 1970s.', ['made 1970-1979']],
    ['The saddler has been in town since 1962.', []],
    ['My aunt Hilde, born 1931, carried it.', []],
    ['The receipt in the pocket is for a jumper bought in 1987.', []],
    ['The receipt in the pocket is for the bag bought in 1987.', ['bought 1987-1987']],
    ['レシートは1989年に買った傘のものです。', []],
    ['レシートは1989年に買ったバッグのものです。', ['bought 1989-1989']],
    ['My sister is 40 years old.', []],
    ['The bag is 40 years old.', ['made 1981-1991']],
    ['Facture d’une réparation de 1999.', []],
    ['Je vends des sacs depuis 1998.', []],
    ['Owned since 1994.', ['bought 1994-1994']],
    ['A present for my exam (2006).', ['bought 2006-2006']],
    ['Made in USA, 2002.', ['made 2002-2002']],
    ['The matching wallet, of 2004.', []],
    ['1952年創業の店です。', []],
    ['Founded in the 1990s.', []],
    ['We restored the bag in the 1960s.', []],
    ['2018 auf 400 Euro geschätzt.', []],
    ['The shop told me 1988, but the bag is from 1995.', ['made 1995-1995']],
    ['The shop told me that it is rare. Made in 1988, and bought in 1995.', ['made 1988-1988', 'bought 1995-1995']],
    ['2005 bei einer Auktion gekauft.', ['bought 2005-2005']],
    ['Bag of 1970, which he sold me in 1999.', ['made 1970-1970', 'bought 1999-1999']],
    ['A longer strap (from a 2020 bag).', []],
    ['Sold with a wallet of 2012.', []],
    ['Sold with its strap, made in 2012.', ['made 2012-2012']],
    ['90s style, very comfortable.', []],
    ['The style goes back to 1908.', []],
    ['Vintage style, sixties.', []],
    ['Vintage, sixties.', ['made 1960-1969']],
    ['England, 1968.', ['made 1968-1968']],
    ['Sac en toile enduite, France, 1999.', ['made 1999-1999']],
    ['Bought in Paris, France, 1999.', []],
    ['イタリア製、1991年。', ['made 1991-1991']],
    ['8812 YD: December 1988.', ['made 1988-1988']],
  ]);
});

describe('where a place of making is of something else', () => {
  rows(['origin'], null, [
    ['The zip is made in Japan.', []],
    ['ファスナーは日本製です。', []],
    ['Dust bag made in China.', []],
    ['100% cotton pouch, made in Turkey.', []],
    ['The dust bag has a tag saying made in China.', []],
    ['The tag inside the bag says made in Italy.', ['origin IT']],
    ['The card is lost, made in Spain.', ['origin ES']],
    ['With dust bag, made in Spain.', ['origin ES']],
    ['With a wallet, made in Spain.', []],
    ['Was it made in Spain? No idea.', []],
    ['Not made in Spain.', []],
    ['My sister’s was made in Spain.', []],
    ['ベルギー製のレザーです。', []],
    ['ベルギー製です。', ['origin BE']],
    ['フランス製に似た作りです。', []],
    ['England, 1968.', ['origin GB']],
    ['Sac en toile enduite, France, 1999.', ['origin FR']],
    ['Bought in Paris, France, 1999.', []],
    ['Ships from France.', []],
  ]);
});

describe('where a material is of something else', () => {
  rows(['body', 'dust-bag', 'lining', 'hardware', 'strap', 'handle', 'leather', 'not leather', 'trim'], 'en', [
    ['Brown bridle leather with brass fittings.', ['body = brown bridle leather', 'hardware = brass']],
    ['Faux leather pouch included.', []],
    ['With a faux leather pouch.', []],
    ['With a red cotton dust bag.', ['dust-bag = red cotton']],
    ['Faux leather pouch included.', ['leather-like', 'body = imitation leather'], 'Red pouch by Velmont'],
    ['Red leather belt bag.', ['body = red leather']],
    ['The box is of faux leather.', []],
    ['It feels like faux leather.', []],
    ['It is of faux leather.', ['leather-like']],
    ['The handles are like new, the leather is scratched at the base.', []],
    ['Lining, red suede.', ['lining = red suede']],
    ['Lining fine (red suede).', ['lining = red suede']],
    ['The lining of the bag is of red suede.', ['lining = red suede']],
    ['Bridle leather, canvas.', ['body = bridle leather']],
    ['Bridle leather. Canvas.', ['body = bridle leather', 'body = canvas']],
    ['All brass.', ['hardware = brass']],
    ['Olive twill, brass, black handles.', ['hardware = brass', 'handle = black']],
    ['Olive twill, brass on the bag.', []],
    ['Brass plate on the box.', []],
    ['My sister’s has pigskin, this one suede.', []],
    ['No leather at all.', []],
    ['Is the lining suede?', []],
  ]);
});

describe('where a code is of something else', () => {
  rows(['code', 'no-code', 'not-placed'], null, [
    ['Number 5512 is the cobbler’s.', []],
    ['Edición limitada de 200 unidades, la mía es la nº 087/200, código en la etiqueta.', []],
    ['Date code 14 C 50 M 37 inside.', ['code 14 C 50 M 37']],
    ['The box has a label with KV0915.', []],
    ['The tab inside has KV0915.', ['code KV0915']],
    ['My other one has the date code KV0915.', []],
    ['Date code KV0915, not KV0951.', ['code KV0915']],
    ['I first wrote date code KV0951. It is KV0915, date code.', ['code KV0915']],
    ['Postcode KV0915.', []],
    ['Date code 45 x 27 cm.', []],
    ['The number inside says 1995.', []],
    ['Date code: none.', ['no-code']],
    ['It has no date code.', ['no-code']],
    ['The date code is no longer legible.', ['no-code']],
    ['The date code KV0915 is hardly legible.', ['code KV0915']],
  ]);
});

describe('where a way to pay is refused, or left to the buyer', () => {
  rows(['payment-outside'], null, [
    ['Payment by bank transfer please.', ['payment-outside']],
    ['No bank transfer please.', []],
    ['I never ask for bank transfers.', []],
    ['Bank transfer is not accepted.', []],
    ['Überweisung nehme ich nicht an.', []],
    ['Je refuse les virements.', []],
    ['By card or bank transfer.', []],
    ['By transfer through the site.', []],
    ['By bank transfer or through the site.', ['payment-outside']],
    ['By bank transfer instead of through the site.', ['payment-outside']],
    ['Bank transfer only when you hold it in your hands at collection.', []],
    ['If anybody asks you in my name for a bank transfer, tell me.', []],
    ['Write to me at lena.holt@post.example please.', ['payment-outside', 'payment-outside']],
    ['Write to me at lena.holt (at) post (dot) example please.', ['payment-outside', 'payment-outside']],
  ]);
});

describe('where words of a family are of something else', () => {
  rows(['grade-of-copy', 'not grade-of-copy', 'packaging-only', 'fresh-part', 'hurry', 'in-stock', 'metal'], null, [
    ['This is a replica.', ['grade-of-copy']],
    ['Une copie parfaite.', ['grade-of-copy']],
    ['I once bought a replica.', []],
    ['No replica.', ['not grade-of-copy']],
    ['Handle copied by the cobbler.', []],
    ['Only the box is missing.', []],
    ['Empty box for sale.', ['packaging-only']],
    ['The empty box goes with it.', []],
    ['The pale handles have darkened.', []],
    ['There are no silly questions, ask away.', []],
    ['30 days to send it back, no questions.', []],
    ['1 available.', []],
    ['12 available.', ['in-stock']],
    ['999 available.', ['in-stock']],
    ['1000 available.', []],
    ['2 available.', ['in-stock']],
  ]);

  rows(['vintage', 'not vintage', 'antique', 'wear', 'not wear', 'stored'], null, [
    ['Found at a vintage fair.', []],
    ['A vintage bag.', ['vintage']],
    ['Vintage style.', []],
    ['傷なし。', ['not wear']],
    ['目立つ傷はありません。', []],
    ['The dust bag has scratches.', []],
    ['The base has scratches.', ['wear']],
  ]);

  rows(['channel', 'returns'], null, [
    ['Bought at the outlet.', ['channel outlet']],
    ['Not from an outlet.', []],
    ['From an outlet? No, from the shop.', []],
    ['Near the outlet we can meet.', []],
    ['There was an outlet next door where I got the shoes.', []],
    ['Sample bag, never sold.', ['channel sample-sale']],
    ['A sample of the leather is in the pocket.', []],
    ['My aunt says it is from the outlet.', []],
  ]);

  rows(['replaced', 're-dyed'], null, [
    ['The strap was replaced in 2018.', ['replaced strap']],
    ['The strap broke, I replaced it in 2018.', ['replaced strap']],
    ['The zip can be replaced.', []],
    ['The zip had to be replaced in 2018.', ['replaced zip']],
    ['Nothing was replaced.', []],
    ['The dust bag is new.', []],
    ['Replaced zip and lining.', ['replaced zip+lining']],
    ['Scratches on the base and the zip was replaced.', ['replaced zip']],
    ['Strap not original (replaced in 2011).', ['replaced strap']],
    ['A repair of 1999.', ['replaced somewhere']],
    ['Repairs since 1962.', []],
    ['Dyed leather.', []],
    ['Dyed in 2015 by a saddler.', ['re-dyed somewhere']],
    ['Replaced in May 2016: the lock.', []],
    ['La cerniera è stata sostituita.', ['replaced zip']],
    ['Cierre nuevo de 2010.', ['replaced lock']],
    ['Relined in 2014.', ['replaced lining']],
  ]);
});

describe('where a maker or a model is of something else', () => {
  rows(['maker', 'model', 'hedged-authorship'], null, [
    ['My Ondrasse wallet fits inside.', []],
    ['I sell my Ondrasse bag.', ['maker Ondrasse']],
    ['Compared with an Ondrasse it is small.', []],
    ['Like an Ondrasse.', ['hedged-authorship']],
    ['Tags: Ondrasse, bag, leather, vintage, brown, belt', []],
    ['Wallet by Ondrasse goes in too.', []],
    ['Not an Ondrasse.', []],
    ['Is it an Ondrasse?', []],
    ['Ondrasse style.', ['hedged-authorship']],
    ['Inspired by the bags of doctors.', []],
    ['Inspired by Ondrasse.', ['hedged-authorship']],
    ['The zip is not original.', []],
    ['Next to a Carryall 30 it looks small.', []],
    ['It looks like a Carryall 30.', ['model? Carryall 30']],
    ['Carryall 30, I think.', ['model? Carryall 30']],
    ['Carryall 30 (I think).', ['model? Carryall 30']],
    ['One of my Carryall 30s.', ['model Carryall 30']],
    ['No Carryall 30.', []],
  ]);
});
