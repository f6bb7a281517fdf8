import type { Condition } from '../listing/types';
import { listOf, type PhraseTable } from './phrases';

/** Bare words for "new": they count only where they are said of the piece. */
export const newWords = listOf('new, neu, neuer, neue, neues, neuf, neuve, nuovo, nuova, nuevo, nueva, nieuw, nieuwe');

/** Words for the piece itself. */
export const pieceNouns = listOf(
  'bag, bags, handbag, shoulder bag, purse, satchel, wallet, belt, clutch, tote, backpack, briefcase, holdall',
  'pouch, cardholder, with tags, with tag, in box, with box, and unused, unused, and never, never, condition',
  'in package, old stock, item, piece, tasche, handtasche, umhängetasche, geldbörse, brieftasche, gürtel',
  'rucksack, aktentasche, und unbenutzt, mit etikett, und ungetragen, ware, sac, sac à main, portefeuille',
  'ceinture, sacoche, pochette, avec étiquette, jamais, borsa, portafoglio, cintura, zaino, cartella',
  'con cartellino, con etichetta, mai, bolso, cartera, cinturón, mochila, maletín, con etiqueta, sin, tas',
  'handtas, schoudertas, portemonnee, riem, rugzak, met kaartje, met label, バッグ, 鞄',
);

