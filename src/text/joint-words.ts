import type { EachLanguage } from './each-language';

/*
 * Small words that join what a claim is read from: parts of patterns over folded text. None says anything by itself.
 * Common practice, no source.
 */

/** What joins two pieces of one title; the Japanese word stands without gaps. */
export const alsoNamed: EachLanguage = ['and|plus', 'et|plus', 'und|plus|sowie', 'ed?', 'y', 'en|plus', 'と'];
export const alongWith: EachLanguage = ['with', 'avec', 'mit', 'con', 'con', 'met', ''];
/** Before a noun that was not named yet. */
export const oneMore: EachLanguage = ['an?|the|its', 'une?', 'eine?|eine[rmn]', 'una?|uno', 'una?', 'een', ''];
export const named: EachLanguage = ['the', 'l[ae]', 'd(?:er|ie|as)', 'il|la', 'el|la', 'de|het', ''];
/** What goes on behind the name of the last piece, so that the name ends there. */
export const behindName: EachLanguage = [
  'set|lot|bundle|duo|in|from|of|made',
  'ensemble|lot|duo|de',
  'set|duo|in|aus|von',
  'set|duo|in|di',
  'conjunto|lote|duo|de',
  'set|duo|in|van',
  'の?セット',
];
/** Several things sold as one, where no number stands behind the word: "lot 214" is one of an auction's. */
export const soldTogether: EachLanguage = [
  'bundle|job lot',
  'lot',
  'konvolut|bundle',
  'lotto',
  'lote',
  'bundel|partij',
  'まとめ売り|まとめて|セット販売',
];
/** "Two bags in one": one piece after all. */
export const asOne: EachLanguage = [
  '(?:in|as)\\s(?:1|one)',
  'en\\s(?:1|une?)',
  'in\\s(?:1|eine[mr])',
  'in\\s(?:1|un[oa]?)',
  'en\\s(?:1|un[oa]?)',
  'in\\s(?:1|een)',
  '',
];

/** How words end that deny that something is original: of a part as well as of the maker. */
export const original: EachLanguage = ['original', 'original', 'original', 'originale', 'original', 'origineel', ''];
/** Words of style that hint at a maker only where a name follows. */
export const needsName: EachLanguage = ['', 'facon', '', 'in\\sstile', '', '', ''];
/** How words end behind which a maker stands, or a look. */
export const comparedWith: EachLanguage = ['by|of', 'de|par|a', 'von|durch|an', 'a|di', 'a|de|en', 'op|door|van', ''];

/** Before a year that is one of making, whatever is said of a purchase ahead of it. */
export const madeAhead: EachLanguage = [
  'made',
  'fabriqu\\w*',
  'hergestellt',
  'prodott\\w*',
  'fabricad\\w*',
  'gemaakt',
  '',
];
/** Right behind a year that is one of making. */
export const madeBehind: EachLanguage = [
  'made|model(?!\\s?\\d)|production',
  'production',
  'hergestellt',
  'produzione',
  'produccion',
  'productie',
  '年製|(?:[\\p{Script=Katakana}ー]{2,10}|[\\p{Script=Han}]{1,3})?製|製造',
];

/** Behind somebody whose opinion it is: "my husband says"; in Japanese it stands behind what is held. */
export const holds: EachLanguage = [
  'says|thinks|reckons|believes|swears|said|thought|reckoned|believed|claimed|guessed',
  'dit|pense|croit|affirme|disait|pensait|croyait',
  'sagt|meint|denkt|glaubt|schwort|sagte|meinte|dachte|glaubte',
  'dice|pensa|crede|diceva|pensava|credeva',
  'dice|piensa|cree|decia|pensaba|creia|dijo',
  'zegt|denkt|gelooft|zei|dacht|meende|geloofde',
  '',
];

/** Opens a clause that tells more of the noun right ahead of it. */
export const which: EachLanguage = ['which|that', 'qui', 'd(?:er|ie|as)', 'che', 'que', 'd(?:ie|at)', ''];

