import { describe, expect, it } from 'vitest';
import { takeHtml } from '../../take-pages/score';
import { compact } from './compact';

/** What pages write, by title and body, and all that they propose. */
const pages: [title: string, body: string, proposed: string[]][] = [
  [
    'Ondrasse date codes',
    '<p>Early bags (1980 to 1983) have three digits: the first two stand for the year and the third for the month. So 817 would be July 1981.</p><p>In 1984 and 1985 a four-digit code was used, e.g. 8411 (November 1984).</p>',
    [
      'code-system | 1980–1983 | year 2 + month 1-9 | 817 = 1981-07',
      'code-system | 1984–1985 | year 2 + month 2 | 8411 = 1984-11 | (by-examples-only)',
    ],
  ],
  [
    'Ondrasse factory codes',
    '<table><tr><td>KV</td><td>Belgium</td><td>1982-2003</td></tr><tr><td>LD</td><td>Belgium</td><td>1996-</td></tr><tr><td>HJ</td><td>France</td><td>1986-</td></tr></table>',
    ['plant | KV | BE | 1982–2003', 'plant | LD | BE | 1996–', 'plant | HJ | FR | 1986–'],
  ],
  [
    'Ondrasse factory codes',
    '<table><tr><th>Country</th><th>Codes</th></tr><tr><td>Belgium</td><td>KV, LD</td></tr><tr><td>France</td><td>HJ<br>YD<br>AR (closed 1998)</td></tr></table>',
    ['plant | KV | BE', 'plant | LD | BE', 'plant | HJ | FR', 'plant | YD | FR', 'plant | AR | FR | –1998'],
  ],
  [
    'Ondrasse factory codes',
    '<p>KV: Belgium<br>LD: Belgium (from 1996)<br>HJ: France</p>',
    ['plant | KV | BE', 'plant | LD | BE | 1996–', 'plant | HJ | FR'],
  ],
  [
    'Ondrasse factory codes',
    '<p>Factories: KV (Belgium), HJ (France, 1986–1999), ZM (Spain).</p>',
    ['plant | KV | BE', 'plant | HJ | FR | 1986–1999', 'plant | ZM | ES'],
  ],
  [
    'Decoding Ondrasse',
    '<p>The code KV0915 breaks down as follows: KV = factory in Belgium, 0 and 1 = January, 9 and 5 = 1995.</p>',
    ['plant | KV | BE'],
  ],
  [
    'Ondrasse: guide to date codes',
    '<h2>1990-2006</h2><p>Two letters and four numbers. The letters are the factory, the 1st and 3rd numbers are the month and the 2nd and 4th the year. Example: KV0915 is January 1995.</p><h2>2007 to present</h2><p>Two letters and four numbers. The 1st and 3rd numbers are the week, the 2nd and 4th the year. Example: LD2047 is the 24th week of 2007.</p>',
    [
      'code-system | 1990–2006 | plant 2 + month tens + year tens + month units + year units | KV0915 = 1995-01',
      'code-system | 2007– | plant 2 + week tens + year tens + week units + year units | LD2047 = 2007-W24',
    ],
  ],
  [
    'Ondrasse models',
    '<table><tr><th></th><th>Carryall 25</th><th>Carryall 30</th></tr><tr><th>Dimensions</th><td>25 x 19 x 15 cm</td><td>30 x 21 x 17 cm</td></tr><tr><th>Years</th><td>1978-</td><td>1975-</td></tr></table>',
    ['model | Carryall 25 | 1978– | 25 19 15 cm', 'model | Carryall 30 | 1975– | 30 21 17 cm'],
  ],
  [
    'Ondrasse models',
    '<table><tr><th>Model</th><th>L x H x D (cm)</th><th>Production</th></tr><tr><td>Carryall 25</td><td>25 x 19 x 15</td><td>1978–2001</td></tr><tr><td>Carryall 30</td><td>30/21/17</td><td>1975–present</td></tr></table>',
    ['model | Carryall 25 | 1978–2001 | 25 19 15 cm', 'model | Carryall 30 | 1975– | 30 21 17 cm'],
  ],
  [
    'Reading the numbers in Velluto Nove bags',
    '<p>From 1984 until 1991 the house stamped three digits on a tab: the first two give the year, the last one the month (so 878 is August 1987).</p>',
    ['code-system | 1984–1991 | year 2 + month 1-9 | 878 = 1987-08'],
  ],
  [
    'Brandt &amp; Söhne – Werkskürzel und Jahre',
    '<table><tr><th>Kürzel</th><th>Ort</th><th>Zeitraum</th></tr><tr><td>OF</td><td>Offenbach</td><td>1962–1988</td></tr><tr><td>BU</td><td>Budapest, Ungarn</td><td>ab 1992</td></tr></table>',
    ['plant | OF | ZZ | Offenbach | 1962–1988', 'plant | BU | HU | Budapest | 1992–'],
  ],
  [
    'Timbri Corvetti: i codici',
    '<p>Dal 1996 il codice è preceduto da una lettera: F per Firenze, N per Napoli.</p>',
    ['plant | F | ZZ | Firenze', 'plant | N | ZZ | Napoli'],
  ],
  [
    'Ondrasse : les codes',
    '<p>AB c’est l’atelier d’Aubagne.</p><p>AB n’est pas Aubagne mais Abbeville.</p>',
    ['plant | AB | ZZ | Aubagne | (withdrawn)', 'plant | AB | ZZ | Abbeville | (disputed)'],
  ],
  [
    'Ondrasse date codes',
    '<p>Werkstätten: AB ist nicht Aubagne, sondern Abbeville.</p>',
    ['plant | AB | ZZ | Abbeville | (disputed)'],
  ],
  [
    'テッサロ・ヴェルの製造国コード',
    '<p>KVはベルギー。KVはベルギーではなくフランスです。</p>',
    ['plant | KV | BE | (withdrawn)', 'plant | KV | FR | (disputed)'],
  ],
  [
    'Dating Ondrasse bags by their codes',
    '<p>Workshops I have seen: MI is Milan, TO is Turin. The Mercer was made in two sizes, 28 and 33 cm, between 1989 and 2001.</p>',
    ['plant | MI | ZZ | Milan', 'plant | TO | ZZ | Turin', 'model | Mercer | 1989–2001'],
  ],
  [
    'Ondrasse prices by year',
    '<table><tr><th>Year</th><th>Carryall 25</th><th>Carryall 30</th></tr><tr><td>2002</td><td>390 €</td><td>430 €</td></tr><tr><td>2010</td><td>520 €</td><td>575 €</td></tr></table>',
    [
      'price | Carryall 25 | 390 | EUR | 2002 | new',
      'price | Carryall 30 | 430 | EUR | 2002 | new',
      'price | Carryall 25 | 520 | EUR | 2010 | new',
      'price | Carryall 30 | 575 | EUR | 2010 | new',
    ],
  ],
  [
    'Ondrasse prices',
    '<table><tr><th>Model</th><th>Year</th><th>Price</th></tr><tr><td>Carryall 25</td><td>2002</td><td>390 €</td></tr><tr><td>Carryall 30</td><td>2002</td><td>430 €</td></tr></table>',
    ['price | Carryall 25 | 390 | EUR | 2002 | new', 'price | Carryall 30 | 430 | EUR | 2002 | new'],
  ],
  [
    'Ondrasse hardware and lining by year',
    '<ul><li>Lining: olive twill until 2006, sand microsuede from 2007</li><li>Zip – brass teeth (since 1978)</li></ul>',
    [
      'construction | lining | olive twill | –2006',
      'construction | lining | sand microsuede | 2007–',
      'construction | zip | brass teeth | 1978–',
    ],
  ],
  [
    'Ondrasse Datumscodes',
    '<table><tr><th>Jahre</th><th>Format</th><th>Beispiel</th></tr><tr><td>1990–2006</td><td>Zwei Buchstaben + vier Ziffern (1. und 3. Ziffer: Monat, 2. und 4. Ziffer: Jahr)</td><td>KV0915 = Januar 1995</td></tr></table>',
    ['code-system | 1990–2006 | plant 2 + month tens + year tens + month units + year units | KV0915 = 1995-01'],
  ],
  [
    'Ondrasse date codes',
    '<table><tr><th>Date code</th><th>Decoded</th></tr><tr><td>KV0915</td><td>January 1995</td></tr><tr><td>HJ1929</td><td>December 1999</td></tr></table>',
    ['example | KV0915 | 1995-01', 'example | HJ1929 | 1999-12'],
  ],
  [
    'Les codes Ondrasse',
    '<p>Chez Ondrasse, la lettre A correspond à 1990, B à 1991, C à 1992.</p>',
    ['year-letter | A | 1990', 'year-letter | B | 1991', 'year-letter | C | 1992'],
  ],
  [
    'Ondrasse date letters',
    '<ul><li>A = 1990</li><li>B = 1991</li><li>C = 1992</li><li>D = 1993</li></ul>',
    ['year-letter | A | 1990', 'year-letter | B | 1991', 'year-letter | C | 1992', 'year-letter | D | 1993'],
  ],
  [
    'Ondrasse serial numbers',
    '<ul><li>1980: 1 – 1,200</li><li>1981: 1,201 – 3,000</li></ul>',
    ['serial | 1 | 1200 | 1980–1980', 'serial | 1201 | 3000 | 1981–1981'],
  ],
  [
    'Dating Ondrasse bags',
    '<p>All bags made after 1984 have a code stamped on the underside of the flap. From 1984 until 1989, the code was made of 4 numbers followed by 2 letters (year, month, factory); 8609KV is thus a bag made in September 1986 in Belgium.</p>',
    [
      'code-system | 1984–1989 | year 2 + month 2 + plant 2 | 8609KV = 1986-09',
      'carrier | on the underside of the flap | stamp',
    ],
  ],
  [
    'Codici Ondrasse',
    '<p>KV indica il Belgio (1982-2003), HJ indica la Francia.</p>',
    ['plant | KV | BE | 1982–2003', 'plant | HJ | FR'],
  ],
  [
    'Códigos Ondrasse',
    '<p>De 1984 a 1985 el código tiene cuatro dígitos: los dos primeros indican el año y los dos últimos el mes, por ejemplo 8411 es noviembre de 1984.</p>',
    ['code-system | 1984–1985 | year 2 + month 2 | 8411 = 1984-11'],
  ],
  [
    'Ondrasse sizes',
    '<p>The Carryall comes in three sizes: Carryall 25 (25 × 19 × 15 cm), Carryall 30 (30 × 21 × 17 cm) and Carryall 45 (45 × 27 × 20 cm).</p>',
    ['model | Carryall 25 | 25 19 15 cm', 'model | Carryall 30 | 30 21 17 cm', 'model | Carryall 45 | 45 27 20 cm'],
  ],
  [
    'Wo sitzt der Code bei Quisthof?',
    '<ul><li>Aktentasche: unter der Klappe, auf dem Leder</li><li>Beutel: im Innenfach auf einem Etikett (ab 1992)</li></ul>',
    [
      'carrier | Aktentasche | unter der Klappe, auf dem Leder | stamp',
      'carrier | Beutel | im Innenfach auf einem Etikett | 1992–',
    ],
  ],
  [
    'Quisthof Datumscodes erklärt',
    '<p>Zwischen 1970 und 1989 besteht der Code aus zwei Buchstaben und vier Ziffern. Die ersten beiden Ziffern stehen für den Monat, die letzten beiden für das Jahr. PI0975 bedeutet also: September 1975, Werk Pirmasens.</p><p>Werke: OF = Offenbach (1951 bis 1996), PI = Pirmasens (bis etwa 1990).</p>',
    [
      'code-system | 1970–1989 | plant 2 + month 2 + year 2 | PI0975 = 1975-09',
      'plant | OF | ZZ | Offenbach | 1951–1996',
      'plant | PI | ZZ | Pirmasens | –1990 | about to',
    ],
  ],
  [
    'Les codes de date Maison Verquin',
    "<p>Jusqu'en 1973, aucun code.</p><p>À partir de 1974 : trois chiffres (année sur deux chiffres, puis mois). Exemple : 776 pour juin 1977.</p><ul><li><b>VA</b> : Cholet (France)</li><li><b>VB</b> : Romans (France), fermé en 1998</li></ul>",
    [
      'stamped | 1974–',
      'code-system | 1974– | year 2 + month 1-9 | 776 = 1977-06',
      'plant | VA | FR | Cholet',
      'plant | VB | FR | Romans | –1998',
    ],
  ],
  [
    'Tessaro Vell: fodere e chiusure',
    '<table><tr><th>Parte</th><th>Materiale</th><th>Periodo</th></tr><tr><td>Fodera</td><td>cotone rosso</td><td>fino al 1995</td></tr><tr><td>Cerniera</td><td>denti in ottone</td><td>1988-2004</td></tr></table>',
    ['construction | lining | cotone rosso | –1995', 'construction | zip | denti in ottone | 1988–2004'],
  ],
  [
    'Modelos de Talavento',
    '<table><tr><th>Modelo</th><th>Medidas (cm)</th><th>Años</th></tr><tr><td>Ronda</td><td>29 x 20 x 11</td><td>1977-1996</td></tr><tr><td>Vega</td><td>35 x 25 x 13</td><td>desde 2001</td></tr></table>',
    ['model | Ronda | 1977–1996 | 29 20 11 cm', 'model | Vega | 2001– | 35 25 13 cm'],
  ],
  [
    'Datumcodes van Vondersloot',
    '<dl><dt>1979 – 1984</dt><dd>Vier cijfers: maand en jaar, bijvoorbeeld 0782 (juli 1982)</dd><dt>vanaf 2013</dt><dd>Volgnummer van zeven cijfers</dd></dl>',
    ['code-system | 1979–1984 | month 2 + year 2 | 0782 = 1982-07', 'code-system | 2013– | serial 7'],
  ],
  [
    'Ondrasse デートコードの見方',
    '<ul><li>1984年〜1985年：数字4桁（年2桁＋月2桁） 例：8411＝1984年11月</li><li>2007年以降：アルファベット2文字＋数字4桁。1桁目と3桁目が週、2桁目と4桁目が年</li></ul><p>KV＝ベルギー、HJ＝フランス、YD＝フランス</p>',
    [
      'code-system | 1984–1985 | year 2 + month 2 | 8411 = 1984-11',
      'code-system | 2007– | plant 2 + week tens + year tens + week units + year units',
      'plant | KV | BE',
      'plant | HJ | FR',
      'plant | YD | FR',
    ],
  ],
  [
    'Ondrasse factory codes',
    '<table><tr><th>Code</th><th>Factory</th><th>Period</th><th>Notes</th></tr><tr><td>KV</td><td>Brussels</td><td>1982-2003</td><td></td></tr><tr><td>KX</td><td>Ghent</td><td>1990</td><td>unconfirmed</td></tr><tr><td>KZ</td><td>Ghent</td><td>1990s</td><td></td></tr></table>',
    [
      'plant | KV | ZZ | Brussels | 1982–2003',
      'plant | KX | ZZ | Ghent | 1990–1990 | (disputed)',
      'plant | KZ | ZZ | Ghent | 1990–1999',
    ],
  ],
  [
    'Ondrasse date code guide',
    '<p>We ship worldwide. Buy now, pay later.</p><table><tr><th>Factory code</th><th>Country</th></tr><tr><td>KV</td><td>Belgium</td></tr><tr><td>HJ</td><td>France</td></tr><tr><td>ZM</td><td>Spain</td></tr></table>',
    ['plant | KV | BE', 'plant | HJ | FR', 'plant | ZM | ES'],
  ],
  [
    'Ondrasse date codes',
    '<p>France: AB AC AF</p><p><b>Spain:</b> GA, GB</p><p>Codes before 1980 do not exist.</p><p>The oldest codes have no letters.</p>',
    ['plant | AB | FR', 'plant | AC | FR', 'plant | AF | FR', 'plant | GA | ES', 'plant | GB | ES'],
  ],
  [
    'Ondrasse date codes',
    '<table><tr><th colspan=2>Ondrasse date codes</th></tr><tr><th>Years</th><th>How to read it</th></tr><tr><td>1984-85</td><td>Year and month, four digits (8411 = Nov. 1984)</td></tr><tr><td>1990-2006</td><td>Factory letters, then month and year interleaved (KV0915 = January 1995)</td></tr></table>',
    [
      'code-system | 1984–1985 | year 2 + month 2 | 8411 = 1984-11',
      'code-system | 1990–2006 | plant 2 + month tens + year tens + month units + year units | KV0915 = 1995-01',
    ],
  ],
  [
    'Which Ondrasse date code do I have?',
    '<h3>YYM (1980–1983)</h3><p>e.g. 817 = July 1981</p><h3>YYMM (1984–1985)</h3><p>e.g. 8411 = November 1984</p>',
    [
      'code-system | 1980–1983 | year 2 + month 1-9 | 817 = 1981-07',
      'code-system | 1984–1985 | year 2 + month 2 | 8411 = 1984-11',
    ],
  ],
  [
    'Ondrasse or Barrowmere? Models',
    '<h2>Ondrasse models</h2><ul><li>Carryall 30: 30 x 21 x 17 cm</li></ul><h2>Barrowmere models</h2><ul><li>Satchel: 33 x 24 x 10 cm</li></ul>',
    ['model | Carryall 30 | 30 21 17 cm', 'model | Satchel | 33 24 10 cm'],
  ],
  [
    'Ondrasse factory codes',
    '<p>KV: Belgium (1982–2003)</p><p>KV: France (1986–1999)</p>',
    ['plant | KV | BE | 1982–2003 | (contradicted)', 'plant | KV | FR | 1986–1999 | (contradicted)'],
  ],
  [
    'My Ondrasse story',
    '<p>I visited Belgium in 1999 and bought a bag there. The bag is made in France. In 2004 I sold it. The code was KV0915 and the lining was olive until 2006, I think.</p>',
    [],
  ],
  [
    'Ondrasse retail prices',
    '<ul><li>Carryall 30: €430 (2002), €575 (2010)</li><li>Carryall 25 – 2002: €390</li></ul>',
    [
      'price | Carryall 30 | 430 | EUR | 2002 | new',
      'price | Carryall 30 | 575 | EUR | 2010 | new',
      'price | Carryall 25 | 390 | EUR | 2002 | new',
    ],
  ],
  [
    'How old is my Ondrasse?',
    '<p>Bags from the 1980s have a three-digit code. In the 1990s the letters came before the digits.</p><p>The Carryall 30 has been made since 1975.</p><p>The hardware was brass from 1970 to 1992 and nickel after that.</p>',
    [
      'model | Carryall 30 | 1975–',
      'construction | hardware | brass | 1970–1992',
      'construction | hardware | nickel | 1993–',
    ],
  ],
  [
    'Where were Kestrane bags made?',
    '<p>Kestrane has had factories in three countries. Codes AB and AC are French; DA and DE belong to Italy, and GA is Spanish.</p>',
    [],
  ],
  [
    'Barrowmere codes',
    '<p>Barrowmere satchels were produced in Walsall (BA) from 1964 to 1991 and in Bridgend (BC) until about 1988.</p>',
    ['plant | BA | ZZ | Walsall | 1964–1991', 'plant | BC | ZZ | Bridgend | –1988 | about to'],
  ],
  [
    'Dating Barrowmere satchels',
    '<p>From the mid-1970s the stamp has a letter for the year: A is 1974, B is 1975, C is 1976.</p><p>It is sometimes claimed that the FI plant closed in 2001, but this is disputed.</p>',
    ['year-letter | A | 1974', 'year-letter | B | 1975', 'year-letter | C | 1976'],
  ],
  [
    'Kestrane Codes',
    '<div class="post"><p>> AB stands for France</p><p>No, AB is Belgium.</p></div>',
    ['plant | AB | FR | (contradicted)', 'plant | AB | BE | (contradicted)'],
  ],
  [
    'Modèles Maison Verquin',
    '<p>Le Cabas 34 (34 × 28 × 14 cm) a été fabriqué de 1988 à 2003. La Petite Malle, lancée en 1981, mesure 24 × 17 × 9 cm ; elle coûtait 2 400 F en 1985.</p>',
    ['model | Cabas 34 | 34 28 14 cm | 1988–2003', 'model | Petite Malle | 24 17 9 cm | 1981–'],
  ],
  [
    'Talavento: precios',
    '<p>En 1995 el modelo Ronda costaba 45.000 pesetas; en 2003, 320 €.</p>',
    ['price | Ronda | 45000 | ESP | 1995 | new', 'price | Ronda | 320 | EUR | 2003 | new'],
  ],
  [
    'Quisthof: Modelle und Preise',
    '<table><tr><th>Modell</th><th>Maße B×H×T in cm</th><th>Gebaut</th><th>Neupreis 1989</th></tr><tr><td>Aktentasche 41</td><td>41×31×12</td><td>1965 bis 1999</td><td>498 DM</td></tr><tr><td>Beutel</td><td>26×30×26</td><td>ab 1978</td><td>259 DM</td></tr></table>',
    [
      'model | Aktentasche 41 | 1965–1999 | 41 31 12 cm',
      'price | Aktentasche 41 | 498 | DEM | 1989 | new',
      'model | Beutel | 1978– | 26 30 26 cm',
      'price | Beutel | 259 | DEM | 1989 | new',
    ],
  ],
  [
    'Ondrasse codes: what changed',
    '<table><tr><th>Period</th><th>Where</th></tr><tr><td>1980-1989</td><td>on the lining</td></tr><tr><td>1990-</td><td>on a leather tab</td></tr></table>',
    ['carrier | on the lining | 1980–1989 | stamp', 'carrier | on a leather tab | 1990– | tab'],
  ],
  [
    'Codici Pellacorsa',
    '<p>La lettera F indica Firenze, la lettera N indica Napoli.</p><p>Fino al 1977 nessun codice. Il codice è stampato dentro la tasca, sulla fodera.</p>',
    [
      'plant | F | ZZ | Firenze',
      'plant | N | ZZ | Napoli',
      'stamped | 1978–',
      'carrier | dentro la tasca, sulla fodera | stamp',
    ],
  ],
  [
    'Vondersloot codes',
    '<ul><li>AR1191 = november 1991, Arnhem</li><li>3304BR = week 33, 2004</li></ul><p>Let op: code XX is niet van Vondersloot.</p>',
    ['example | AR1191 | 1991-11', 'example | 3304BR | 2004-W33'],
  ],
  [
    'テッサロ・ヴェルの製造国コード',
    '<ul><li>TV：イタリア（1988年～）</li><li>TR：ルーマニア（2004年～2015年）</li></ul><p>コードは内ポケットの奥にあります。</p>',
    ['plant | TV | IT | 1988–', 'plant | TR | RO | 2004–2015', 'carrier | 内ポケットの奥 | stamp'],
  ],
  [
    'Tessaro Vell – lavorazione e materiali',
    '<ul><li>Fodera: cotone rosso fino al 1995, poi microfibra sabbia</li><li>Minuteria: ottone (dal 1984)</li></ul>',
    [
      'construction | lining | cotone rosso | –1995',
      'construction | lining | microfibra sabbia | 1996–',
      'construction | hardware | ottone | 1984–',
    ],
  ],
  [
    'Ondrasse factory letters',
    '<table><tr><th>Letters</th><th>Country</th><th>Town</th><th>Opened</th><th>Closed</th><th>Remark</th></tr><tr><td>KV</td><td>Belgium</td><td>Brussels</td><td>1982</td><td>2003</td><td></td></tr><tr><td>LD</td><td>Belgium</td><td>Liège</td><td>1996</td><td>still open</td><td>disputed</td></tr></table>',
    ['plant | KV | BE | Brussels | 1982–2003', 'plant | LD | BE | Liège | 1996– | (disputed)'],
  ],
  [
    'Ondrasse 1990s codes',
    "<p>The 1990s code MB1097? I don't know what MB means. Can anyone help? In 1997 I lived in Spain.</p>",
    [],
  ],
  [
    'Fenwicke date codes',
    '<p>Between 1972 and 1986 there are four digits: month, then year. So 0579 was made in May 1979. From 1987 to 2002 the order was reversed and two letters were added, so 9103RD is March 1991.</p>',
    [
      'code-system | 1972–1986 | month 2 + year 2 | 0579 = 1979-05',
      'code-system | 1987–2002 | year 2 + month 2 + plant 2 | 9103RD = 1991-03',
    ],
  ],
  [
    'Hexwold codes',
    '<p>In 1984 a letter was put in front: P means Prato, L for Lucca and T for Tunisia (since 1985).</p><p>Does G stand for Galway?</p>',
    ['plant | P | ZZ | Prato', 'plant | L | ZZ | Lucca', 'plant | T | TN | 1985–'],
  ],
  [
    'Hexwold codes',
    '<p>B0481 is April 1981. B is Bolton, C is closed, J is January.</p>',
    ['example | B0481 | 1981-04', 'plant | B | ZZ | Bolton'],
  ],
  [
    'Hexwold factory codes',
    '<p>W stands for Waterford.</p><p>I was wrong about W, sorry. It stands for Wexford.</p><p>D stands for Dover, as on D0481.</p><p>No, D is not Dover, it is Deal.</p>',
    [
      'plant | W | ZZ | Waterford | (withdrawn)',
      'plant | W | ZZ | Wexford',
      'plant | D | ZZ | Dover | (contradicted)',
      'plant | D | ZZ | Deal | (contradicted)',
    ],
  ],
  [
    'Hexwold factory codes',
    '<p>Of the factories, CK stands for Cork (1970-1985) and, from 1992, a place in Portugal was used as well.</p>',
    ['plant | CK | ZZ | Cork | 1970–1985'],
  ],
  [
    'Hexwold codes',
    '<p>The month, then the year, then the letter of the workshop. 1294B is December 1994.</p>',
    ['code-system | month 2 + year 2 + plant 1 | 1294B = 1994-12'],
  ],
  [
    'Hexwold codes',
    '<p>From 1960 to 1981 there are four digits, the month and the year: 0666 is June 1966.</p><p>From 1982 on a letter was put in front.</p>',
    ['code-system | 1960–1981 | month 2 + year 2 | 0666 = 1966-06', 'code-system | 1982– | plant 1 + month 2 + year 2'],
  ],
  [
    'Hexwold: hardware and lining',
    '<p>The lining was of tartan wool until about 1975, plain grey cotton afterwards. The fittings are gilt until 1990 and plain since 1991.</p><p>The lining of mine was blue until 2019, but I paid little.</p>',
    [
      'construction | lining | tartan wool | –1975 | about to',
      'construction | lining | plain grey cotton | 1976– | about from',
      'construction | hardware | gilt | –1990',
      'construction | hardware | plain | 1991–',
    ],
  ],
  [
    'Hexwold codes',
    '<p>The code is on a leather tab sewn behind the pocket. On the Fell 24 it is under the flap. Since 1999 it is a sticker in the pocket.</p>',
    [
      'carrier | on a leather tab sewn behind the pocket | tab',
      'carrier | under the flap | Fell 24 | stamp',
      'carrier | in the pocket | sticker | 1999–',
    ],
  ],
  [
    'Hexwold in figures',
    '<table><tr><th>Letter</th><td>A</td><td>B</td><td>C</td></tr><tr><th>Year</th><td>1971</td><td>1972</td><td>1973</td></tr></table>',
    ['year-letter | A | 1971', 'year-letter | B | 1972', 'year-letter | C | 1973'],
  ],
  [
    'Hexwold workshops and codes',
    '<dl><dt>Five-figure code (1969 to 1993)</dt><dd>Week, then year, then the number of the workshop. Example: 23742 is week 23 of 1974.</dd><dt>Workshop 2</dt><dd>Northampton, England</dd></dl>',
    ['code-system | 1969–1993 | week 2 + year 2 + plant 1 | 23742 = 1974-W23', 'plant | 2 | GB | Northampton'],
  ],
  [
    'Help with a Hexwold holdall and codes from Walsall',
    '<p>From 1960 to 1978 there are four digits, the month and the year, about 0666 (June 1966).</p>',
    ['code-system | 1960–1978 | month 2 + year 2 | 0666 = 1966-06'],
  ],
  [
    'Hexwold codes',
    '<table><tr><th>Years</th><th>How it reads</th><th>Example</th></tr><tr><td>until c. 1985</td><td>no code</td><td></td></tr><tr><td>1985–1999</td><td>month, year</td><td>0790 = July 1990</td></tr></table>',
    ['stamped | 1985– | about from', 'code-system | 1985–1999 | month 2 + year 2 | 0790 = 1990-07'],
  ],
  ['Hexwold date codes', '<ul><li>Until about 1960: no code</li></ul>', ['stamped | 1960– | about from']],
  [
    'Hexwold codes: questions',
    '<dl><dt>What is the lining made of?</dt><dd>Of green felt until 1975, of rayon from 1976.</dd><dt>Can you change the lining?</dt><dd>Yes, from £60.</dd></dl>',
    ['construction | lining | green felt | –1975', 'construction | lining | rayon | 1976–'],
  ],
  [
    'Hexwold workshops: help',
    "<p>T0673 is June 1973. T stands for Taunton. H is Hexham, they opened there in '77, and K is Kenya. B means Bath.</p><p>Sorry, I got B wrong.</p>",
    [
      'example | T0673 | 1973-06',
      'plant | T | ZZ | Taunton',
      'plant | H | ZZ | Hexham | 1977–',
      'plant | K | KE',
      'plant | B | ZZ | Bath | (withdrawn)',
    ],
  ],
  [
    'Hexwold date codes',
    '<div class="page"><p>From 1962 to 1975 all bags were stamped with four figures, the month<br>first and then the year. 0866 is August 1966.</p></div>',
    ['code-system | 1962–1975 | month 2 + year 2 | 0866 = 1966-08'],
  ],
  [
    'Hexwold marks',
    '<table><tr><th>Mark</th><th>Where</th><th>Dates</th></tr><tr><td>AA</td><td>Ashbourne</td><td>1921–1968</td></tr><tr><td>BB</td><td>Belper</td><td>1934–1959</td></tr></table>',
    ['plant | AA | ZZ | Ashbourne | 1921–1968', 'plant | BB | ZZ | Belper | 1934–1959'],
  ],
  [
    'Hexwold codes',
    '<dl><dt>Where are the bags made?</dt><dd>VV: Vienna; MM: Millau (1983-2001); TT: Tunisia (since 2002).</dd></dl><p>In 1985 the Fell 24 cost 890 francs new.</p>',
    ['plant | VV | ZZ | Vienna', 'plant | MM | ZZ | Millau | 1983–2001', 'plant | TT | TN | 2002–'],
  ],
  ['Hexwold workshops', '<dl><dt>Workshop 2</dt><dd>Northampton, England</dd></dl>', []],
  [
    'How postcodes are built',
    '<p>LA stands for Lancaster, CA stands for Carlisle.</p><ul><li>LA: England</li><li>BE: Belgium</li><li>FR: France</li></ul>',
    [],
  ],
  [
    'Hexwold codes',
    '<p>From 1961 to 1974 there are four digits, the week and the year: 1268 is week 12 of 1968.</p><p>In 1975 the two pairs changed places, as in 7731, week 31 of 1977.</p>',
    [
      'code-system | 1961–1974 | week 2 + year 2 | 1268 = 1968-W12',
      'code-system | 1975– | year 2 + week 2 | 7731 = 1977-W31',
    ],
  ],
  [
    'Codici Hexwold',
    '<ul><li>1961–1974: quattro cifre, anno e mese (6803 = marzo 1968)</li><li>dal 1975: ordine inverso, con la lettera del laboratorio davanti (P0377 = marzo 1977)</li></ul>',
    [
      'code-system | 1961–1974 | year 2 + month 2 | 6803 = 1968-03',
      'code-system | 1975– | plant 1 + month 2 + year 2 | P0377 = 1977-03',
    ],
  ],
  [
    'Hexwold codes',
    '<p>From 1970 to 1980 a letter for the workshop and two digits for the year: K74 was made in 1974.</p>',
    ['code-system | 1970–1980 | plant 1 + year 2 | K74 = 1974'],
  ],
  [
    'Hexwold workshops',
    '<ul><li>K – Keswick, 58–79</li><li>L – Lorton, since 66</li><li>N – Norway, 1971 only</li></ul>',
    ['plant | K | ZZ | Keswick | 1958–1979', 'plant | L | ZZ | Lorton | 1966–', 'plant | N | NO | 1971–1971'],
  ],
  [
    'Hexwold workshops',
    '<p>W stands for Wigton and S for Silloth.</p><p>Silloth closed its doors in 1988.</p>',
    ['plant | W | ZZ | Wigton', 'plant | S | ZZ | Silloth | –1988'],
  ],
  [
    'Hexwold codes',
    '<p>K stands for Keswick, which did not open until 1969.</p>',
    ['plant | K | ZZ | Keswick | 1969–'],
  ],
  [
    'Hexwold models',
    '<h2>The Tarn</h2><p>28 × 20 × 9 cm</p><p>1963–1980</p><p>Lining: moleskin</p>',
    ['model | The Tarn | 1963–1980 | 28 20 9 cm', 'construction | lining | moleskin | The Tarn'],
  ],
  [
    'Hexwold: linings',
    '<table><tr><th>Years</th><th>Lining</th></tr><tr><td>1960–1970</td><td>linen</td></tr><tr><td>1971–1980</td><td>ditto</td></tr></table>',
    ['construction | lining | linen | 1960–1970', 'construction | lining | linen | 1971–1980'],
  ],
  [
    'Hexwold codes and linings',
    '<p>The “Whinchat” lining was moleskin until 1971.</p><p>The “soft” lining was cotton until 1966.</p>',
    ['construction | lining | moleskin | –1971 | Whinchat', 'construction | lining | cotton | –1966'],
  ],
  [
    'Hexwold codes',
    '<p>Look behind the zipped pocket. A letter and four digits are stamped there.</p>',
    ['carrier | behind the zipped pocket | stamp'],
  ],
  [
    'Hexwold-Codes',
    '<p>Unter der Lasche trägt jede Tasche den Stempel.</p><p>Ab 1980 gilt eine neue Regel: K1280 entstand im Dezember 1980.</p>',
    ['carrier | Unter der Lasche | stamp', 'example | K1280 | 1980-12'],
  ],
];

describe('ways in which pages tell', () => {
  for (const [title, body, proposed] of pages)
    it(`${title}: ${body
      .replace(/<[^>]*>/g, ' ')
      .trim()
      .slice(0, 70)}`, () => {
      expect(takeHtml(`<title>${title}</title><h1>${title}</h1>${body}`).map(compact)).toEqual(proposed);
    });
});
