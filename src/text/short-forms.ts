import { type Folded, foldWords } from './fold';
import { listOf, literally, spellingsOf } from './phrases';

/*
 * What sellers cut short where each word costs them time: "acq. nel 1999", "ds la poche", "bght in 98". Each stands for
 * one word of its language; what may stand for two is left out. Common practice, no source.
 */

type Language = 'en' | 'fr' | 'de' | 'it' | 'es' | 'nl';

/** "short form=word", parted by commas. A full stop belongs to the short form. */
const rows: Record<Language, string> = {
  en: 'bght=bought, purch.=purchased, repl.=replaced, lthr=leather, hw=hardware, h/w=hardware, w/o=without, orig.=original, int.=interior, ext.=exterior, mfd=made, mfg=made, s/n=serial number, ser.=serial, stitchg=stitching, hndl=handle, hndls=handles, xmas=christmas, bday=birthday, vtg=vintage, nvr=never, hrdware=hardware, adj.=adjustable, pkt=pocket',
  fr: 'ach.=acheté, achté=acheté, doubl.=doublure, doub.=doublure, ferm.=fermeture éclair, bandoul.=bandoulière, rempl.=remplacé, fab.=fabriqué, int.=intérieur, ext.=extérieur, orig.=original, num.=numéro, ds=dans, tb=très bon, qq=quelques, qqs=quelques, qques=quelques, ss=sans, av=avec, pr=pour, dim.=dimensions, cad.=cadeau, entiér.=entièrement, rest.=restauré, bandou=bandoulière, jms=jamais, coul.=couleur, intér.=intérieur, extér.=extérieur, poch.=poche',
  de: 'gek.=gekauft, erw.=erworben, innenf.=innenfutter, fut.=futter, beschl.=beschläge, rv=reißverschluss, reißv.=reißverschluss, schulterr.=schulterriemen, baumw.=baumwolle, wildl.=wildleder, kalbsl.=kalbsleder, ldr.=leder, orig.=original, erh.=erhalten, gebr.=gebraucht, ern.=erneuert, ers.=ersetzt, rep.=repariert, herst.=hergestellt, hergest.=hergestellt, prod.=produziert, bedr.=bedruckt, staubb.=staubbeutel, griffh.=griffhöhe, henkelh.=henkelhöhe, versch.=verschluss, ser.nr.=seriennummer, mess.=messing, entst.=entstanden, innent.=innentasche, außent.=außentasche, tragesp.=tragespuren, gebrauchssp.=gebrauchsspuren, schl.=schloss',
  it: 'acq.=acquistata, scontr.=scontrino, cam.=camoscio, cod.=codice, fod.=fodera, cern.=cerniera, int.=interno, est.=esterno, mis.=misure, cond.=condizioni, sost.=sostituita, trac.=tracolla, cot.=cotone, comp.=comprata, num.=numero, matr.=matricola, orig.=originale, dim.=dimensioni, prod.=prodotta, fabbr.=fabbricata, vac.=vacchetta, nn=non, tracol.=tracolla, fatt.=fattura, fabbr=fabbricata, chius.=chiusura, intern.=interno, ott.=ottone, rest.=restaurata',
  // "Tela" is canvas in Italian, and any cloth in Spanish.
  es: 'tela=tejido, cód.=código, crem.=cremallera, med.=medidas, alg.=algodón, int.=interior, ext.=exterior, comp.=comprado, núm.=número, bandol.=bandolera, fab.=fabricado, orig.=original, cond.=condiciones, cremall.=cremallera, herr.=herrajes, forr.=forro, fabr.=fabricado, cor.=correa',
  nl: 'gek.=gekocht, aangek.=aangekocht, afm.=afmetingen, voer.=voering, verv.=vervangen, schouderb.=schouderband, kat.=katoen, orig.=origineel, gebr.=gebruikt, ser.nr.=serienummer, bj.=bouwjaar, herst.=hersteld, hengs.=hengsel, binnenk.=binnenkant, buitenk.=buitenkant, mess.=messing, herk.=herkomst, schouderr.=schouderriem',
};

