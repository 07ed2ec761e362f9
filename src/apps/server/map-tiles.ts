import { Hono } from 'hono'
import { Failure } from '#faults/failure.ts'
import { LARGEST_TILE_BYTES, TILE_PATIENCE_MILLISECONDS, USUAL_MAP_ZOOM } from './settings.ts'

/** A map of square tiles in the Mercator projection of the web, as its owner lets it be used. */
export interface MapSource {
  /** Address of a tile with `{z}`, `{x}` and `{y}` in it. */
  readonly template: string
  /** What its owner wants said beside it. */
  readonly credit: string
  /** The nearest level that it has. */
  readonly zoom: number
}

/** Checks what was typed of a map. Throws MAR-USAGE-002 naming the option. */
export function mapSource(template: string, credit: string = '', zoom: number = USUAL_MAP_ZOOM): MapSource {
  const lacking = ['{z}', '{x}', '{y}'].filter((part) => !template.includes(part))
  if (lacking.length > 0)
    throw new Failure('MAR-USAGE-002', `The address of a map tile lacks ${lacking.join(' and ')}.`, '--map')
  const address = tileAddress(template, 0, 0, 0)
  const other = /\{[^}]*\}/.exec(address)?.[0]
  if (other !== undefined)
    throw new Failure('MAR-USAGE-002', `What ${other} stands for is not known; write it out.`, '--map')
  if (!/^https?:\/\//i.test(template) || !URL.canParse(address))
    throw new Failure('MAR-USAGE-002', 'The address of a map tile begins with http:// or https://.', '--map')
  const { username, password } = new URL(address)
  if (username !== '' || password !== '')
    throw new Failure('MAR-USAGE-002', 'The address of a map tile cannot hold a name or a password.', '--map')
  return { template, credit, zoom }
}

/**
 * Hands map tiles on to the page, which may talk to no server but this one; nothing of them is kept here. A browser keeps
 * them as long as their owner says.
 */
export function mapTiles(source: MapSource | null): Hono {
  const app = new Hono()
  app.get('/:z{\\d+}/:x{\\d+}/:y{\\d+}', async (context) => {
    const [z, x, y] = (['z', 'x', 'y'] as const).map((name) => Number(context.req.param(name))) as [
      number,
      number,
      number,
    ]
    const side = 2 ** z
    if (source === null || z > source.zoom || x >= side || y >= side)
      throw new Failure('MAR-SERVER-001', 'There is no such tile.', context.req.path)
    const address = tileAddress(source.template, z, x, y)
    const { bytes, headers } = await fetchTile(address, context.req.raw)
    return bytes === null ? context.body(null, 304, headers) : context.body(bytes, 200, headers)
  })
  return app
}

function tileAddress(template: string, z: number, x: number, y: number): string {
  return template.replaceAll('{z}', String(z)).replaceAll('{x}', String(x)).replaceAll('{y}', String(y))
}

/** A picture, or `null` where what the browser has is still good. Throws MAR-SERVER-017 when the map's server gives no picture. */
async function fetchTile(
  address: string,
  asked: Request,
): Promise<{ readonly bytes: Uint8Array<ArrayBuffer> | null; readonly headers: Record<string, string> }> {
  try {
    const signal = AbortSignal.any([asked.signal, AbortSignal.timeout(TILE_PATIENCE_MILLISECONDS)])
    const known = asked.headers.get('If-None-Match')
    const response = await fetch(address, {
      signal,
      headers: { 'User-Agent': 'Marram', ...(known === null ? {} : { 'If-None-Match': known }) },
    })
    const tag = response.headers.get('ETag')
    const headers = {
      'Cache-Control': response.headers.get('Cache-Control') ?? 'no-cache',
      ...(tag === null ? {} : { ETag: tag }),
    }
    if (known !== null && response.status === 304) return { bytes: null, headers }
    const type = response.headers.get('Content-Type') ?? ''
    const bytes = response.ok && PICTURES.test(type) ? await upTo(LARGEST_TILE_BYTES, response) : null
    if (bytes !== null) return { bytes, headers: { 'Content-Type': type, ...headers } }
    await response.body?.cancel()
  } catch {
    // Said below: that it cannot be reached and that it gives something else come to the same.
  }
  throw new Failure('MAR-SERVER-017', 'The map does not give this tile.', new URL(asked.url).pathname)
}

/** What was answered; `null` once it is longer than so many bytes, of which no more are read. */
async function upTo(most: number, response: Response): Promise<Uint8Array<ArrayBuffer> | null> {
  const pieces: Uint8Array[] = []
  let size = 0
  for await (const piece of response.body ?? []) {
    size += piece.byteLength
    if (size > most) return null
    pieces.push(piece)
  }
  return new Uint8Array(Buffer.concat(pieces))
}

/** Pictures that hold no script. */
const PICTURES = /^image\/(?:png|jpeg|webp|gif)\b/i
