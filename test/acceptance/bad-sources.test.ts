import { chmodSync, mkdtempSync, rmSync, truncateSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { readBytes } from '#apps/cli/read-file.ts'
import type { FaultCode } from '#faults/codes.ts'
import { Failure } from '#faults/failure.ts'
import { parseDay } from '#golf/course/parse-day.ts'
import { parsePlayer } from '#golf/player/parse-player.ts'
import { readSource } from '#outside/formats/read-source.ts'
import { expectPlain } from './expect-plain.ts'

const folder = mkdtempSync(join(tmpdir(), 'marram-bad-sources-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

function pathOf(name: string, content: string): string {
  const path = join(folder, name)
  writeFileSync(path, content)
  return path
}

function read(content: string | Uint8Array, name: string): unknown {
  return readSource(typeof content === 'string' ? new TextEncoder().encode(content) : content, name)
}

interface BadFile {
  readonly name: string
  readonly code: FaultCode
  /** A part of the place that must be named. */
  readonly where: string
  readonly work: () => unknown
}

const HEADER = 'hole,what,side,from_m,to_m,near_m,far_m,note\n'
const OSM_HEAD = '<?xml version="1.0"?>\n<osm version="0.6">\n'

const UNREADABLE: readonly BadFile[] = [
  {
    name: 'a file that does not exist',
    code: 'MAR-FILE-001',
    where: 'nowhere.osm',
    work: () => readBytes(join(folder, 'nowhere.osm')),
  },
  { name: 'a folder', code: 'MAR-FILE-002', where: folder, work: () => readBytes(folder) },
  {
    name: 'a file without read permission',
    code: 'MAR-FILE-002',
    where: '',
    work: () => {
      // The superuser may read everything, but not unmapped memory.
      if (process.getuid?.() === 0) return readBytes('/proc/self/mem')
      const path = pathOf('locked.osm', '<osm/>')
      chmodSync(path, 0)
      return readBytes(path)
    },
  },
  {
    name: 'an empty file',
    code: 'MAR-FILE-003',
    where: 'empty.osm',
    work: () => readBytes(pathOf('empty.osm', '')),
  },
  { name: 'no bytes', code: 'MAR-FILE-003', where: 'none.osm', work: () => read('', 'none.osm') },
  {
    name: 'nothing but blanks',
    code: 'MAR-FILE-003',
    where: 'blank.csv',
    work: () => read(' \n\n ', 'blank.csv'),
  },
  {
    name: 'a file of 200 MB',
    code: 'MAR-FILE-004',
    where: 'large.osm',
    work: () => {
      const path = pathOf('large.osm', '<osm>')
      truncateSync(path, 200 * 1024 * 1024)
      return readBytes(path)
    },
  },
  {
    name: 'a picture',
    code: 'MAR-FILE-005',
    where: 'photo.osm',
    work: () => read(new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0, 0, 0, 13]), 'photo.osm'),
  },
  {
    name: 'a packed file',
    code: 'MAR-FILE-005',
    where: 'map.osm.gz',
    work: () => read(new Uint8Array([0x1f, 0x8b, 8, 0, 0, 0]), 'map.osm.gz'),
  },
  {
    name: 'a letter instead of a map',
    code: 'MAR-FILE-007',
    where: 'letter.txt',
    work: () => read('Dear sir,\nthe seventh…', 'letter.txt'),
  },
  {
    name: 'other XML instead of a map',
    code: 'MAR-FILE-007',
    where: 'places.kml',
    work: () => read('<kml><Document/></kml>', 'places.kml'),
  },
  {
    name: 'XML that ends in the middle',
    code: 'MAR-IMPORT-001',
    where: 'cut.osm, line 4',
    work: () => read(`${OSM_HEAD}<way id="1">\n<nd ref="2"/>\n`, 'cut.osm'),
  },
  {
    name: 'XML that ends inside a tag',
    code: 'MAR-IMPORT-001',
    where: 'cut.osm, line 3',
    work: () => read(`${OSM_HEAD}<node id="1" lat="5`, 'cut.osm'),
  },
  {
    name: 'XML with crossed tags',
    code: 'MAR-IMPORT-001',
    where: 'crossed.osm, line 4',
    work: () => read(`${OSM_HEAD}<way id="1">\n</node></osm>`, 'crossed.osm'),
  },
  {
    name: 'XML with an unquoted attribute',
    code: 'MAR-IMPORT-001',
    where: 'raw.osm, line 3',
    work: () => read(`${OSM_HEAD}<node id=1/></osm>`, 'raw.osm'),
  },
  {
    name: 'ways without their nodes',
    code: 'MAR-IMPORT-003',
    where: 'ways.osm',
    work: () =>
      read(
        `${OSM_HEAD}<way id="1"><nd ref="2"/><nd ref="3"/><tag k="golf" v="hole"/></way></osm>`,
        'ways.osm',
      ),
  },
  {
    name: 'JSON that ends in the middle',
    code: 'MAR-IMPORT-002',
    where: 'cut.json, line 2',
    work: () => read('{"type": "FeatureCollection",\n"features": [', 'cut.json'),
  },
  {
    name: 'JSON with a stray word',
    code: 'MAR-IMPORT-002',
    where: 'stray.geojson, line 3',
    work: () => read('{\n"type":\nFeature}', 'stray.geojson'),
  },
  {
    name: 'a map reply with tags only',
    code: 'MAR-IMPORT-003',
    where: 'tags.json',
    work: () => read('{"elements":[{"type":"way","id":1,"tags":{"golf":"hole"}}]}', 'tags.json'),
  },
  {
    name: 'a map reply with centres only',
    code: 'MAR-IMPORT-003',
    where: 'center.json',
    work: () =>
      read(
        '{"elements":[{"type":"way","id":1,"center":{"lat":1,"lon":2},"tags":{"golf":"green"}}]}',
        'center.json',
      ),
  },
  {
    name: 'JSON that is no map',
    code: 'MAR-IMPORT-004',
    where: 'list.json',
    work: () => read('[1, 2, 3]', 'list.json'),
  },
  {
    name: 'a collection without features',
    code: 'MAR-IMPORT-004',
    where: 'bare.geojson',
    work: () => read('{"type":"FeatureCollection"}', 'bare.geojson'),
  },
  {
    name: 'projected coordinates',
    code: 'MAR-IMPORT-013',
    where: 'grid.geojson',
    work: () =>
      read(
        '{"type":"FeatureCollection","crs":{"type":"name","properties":{"name":"urn:ogc:def:crs:EPSG::27700"}},"features":[]}',
        'grid.geojson',
      ),
  },
  {
    name: 'a table without a header',
    code: 'MAR-IMPORT-015',
    where: 'rows.csv, line 1',
    work: () => read('1,bunker,left,200,210,10,20\n', 'rows.csv'),
  },
  {
    name: 'a table header without side',
    code: 'MAR-IMPORT-015',
    where: 'side.csv, line 1',
    work: () => read('hole,what,from_m,to_m,near_m,far_m\n', 'side.csv'),
  },
  {
    name: 'a table without units',
    code: 'MAR-IMPORT-016',
    where: 'units.csv, line 1',
    work: () => read('hole,what,side,from,to,near,far,note\n', 'units.csv'),
  },
  {
    name: 'a table in feet',
    code: 'MAR-IMPORT-016',
    where: 'feet.csv, line 1',
    work: () => read('hole,what,side,from_ft,to_ft,near_ft,far_ft,note\n', 'feet.csv'),
  },
  {
    name: 'a table separated by blanks',
    code: 'MAR-IMPORT-017',
    where: 'blanks.csv, line 1',
    work: () => read('hole what side from_m to_m near_m far_m\n', 'blanks.csv'),
  },
  {
    name: 'a table without rows',
    code: 'MAR-IMPORT-020',
    where: 'bare.csv',
    work: () => read(HEADER, 'bare.csv'),
  },
  {
    name: 'a player file that is not JSON',
    code: 'MAR-PLAYER-001',
    where: 'p.json',
    work: () => parsePlayer('name: Tam', 'p.json'),
  },
  {
    name: 'a player without a hand',
    code: 'MAR-PLAYER-003',
    where: 'hand',
    work: () => parsePlayer('{"schema":"player/1","name":"Tam","handicapIndex":12}', 'p.json'),
  },
  {
    name: 'a club with a negative carry',
    code: 'MAR-PLAYER-010',
    where: 'clubs[0].carry_m',
    work: () =>
      parsePlayer(
        '{"schema":"player/1","name":"Tam","hand":"left","clubs":[{"name":"driver","carry_m":-200}]}',
        'p.json',
      ),
  },
  {
    name: 'an unknown club',
    code: 'MAR-PLAYER-006',
    where: 'clubs[0]',
    work: () =>
      parsePlayer(
        '{"schema":"player/1","name":"Tam","hand":"left","clubs":[{"name":"spade","carry_m":200}]}',
        'p.json',
      ),
  },
  {
    name: 'a day file that is a list',
    code: 'MAR-DAY-001',
    where: 'd.json',
    work: () => parseDay('[]', 'd.json'),
  },
  {
    name: 'a day with a gale of 400 m/s',
    code: 'MAR-DAY-005',
    where: 'wind.speed_mps',
    work: () => parseDay('{"schema":"day/1","wind":{"speed_mps":400,"from_deg":0}}', 'd.json'),
  },
]

describe('a source that cannot be read', () => {
  it.each(UNREADABLE)('$name: $code', ({ code, where, work }) => {
    let failure: unknown
    try {
      work()
    } catch (error) {
      failure = error
    }
    expect(failure).toBeInstanceOf(Failure)
    if (!(failure instanceof Failure)) return
    expect(failure.code).toBe(code)
    expect(failure.where).toContain(where)
    expectPlain(failure.message)
  })
})
