import { readFile } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';

const site = fileURLToPath(new URL('./site/', import.meta.url));

const types: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json',
  '.jpg': 'image/jpeg',
  '.png': 'image/png',
  '.webp': 'image/webp',
  '.svg': 'image/svg+xml',
};

/** An answer made by a test instead of a file: status, type and body; `never` keeps the browser waiting. */
export type MadeAnswer =
  | {
      status?: number;
      type: string;
      body: string | Uint8Array /** The body is sent and the answer never ends. */;
      unended?: boolean;
    }
  | 'never';

export interface Market {
  /** Address of the site, with a slash at its end. */
  url: string;
  /** Paths that were asked for, in order. */
  asked: string[];
  /** Serves an answer of a test's own under a path, without its leading slash. */
  make(path: string, answer: MadeAnswer): void;
  close(): Promise<void>;
}

/** Serves the demo marketplace on loopback under a port that is free. */
export async function startMarket(port = 0): Promise<Market> {
  const made = new Map<string, MadeAnswer>();
  const asked: string[] = [];
  const server = createServer(async (request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://127.0.0.1');
    asked.push(pathname);
    const answer = made.get(pathname.slice(1)) ?? (await readSite(pathname));
    if (answer === 'never') return;
    response.writeHead(answer.status ?? 200, { 'content-type': answer.type, 'cache-control': 'no-store' });
    if (answer.unended) response.write(answer.body);
    else response.end(answer.body);
  });
  await new Promise<void>((listening) => server.listen(port, '127.0.0.1', listening));
  const { port: chosen } = server.address() as AddressInfo;
  return {
    url: `http://127.0.0.1:${chosen}/`,
    asked,
    make: (path, answer) => made.set(path, answer),
    close: () => closeServer(server),
  };
}

async function readSite(pathname: string): Promise<Exclude<MadeAnswer, 'never'>> {
  const path = normalize(join(site, decodeURIComponent(pathname === '/' ? '/index.html' : pathname)));
  const nothing = { status: 404, type: 'text/plain', body: 'There is nothing here.' };
  if (!path.startsWith(site)) return nothing;
  try {
    return { type: types[extname(path)] ?? 'application/octet-stream', body: await readFile(path) };
  } catch {
    return nothing;
  }
}

/** Ends also what waits for an answer that never comes. */
const closeServer = (server: Server) =>
  new Promise<void>((closed) => {
    server.close(() => closed());
    server.closeAllConnections();
  });
