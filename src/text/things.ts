import { listOf, type PhraseTable } from './phrases';

/** The parts of a leather piece, as the claim schema names them. */
export type PartName =
  | 'body'
  | 'lining'
  | 'stitching'
  | 'trim'
  | 'hardware'
  | 'zip'
  | 'handle'
  | 'strap'
  | 'base'
  | 'edge'
  | 'tab'
  | 'lock'
  | 'dust-bag'
  | 'pattern';

/** Words for the parts in the seven languages. */
export const partWords: PhraseTable<PartName> = {
  body: listOf(
    'exterior, outside, outer, body, bag body, außen, außenmaterial, aussenmaterial, obermaterial, äußere, korpus',
    'extérieur, corps, esterno, corpo, cuerpo, buitenkant, buitenmateriaal, 外側, 本体, 表地',
  ),
  lining: listOf(
    'lining, lined, interior, inside, inner, innenfutter, futter, gefüttert, innen, innenraum, innenseite',
    'innenmaterial, ausgekleidet, doublure, doublé, doublée, intérieur, fodera, foderata, foderato, interno',
    'forro, forrado, forrada, voering, gevoerd, binnenkant, binnenvoering, 裏地, 内側, 内装, ライニング',
  ),
  stitching: listOf(
    'stitching, stitches, stitch, thread, stitched, seams, naht, nähte, nähten, garn, faden, steppnaht, ziernähte',
    'couture, coutures, surpiqûre, surpiqûres, fil, cucitura, cuciture, filo, costura, costuras, pespunte',
    'pespuntes, hilo, stiksel, stiksels, naden, garen, ステッチ, 縫製, 縫い目, 糸',
  ),
  trim: listOf(
    'trim, trims, piping, trimming, besatz, paspel, paspelierung, garnitures, passepoil, passepoils, bordure',
    'finitions, rifiniture, profili, profilo, bordi, ribete, ribetes, ribeteado, remates, bies, biezen, トリム',
    'パイピング, 縁取り',
  ),
  hardware: listOf(
    'hardware, fittings, metalware, metal parts, metalwork, studs, rivets, buckle, buckles, beschläge, beschlägen',
    'beschlag, metallteile, schnalle, schnallen, nieten, accastillage, ferrures, quincaillerie',
    'pièces métalliques, boucle, boucles, bijouterie, ferramenta, minuteria, metalleria, fibbia, fibbie, borchie',
    'accessori in metallo, herrajes, hebilla, hebillas, remaches, beslag, gesp, gespen, metaalwerk, klinknagels',
    '金具, バックル, リベット, 鋲',
  ),
  zip: listOf(
    'zip, zipper, zips, zippers, zip puller, reißverschluss, reissverschluss, reißverschlüsse, fermeture éclair',
    'glissière, fermeture à glissière, cerniera, cerniere, lampo, cremallera, cremalleras, rits, ritssluiting',
    'ファスナー, ジッパー, チャック',
  ),
  handle: listOf(
    'handle, handles, top handle, henkel, griff, griffe, tragegriff, anse, anses, poignée, poignées, manico',
    'manici, asa, asas, handvat, handvatten, hengsel, hengsels, 持ち手, 持手, ハンドル',
  ),
  strap: listOf(
    'strap, straps, shoulder strap, schulterriemen, riemen, gurt, trageriemen, bandoulière, lanière, tracolla',
    'correa, bandolera, schouderband, schouderriem, ショルダー, ストラップ, ショルダーストラップ, 肩紐',
  ),
  base: listOf(
    'base, bottom, feet, boden, unterseite, fond, dessous, fondo, piedini, bodem, onderkant, 底, 底面, 底鋲',
  ),
  edge: listOf(
    'edge, edges, edge paint, edge trim, edging, glazing, kante, kanten, kantenfarbe, tranche, tranches, bords',
    'costa, coste, bordo, cantos, canto, rand, randen, コバ, 縁, フチ',
  ),
  tab: listOf(
    'tab, tabs, handle tab, handle tabs, lasche, laschen, languette, languettes, linguetta, linguette, lengüeta',
    'lengüetas, lipje, lipjes, タブ',
  ),
  lock: listOf(
    'lock, padlock, clasp, closure, turn lock, turnlock, schloss, verschluss, vorhängeschloss, fermoir, cadenas',
    'serrure, lucchetto, chiusura, serratura, cierre, candado, slot, hangslot, sluiting, 錠, 南京錠, ロック, 留め具',
  ),
  'dust-bag': listOf(
    'dust bag, dustbag, dust cover, staubbeutel, schutzbeutel, pochon, housse, sac à poussière, sacchetto',
    'sacchetta antipolvere, dust-bag, guardapolvo, bolsa antipolvo, funda, stofzak, 保存袋, 布袋',
  ),
  pattern: listOf(
    'pattern, print, motif, muster, druck, imprimé, motivo, fantasia, stampa, estampado, patroon, 柄, 模様',
  ),
};

/** Things that come with a piece; what is said of them is not said of it. */
export const accessoryWords = listOf(
  'box, gift box, original box, receipt, invoice, tags, tag, card, cards, booklet, key, keys, clochette',
  'purse insert, organiser, organizer, insert, ribbon, packaging, battery, photos, pictures, phone, camera',
  'home, owner, price, listing, seller, customers, karton, schachtel, rechnung, etikett, schlüssel, verpackung',
  'besitzer, besitzerin, zuhause, preis, boîte, facture, étiquette, clé, clés, propriétaire, emballage, prix',
  'scatola, scontrino, cartellino, chiave, chiavi, proprietario, proprietaria, prezzo, caja, factura, etiqueta',
  'llave, llaves, dueño, dueña, precio, doos, bon, kaartje, sleutel, sleutels, eigenaar, verpakking, prijs, 箱',
  '保証書, レシート, 鍵, 付属品',
);
