import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { requestPhoto } from '../../../../src/reader/photo/request-photo';

let server: Server;
let answer: (request: IncomingMessage, response: ServerResponse) => void;
const asked: string[] = [];
let url: string;

beforeEach(async () => {
  asked.length = 0;
  server = createServer((request, response) => {
    asked.push(request.url ?? '');
    answer(request, response);
  });
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  url = `http://127.0.0.1:${(server.address() as AddressInfo).port}/photo`;
});
afterEach(
  () =>
    new Promise<void>((closed) => {
      server.close(() => closed());
      server.closeAllConnections();
    }),
);

const request = { credentials: 'omit', withinMs: 20_000 } as const;

/** Sends a body without end, as fast as it is taken; the promise ends with the connection and tells the bytes given. */
function sendWithoutEnd(response: ServerResponse): Promise<number> {
  const part = Buffer.alloc(64 * 1024, 7);
  let given = 0;
  return new Promise((ended) => {
    const more = () => {
      while (!response.destroyed) {
        given += part.length;
        if (!response.write(part)) {
          response.once('drain', more);
          return;
        }
      }
    };
    response.on('close', () => ended(given));
    more();
  });
}

describe('a photo that is asked for', () => {
  it('comes whole, with the type that the server says', async () => {
    answer = (_, response) => {
      response.writeHead(200, { 'content-type': 'image/jpeg' });
      response.write('first ');
      response.end('second');
    };
    const photo = await requestPhoto(url, request);
    if (!photo.ok) throw new Error(photo.problem.code);
    expect(photo.value.type).toBe('image/jpeg');
    expect(await photo.value.text()).toBe('first second');
  });

  it('without end is ended at the limit, and the server is told to stop', async () => {
    const mostBytes = 1_000_000;
    const given = new Promise<number>((tell) => {
      answer = (_, response) => {
        response.writeHead(200, { 'content-type': 'image/jpeg' });
        sendWithoutEnd(response).then(tell);
      };
    });
    expect(await requestPhoto(url, { ...request, mostBytes })).toMatchObject({ problem: { code: 'photo-too-large' } });
    // What lay in the pipes between the two comes on top.
    expect(await given).toBeLessThan(mostBytes + 16_000_000);
  });

  it('is not begun where the server says that it is larger than the limit', async () => {
    answer = (_, response) => {
      response.writeHead(200, { 'content-type': 'image/jpeg', 'content-length': '30000000' });
      response.write('first');
    };
    expect(await requestPhoto(url, request)).toMatchObject({ problem: { code: 'photo-too-large' } });
  });

  it.each([
    ['that never answers', () => {}],
    [
      'whose body never ends',
      (response: ServerResponse) => {
        response.writeHead(200, { 'content-type': 'image/jpeg' });
        response.write('first');
      },
    ],
  ])('from a server %s is late', async (_, act) => {
    answer = (_request, response) => act(response);
    expect(await requestPhoto(url, { ...request, withinMs: 150 })).toMatchObject({ problem: { code: 'photo-late' } });
  });

  it.each([301, 302, 303, 307, 308])('at an address that leads on (%i) is not followed', async (status) => {
    answer = (_, response) => {
      response.writeHead(status, { location: '/inside' });
      response.end();
    };
    expect(await requestPhoto(url, request)).toMatchObject({ problem: { code: 'photo-redirected' } });
    expect(asked).toEqual(['/photo']);
  });

  it('that is gone, and one that comes as a drawing, are told apart', async () => {
    answer = (_, response) => {
      response.writeHead(404, { 'content-type': 'image/jpeg' });
      response.end('no');
    };
    expect(await requestPhoto(url, request)).toMatchObject({ problem: { code: 'photo-missing' } });
    answer = (_, response) => {
      response.writeHead(200, { 'content-type': 'image/svg+xml' });
      response.end('<svg/>');
    };
    expect(await requestPhoto(url, request)).toMatchObject({ problem: { code: 'photo-is-drawing' } });
  });
});
