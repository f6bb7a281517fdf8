import { listOf, type PhraseTable } from '../text';

/**
 * Colours and materials in the seven languages under their English name, which is what maker files are written in.
 * A `*` takes endings ("rotem", "rosse").
 */
export const colourWords: PhraseTable<string> = {
  red: listOf(
    'red, rot, rote*, rouge, rouges, rosso, rossa, rosse, rossi, rojo, roja, rojos, rojas, rood, rode, 赤色, 赤い, 赤の, 赤系, 赤革, レッド',
  ),
  'dark red': listOf(
    'dark red, deep red, dunkelrot*, rouge foncé, rosso scuro, rojo oscuro, donkerrood, donkerrode, えんじ, 濃い赤',
  ),
  burgundy: listOf(
    'burgundy, maroon, oxblood, bordeaux, weinrot*, bordeauxrot*, burdeos, granate, wijnrood, bordò, ボルドー, ワインレッド',
  ),
  orange: listOf('orange, orangen*, arancione, naranja, oranje, オレンジ'),
  yellow: listOf(
    'yellow, gelb, gelbe*, jaune, jaunes, giallo, gialla, gialle, amarillo, amarilla, geel, gele, 黄色, イエロー',
  ),
  mustard: listOf(
    'mustard, senf, senfgelb*, senffarben*, moutarde, senape, mostaza, mosterd, mosterdgeel, マスタード, からし色',
  ),
  green: listOf(
    'green, grün, grüne*, vert, verte, verts, vertes, verde, verdi, verdes, groen, groene, 緑色, 緑の, 緑系, 緑革, グリーン',
  ),
  olive: listOf('olive, oliv, olivgrün*, olivfarben*, vert olive, oliva, verde oliva, olijf, olijfgroen*, オリーブ'),
  blue: listOf(
    'blue, blau, blaue*, bleu, bleue, bleus, bleues, blu, azul, azules, blauw, blauwe, 青色, 青い, 青の, 青系, 青革, ブルー',
  ),
  navy: listOf(
    'navy, navy blue, marineblau*, dunkelblau*, bleu marine, blu navy, blu scuro, azul marino, marineblauw*',
    'donkerblauw*, 紺色, 紺の, 紺系, 紺革, ネイビー',
  ),
  purple: listOf(
    'purple, violet, lila, violett*, violette, viola, morado, morada, paars, paarse, 紫色, 紫の, 紫系, 紫革, パープル',
  ),
  pink: ['pink', 'rosa', 'rose', 'roze', 'ピンク'],
  brown: listOf(
    'brown, braun, braune*, brun, brune, marron, marrone, marrón, marrones, bruin, bruine, 茶色, 茶の, 茶系, 茶革, ブラウン',
  ),
  'dark brown': listOf(
    'dark brown, chocolate brown, chocolate, dunkelbraun*, marron foncé, brun foncé, marrone scuro, testa di moro',
    'marrón oscuro, donkerbruin*, 焦げ茶, こげ茶, ダークブラウン',
  ),
  tan: listOf('tan, cognac, camel, hellbraun*, fauve, cuoio, camello, lichtbruin*, キャメル'),
  beige: listOf('beige, sand, cream, creme*, crème, sabbia, crema, ベージュ, クリーム'),
  black: listOf(
    'black, schwarz, schwarze*, noir, noire, noirs, noires, nero, nera, nere, neri, negro, negra, negros, negras',
    'zwart, zwarte, 黒色, 黒い, 黒の, 黒系, 黒革, ブラック',
  ),
  white: listOf(
    'white, weiß, weiße*, weiss, weisse*, blanc, blanche, bianco, bianca, blanco, blanca, wit, witte, 白色, 白い, 白の, 白系, 白革, ホワイト',
  ),
  grey: listOf('grey, gray, grau, graue*, gris, grise, grigio, grigia, grijs, grijze, 灰色, グレー'),
  gold: listOf(
    'gold, golden, goldene*, doré, dorée, dorés, dorées, oro, dorato, dorata, dorate, dorati, dorado, dorada',
    'dorados, goud, gouden, 金色の, 金色, ゴールド',
  ),
  'gold-tone': listOf(
    'gold tone, gold toned, gold coloured, gold colored, gold plated, goldfarben*, vergoldet*, ton or, couleur or',
    'tono oro, color oro, goudkleurig*, verguld*, ゴールドカラー, ゴールド色, 金メッキ',
  ),
  silver: listOf(
    'silver, silbern*, silber, argent, argenté, argentée, argentés, argento, argentato, argentata, plata',
    'plateado, plateada, zilver, zilveren, 銀色, シルバー',
  ),
  'silver-tone': listOf(
    'silver tone, silver toned, silver coloured, silver colored, silver plated, silberfarben*, versilbert*',
    'ton argent, tono argento, color plata, zilverkleurig*, シルバーカラー, シルバー色',
  ),
  natural: listOf('natural, undyed, untreated, natur, naturbelassen*, naturel, naturelle, naturale, ナチュラル, ヌメ'),
};

