import { describe, expect, it } from 'vitest';
import type { Check } from '../../../src/check';
import { authorshipPlain } from '../../../src/check/authorship-plain';
import { gradeWords } from '../../../src/check/grade-words';
import { notThisPiece } from '../../../src/check/not-this-piece';
import { pressureWords } from '../../../src/check/pressure-words';
import { readyMadeAssurance } from '../../../src/check/ready-made-assurance';
import { findClaims } from '../../../src/claim';
import { facts, ondrasse, said, stated, withPhotos } from './sample';

const languages = ['en', 'fr', 'de', 'it', 'es', 'nl', 'ja'] as const;
type InEach = Record<(typeof languages)[number], string[]>;

function answer(check: Check, words: string, language: string): string {
  const listing = withPhotos(1, { language, title: stated('-'), description: stated(words), text: words });
  return said(check, facts({ listing, claims: findClaims(listing, [ondrasse]) }))[0] ?? '';
}

interface Family {
  check: Check;
  kind: 'doubt' | 'gap';
  /** Sentences as sellers write them: those that have to be spoken of, and those that must not be. */
  speaks: InEach;
  silent: InEach;
}

const families: Family[] = [
  {
    check: authorshipPlain,
    kind: 'doubt',
    speaks: {
      en: ['A bag in the style of Ondrasse', 'Ondrasse inspired tote', 'A homage to the Carryall'],
      fr: ['Sac dans le style de Ondrasse', 'Sac inspiré de Ondrasse', 'Sac façon Ondrasse'],
      de: ['Tasche im Stil von Ondrasse', 'Von Ondrasse inspirierte Tasche', 'Tasche wie von Ondrasse'],
      it: ['Borsa nello stile di Ondrasse', 'Borsa ispirata a Ondrasse', 'Borsa tipo Ondrasse'],
      es: ['Bolso al estilo de Ondrasse', 'Bolso inspirado en Ondrasse', 'Imitación de Ondrasse'],
      nl: ['Tas in de stijl van Ondrasse', 'Tas geïnspireerd op Ondrasse'],
      ja: ['Ondrasse風のバッグ', 'Ondrasseタイプのバッグ'],
    },
    silent: {
      en: ['Not a replica.', 'Top quality copy of the Carryall', 'Made by Ondrasse in 1995, in good style.'],
      fr: ["Ce n'est pas une réplique.", 'Sac Ondrasse, cuir de veau.'],
      de: ['Keine Replik.', 'Ondrasse Tasche in gutem Zustand.'],
      it: ['Non è una replica.', 'Borsa Ondrasse in pelle.'],
      es: ['No es una réplica.', 'Bolso Ondrasse de piel.'],
      nl: ['Geen replica.', 'Tas van Ondrasse, leer.'],
      ja: ['レプリカではありません。', 'オンドラスのバッグです。'],
    },
  },
  {
    check: gradeWords,
    kind: 'doubt',
    speaks: {
      en: ['Mirror quality bag', 'AAA grade', 'It is a super copy', 'Top quality copy of the Carryall'],
      fr: ['Sac qualité miroir', 'Qualité AAA', 'Une copie parfaite'],
      de: ['Tasche in Spiegelqualität', 'AAA Qualität', 'Eine 1A Kopie'],
      it: ['Borsa di qualità specchio', 'Qualità AAA', 'Una copia perfetta'],
      es: ['Bolso calidad espejo', 'Calidad AAA', 'Una copia perfecta'],
      nl: ['Tas van spiegelkwaliteit', 'AAA kwaliteit', 'Een perfecte kopie', 'Nagemaakt model'],
      ja: ['スーパーコピーです', 'N級品', '最高級コピー', 'ミラー品質です'],
    },
    silent: {
      en: ['Not a replica. The mirror is intact.', 'Good quality, grade A leather'],
      fr: ["Ce n'est pas une réplique.", 'Le miroir est de bonne qualité.'],
      de: ['Keine Replik.', 'Der Spiegel ist von guter Qualität.'],
      it: ['Non è una replica.', 'Lo specchio è di buona qualità.'],
      es: ['No es una réplica.', 'El espejo es de buena calidad.'],
      nl: ['Geen replica.', 'De spiegel is van goede kwaliteit.'],
      ja: ['レプリカではありません。', '鏡付きのバッグです。'],
    },
  },
  {
    check: notThisPiece,
    kind: 'doubt',
    speaks: {
      en: [
        'Stock photo, see description',
        'Pictures for reference only',
        'Actual item may differ',
        'The bag you receive may differ a little',
      ],
      fr: [
        'Photo non contractuelle',
        "Photos d'illustration",
        'Photo à titre d’illustration',
        'L’article reçu peut différer',
      ],
      de: ['Symbolfoto', 'Beispielbild', 'Abbildung ähnlich', 'Foto einer ähnlichen Tasche'],
      it: ['Foto indicativa', 'Foto di repertorio', 'Immagini puramente indicative', 'Foto di una borsa simile'],
      es: ['Foto de referencia', 'Imagen ilustrativa', 'Foto orientativa', 'Foto de un bolso similar'],
      nl: ['Voorbeeldfoto', 'Stockfoto', 'Foto ter illustratie', 'Foto van een soortgelijke tas'],
      ja: ['画像はイメージです', '参考画像', 'イメージ写真です', '写真はイメージで、実際の商品とは異なります'],
    },
    silent: {
      en: [
        'No stock photos, all of this very bag',
        'In stock, photo below',
        'The bag may look darker than in the picture',
      ],
      fr: ['Les photos montrent ce sac.', 'Photo prise hier.'],
      de: ['Keine Symbolfotos', 'Die Fotos zeigen diese Tasche.', 'Die Farbe kann je nach Bildschirm abweichen.'],
      it: ['Le foto sono di questa borsa.', 'Foto di oggi.'],
      es: ['Las fotos son de este bolso.', 'Foto de hoy.'],
      nl: ['Geen stockfoto', 'De foto toont deze tas.'],
      ja: ['写真は実物です。', '写真をご覧ください。', '実物とは色が異なって見える場合があります。'],
    },
  },
  {
    check: readyMadeAssurance,
    kind: 'gap',
    speaks: {
      en: ['100% authentic guaranteed'],
      fr: ['100 % authentique', 'Authenticité garantie'],
      de: ['Garantiert echt', '100% Original'],
      it: ['100% autentica', 'Originale al 100%'],
      es: ['100% auténtico', 'Autenticidad garantizada'],
      nl: ['100% authentiek', 'Gegarandeerd echt'],
      ja: ['正規品保証', '本物保証'],
    },
    silent: {
      en: ['100% cotton lining'],
      fr: ['Doublure 100 % coton'],
      de: ['Futter 100 % Baumwolle'],
      it: ['Fodera 100% cotone'],
      es: ['Forro 100% algodón'],
      nl: ['Voering 100% katoen'],
      ja: ['綿100%の裏地'],
    },
  },
  {
    check: pressureWords,
    kind: 'doubt',
    speaks: {
      en: ['Today only', 'Must go today'],
      fr: ['Pas de questions'],
      de: ['Muss heute weg', 'Nur heute'],
      it: ['Solo oggi'],
      es: ['Sin preguntas', 'Solo hoy'],
      nl: ['Moet vandaag weg', 'Alleen vandaag'],
      ja: ['本日限り', '質問不可'],
    },
    silent: {
      en: ['Happy to answer questions today'],
      fr: ['Je réponds volontiers à vos questions.'],
      de: ['Ich beantworte gern Fragen.'],
      it: ['Rispondo volentieri alle domande.'],
      es: ['Respondo con gusto a sus preguntas.'],
      nl: ['Ik beantwoord graag vragen.'],
      ja: ['ご質問はお気軽にどうぞ。'],
    },
  },
];

describe.each(families.map((family) => [family.check.id, family] as const))('%s in every language', (_id, family) => {
  describe.each(languages)('%s', (language) => {
    it.each(family.speaks[language])('speaks on “%s”', (words) => {
      expect(answer(family.check, words, language)).toMatch(new RegExp(`^${family.kind}: `));
    });
    it.each(family.silent[language])('is silent on “%s”', (words) => {
      expect(answer(family.check, words, language)).toBe('silent');
    });
  });
});