/** Ahead of somebody's year of birth, in fun as well: "Jahrgang 1931", "bouwjaar 1950". */
export const ofAge: EachLanguage = [
  'vintage|class\\sof|model|born(?:\\sin)?|b\\.',
  'millesime|cuvee|classe|nee?(?:\\sen)?',
  'jahrgang|jg\\.?|baujahr|bj',
  'classe|annata',
  'quinta(?:\\sdel?)?|anada',
  'bouwjaar|lichting|jaargang',
  '',
];

/** Opens a clause of what would be; in Japanese it closes it. */
export const conditional: EachLanguage = [
  'if',
  "si\\s(?:elle|c'etait|le|la|ce)|s'il",
  'wenn|falls|ware|kame|hatte',
  'se\\s(?:fosse|venisse|avesse|era|la|lo)',
  'si\\s(?:fuera|fuese|viniera|tuviera|hubiera|es|era)',
  'als\\s(?:hij|het|ze|deze|dit)|kwam|mocht',
  '',
];

/** What a thing looks, ahead of the word for it. */
export const looksSo: EachLanguage = [
  'looks?',
  'croirait|dirait|parait|semble',
  'sieht|wirkt|scheint',
  'sembra|pare',
  'parece',
  'lijkt|ziet',
  '',
];

/** Ahead of whoever made a part. */
export const doneBy: EachLanguage = ['by', 'par', 'vo[nm]|durch', 'da|dal', 'por', 'door', ''];

/** Right before what is not to be. */
export const insteadOf: EachLanguage = [
  'instead\\sof|rather\\sthan|and\\snot|not',
  'plutot\\sque|au\\slieu\\sde|et\\spas|pas',
  'statt|anstatt|und\\snicht|nicht',
  'invece\\sche|e\\snon|non',
  'en\\svez\\sde|y\\sno|no',
  'in\\splaats\\svan|en\\sniet|niet',
  '',
];

/** "Founded", as it is cut short before a year. */
export const foundedShort: EachLanguage = ['est|estd', 'fond', 'gegr', 'fond', 'fund', 'opg', ''];
/** Behind a name that the seller only supposes. */
export const iThink: EachLanguage = [
  'i think|i believe|maybe',
  'je crois',
  'vermutlich',
  'credo',
  'creo',
  'denk ik',
  '',
];

/** "Not sure if it is real": what opens a doubt, beside the words for "whether". */
export const doubtOpens: EachLanguage = ['if', 'si', '', 'se', 'si', 'of', ''];
/** "Not sure it is real, or …": goes on behind a doubt, and is no noun that the doubt could be of. */
export const behindDoubt: EachLanguage = ['or|though|tbh', 'ou', 'oder', 'o', 'o', 'of', ''];
/** Who is spoken to: "if you are not sure". The German word is that for her, or for them, as well, but behind "if". */
export const youWord: EachLanguage = [
  "you|you're",
  'vous',
  '(?:wenn|falls|sollten)\\s(?:sie|du|ihr)',
  '',
  'usted',
  'jullie',
  '',
];

/** "The dust bag measures", "die Schachtel misst": its own size follows. */
export const measuresVerb: EachLanguage = ['measures?', 'mesure', 'misst', 'misura', 'mide', 'meet', ''];

