import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http'

/** Files of a site held in memory, by address without the leading slash. */
export type SiteFiles = ReadonlyMap<string, string | Uint8Array>

export interface SiteServer {
  /** `http://127.0.0.1:8080/` */
  readonly address: string
  readonly server: Server
  /** Shows a new site and tells open pages to load themselves again. */
  readonly show: (files: SiteFiles) => void
  readonly close: () => Promise<void>
}

const types: Readonly<Record<string, string>> = {
  html: 'text/html; charset=utf-8',
  css: 'text/css; charset=utf-8',
  js: 'text/javascript; charset=utf-8',
  json: 'application/json; charset=utf-8',
  svg: 'image/svg+xml',
  png: 'image/png',
  jpg: 'image/jpeg',
  jpeg: 'image/jpeg',
  webp: 'image/webp',
  gif: 'image/gif',
  csv: 'text/csv; charset=utf-8',
  txt: 'text/plain; charset=utf-8',
}

/** Serves a site on the loopback interface only. A port that is taken is a rejected promise; port 0 takes a free one. */
export function serveFolder(first: SiteFiles, port: number): Promise<SiteServer> {
  let files = first
  const listeners = new Set<ServerResponse>()
  const server = createServer((request, response) => {
    if (request.url === '/-/changes') listen(response, listeners)
    else answer(request, response, files)
  })
  return new Promise((resolve, reject) => {
    server.once('error', reject)
    server.listen(port, '127.0.0.1', () => {
      const bound = server.address()
      const address = `http://127.0.0.1:${typeof bound === 'object' && bound !== null ? bound.port : port}/`
      const show = (next: SiteFiles): void => {
        files = next
        for (const listener of listeners) listener.write('data: changed\n\n')
      }
      resolve({ address, server, show, close: () => closeServer(server, listeners) })
    })
  })
}

function listen(response: ServerResponse, listeners: Set<ServerResponse>): void {
  response.writeHead(200, { 'content-type': 'text/event-stream', 'cache-control': 'no-store' })
  response.write(': open\n\n')
  listeners.add(response)
  response.on('close', () => listeners.delete(response))
}

function answer(request: IncomingMessage, response: ServerResponse, files: SiteFiles): void {
  const path = pathOf(request.url ?? '/')
  const name = path === null ? '' : path === '' || path.endsWith('/') ? `${path}index.html` : path
  const content = files.get(name)
  if (content !== undefined) {
    send(request, response, { name, content })
    return
  }
  if (files.has(`${name}/index.html`)) {
    response.writeHead(302, { location: `/${encodeURI(name)}/` })
    response.end()
    return
  }
  response.writeHead(404, { 'content-type': 'text/plain; charset=utf-8' })
  response.end('No such page in this record.\n')
}

function send(
  request: IncomingMessage,
  response: ServerResponse,
  file: { name: string; content: string | Uint8Array },
): void {
  const type = types[file.name.split('.').at(-1)?.toLowerCase() ?? ''] ?? 'application/octet-stream'
  response.writeHead(200, { 'content-type': type, 'cache-control': 'no-store', 'x-content-type-options': 'nosniff' })
  response.end(request.method === 'HEAD' ? undefined : file.content)
}

function pathOf(url: string): string | null {
  try {
    return decodeURIComponent(new URL(url, 'http://127.0.0.1').pathname).replace(/^\/+/, '')
  } catch {
    return null
  }
}

function closeServer(server: Server, listeners: Set<ServerResponse>): Promise<void> {
  for (const listener of listeners) listener.end()
  return new Promise(resolve => {
    server.close(() => resolve())
    server.closeAllConnections()
  })
}
