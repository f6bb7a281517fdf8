const lines = (text: string) => text.split(/\n?\s*\|/).map((line) => line.replaceAll('⏎', '\n'));

/** By reader; before a colon the language of a line where it is not English; ⏎ is the end of a line. */
export const limitLines: Record<string, string[]> = {
  price:
    lines(`€100|x|100|  100  |100 x|100 xx|100 xxx|de:1.299|en-US:1.299|fr:100,5|£180-240|£180-180|£180-179|£180-900|£180-901|£180 - 240 x|£180 – 240|£180-£240
    |180-240 €|£180/240|£180/£240|180/£240|£180 / £240|between 180 and 240 €|and 180 and 240 €|between €180 and €240|€240 to €180|€180 to CHF 240|€180 to ¥240|180 to 240 €|€1.299 to €2.500
    |Carryall 30 450 €|Carryall 30 450 000 €|Carryall30 450 €|price 30 450 €|Carryall was 30 450 €|3 450 €|Carryall €30 450|Carryall 1 30 450 €|was 30 450 €
    |€310 RRP €980|€310 RRP|€310 RRP :€980|€310 RRP x €980|€310. RRP €980|was €10, now €5|€10 was|was: €10|was ( €10|was     €10|was      €10
    |save €5|€5 off|€5 ) off|weighs 5 pounds|weight 0.66 pounds|weight of the whole bag is it 5 pounds|weight of the whole of the bag 5 pounds|Gewicht 5 €
    |free shipping over €50|orders over €50|orders 12 over €50|over €50 free shipping|over €50|over €50 以上|€100 incl. shipping|€100 shipping|shipping €5|shipping to Italy €5|shipping to Italy by post €5|shipping uk €5|shipping = €5
    |€100 free shipping|3 x €50|3x €50|13 x €50|113 x €50|€50 x 3|€50 x 13|€50 x 113|€50 / month|€50/month|€50 monthly|€5/kg|€5 / m²|€5/台|€5/abcdefgh|€5/abcdefghi|€5/100 ml|€5/10000 ml|€5 each
    |from €5|fra €5|fran €5|od €5|rod €5|€5 and up|€5〜|€5〜 6|€5 ~ ¥6|price 5|price: 5|now 5|5 ono|5 x ono|price on 5|x price 5 y|the price is now 5|the bag is 5 long
    |€1⏎€2|€1; was €2|€1 | was €2|was €1 €2|€5 was €6 was|$5|$5 $6|£5 £6|US$5 and $6|en-GB:£5|en-AU:$5|5 €⏎6 €|€0|€0.00|-€5|€5-|€5–6|€5–26|€1–6|€10–50|€10–51
    |€ 100 000 000 000|€ 1 000 000 000 000 000|price 1.50|price 1,50|de:Preis 1.50|KWD 1.299|KWD 1,299|JPY 1.299|¥1.299|€100 shipping, €5|€5 shipping. €100|kr.500|kr. 500|S/.500|S/ .500|$.50|12万円|1万5千円 送料 500円`),
  measure:
    lines(`30 cm|30 mm|30 m|30 ft|30 in|30"|30''|30 in.|30 in, x|30 in x|30 in brown|30 in wide|30 in  brown|30 In brown|30 inch brown|3½"|3 ½"|½"|3 1/2"|1/2"|2/2"|3/2"|5/8 in|5/7 in|12345 cm|1234 cm|1,5 cm|1,55 cm|1,555 cm|0 cm|500 cm|501 cm
    |110-120 cm|110-220 cm|110-221 cm|110-110 cm|120-110 cm|110-120|110 – 120 cm|110 to 120 cm|110-120 cm wide|1 m 20|1 m 200|1m20|1,5 m 20|1 m 20 cm|1 m 20 x 30|1 m 20,5|2 ft 20
    |"KV 12"|x "abcdefghijklmnopqrs 12"|x "abcdefghijklmnopqrst 12"|:"12"|(" 12"|x"12"|12" x 8"|12 x 8 "x
    |30 x 20 x 10 cm|30 x 20 cm|30 x 20|bag 30 x 20 x 10|bag 30 x 20|bag 30 20 10|bag: 30 x 20 x 1|bag: 30 x 20 x 2|de:Tasche 30 x 20 x 10|de:Tasche 30, 20, 10|fr:sac 30/20/10|en-GB:bag 30 x 20 x 10|en-US:bag 30 x 20 x 10|en-CA:W30 H20|en-GB:W8 H7|W19 H7|W20 H7|W19 H20|W30|de:B30 H20|de:B3 H2|bag 30 x 20 x 10 x 5
    |size: (approx. 30 x 20 x 10|dimensions approx 30 x 20 x 10|bag xx 30 x 20 x 10|a bag that is 30 x 20 x 10|cm 30 x 20|cm: 30 x 20|cm  30 x 20|cm   30 x 20|in 30 x 20|in 96|In 96 she|inches 30 x 20|mm 30|x.inches. 30 x 20|xinches 30 x 20|17D cm|17 D cm|17 high cm|17 abc cm|17 abcdefghijkl cm|21 hoog cm|17D in brown|17D inches|17D mm|17D "
    |8 3 0 4 cm|8 30 cm|18 3 cm|x8 3 cm|8x3 cm|8 x 3 cm|#12 cm|# 12 cm|£40 cm|MX30 cm|L30 cm|ABL30 cm|A1B30 cm|12b30 cm|12x30 cm|1.30 cm|1, 30 cm|a30 cm|ab30 cm
    |12" (30 cm) wide|12" / 30 cm wide|12" = 30 cm wide|12" , 30 cm wide|12 (30 cm) wide|12" (30") wide|30 cm (12") wide|wide 12" (30 cm)|12" (30 cm) x 8" (20 cm)|12 x 8" (30 x 20 cm)
    |L30 x B20 x H10 cm|L30 L20 H10 cm|B30 L20 cm|L30 cm, L20 cm, L10 cm|W30 W20 cm|W23 W20 cm|W22.9 W20 cm|W20 W30 cm|W30 W20 D10 cm|W30 W20 W10 cm|W12" W20 cm|W30 x W20 cm x H10
    |about 30 cm|About 30 cm|CIRCA 30 cm|approx. 30 x 20 cm|approx.   30 cm|30 x about 20 cm|approximately  30 cm|ca 30|de:etwa 30 cm|scratch 2 cm|2 cm scratch|2 cm wide scratch|fits a 13 inch laptop|scratch of about the size 2 cm|scratch of about the size of 2 cm
    |width 30 cm|width: 30 cm|width, 30 cm|width. 30 cm|width about 30 cm|width, about 30 cm|width; 30 cm|width⏎30 cm|strap width 30 cm|width strap 30 cm|width of the strap of the bag is 30 cm|width of the handle strap and of the bag 30 cm|30 cm wide|30 cm in width|30 cm of the width|30 cm, wide|30 cm (wide)|30 cm) wide|30 cm high wide|30 cm W|30 cm (W)|30 cm W 20|30 cm W x 20|30 W 20 cm|30 cm Q|30 cm Wx|W: 30 cm|W = 30 cm|(W) 30 cm|xW 30 cm|W  :  30 cm|it:L 30 cm|it:P 30 cm|de:P 30 cm|de:T 30 cm|es:an 30 cm|es:al 30 cm
    |W x H: 30 x 20 cm|W x H x D 30 x 20 x 10 cm|W x H x D 30 x 20 cm|W/H: 30/20 cm|W*H (cm): 30 x 20|W x H circa 30 x 20 cm|30 x 20 cm (W x H)|30 x 20 x 10 cm (W x H x D)|30 x 20 (cm, W x H)|30 x 20 cm W x H x D|width x height: 30 x 20 cm|width x foo: 30 x 20 cm|30 x 20 cm (width x height)|ja:横30cm|ja:30cm横|ja:横30 縦20 cm|ja:約30cm|ja:幅 約30cm
    |30 cm x 20 cm|30 cm by 20 cm|30 cm and 20 cm|30 cm⏎20 cm|30 cm⏎⏎20 cm|30 cm ${'.'.repeat(30)}20 cm|30 ${'.'.repeat(31)}20 cm|30 ${'.'.repeat(32)}20 cm|${'1 x '.repeat(23)}1 cm|${'1 x '.repeat(24)}1 cm`),
  date: lines(`3 April 2005|31 April 2005|3rd of April, 2005|3.April.2005|April 3, 2005|April 3rd 2005|April 31, 2005|April 2005|April/2005|April '05|[April] 2005|Apr. 2005|sept 2005|Monday, 3 April 2005|Mon. 3 April 2005|3 April 05|3 April '05|3 April 05:30|3 April 05h|3 April 27|3 April 36|3 April 37|3 April|April 3|April 3 cm|April 3 2005|3 April , 2005|1.3 April 2005|x3 April 2005|29 February|30 February|April 30 x
    |2005-04-03|2005-4-3|2005/04/03|2005.04.03|2005-04-031|2005-13-03|2005-02-30|x2005-04-03|2005-04|2005-13|2005-00|2005/12|1899-12|1900-12|2100-01|04/2005|13/2005|0/2005|12.2005|4-2005|04/1899|2005-04-03T23:30-05:00|2005-04-03T18:59-05:00|2005-04-03T19:00-05:00|2005-04-03 00:30+01:00|2005-04-03 01:00+01:00|2005-04-03 01:00:59.123456789+0130|2005-04-03 01:29+01:30|2005-04-03T23:30Z|2005-04-03T12:00-12:00|2005-04-03T11:59-12:01
    |03/04/2005|13/04/2005|04/13/2005|04/04/2005|32/01/2005|03.04.2005|3. 4. 2005|3/4.2005|03/04/05|05/04/03|30/04/05|31/12/99|12/31/99|03-04-05|03.04.05|1/1/1599|1/1/1600|1/1/2199|1/1/2200|en-US:03/04/2005|en-GB:03/04/2005|en-CA:03/04/2005|en-ZA:03/04/2005|en-PH:03/04/2005|es-PR:03/04/2005|es-US:03/04/05|de:03/04/2005|fr:03/04/05|nl:03-04-05|it:3/4/05|ja:03/04/2005|ja:05/04/03|ja:13/04/2005|en-Latn-US:03/04/2005|18.10.30|18.10.36|18.10.37|18/10/30|x03/04/2005|1.03/04/2005|03/04/2005.1|03/04/2005.|03/04/20051
    |1994|1699|1700|2027|2028|2099|x1994|1994x|1994ish|1994-|#1994|# 1994|№1994|$1994|$ 1994|1994 €|1994€|1994 euros|1994 eurosx|1994 cm|1994 reviews|1994 x 20|1994x20|1994.5|1994'5|1994.|1.1994|12.1994|123.1994|1234.1994|1994/5|1994年|1994年代|1899年|'94|'94"|'94s|'94 cm|'94 inch|x'94|''94|'27|'28|'9
    |1980s|1980's|'80s|80s|85s|the 80s|80er Jahre|90ern|années 80|annees 80s|annees 80 cm|anni '80|jaren 80|80 jaren|1800s|1790s|2000s|2030s|00s|10s|20s|30s|2020s|twenties|ninety|the eighties|the late eighties|années quatre-vingts|anni ottanta|achtziger|achtziger jahre|80年代|1980年代初頭|80年代半ば|80年代後半|180年代|early 1980s|early to mid 1980s|early to the 1980s|early to of the 1980s|mid-1980s|late of the 80s|earlyx 1980s|early part of 1980s|early        1980s|early    1980s|Victorian|edwardian times|art deco|xart deco|art decos
    |1988-94|1988-88|1988-87|1988–'94|1988/94|1988-94 cm|1988-94/5|1988-1994|1988 - 1994|1988 to 1994|1994 to 1988|1988 to 1988|1960-99|1960-00|1959-99|1958-99|1980s-90s|1970s/80|1970s/70|1970s/60|70s/90|1980/90|1950s/90|1950s/00|1988 or 1989|between 1988 and 1994|1988 to the 1990s|1988 to early 1990s|1988 ~ 1994|1988 to    1994|1988 to 3 April 1994|April 1988 to May 1994|1988から1994|vor 3 jahren to 1994
    |c. 1994|ca 1994|circa the 1980s|about 3 April 1994|about the year 1994|about  1994|about   1994|xabout 1994|before 1994|before the 1980s|before 3 April 1994|pre1994|pre-1994|pre 1994|until 1994|up to the 1980s|after 1994|since 1994|not before 1994|no later than 1994|not later than the 1980s|1994 or so|1994 (circa)|1994 approx.|1994 approxx|1994 or earlier|1994 and before|1994 or later|1994+|1994頃|1994年頃|1994年以前|1994年以降|1994年まで|3 April 1994 or later|3 April 1994 approx|before yesterday|about 20 years old|before 1 January 1994|before January 1994|before March 1 2000
    |today|yesterday|the day before yesterday|vorgestern|avant-hier|todayx|今日|一昨日|3 days ago|a day ago|one week ago|2 weeks ago|2 hours ago|60 minutes ago|vor 3 tagen|vor einer woche|il y a une semaine|hace 3 dias|3 giorni fa|een week geleden|3日前|2週間前|1000 days ago|999 days ago|3 daysx ago|Mon 15:12|Wed 15:12|Wednesday at 9:05|Wed 15:123|Jeu 15h12|Tuesday 15:12|Thursday 15:12|Thur, 15:12
    |20 years old|1 years old|0 years old|250 years old|251 years old|25 years old|27 years old|over 30 years old|more than thirty years old|twenty years old|a 30 ans|il a 30 ans de garantie|age de 30 ans|30 jahre alt|ha circa 30 anni|tiene unos 30 anos|30 jaar oud|dreißig jahre alt|30年前のもの|30年以上前の品|三十年前の品|x30 years old|30 years oldx|30-years-old
    |昭和60年3月|昭和60年3月5日|昭和60年13月|昭和60年2月30日|昭和64年|昭和65年|昭和64年2月|昭和60年代|昭和元年|昭和100年|令和8年|令和2年3月|平成元年1月7日|平成31年|明治期|明治|昭和初期|昭和時代の初め|昭和60|1994年3月5日|1994年13月|1994年0月|1994年3月32日|1994年3月|11994年3月`),
  rating:
    lines(`4.5/5|4.5 out of 5|4.5 of 5|5/5|5.1/5|0/5|4/7|4/3|3/3|9/10|15/20|99/100|100/100|101/100|4.5/5.0|4.5/5.00|4.5/5.000|4.5/5%|1/4.5/5|x4.5/5|4.5/5.|4.5/5.1|4.5 / 5|4.5    / 5|4.5 stars out of 5|4.5 ★ / 5|5 out of 3 reviews|5 out of 5 reviews|4 out of 12 customer reviews
    |5つ星のうち4.2|5つ星のうち6|98%|98 %|98% positive|98%    positive|98%  positive|-98% positive|100.5% positive|101% positive|98% off|rating 98%|rating 98% off|rating 98 % off|rating: 98 % korting|4/10 12 reviews|4/10 123 reviews|4 out of 1 234 reviews|rating=4|rating 4.5|rating 4.55|rating 4.5555|rating 6|rating 10|rating 10.5|rating 11|rating 100|rating 101|rating 4/5|4 stars|4-stars|4 star|4 starsx|★ 4|4★|4 ⭐|⭐ 4.5|12 stars|4|4.5|4.5 (12)|4.5 average|5|5.1|10|10.1|100|101|1234|4 bags
    |4.5/5 (12)|4.5/5 ( 1,234 )|4.5/5 (1 234)|4.5/5 (123456789)|4.5/5 (1234567890)|4.5/5 ★ (12)|4.5/5 stars (12)|4.5/5    (12)|4.5/5     (12)|12 reviews 4.5/5|4.5/5 12 reviews|4.5/5 12+ reviews|4.5/5 12 verified reviews|4.5/5 12 very verified reviews|4.5/5 from 1,234 ratings|4.5/5 ${'x'.repeat(42)} 12 reviews|4.5/5 ${'x'.repeat(48)} 12 reviews|4.5/5 ${'x'.repeat(49)} 12 reviews|12 reviews ${'x'.repeat(38)} 4.5/5|12 reviews ${'x'.repeat(39)} 4.5/5|12 reviews ${'x'.repeat(40)} 4.5/5|12 ratings 4/5 (34)
    |4/5 and 3/5|4 ★ and 9/10|4.5/5 4.5 ★|rating 4 of 5|98% positive, 4.5/5`),
  condition: lines(
    `New|New bag|new|a new bag|bag new|the bag is new|bought new|I bought a new bag|new bought|neu gekauft|condition: new|condition new with tags|New with box|New strap|New box|unused dust bag|unused|never used|not new|not unused|not like new|not worn|not damaged|not used|used|use|usé|porté|porte|Usage|usagé|worn once|the strap is worn|the strap is new|bag with new strap|bag with worn strap|corner worn|worn corner|new and unused|new, unused|new!|new, and used|similar to a new one|like new|as new|brand new|new old stock|New in box⏎used|good, used, worn|handle unused|unused handle|unused  handle|unused   handle|excellent used condition|used my discount|new ${'x'.repeat(20)} strap|New ${'x'.repeat(22)} strap|New ${'x'.repeat(14)} strap`,
  ),
  'condition in a text': lines(
    `New|New bag|new|bag new|new strap|completely new|new, mint|is new|new in 2005|new: box`,
  ),
  return: lines(
    `returns accepted|no returns|returns accepted within 14 days|14 days returns accepted|14 day returns|returns accepted, 2 weeks|returns accepted. 14 days|returns accepted ${'x'.repeat(20)} 14 days|returns accepted ${'x'.repeat(31)} 14 days|returns accepted ${'x'.repeat(32)} 14 days|returns accepted ${'x'.repeat(33)} 14 days|14 days ${'x'.repeat(15)} returns accepted|14 days ${'x'.repeat(16)} returns accepted|14 days ${'x'.repeat(17)} returns accepted|returns accepted 0 days|returns accepted 999 days|returns accepted 1000 days|returns accepted 99 weeks|returns accepted 100 weeks|returns: no|returns : yes|returns: 14 days|returns: 14|Returns: no returns|no, returns accepted|returns not accepted|returns: yes, no returns|no returns; returns: 30 days⏎returns accepted|returns accepted 2 weeks, 14 days|returns accepted 14 days, 2 weeks`,
  ),
  shipping: lines(
    `free shipping|Ships from Italy|It is nice. Ships from Italy. Soon|It is nice.⏎Ships from Italy⏎Soon|shipping ${'x'.repeat(150)}|shipping ${'x'.repeat(151)}|shipping ${'x'.repeat(152)} x|${'x'.repeat(158)} shipping|${'x'.repeat(159)} shipping|${'x'.repeat(160)} shipping|  shipping|free shipping, local pickup only|shipping.x|shipping. x|a bag`,
  ),
  payment: lines(`cash|no cash|PayPal, cash and card|cash not accepted|not PayPal but cash`),
  member: lines(
    `member since 2015|member since the 2015|member since it was opened 2015|member since xxxxxxxxxx 2015|member since xxxxxxxxxxx 2015|member since xxxxxxxxxxxx 2015|member since xxxxxxxxxxxxx 2015|member since yesterday|member since March 2019|member since 3 April 2015|member for 6 years|member for 16 years|member for 116 years|member since xxxxxxxxxx 6 years|member since xxxxxxxxxxx 6 years|member since xxxxxxxxxxxx 6 years|member since xxxxxxxxxxxxx 6 years|member since|2015|member since ; 2015|member since • 2015|member since⏎2015|member since⏎⏎2015|member since 2015, member since 2016|registered since 1994|since 2015 member|member since 1990s|6年間会員|会員登録 6年以上|member since ${'.'.repeat(33)}2015`,
  ),
  trader: lines(
    `private seller|not a private seller|private|a private pocket|private⏎|• private|(private)|private.|seller: private|seller is private|seller is a private|the private|Company|seller (company|company x|x company|·   company   ·|·    company    ·`,
  ),
  sales: lines(
    `12 sales|1,234 sales|1.234 sales|12 345 sales|1234567 sales|1.2k sales|1,2 k sales|12万 sales|€12 sales|x12 sales|1.12 sales|12 salesx|12+ sales|12  +  sales|12   sales|12 items sold|sales: 12|sales : 12|sales 12|no sales yet|12 sales, sales: 13|0 sales|123456789 sales|1234567890 sales|12 sales 13 sales`,
  ),
  watchers: lines(
    `12 watchers|12 people watching|12 people watchers|watchers: 12|watchers (12)|watchers 12|1.2k likes|x12 watchers|12 watching this, 13 watchers|1tsd. watchers|12.5.6 watchers`,
  ),
  bids: lines(
    `12 bids|12 bidders|bids: 12|bids (12)|bids 12|no bids|€12 bids|12 bidsx|1,234 bids|bids: 1.2k|0 bids, 12 bids`,
  ),
  availability: lines(
    `sold|Sold by x|sold as seen|12 sold|12+ sold|12 items sold|12 x sold|12  sold|12   sold|not sold|no longer available|sold out|has been sold|if sold|if it is not sold|Reserve|Réservé|reserved|reserve price|not reserved|buy now|removed|sold separately|sold separately yesterday, sold|sold, reserved, available|nicht mehr verfügbar|plus disponible|ya no disponible|not no longer available`,
  ),
  code: lines(
    `item no. AB-12345|item no AB|ref: 12|ref: 123|ref 15cm|ref: 15m|ref: A1|ref: A|ref: ${'A1'.repeat(13)}|ref: ${'A1'.repeat(13)}B|ref: ${'A1'.repeat(14)}|code is KV0915|code number KV0915|ref:#=-KV1|ref   KV12|ref    KV12|ref     KV12|xref KV12|refx KV12|ref: KV12x|ref: KV12é|ref: KV12-|serial KV12, ref: KV13|刻印はKV0915です|刻印：KV 0915|刻印は「KV0915」|刻印は2005年|刻印は12個|刻印 KV0915|ref: 刻印はKV0915`,
  ),
};
