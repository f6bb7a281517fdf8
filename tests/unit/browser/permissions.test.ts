import { describe, expect, it } from 'vitest';
import { hostPatterns } from '../../../src/browser/permissions';

describe('the hosts that are asked for', () => {
  it('are those of the photos, each once, without port, path or what is no web address', () => {
    const urls = [
      'https://photos.attic-arcade.example/1.jpg',
      'https://photos.attic-arcade.example:8443/2.jpg',
      'http://old.attic-arcade.example/3.jpg',
      'data:image/png;base64,AAAA',
      'blob:https://attic-arcade.example/4',
      'nothing',
    ];
    expect(hostPatterns(urls)).toEqual(['https://photos.attic-arcade.example/*', 'http://old.attic-arcade.example/*']);
  });
});