/** Between a thing and the maker whose it is: "wallet by Ondrasse". */
export const whose: EachLanguage = ['by|from|of', 'de|par', 'von', 'd[ai]', 'de', 'van', ''];
/** Between a piece and a name that may be its maker's: only where the name has a capital. */
export const byWhom: EachLanguage = ['by', 'par', 'von', '', '', 'door', ''];
/** Ahead of a maker's name, wherever it stands: "der Marke Silvretto". */
export const brandWord: EachLanguage = [
  'brand|maker',
  'marque',
  'marke|hersteller',
  'marca|firmat[ao]',
  'marca',
  'merk',
  '',
];
/** Ahead of the name of a firm that made something: "Fa. Wiesenhag", "ditta Ombrosi". */
export const firmWord: EachLanguage = [
  'manufacturer|the\\s(?:firm|house)\\sof',
  'griffe|fabricant|de\\sla\\smaison',
  'fa\\.|firma|aus\\sdem\\shause',
  'ditta|fabbricante|della\\scasa',
  'firma|fabricante|de\\sla\\scasa',
  'fa\\.|firma|fabrikant|van\\shet\\shuis',
  '',
];
/** Ahead of whoever made the piece, in a sentence. */
export const wasMadeBy: EachLanguage = [
  'made by|handmade by|manufactured by|crafted by',
  'fabriqu[ée]e? par|faite? par|réalisée? par|confectionnée? par',
  'hergestellt von|gefertigt von|angefertigt von|gemacht von',
  'fatt[ao] da|prodott[ao] da|realizzat[ao] da',
  'hech[ao] por|fabricad[ao] por|elaborad[ao] por',
  'gemaakt door|vervaardigd door',
  '',
];
/** Ahead of a place, known or not: "handmade in Somerset", "en el Rastro". */
export const inPlace: EachLanguage = [
  '(?:in|at)(?:\\sthe)?|near',
  'en|aux?|dans\\sl[ae]',
  'in|im|aus|bei|am',
  'in|nel|nella|al',
  'en(?:\\s(?:el|las?|los))?',
  '(?:in|op)(?:\\s(?:de|het))?|uit',
  '',
];
/** A time of the year, ahead of its year. */
export const season: EachLanguage = [
  'summer|autumn|winter|spring|christmas|easter',
  'ete|hiver|printemps|automne|noel|paques',
  'sommer|herbst|winter|fruhjahr|fruhling|weihnachten|ostern',
  'estate|inverno|primavera|autunno|natale|pasqua',
  'verano|invierno|primavera|otono|navidad|reyes',
  'zomer|winter|voorjaar|najaar|kerst|pasen',
  '春|夏|秋|冬|クリスマス',
];
/** Between two of which one may be chosen. */
export const either: EachLanguage = ['or', 'ou', 'oder', 'o', 'o', 'of', 'または|か、'];
/** Whoever says so wants none of what follows; in Japanese it follows itself. */
export const refuses: EachLanguage = [
  "refuse(?:\\sto)?|decline|(?:won'?t|will\\snot|do\\snot|don'?t)\\sdo",
  'refus(?:e|ons)|decline|ne\\sf(?:ais|aisons)\\s(?:pas|aucun)',
  'lehnen?|verweigern?|mache(?:n\\swir)?\\skeine?',
  'rifiut(?:o|iamo)|non\\sf(?:accio|acciamo)',
  'rechaz(?:o|amos)|me\\sniego\\sa|no\\sha(?:go|cemos)',
  'weiger(?:en)?|doe(?:n\\swe)?\\sgeen',
  '',
];
/** Before what is not accepted, and behind it. */
export const notBefore: EachLanguage = ['not|never|no', 'pas|non', 'nicht', 'non|mai', 'no|nunca', 'niet|nooit', ''];
export const notBehind: EachLanguage = ['not', 'pas', 'nicht', '', '', 'niet', 'ません|不可|ない'];

/** Behind these, two digits are a year: "bought in 98", "fin 99". A price may stand behind "around", and is left out. */
export const beforeShortYear: EachLanguage = [
  'in|since|late|early|end of|summer|autumn|winter|spring|christmas|year',
  'en|depuis|vers|fin|debut|ete|hiver|printemps|automne|noel|annee',
  'seit|ende|anfang|mitte|sommer|herbst|winter|fruhjahr|weihnachten|jahr|baujahr|bj',
  "nel|dal|del|fine|inizio|estate|natale|anno|(?:dell|nell|dall)(?=')",
  'en el|desde el|finales del|principios del|navidad del|ano',
  'in|sinds|eind|begin|zomer|kerst|jaar|bouwjaar|jaartal',
  '',
];
/** And these go on behind such a year; a thing that it counts does not stand there. */
export const behindShortYear: EachLanguage = [
  'in|at|from|by|for|i|as|when|with|and|so|my|on|the',
  'a|au|en|chez|par|je|de|dans|pour|et',
  'in|von|bei|als|laut|fur|und|aus|am|auf',
  'a|da|dal|dalla|di|in|per|e|con|presso',
  'en|a|de|por|para|y|con',
  'in|bij|van|door|voor|en|uit|te|denk',
  '',
];
export const behindShortYearJapanese = '頃|ごろ|製|に(?!わた|渡)|購入|の購入|春|夏|秋|冬|末|\\d{1,2}月';

