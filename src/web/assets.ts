/** Serves the built screen: only files listed at the start can be had, so no address leads out of their folder. */
import { readdir, readFile } from 'node:fs/promises';
import type { ServerResponse } from 'node:http';
import { extname, join, relative, sep } from 'node:path';

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ttf': 'font/ttf',
  '.woff2': 'font/woff2',
};

export interface Assets {
  /** Answers with the file at this address, or says false. */
  send(pathname: string, response: ServerResponse): Promise<boolean>;
}

/** @throws when the folder is missing: the screen has not been built. */
export async function listAssets(folder: string): Promise<Assets> {
  const found = await readdir(folder, { withFileTypes: true, recursive: true });
  const files = new Map(
    found
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name))
      .map((path) => [`/${relative(folder, path).split(sep).join('/')}`, path]),
  );
  return {
    send: async (pathname, response) => {
      const path = files.get(pathname === '/' ? '/index.html' : pathname);
      if (path === undefined) return false;
      const bytes = await readFile(path);
      response.writeHead(200, { 'content-type': types[extname(path)] ?? 'application/octet-stream' }).end(bytes);
      return true;
    },
  };
}
