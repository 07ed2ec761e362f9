import { Hono } from 'hono'
import { Failure } from '#faults/failure.ts'
import { LARGEST_TILE_BYTES, MOST_MAP_ZOOM, TILE_PATIENCE_MILLISECONDS } from './settings.ts'

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
export function mapSource(template: string, credit: string = '', zoom: number = MOST_MAP_ZOOM): MapSource {
  const lacking = ['{z}', '{x}', '{y}'].filter((part) => !template.includes(part))
  if (lacking.length > 0)
    throw new Failure('MAR-USAGE-002', `The address of a map tile lacks ${lacking.join(' and ')}.`, '--map')
  if (!/^https?:\/\//i.test(template) || !URL.canParse(tileAddress(template, 0, 0, 0)))
    throw new Failure('MAR-USAGE-002', 'The address of a map tile begins with http:// or https://.', '--map')
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
    const { bytes, headers } = await fetchTile(tileAddress(source.template, z, x, y), context.req.path)
    return context.body(bytes, 200, headers)
  })
  return app
}

function tileAddress(template: string, z: number, x: number, y: number): string {
  return template.replaceAll('{z}', String(z)).replaceAll('{x}', String(x)).replaceAll('{y}', String(y))
}

/** Throws MAR-SERVER-017 when the map's server gives no picture. */
async function fetchTile(
  address: string,
  path: string,
): Promise<{ readonly bytes: ArrayBuffer; readonly headers: Record<string, string> }> {
  try {
    const response = await fetch(address, { signal: AbortSignal.timeout(TILE_PATIENCE_MILLISECONDS) })
    const type = response.headers.get('Content-Type') ?? ''
    const bytes = await response.arrayBuffer()
    const kept = response.headers.get('Cache-Control') ?? 'no-cache'
    if (response.ok && PICTURES.test(type) && bytes.byteLength <= LARGEST_TILE_BYTES)
      return { bytes, headers: { 'Content-Type': type, 'Cache-Control': kept } }
  } catch {
    // Said below: that it cannot be reached and that it gives something else come to the same.
  }
  throw new Failure('MAR-SERVER-017', 'The map does not give this tile.', path)
}

/** Pictures that hold no script. */
const PICTURES = /^image\/(?:png|jpeg|webp|gif)\b/i