export const materialWords: PhraseTable<string> = {
  leather: listOf(
    'leather, leder, ledernes, cuir, pelle, cuoio, piel, cuero, leer, lederen, leren, 革, 本革, 牛革, レザー, 皮革',
  ),
  'imitation leather': listOf(
    'faux leather, fake leather, imitation leather, artificial leather, vegan leather, pleather, pu leather',
    'leatherette, leather look, pvc, vinyl, kunstleder, lederimitat, similicuir, simili cuir, simili',
    'imitation cuir, ecopelle, similpelle, finta pelle, polipiel, piel sintética, cuero sintético',
    'símil piel, kunstleer, imitatieleer, 合皮, 合成皮革, フェイクレザー',
  ),
  calfskin: listOf(
    'calfskin, calf leather, calf, box calf, kalbsleder, kalbleder, cuir de veau, veau, vitello, pelle di vitello',
    'becerro, piel de becerro, kalfsleer, カーフ, カーフスキン',
  ),
  lambskin: listOf(
    "lambskin, lamb leather, nappa, lammleder, agneau, cuir d'agneau, agnello, piel de cordero, lamsleer, ラムスキン",
    'ナッパ',
  ),
  goatskin: listOf(
    'goatskin, goat leather, ziegenleder, chèvre, cuir de chèvre, capra, piel de cabra, geitenleer, ゴートスキン, 山羊革',
  ),
  pigskin: listOf(
    'pigskin, schweinsleder, cuir de porc, pelle di maiale, piel de cerdo, varkensleer, 豚革, ピッグスキン',
  ),
  'bridle leather': listOf(
    'bridle leather, saddle leather, sattelleder, zaumleder, cuir de selle, cuir sellier, cuoio da sella',
    'ブライドルレザー',
  ),
  'vegetable-tanned leather': listOf(
    'vegetable tanned leather, veg tan, veg tanned leather, vachetta, pflanzlich gegerbtes leder',
    'cuir tannage végétal, pelle conciata al vegetale, ヌメ革',
  ),
  'patent leather': listOf(
    'patent leather, patent, lackleder, cuir verni, verni, vernice, charol, lakleer, エナメル, パテントレザー',
  ),
  suede: listOf(
    'suede, wildleder, veloursleder, velours, rauleder, rauhleder, daim, suédine, camoscio, scamosciat*, ante',
    'serraje, gamuza, suède, スエード, スウェード',
  ),
  nubuck: ['nubuck', 'nubuk', 'nobuk', 'ヌバック'],
  canvas: listOf('canvas, coated canvas, segeltuch, leinwand, toile, toile enduite, tela, lona, キャンバス, 帆布'),
  twill: listOf('twill, köper, sergé, saia, sarga, keper, ツイル'),
  cotton: listOf('cotton, baumwolle, baumwoll*, coton, cotone, algodón, katoen, katoenen, コットン, 綿'),
  linen: listOf('linen, leinen, lin, lino, linnen, リネン, 麻'),
  silk: listOf('silk, seide, seiden*, soie, seta, seda, zijde, zijden, シルク, 絹'),
  satin: ['satin', 'raso', 'satén', 'satijn', 'サテン'],
  nylon: ['nylon', 'nailon', 'ナイロン'],
  polyester: ['polyester', 'poliestere', 'poliéster', 'ポリエステル'],
  microfibre: listOf('microfibre, microfiber, mikrofaser, microfibra, microvezel, マイクロファイバー'),
  velvet: listOf('velvet, samt, velluto, terciopelo, fluweel, ベルベット'),
  wool: listOf('wool, wolle, laine, lana, wol, ウール'),
  textile: listOf(
    'textile, fabric, cloth, stoff, textil, tissu, tessuto, stoffa, stof, textiel, 布, 布製, ファブリック',
  ),
  brass: listOf('brass, solid brass, messing, laiton, ottone, latón, 真鍮, しんちゅう, ブラス'),
  bronze: ['bronze', 'bronzo', 'bronce', 'brons', 'ブロンズ'],
  nickel: ['nickel', 'nichel', 'níquel', 'nikkel', 'ニッケル'],
  palladium: ['palladium', 'palladio', 'paladio', 'パラジウム'],
  steel: listOf('steel, stainless steel, stahl, edelstahl, acier, acciaio, acero, staal, ステンレス, スチール'),
  metal: listOf('metal, metall, métal, metallo, metaal, metalen, metallic, メタル'),
  plastic: listOf('plastic, plastik, kunststoff, plastique, plastica, plástico, プラスチック'),
};
