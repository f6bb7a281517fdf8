import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';

export type Answer = (request: IncomingMessage, response: ServerResponse) => void;

/** A host of a test's own on loopback, whose answers can be anything: led elsewhere, without end, to be kept. */
export interface PhotoHost {
  port: number;
  /** What was asked, in order: the path, and the cookies that came along. */
  asked: { path: string; cookie: string | undefined }[];
  /** Answers a path, with its leading slash. */
  on(path: string, answer: Answer): void;
  close(): Promise<void>;
}

export async function startPhotoHost(): Promise<PhotoHost> {
  const answers = new Map<string, Answer>();
  const asked: PhotoHost['asked'] = [];
  const server = createServer((request, response) => {
    const path = new URL(request.url ?? '/', 'http://127.0.0.1').pathname;
    asked.push({ path, cookie: request.headers.cookie });
    const answer = answers.get(path);
    if (answer) answer(request, response);
    else response.writeHead(404).end();
  });
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  return {
    port: (server.address() as AddressInfo).port,
    asked,
    on: (path, answer) => answers.set(path, answer),
    close: () =>
      new Promise((closed) => {
        server.close(() => closed());
        server.closeAllConnections();
      }),
  };
}

/** A file as any server gives it: one that every cache may keep. `crossOrigin` lets scripts of other sites have it. */
export const file =
  (type: string, body: string | Uint8Array, { crossOrigin = false } = {}): Answer =>
  (_, response) => {
    response.writeHead(200, {
      'content-type': type,
      'cache-control': 'public, max-age=31536000, immutable',
      ...(crossOrigin && { 'access-control-allow-origin': '*' }),
    });
    response.end(body);
  };

/** Leads on to another address, in a way that scripts of other sites may follow. */
export const leadTo =
  (location: string): Answer =>
  (_, response) => {
    response.writeHead(302, { location, 'access-control-allow-origin': '*' }).end();
  };

/** A page, read anew each time. */
export const pageOf =
  (html: string): Answer =>
  (_, response) => {
    response.writeHead(200, { 'content-type': 'text/html; charset=utf-8', 'cache-control': 'no-store' }).end(html);
  };

/** A file that never ends, given as fast as it is taken; `tell` hears how many bytes went out when the other side left. */
export const withoutEnd =
  (tell: (bytes: number) => void, { crossOrigin = false } = {}): Answer =>
  (_, response) => {
    const part = Buffer.alloc(256 * 1024, 7);
    let given = 0;
    response.writeHead(200, {
      'content-type': 'image/jpeg',
      ...(crossOrigin && { 'access-control-allow-origin': '*' }),
    });
    response.on('close', () => tell(given));
    const more = () => {
      while (!response.destroyed) {
        given += part.length;
        if (!response.write(part)) return response.once('drain', more);
      }
      return response;
    };
    more();
  };
