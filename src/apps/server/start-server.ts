import { createServer, type Server } from 'node:http'
import { getRequestListener } from '@hono/node-server'
import { Failure } from '#faults/failure.ts'
import { openStore } from '#outside/store/open-store.ts'
import { documentChecks } from './document-checks.ts'
import { listenOnFreePort } from './listen-on-free-port.ts'
import type { MapSource } from './map-tiles.ts'
import { putSamples } from './put-samples.ts'
import { serverApp } from './server-app.ts'
import { CLOSING_GRACE_MILLISECONDS, CLOSING_LOOK_MILLISECONDS, DEFAULT_PORT } from './settings.ts'

/** What a server is started with. */
export interface ServerOptions {
  /** The first port to try, 4173 unless given; 0 takes any free one. */
  readonly port?: number
  /** The address to listen on, 127.0.0.1 unless given: this machine only. */
  readonly host?: string
  /** The file of the store; made if there is none. */
  readonly storePath: string
  /** The folder of the hole desk's built pages. Without them only the API answers. */
  readonly webRoot: string
  /** When given, an empty store gets the sample documents of this folder. */
  readonly examplesFolder?: string
  /** A map to trace holes over, as `mapSource` gives it. */
  readonly map?: MapSource
  /** Told of every defect of the server; standard error unless given. */
  readonly report?: (defect: unknown) => void
}

/** A server that answers. */
export interface RunningServer {
  /** What to open in the browser: `http://127.0.0.1:4173/`. */
  readonly address: string
  readonly port: number
  /** Lets answers under way finish, then lets go of port and store. Closing twice is harmless. */
  close(): Promise<void>
}

/**
 * Opens the store and answers requests on the first free port. A change is answered only after the disk has it.
 * Throws Failure MAR-STORE-00x when the store cannot be opened, MAR-SERVER-010 when no port is free and
 * MAR-SERVER-011 when the address cannot be listened on.
 */
export async function startServer(options: ServerOptions): Promise<RunningServer> {
  const { port = DEFAULT_PORT, host = '127.0.0.1', storePath, webRoot, report = console.error } = options
  const store = await openStore(storePath)
  try {
    if (options.examplesFolder !== undefined) await putSamples(store, options.examplesFolder)
    const app = serverApp({ store, host, webRoot, checks: documentChecks, map: options.map, report })
    const listener = getRequestListener(app.fetch, { errorHandler: badRequest, overrideGlobalObjects: false })
    const server = createServer((incoming, outgoing) => void listener(incoming, outgoing))
    const taken = await listenOnFreePort(server, host, port)
    let closing: Promise<void> | null = null
    return {
      address: `http://${host.includes(':') ? `[${host}]` : host}:${taken}/`,
      port: taken,
      close() {
        closing ??= closeServer(server).then(() => store.close())
        return closing
      },
    }
  } catch (error) {
    await store.close()
    throw error
  }
}

/** What is not even a request, such as a Host that no address can have. */
function badRequest(): Response {
  const { code, message, where } = new Failure('MAR-SERVER-002', 'The request is malformed.')
  return Response.json({ error: { code, message, where } }, { status: 400 })
}

async function closeServer(server: Server): Promise<void> {
  const closed = new Promise((resolve) => server.close(resolve))
  // Browsers keep connections open for the next request: each goes as soon as its answer is through.
  const idling = setInterval(() => server.closeIdleConnections(), CLOSING_LOOK_MILLISECONDS)
  const hurry = setTimeout(() => server.closeAllConnections(), CLOSING_GRACE_MILLISECONDS)
  await closed
  clearInterval(idling)
  clearTimeout(hurry)
}
