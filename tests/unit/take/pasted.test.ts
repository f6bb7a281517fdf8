import { describe, expect, it } from 'vitest';
import { pageOfText } from '../../../src/take';
import { takeHtml } from '../../take-pages/score';
import { compact } from './compact';

const told = (...lines: string[]): string[] => takeHtml(pageOfText(lines.join('\n'))).map(compact);

describe('text that was copied and pasted', () => {
  it('has a heading in its first line, paragraphs between empty lines, and no mark-up of its own', () => {
    expect(pageOfText('Codes of <Wexmoor>\n\nAB & CD\nare places.\r\n\r\nThe end.')).toBe(
      '<title>Codes of &#60;Wexmoor&#62;</title><h1>Codes of &#60;Wexmoor&#62;</h1><p>AB &#38; CD<br>are places.</p><p>The end.</p>',
    );
  });

  it('is a table where tabs part its cells, as copying one leaves them', () => {
    expect(
      told('Codes of Wexmoor', '', 'Letters\tWorkshop\tYears', 'TR\tTruro\t1958–1990', 'LG\tLugo, Spain\tsince 1991'),
    ).toEqual(['plant | TR | ZZ | Truro | 1958–1990', 'plant | LG | ES | Lugo | 1991–']);
    expect(pageOfText('Model\tWidth\nFell\t20')).toBe(
      '<table><tr><th>Model</th><th>Width</th></tr><tr><td>Fell</td><td>20</td></tr></table>',
    );
  });

  it('is a list where lines begin with bullets', () => {
    expect(told('Werke von Hohlbeck', '• HB: Hohlbach', '• TS = Tschechien (ab 1994)')).toEqual([
      'plant | HB | ZZ | Hohlbach',
      'plant | TS | CZ | 1994–',
    ]);
  });

  it('joins words parted at the end of a line, and leaves out lines that only count pages', () => {
    expect(
      told(
        'Codes of Wexmoor',
        'The letters name the work-',
        'shop. TR stands for Truro.',
        '- 3 -',
        'Page 4 of 12',
        '',
        'LG stands for Lugo, Spain.',
      ),
    ).toEqual(['plant | TR | ZZ | Truro', 'plant | LG | ES | Lugo']);
  });

  it('is nothing where it is empty', () => {
    expect(takeHtml(pageOfText(' \n\t\n'))).toEqual([]);
  });
});