/** "All brass", "alles aus Messing": of whatever of the piece can be of it. */
export const allOfIt: EachLanguage = [
  'all|all\\sthe|everything(?:\\s(?:is|in))?|all\\sthe\\smetal\\sis',
  'tout(?:\\s(?:en|est\\sen))?',
  'alles(?:\\s(?:aus|in|ist))?',
  'tutt[oi](?:\\s(?:in|e\\sin))?',
  'todo(?:\\s(?:de|es\\sde|en))?',
  'alles(?:\\s(?:van|is|in))?',
  '',
];

/** The piece is the subject of its making: "it was created", "se hizo"; in German and Dutch the verb may close the clause. */
export const wasMade: EachLanguage = [
  '(?:was|were|been)\\s(?:hand\\s?-?)?(?:created|crafted|stitched|constructed|put\\stogether)',
  '(?:a\\sete|ont\\sete|fut|furent|est)\\s(?:faite?s?|creee?s?|cousue?s?|realisee?s?|elaboree?s?)',
  '(?:wurde|wurden|ist|sind)',
  "(?:e'?\\sstat[aoei]|fu|furono|venne|vennero)\\s(?:fatt[aoei]|cucit[aoei]|confezionat[aoei]|creat[aoei])",
  '(?:se\\s(?:hizo|hicieron|elaboro|elaboraron|confecciono|creo|cosio|realizo)|(?:fue|fueron|esta|estan)\\s(?:hech|elaborad|confeccionad|cread|cosid|realizad)[ao]s?)',
  '(?:is|werd|werden|zijn)',
  '',
];
export const madeAtEnd: EachLanguage = [
  '',
  '',
  '(?:hand\\s?)?(?:gemacht|geschaffen|angefertigt|entstanden|zusammengenaht)',
  '',
  '',
  '(?:met\\sde\\shand\\s)?(?:genaaid|gefabriceerd|ontstaan)',
  '',
];
/** The piece by a pronoun. */
export const itself: EachLanguage = [
  'it|she|this|this\\sone|they',
  "il|elle|ce|cela|celui-ci|celle-ci|l'objet|ils|elles",
  'sie|er|es|die|der|das|diese|dieser|dieses|meine',
  'lei|essa|questa|questo|la\\smia|il\\smio',
  'este|esta|esto|el\\smio|la\\smia|ella',
  'hij|ze|zij|het|deze|dit|die',
  '',
];

/** A possessive that stands for the piece where no noun follows. */
export const ownOne: EachLanguage = [
  'mine|ours',
  '(?:le|la)\\s(?:mienne?|notre)',
  'meine[rs]?|mein(?:er|s)|unsere[rs]?',
  '(?:il|la)\\s(?:mi[oa]|nostr[oa])',
  '(?:el|la)\\s(?:mi[oa]|nuestr[oa])',
  '(?:de|het)\\s(?:mijne|onze)',
  '私のは',
];
/** What is larger than a bag: the piece where a name stands right before it, and another thing in most sentences. */
export const trunk: EachLanguage = [
  'suitcase|trunk',
  'valise|malle',
  'koffer|truhe',
  'valigia|baule',
  'maleta|baul',
  'koffer|kist',
  'スーツケース|トランク',
];
/** "1968, the year she bought it". */
export const theYearThat: EachLanguage = [
  'the\\s(?:same\\s)?year',
  "l'annee",
  '(?:das|dem|im)\\s(?:selben\\s)?jahr',
  "l'anno",
  'el\\s(?:mismo\\s)?ano',
  'het\\sjaar',
  'その年',
];
/** Behind "never used": where or for what it was not. */
export const limitedTo: EachLanguage = [
  'at|for|outside|outdoors|to|as',
  'au|a\\sla|pour|dehors|comme',
  'im|beim|bei|zur|zum|fur|als|draussen',
  'al|alla|per|fuori|come',
  'para|como|fuera|al',
  'op|voor|naar|buiten|als',
  '',
];

