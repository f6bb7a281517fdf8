/** By reader; … grows. Before a bar a language other than English. */
export const reachLines: Record<string, string> = {
  price: `£5… 28 50 €|10 €… 28 50 €|€5… 100 850 €|Fr.… 100|S/.… 100|USD… 100 €|NZD $… 100|kr.… 500|1,… 250.00 €|€ 28… 50 x 3|€1… ,50|5… x 100 €|1 000… € 50|€ 1 000… 50
    |£40-200…|£40-201…|£40-40…|Carryall 30 450 000…€|Carryall 30 450…€|bag 1 299…€|€100 including… VAT, € 5 postage|¥1,200… and 円 300|1,299… EUR or 1.299 USD|free… postage|price on request… €|reserve price… €100|next bid… €12|ca.… 100 €|starting at… £5|VAT 20%… £5|bis 300… €|ab 20… €|für 300… €|RRP €980… now €310|sold for… £300|saved… £30 on £100|MwSt… 5 €|de:statt… 100 €|fr:à partir de… 100 €|£5 p&p… £100|value… £300|insured up to… £300|$12/… month|100…kr|1.299… kr
    |was…€100|€100…was|save…€20|€20…off|from…€100|€100…and up|postage…€5|€5…postage|free postage over…€50|orders over €50…ship free
    |price…100|100…price|weight…0.66 pounds|€180…240|€180…–€240|between €40…and €60|between…€40 and €60|€40…/ €50|3 x…€50|€50…monthly
    |€5…each|€5 /…piece|€100…including postage|€…100|100…€|USD…$100|1…299 €|28…50 €|€ 28…50|35€…99|12…万円|1万…5千円|5…%|Carryall 30…450 €
    |A Carryall…30 450 €|€100. Was…€150|€310…RRP €980|€100…. Postage €5|bid…€100|de:Preis…100,00|de:UVP…€ 100|de:100 €…VB|fr:au lieu de…100 €`,
  measure: `30 cm…(T)|de:30 cm… (T)|B… 30 cm|fr:30 cm… (P)|P… 30 cm|T… 10 cm|ca.… 30 cm|width ca.… 30 cm|width, about… 30 cm|Henkel… 22 cm|it:L… 30 cm
    |one… cm|30 cm x… 20 cm x 10 cm|30 × 20 ×… 10|about… 30 x 20 cm|drop… 22 cm|fits up to… 30 cm|de:Breite… 30, Höhe 20|de:Henkel… 22 cm|fr:largeur… 30 cm|fr:30 cm… de large|ja:幅… 30cm|ja:約… 30cm|nl:30 cm… breed|it:altezza… 20 cm|W30… x H20 x D10|30x20x10… inches|1… metre|approx… 12 inches tall
    |width…30 cm|30 cm…wide|30…cm|30 x…20 cm|30 x 20…x 10 cm|W…30 cm|30 cm…(w)|about…30 cm wide|30…to 35 cm|30 to…35 cm|1 m…20|30 in…brown
    |cm…30 x 20|Dimensions…30 x 20 x 10|de:Maße…30 x 20 x 10|L x W x H…30 x 20 x 10 cm|30 x 20 x 10 cm…(L x W x H)|strap drop…22 cm|12"…(30 cm) wide
    |17D…cm|21 hoog…cm|#…12 cm|width of the bag…30 cm|30 cm in…width|30 cm…, 20 cm high|L…30 H 21 P 17|screen…30 cm|box…30 cm|30 cm…box`,
  date: `until… 3 April 2005|before… 3 April 2005|after… 3 April 2005|about… 3 April 2005|3 April 2005… or later|3 April 2005… or earlier|since… 1994|pre… 1994|1994… approx|1994…ish|1994…+|from the… 1980s|1980s to… 1990s|1980s or… 1990s|late 80s… early 90s|April… 05, 2005|5… April '05|29 February…|31… April 2005|in… '94s
    |ja:1980年代…中頃|ja:1980年代…前半|ja:1980年代…後半|ja:1980年代…初頭|ja:昭和… 期|ja:約…20年前の品|1980s/… 80|1930s/… 70|1990/… 91|18 May… 28|'28…|in… '94|between… 1990 and 1995|from 1990… until 1995|spring… 1998|Victorian… bag|nineteenth… century|turn… of the century|mid-century… bag|01/… 1994|3.4.… 1994|April… 1994 to May 1995|not… earlier than 1990|20-year… old|thirty… years old|de:20 Jahre… alt|fr:il y a… 2 ans|it:anni… ottanta|es:años… 80|nl:jaren… zeventig|last… Monday|today…|a week… ago
    |about…1994|1994…or so|before…1994|after…1994|until…1994|1994…or later|1988…to 1994|1988 to…1994|1988…94|1970s…80s|early…1980s|the…80s|early to…mid 80s
    |3 April…2005|April…2005|3…April 2005|Monday…3 April 2005|April 3,…2005|20 years…old|20…years old|over…20 years old|two months…ago|not before…1990
    |2005-04-03…23:30-05:00|2005-04-03 23:30…-05:00|3 April…|1994…€|#…1994|1994…x 20|in the…sixties|de:vor…1994|de:Anfang der…80er|fr:annees…80|ja:昭和…60年
    |ja:1994年…3月|Jeu…15:12`,
  rating: `4.5 out of 5… ( 12 )|98%… positive feedback of 12 ratings|★ 4….5 (12)|
    rated… 4.5|98%… off|4.5 ★…(12)|average… 4.5|4… (12)|12 out… of 12|5つ星のうち… 4.5|12… reviews|0… ratings|4.5 / 5… 12 ratings|12 customer… ratings 4.5 of 5|101… %|4.5… (1,204)
    |4.5…out of 5|4.5 out…of 5|4.5 out of 5…(12 ratings)|4.5 out of 5 (…12)|98%…positive|rating…98%|rating:…4.5|4.5…stars|★…4.5|12 ratings…4.5 out of 5
    |4.5 out of 5, 12…ratings|98% positive…12 ratings`,
  condition: `Ondrasse bag,… new|…new|• new…|neu…|new… with tags|as… new|used… but good|reserve…|not… used|bag is… new|de:neu… mit Etikett|fr:état… neuf|fr:neuf…|it:nuovo…|worn… once|never… worn|good… as new|condition… : used|damaged…box
    |condition…good|new…bag|bag…new|like…new|not…good condition|good…condition|new…box|box…new|brand…new|condition:…new|the strap is…new|new…strap
    |similar to a…new one|used…once`,
  'condition in a text': `condition… new|new…|bag is… new|Zustand… neu|new… bag|bag… new|, new… bag|with new… strap|new… with tags|brand… new|état… neuf|like… new|neu…|as… new
    |new box… and bag|bag, new…|new: … yes|is it… new|a new… bag`,
  return: `Returns: no.… Returns accepted within 14 days|Returns accepted… for 2 weeks. Returns: yes|no returns… , returns: 30 days|
    returns accepted…within 14 days|14 days…returns accepted|returns:…no|returns…: 14 days|no…returns accepted|returns accepted 14…days|returns accepted…. 14 days
    |returns accepted 2…weeks`,
  shipping: `ships from…Italy|We like it.…Ships from Italy|Ships from Italy…. More|free…postage|Ships within 2 days and then some words that go on…and on`,
  payment: `no…cheques|cheques are…accepted|not accepted:…cash`,
  member: `registered… 6 years|joined… 6 years ago|user since… 3 April 2015|seller since… 2015, 2016|account… since 2015
    |member since…2015|member…since 2015|member for…6 years|joined…March 2019|member since 2015…; 2012|member since, as it stands here,…2015`,
  trader: `I am a private… seller|Seller is… a private person|gewerblich…trader…|not… private
    |private…seller|seller…: private|seller is…private|not a…dealer|·…private ·|private…(`,
  sales: `1,204…sold|35…items sold|sales:…35|2.5…k sales|over…500 sales`,
  watchers: `12…watchers|watchers:…12|12 people…are watching`,
  bids: `12…bids|bids:…12|no…bids`,
  availability: `Reserve…|Réservé…|buy… now|sold… separately|1 sold… out|de:nicht mehr… verfügbar|fr:plus… disponible|sold… as seen
    |not…sold|sold…by|12…sold|sold…out|no longer…available|has not yet been…sold|sold…separately|reserved…for you`,
  code: `model… 8|code… n/a|lot… 12|ref… 30cm|item no… AB-12345, ref: 7781|SKU AB… 12|12… SKU
    |item no.…AB-12345|ref:…7781|SKU…00-99-AB|serial is…44512|刻印は…KV0915|item…no. AB-12345`,
  polarity: `not…leather|no…leather|protects from…leather|leather…has it none|nothing…leather|hardly any…leather|no code because it is…leather|leather…habe ich keine
    |whether it is…leather|is it…leather?|similar to the…leather|leather,…not new|not only…leather|leather…but not old|not old but…leather|レザー…ではない|レザー…かどうか|without…the leather`,
};