/** Condition phrases and gradings. Gradings differ between sites; the mapping is common practice, no source. */
export const conditionWords: PhraseTable<Condition> = {
  new: listOf(
    'brand new, brandnew, bnwt, bnib, bnwot, nwt, nwot, nib, new with tags, new without tags, new in box',
    'new with box, factory new, newcondition, new condition, fabrikneu, neu in der verpackung, neu in ovp, neu und originalverpackt, nagelneu, brandneu, ganz neu',
    'neu mit etikett, neu ohne etikett, neuware, flambant neuf, flambant neuve, tout neuf, toute neuve, état neuf',
    'neuf avec étiquette*, neuve avec étiquette*, neuf sans étiquette*, nuovo con cartellino',
    'nuova con cartellino, nuovissim*, nuovo di zecca, nuova di zecca, nuovo con etichetta, nuova con etichetta',
    'totalmente nuevo, totalmente nueva, a estrenar, nuevo con etiqueta*, nueva con etiqueta*',
    'completamente nuevo, completamente nueva, gloednieuw*, splinternieuw*, nieuw met kaartje, nieuw met label',
    '新品, 新品・未使用, ランク n, ランク s',
  ),
  unused: listOf(
    'unused, never used, never been used, never worn, never been worn, never carried, never been carried',
    'not used, not been used, unworn, new old stock, deadstock, dead stock, nos, without signs of use',
    'no signs of use, no signs of wear, unbenutzt*, ungetragen*, ungebraucht*, nie benutzt, nie getragen',
    'nie gebraucht, nie verwendet, noch nie getragen, noch nie benutzt, niemals getragen, niemals benutzt',
    'nicht benutzt, nicht getragen, jamais porté, jamais portée, jamais utilisé, jamais utilisée, jamais servi',
    "n'a jamais servi, jamais sorti, jamais sortie, non porté, non portée, non utilisé, non utilisée, mai usata",
    'mai usato, mai indossata, mai indossato, mai utilizzata, mai utilizzato, inutilizzat*, non usata, non usato',
    'sin usar, sin uso, sin estrenar, nunca usado, nunca usada, no usado, no usada, nunca utilizado',
    'nunca utilizada, nunca llevado, nunca llevada, ongebruikt*, ongedragen, nooit gebruikt, nooit gedragen',
    'niet gebruikt, 未使用, 未使用品, 使用なし, 使用はありません, 使用していない, 使用していません, 使っていません, 一度も使用, 一度も使って',
  ),
  'as-new': listOf(
    'as new, like new, almost new, nearly new, near new, practically new, as good as new, good as new, mint',
    'mint condition, pristine, immaculate, hardly used, barely used, hardly worn, barely worn, used once',
    'worn once, used twice, worn twice, carried once, only used once, only worn once, looks new, excellent as new',
    'wie neu, neuwertig*, fast neu, so gut wie neu, kaum benutzt, kaum getragen, kaum gebraucht, einmal getragen',
    'einmal benutzt, nur einmal getragen, comme neuf, comme neuve, quasi neuf, quasi neuve, presque neuf',
    'presque neuve, porté une fois, portée une fois, très peu porté, très peu portée, très peu servi',
    'à peine porté, à peine portée, état impeccable, parfait état, come nuovo, come nuova, pari al nuovo',
    'pari a nuovo, pari al nuova, praticamente nuovo, praticamente nuova, quasi nuovo, quasi nuova',
    'usata una volta, usato una volta, usata pochissimo, usato pochissimo, perfette condizioni',
    'condizioni perfette, condizioni impeccabili, como nuevo, como nueva, casi nuevo, casi nueva',
    'prácticamente nuevo, prácticamente nueva, usado una vez, usada una vez, apenas usado, apenas usada',
    'impecable, perfecto estado, estado perfecto, zo goed als nieuw, als nieuw, bijna nieuw, vrijwel nieuw',
    'nauwelijks gebruikt, nauwelijks gedragen, eenmaal gedragen, eenmaal gebruikt, een keer gebruikt',
    'één keer gedragen, nieuwstaat, 新品同様, 一度だけ使用, 1度だけ使用, 1回だけ使用, 一回のみ使用, 1回のみ使用, 一度のみ使用, 未使用に近い, 極美品, 新品に近い, ランク sa',
  ),
  'used-very-good': listOf(
    'excellent vintage condition, very good vintage condition, great vintage condition, good vintage condition, good used condition',
    'excellent pre owned condition, very good condition, excellent condition, great condition, lovely condition, beautiful condition',
    'fantastic condition, superb condition, vgc, euc, very good, gently used, gently worn, lightly used',
    'well cared for, minimal wear, minimal signs of wear, light wear, good condition, guc',
    'very good used condition, excellent used condition, sehr guter zustand, sehr gutem zustand',
    'sehr guten zustand, guter zustand, gutem zustand, guten zustand, sehr gut erhalten, gut erhalten*, gepflegt*',
    'top zustand, bester zustand, tadellos*, minimale gebrauchsspuren, leichte gebrauchsspuren, sehr gut',
    'très bon état, excellent état, bon état, tbe, très bel état, bel état, ottime condizioni, ottimo stato',
    'buone condizioni, buono stato, condizioni ottime, condizioni eccellenti, eccellenti condizioni, ben tenuta',
    'ben tenuto, muy buen estado, buen estado, excelente estado, estado excelente, muy bien cuidado, muy cuidado',
    'muy cuidada, bien conservado, bien conservada, zeer goede staat, goede staat, uitstekende staat, prima staat',
    'mooie staat, goed onderhouden, netjes, nette staat, 美品, 良好, 目立った傷や汚れなし, 目立つ傷なし, 状態良好, ランク a, ランク ab, 綺麗な状態',
  ),
  used: listOf(
    'used, well loved, much loved, pre owned, preowned, pre loved, preloved, second hand, secondhand, fair condition, used condition',
    'signs of use, signs of wear, some wear, normal wear, has been used, gebraucht*, getragen, gebrauchsspuren',
    "tragespuren, benutzt, second-hand, aus zweiter hand, occasion, d'occasion, seconde main, état correct",
    "usagé, usagée, état satisfaisant, traces d'usage, traces d'usure, porté, portée, usato, usata, di seconda mano",
    "seconda mano, segni d'uso, segni di usura, discrete condizioni, usado, usada, segunda mano, de segunda mano",
    'señales de uso, signos de uso, estado aceptable, gebruikt*, gedragen, tweedehands, gebruikssporen',
    'redelijke staat, 中古, 中古品, 使用感あり, 使用感, やや傷や汚れあり, ランク b, ユーズド',
  ),
  worn: listOf(
    'well worn, heavily worn, well used, heavily used, heavy wear, worn condition, poor condition, tired',
    'stark gebraucht, stark getragen, abgenutzt*, starke gebrauchsspuren, deutliche gebrauchsspuren, très usé',
    'très usée, usé, usée, mauvais état, état moyen, molto usata, molto usato, vissut*, consumat*',
    'cattive condizioni, muy usado, muy usada, desgastad*, mal estado, gastado, gastada, versleten, veel gebruikt',
    'slechte staat, matige staat, 使用感が強い, 使い古し, ランク c, 傷や汚れあり, 全体的に状態が悪い',
  ),
  damaged: listOf(
    'damaged, broken, torn, ripped, for parts, needs repair, in need of repair, project bag, cracked, mould, mold',
    'mouldy, beschädigt*, defekt*, kaputt*, gerissen, zerrissen, bastler, schimmel, abîmé, abîmée, cassé, cassée',
    'déchiré, déchirée, à réparer, endommagé*, pour pièces, moisi, danneggiat*, rotto, rotta, strappat*',
    'da riparare, muffa, dañad*, roto, rota, para piezas, estropead*, moho, beschadigd*, kapot, gescheurd, defect',
    '破損, 破れ, 壊れ, ジャンク, カビ',
  ),
};
