import { join } from 'node:path'
import { mapSource } from '#apps/server/map-tiles.ts'
import { MOST_MAP_ZOOM } from '#apps/server/settings.ts'
import { startServer } from '#apps/server/start-server.ts'
import { Failure } from '#faults/failure.ts'
import type { GlobalOptions, Machine } from './machine.ts'
import { parseCount } from './parse-values.ts'
import { printJson, printLines } from './print-answer.ts'

/** The options of `marram serve`. */
export interface ServeOptions extends GlobalOptions {
  readonly port?: string
  readonly host?: string
  readonly store?: string
  readonly map?: string
  readonly mapCredit?: string
  readonly mapZoom?: string
}

/** `marram serve`: the hole desk, until the process is told to stop. Returns the exit code. */
export async function serveCommand(options: ServeOptions, machine: Machine): Promise<number> {
  const { map, mapCredit, mapZoom } = options
  if (map === undefined && (mapCredit !== undefined || mapZoom !== undefined))
    throw new Failure('MAR-USAGE-002', 'Which map? Give the address of its tiles as well: --map.', '--map')
  const zoom = mapZoom === undefined ? undefined : parseCount(mapZoom, '--map-zoom', 1, MOST_MAP_ZOOM)
  const server = await startServer({
    ...(map === undefined ? {} : { map: mapSource(map, mapCredit, zoom) }),
    ...(options.port === undefined ? {} : { port: parseCount(options.port, '--port', 1, 65_535) }),
    ...(options.host === undefined ? {} : { host: options.host }),
    storePath: options.store ?? join(machine.home, '.marram/store.db'),
    webRoot: join(machine.home, 'dist/web'),
    examplesFolder: join(machine.home, 'examples'),
  })
  if (options.json) printJson({ schema: 'serve/1', address: server.address }, machine)
  else
    printLines(
      [options.quiet ? server.address : `The hole desk is at ${server.address}  (stop with Ctrl-C)`],
      machine,
    )
  await new Promise<void>((resolve) => {
    process.once('SIGINT', resolve)
    process.once('SIGTERM', resolve)
  })
  await server.close()
  return 0
}
