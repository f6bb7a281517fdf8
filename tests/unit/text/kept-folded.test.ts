import { expect, it } from 'vitest';
import * as text from '../../../src/text';
import { turnsOf } from '../../turning';

/* How labels and odd characters are read. Where it changes on purpose, `npm test -- unit/text/kept --update` writes it anew. */

const keep = (lines: readonly string[], name: string) =>
  expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(`./kept/forms-${name}.txt`);

it('labels and what is behind them', async () => {
  const lines = [
    'Brand: Ondrasse',
    '【素材】牛革',
    'Brand : Ondrasse',
    'Brand\tOndrasse',
    'Brand  \t Ondrasse',
    'Brand\nOndrasse',
    ': x',
    'http://x',
    '12: 30',
    '12.5: x',
    'Brand:',
    'Brand: ',
    '•Brand: x',
    '[État]: x',
  ];
  const long: Record<string, (length: number) => string> = {
    'a name': (length) => String(text.splitLabelled(`${'a'.repeat(length)}: b`) !== null),
    'a value': (length) => String(text.splitLabelled(`a: ${'b'.repeat(length + 340)}`) !== null),
    'a name in brackets': (length) => String(text.splitLabelled(`【${'a'.repeat(length)}】b`) !== null),
    'a value behind brackets': (length) => String(text.splitLabelled(`【a】${'b'.repeat(length + 340)}`) !== null),
    'blanks between': (length) => String(text.splitLabelled(`a:${' '.repeat(length + 400)}b`) !== null),
    'a label': (length) => String(text.labelOf(`${'•'.repeat(length)} Brand`)),
  };
  await keep(
    [
      ...lines.map(
        (line) => `${JSON.stringify(line)} ${JSON.stringify(text.splitLabelled(line))} ${text.labelOf(line)}`,
      ),
      ...['Brand', 'ÉTAT', 'etat:', '•Marke', '[Farbe]', 'サイズ', '商品の状態', 'Artikelzustand', 'nonsense', ''].map(
        (word) => `${word} ${text.labelOf(word)}`,
      ),
      ...Object.entries(long).flatMap(([name, answer]) => [name, ...turnsOf(80, answer).map((turn) => `  ${turn}`)]),
    ],
    'labels',
  );
});

it('characters folded, and the way back', async () => {
  const odd = [
    '’‘ʼ′',
    '″“”„',
    '−‐‑‒',
    '٠١٢٣٤٥٦٧٨٩',
    '۰۹०९₀₉',
    'ＡＢ１２！～',
    'ÀÉÎÕÜ ç ñ å ø ß Œ Ÿ İ ẞ',
    'a\u00adb\u200bc\u200fd\u202ae\u2060f\ufeffg\u0301h',
    '\u00a0\u2003\u202f\u3000x',
    '￡￥',
    'ẠḀ Ɏ ǅ',
    '',
    'é\u0301é',
  ];
  await keep(
    odd.map((said) => {
      const folded = text.foldWords(said);
      const back = Array.from({ length: folded.text.length }, (_, at) => text.sourceRange(folded, at, at + 1).start);
      return `${JSON.stringify(said)} ${JSON.stringify(folded.text)} ${back.join(' ')} ${JSON.stringify(text.foldText(said).text)} ${JSON.stringify(text.sourceRange(folded, 1, 1))} ${JSON.stringify(text.sourceRange(folded, 0, folded.text.length))}`;
    }),
    'characters',
  );
});
