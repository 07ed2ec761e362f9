import { Hono } from 'hono'
import { compress } from 'hono/compress'
import { secureHeaders } from 'hono/secure-headers'
import { Failure } from '#faults/failure.ts'
import type { Store } from '#outside/store/store.ts'
import { answerFailure } from './answer-failure.ts'
import { deskPages } from './desk-pages.ts'
import { DOCUMENT_KINDS, type DocumentCheck, type DocumentKind } from './document-check.ts'
import { documentRoutes } from './document-routes.ts'
import { guardHost } from './guard-host.ts'
import { type MapSource, mapTiles } from './map-tiles.ts'

/** What the server's addresses stand on. */
export interface ServerParts {
  readonly store: Store
  /** The host the server listens on, which decides what a request may call it. */
  readonly host: string
  /** The folder of the built pages. */
  readonly webRoot: string
  readonly checks: Readonly<Record<DocumentKind, DocumentCheck>>
  /** A map to trace over; none unless given. */
  readonly map?: MapSource | undefined
  /** Told of every defect; nothing of it is answered. */
  readonly report: (defect: unknown) => void
}

/** Every address of the server as one function from request to answer. */
export function serverApp({ store, host, webRoot, checks, map, report }: ServerParts): Hono {
  const app = new Hono()
  app.use(secureHeaders(SECURITY_HEADERS))
  app.use(guardHost(host))

  app.use('/api/*', async (context, next) => {
    await next()
    // Pupils' data stays out of the browser's cache: the page keeps its copies itself, and lets go of them itself.
    context.res.headers.set('Cache-Control', 'no-store')
  })
  // A course packs to a quarter. Its mark names the revision and not the bytes, so it stays as a change has to name it.
  app.use('/api/*', async (context, next) => {
    await compress()(context, next)
    const mark = context.res.headers.get('ETag')
    if (mark !== null) context.res.headers.set('ETag', mark.replace(/^W\//, ''))
  })
  app.get('/api/health', async (context) => {
    const counts: Partial<Record<DocumentKind, number>> = {}
    for (const kind of DOCUMENT_KINDS) counts[kind] = (await store[kind].list()).length
    return context.json({ status: 'ok', documents: counts })
  })
  for (const kind of DOCUMENT_KINDS)
    app.route(`/api/${kind}`, documentRoutes(kind, store[kind], checks[kind]))
  app.get('/api/map', (context) => context.json({ map: map ? { credit: map.credit, zoom: map.zoom } : null }))
  app.all('/api/*', (context) => {
    throw nothingAt(context.req.path)
  })

  app.route('/map', mapTiles(map ?? null))
  app.route('/', deskPages(webRoot))
  app.notFound((context) => answerFailure(nothingAt(context.req.path), context, report))
  app.onError((error, context) => answerFailure(error, context, report))
  return app
}

/**
 * Own scripts, workers, styles and pictures only; nothing from or to another place. Style attributes are allowed
 * because the drawings carry them; style elements and inline scripts are not.
 */
const SECURITY_HEADERS: Parameters<typeof secureHeaders>[0] = {
  contentSecurityPolicy: {
    defaultSrc: ["'none'"],
    // The solver's kernel is compiled from bytes that an own script holds; no text becomes code.
    scriptSrc: ["'self'", "'wasm-unsafe-eval'"],
    workerSrc: ["'self'"],
    styleSrc: ["'self'"],
    styleSrcAttr: ["'unsafe-inline'"],
    imgSrc: ["'self'", 'data:', 'blob:'],
    fontSrc: ["'self'"],
    connectSrc: ["'self'"],
    manifestSrc: ["'self'"],
    baseUri: ["'none'"],
    formAction: ["'self'"],
    frameAncestors: ["'none'"],
  },
  // Kept apart from every other site, the page may share memory with its workers, through which it stops their plans.
  crossOriginEmbedderPolicy: 'require-corp',
  crossOriginOpenerPolicy: 'same-origin',
  // The desk is reached over plain HTTP on the own machine.
  strictTransportSecurity: false,
  xFrameOptions: 'DENY',
}

function nothingAt(path: string): Failure {
  return new Failure('MAR-SERVER-001', 'There is nothing at this address.', path)
}