/** "Messingbeschläge", "katoenvoering": what a part is made of, written as one word with it. */
const compounds: Partial<Record<Language, readonly [materials: string[], parts: string[]]>> = {
  de: [
    listOf(
      'messing, nickel, leder, wildleder, kalbsleder, baumwoll, velours, canvas, stoff, metall, kunststoff, seiden',
    ),
    listOf(
      'beschlag, beschläge, beschlägen, futter, innenfutter, henkel, henkeln, griff, griffe, griffen, riemen, schulterriemen, trageriemen, gurt, reißverschluss, schloss, schnalle, schnallen',
    ),
  ],
  nl: [
    listOf('messing, nikkel, leder, katoen, suède, canvas, metaal'),
    listOf('beslag, voering, hengsel, hengsels, handvat, riem, rits, gesp, gespen, slot'),
  ],
};

function compoundsOf(language: Language): [string, string][] {
  const [materials, parts] = compounds[language] ?? [[], []];
  return materials.flatMap((material) => parts.flatMap((part) => apart(material, part)));
}

/** A compound, and the same without umlauts, as two words. */
function apart(material: string, part: string): [string, string][] {
  const noun = material === 'baumwoll' ? 'baumwolle' : material;
  return spellingsOf(`${material}${part}`).map((word) => [word, foldWords(`${noun} ${part}`).text]);
}

interface ShortForms {
  pattern: RegExp;
  words: Map<string, string>;
}

function readRow(language: Language): ShortForms {
  const pairs = listOf(rows[language]).map((pair) => foldWords(pair).text.split('=') as [string, string]);
  const words = new Map([...pairs, ...compoundsOf(language)]);
  const longestFirst = [...words.keys()].sort((a, b) => b.length - a.length);
  return {
    words,
    pattern: new RegExp(`(?<![\\p{L}\\d'])(?:${longestFirst.map(literally).join('|')})(?![\\p{L}'])`, 'gu'),
  };
}

const known = new Map<string, ShortForms | null>();

function shortFormsOf(language: string | null): ShortForms | null {
  const tag = (language ?? '').slice(0, 2).toLowerCase();
  if (!known.has(tag)) known.set(tag, tag in rows ? readRow(tag as Language) : null);
  return known.get(tag) ?? null;
}

/** "Fodera in cam. Zip ok": the full stop closes the sentence too. German nouns have capitals anywhere. */
const opensSentence = /^\s\p{Lu}\p{Ll}/u;

/** A folded text (`foldWords`) with the short forms of its language written out; each stands at the place of its own. */
export function writtenOut(folded: Folded, language: string | null): Folded {
  const forms = shortFormsOf(language);
  if (!forms) return folded;
  const placeOf = (index: number) => (folded.at ? (folded.at[index] as number) : index);
  const isGerman = /^de/i.test(language ?? '');
  const at: number[] = [];
  let [text, from] = ['', 0];
  const keepUpTo = (end: number) => {
    for (let index = from; index < end; index += 1) at.push(placeOf(index));
    text += folded.text.slice(from, end);
  };
  for (const { index, 0: short } of folded.text.matchAll(forms.pattern)) {
    const end = index + short.length;
    const closes = short.endsWith('.') && !isGerman && opensSentence.test(folded.source.slice(placeOf(end - 1) + 1));
    const word = `${forms.words.get(short)}${closes ? '.' : ''}`;
    keepUpTo(index);
    for (let letter = 0; letter < word.length; letter += 1)
      at.push(placeOf(letter === word.length - 1 ? end - 1 : index + Math.min(letter, short.length - 1)));
    text += word;
    from = end;
  }
  if (from === 0) return folded;
  keepUpTo(folded.text.length);
  return { ...folded, text, at: Uint32Array.from(at) };
}