/** Ahead of a denial, or of a word for new: nearly so, and not quite. */
export const almost: EachLanguage = [
  'almost|nearly|practically|virtually|hardly|barely|as\\sgood\\sas',
  'presque|quasi(?:ment)?|pratiquement',
  'fast|beinahe|nahezu|so\\sgut\\swie|quasi|praktisch',
  'quasi|praticamente|pressoche',
  'casi|practicamente',
  'bijna|vrijwel|zo\\sgoed\\sals|praktisch|haast',
  'ほぼ|ほとんど',
];
/** What something was, and is no more. */
export const wasOnce: EachLanguage = [
  'was|were|used\\sto\\sbe',
  'etait|etaient',
  'war|waren',
  'era|erano',
  'era|estaba',
  'was|waren',
  '',
];
/** Behind what is so: only this part of it, and nothing else. */
export const onlyThis: EachLanguage = [
  'only|just',
  'seule?s?|seulement|uniquement|que',
  'nur|lediglich|allein',
  'solo|soltanto|solamente',
  'solo|solamente|unicamente',
  'alleen|slechts|enkel',
  '(?:な|い)?のは',
];
/** Who is spoken of as wanting such a piece; the other languages have phrases for it. */
export const wantsOneJapanese = '(?:を|が)?(?:お?求め|お?探し|ご?希望|お望み)';
/** Ahead of a place that something else is near to. */
export const nearby: EachLanguage = [
  'near|next\\sto|beside|opposite|behind|outside|close\\sto|round\\sthe\\scorner\\sfrom',
  'pres|a\\scote|en\\sface|derriere|devant',
  'neben|nahe|beim?|hinterm?|vorm?|gegenuber',
  'vicino|accanto|davanti|dietro|di\\sfronte',
  'cerca|al\\slado|junto|enfrente|detras',
  'naast|vlakbij|vlak\\sbij|tegenover|achter|bij',
  '(?:近所|近く|隣|そば)の?',
];
/** What pale leather has become. */
export const darkened: EachLanguage = [
  'darken(?:ed|ing)?|darker|tanned|browned|mellowed|gone\\s(?:dark|brown|honey)',
  'fonce(?:e?s?|r)|bruni(?:e?s?|r)|patine(?:e?s?|r)|jauni(?:e?s?|r)',
  'nachgedunkelt|gedunkelt|dunkler|gebraunt|patiniert',
  'scurit[aeoi]|scuriti|imbrunit[aeoi]|brunit[aeoi]',
  'oscurecid[ao]s?|tostad[ao]s?|oscurecieron',
  'donkerder|verkleurd|gebruind|nagedonkerd',
  '飴色|焼けて|濃くな|色が変わ',
];
/** A piece of a kind that was named before: "the one from 2005". */
export const theOne: EachLanguage = [
  '(?:the|an?)\\sone\\s(?:of|from)',
  'cel(?:ui|le)\\sd[eu]',
  '(?:den|die|das|eine[ns]?)\\svo[nm]',
  'quell[ao]\\sde[li]?l?',
  '(?:el|la|un[oa])\\sdel?',
  '(?:die|een)\\s(?:van|uit)',
  '',
];
/** Behind a word of condition: what it is said of. */
export const ofWhat: EachLanguage = ['for|of', 'pour', 'fur|bei|beim', 'per', 'para', 'voor', ''];
/** Opens a sentence about whoever wants such a piece. */
export const whoWants: EachLanguage = ['whoever|anyone|who', 'qui', 'wer', 'chi', 'quien|el\\sque', 'wie', ''];
/** Where things are kept that are sold off. */
export const wardrobe: EachLanguage = [
  'wardrobe|closet|cupboard|attic|loft|house',
  'placards?|penderie|garde-robe|dressing|grenier|armoires?',
  '(?:kleider)?schranks?|schranke|keller|dachboden|haushalts?',
  'armadio|soffitta|cantina|guardaroba',
  'armario|trastero|desvan|vestidor',
  'kast|zolder|kledingkast|schuur',
  '',
];
