import { readFileSync } from 'node:fs'
import geodesic from 'geographiclib-geodesic'
import { describe, expect, it } from 'vitest'
import { type AssembledCourse, assembleCourse } from '#golf/course/assemble-course.ts'
import { encodeCourse } from '#golf/course/encode-course.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import { polygonContains } from '#numbers/geometry/polygon.ts'
import { readSource } from '#outside/formats/read-source.ts'

const FOLDER = new URL('../fixtures/courses/', import.meta.url)

function readText(name: string): string {
  return readFileSync(new URL(name, FOLDER), 'utf8')
}

function importFile(name: string): AssembledCourse {
  const reading = readSource(readFileSync(new URL(name, FOLDER)), name)
  const { course, report, faults } = assembleCourse(reading.features, reading)
  return { course, report, faults: [...reading.faults, ...faults] }
}

/** Length on the WGS 84 ellipsoid by GeographicLib (C. F. F. Karney, Algorithms for geodesics, 2013), metres. */
function geodesicLength(positions: readonly (readonly number[])[]): number {
  let length = 0
  for (const [index, b] of positions.entries()) {
    const a = positions[index - 1]
    if (a) length += geodesic.Geodesic.WGS84.Inverse(a[1]!, a[0]!, b[1]!, b[0]!).s12!
  }
  return length
}

/** A second, plain reading of OSM XML, so that the importer is not its own judge. */
function plainWays(xml: string): { id: string; tags: Map<string, string>; positions: [number, number][] }[] {
  const nodes = new Map(
    [...xml.matchAll(/<node id="(\d+)"[^>]*? lat="([^"]+)" lon="([^"]+)"/g)].map(([, id, lat, lon]) => [
      id!,
      [Number(lat), Number(lon)].reverse() as [number, number],
    ]),
  )
  return [...xml.matchAll(/<way id="(\d+)"[\s\S]*?<\/way>/g)].map(([text, id]) => ({
    id: `way/${id}`,
    tags: new Map(
      [...text.matchAll(/<tag k="([^"]+)" v="([^"]*)"/g)].map(([, key, value]) => [key!, value!]),
    ),
    positions: [...text.matchAll(/<nd ref="(\d+)"/g)].map(([, ref]) => nodes.get(ref!)!),
  }))
}

describe('a full course of open map data (albany-bahamas.osm, © OpenStreetMap contributors, ODbL 1.0)', () => {
  const { course, report, faults } = importFile('albany-bahamas.osm')
  const xml = readText('albany-bahamas.osm')
  const ways = plainWays(xml)

  it('has 18 holes, not 19: the line on the driving range with ref 0 is set aside with its reason', () => {
    expect(ways.filter((way) => way.tags.get('golf') === 'hole')).toHaveLength(19)
    expect(course.holes.map((hole) => hole.ref)).toEqual(
      Array.from({ length: 18 }, (_, index) => String(index + 1)),
    )
    const aside = report.ignored.filter((item) => item.what === 'golf=hole')
    expect(aside).toEqual([
      { id: 'way/440119242', what: 'golf=hole', reason: 'ref 0 is no hole number from 1 to 36' },
    ])
    expect(faults.filter((fault) => fault.code === 'MAR-IMPORT-006')).toHaveLength(1)
  })

  it('has every length within 0.5 m of the geodesic length of its line', () => {
    for (const hole of report.holes) {
      const way = ways.find((candidate) => candidate.id === hole.id)!
      expect(Math.abs(hole.lengthMetres - geodesicLength(way.positions))).toBeLessThan(0.5)
    }
    const worst = Math.max(
      ...report.holes.map((hole) =>
        Math.abs(hole.lengthMetres - geodesicLength(ways.find((way) => way.id === hole.id)!.positions)),
      ),
    )
    expect(worst).toBeLessThan(0.001)
  })

  it('takes par from the names, since no tag gives it, and asks for hole 17', () => {
    for (const hole of report.holes) {
      const way = ways.find((candidate) => candidate.id === hole.id)!
      expect(way.tags.has('par')).toBe(false)
      const written = /\(Par (\d)\)/.exec(way.tags.get('name') ?? '')?.[1]
      expect(hole.par).toBe(written === undefined ? null : Number(written))
      expect(hole.parFrom).toBe(written === undefined ? 'asked' : 'name')
    }
    expect(report.holes.filter((hole) => hole.par === null).map((hole) => hole.ref)).toEqual(['17'])
    expect(report.missing).toEqual(['Par is missing on hole 17.'])
    expect(faults.filter((fault) => fault.code === 'MAR-IMPORT-010').map((fault) => fault.place)).toEqual([
      'hole 17',
    ])
  })

  it('finds the green on which each line ends, and that holes 6 and 13 share one', () => {
    for (const hole of course.holes) {
      const found = report.holes.find((item) => item.ref === hole.ref)!
      const green = course.areas.find((area) => area.id === found.green)!
      expect(green.ground).toBe('green')
      expect(polygonContains(green.polygon, hole.line.at(-1)!)).toBe(true)
    }
    expect(report.sharedGreens.map((shared) => shared.holes)).toEqual([['6', '13']])
  })

  it('stands every hole on the tee that names it', () => {
    for (const hole of report.holes) {
      const tee = course.tees.find((item) => item.id === hole.tees[0])!
      expect(tee.holes).toEqual([hole.ref])
      const start = course.holes.find((item) => item.ref === hole.ref)!.line[0]!
      expect(Math.hypot(tee.position[0] - start[0], tee.position[1] - start[1])).toBeLessThan(0.01)
    }
  })

  it('accounts for every bunker and every water: owned by a hole, listed as owned by none, or left out with a reason', () => {
    const isSand = (tags: Map<string, string>): boolean => tags.get('golf') === 'bunker'
    const isWater = (tags: Map<string, string>): boolean =>
      tags.get('natural') === 'water' || (tags.get('golf') ?? '').endsWith('water_hazard')
    const sand = ways.filter((way) => isSand(way.tags))
    const water = ways.filter((way) => isWater(way.tags))
    expect(sand).toHaveLength(47)
    expect(water).toHaveLength(10)
    const owned = new Set(report.holes.flatMap((hole) => hole.hazards))
    const unowned = new Set(report.unownedHazards.map((hazard) => hazard.id))
    const ignored = new Set(report.ignored.map((item) => item.id))
    for (const { id } of [...sand, ...water]) {
      expect([owned.has(id), unowned.has(id), ignored.has(id)].filter(Boolean)).toHaveLength(1)
    }
    expect(sand.filter(({ id }) => ignored.has(id))).toEqual([])
    const grounds = course.areas.map((area) => area.ground)
    expect(grounds.filter((ground) => ground === 'bunker')).toHaveLength(47)
    expect(grounds.filter((ground) => ground.startsWith('penalty')).length).toBe(
      water.filter(({ id }) => !ignored.has(id)).length,
    )
  })

  it('puts every element of the file in exactly one list', () => {
    const lists = [report.used, report.ignored, report.needsPerson].map((list) => list.map((item) => item.id))
    expect(new Set(lists.flat()).size).toBe(lists.flat().length)
    expect(report.elements.total).toBe(lists.flat().length)
    const inFile = xml.match(/<(node|way|relation) id="/g)!.length
    expect(report.elements.total + report.elements.vertices).toBe(inFile)
    for (const item of [...report.ignored, ...report.needsPerson]) expect(item.reason).not.toBe('')
  })

  it('gives every hole with a par in its own frame', () => {
    for (const hole of course.holes.filter((item) => item.par !== null)) {
      const framed = holeFromCourse(course, hole.ref)
      expect(framed.green).not.toBeNull()
      expect(Math.hypot(...framed.line[0]!)).toBe(0)
    }
  })

  it('carries the credit of the map into the course file and back', () => {
    expect(course.credit).toBe('© OpenStreetMap contributors, Open Database License 1.0')
    const again = readSource(new TextEncoder().encode(encodeCourse(course)), 'course.geojson')
    const second = assembleCourse(again.features, again)
    expect(second.course.credit).toBe(course.credit)
    expect(encodeCourse(second.course)).toBe(encodeCourse(course))
    expect(
      second.report.holes.map(({ ref, par, green, tees, hazards }) => ({ ref, par, green, tees, hazards })),
    ).toEqual(report.holes.map(({ ref, par, green, tees, hazards }) => ({ ref, par, green, tees, hazards })))
  })
})

describe('a boundary and three ponds without holes (greetham-boundary-only.osm, © OpenStreetMap contributors, ODbL 1.0)', () => {
  const { course, report, faults } = importFile('greetham-boundary-only.osm')

  it('says that there are no holes and makes none', () => {
    expect(course.holes).toEqual([])
    expect(course.tees).toEqual([])
    expect(course.pins).toEqual([])
    expect(course.areas.filter((area) => area.ground === 'green' || area.ground === 'fairway')).toEqual([])
    expect(report.holes).toEqual([])
    expect(faults.filter((fault) => fault.severity === 'error').map((fault) => fault.code)).toEqual([
      'MAR-IMPORT-005',
    ])
    expect(report.missing).toHaveLength(1)
  })

  it('keeps the three ponds and accounts for every element', () => {
    expect(course.areas.filter((area) => area.ground === 'penalty-red')).toHaveLength(3)
    const inFile = readText('greetham-boundary-only.osm').match(/<(node|way|relation) id="/g)!.length
    expect(report.elements.total + report.elements.vertices).toBe(inFile)
  })
})

describe('hole lines and nothing else (purgatory-holes.geojson, © OpenStreetMap contributors, ODbL 1.0)', () => {
  const { course, report, faults } = importFile('purgatory-holes.geojson')
  const file = JSON.parse(readText('purgatory-holes.geojson')) as {
    features: {
      properties: { ref: string; par: string; name: string }
      geometry: { coordinates: number[][] }
    }[]
  }

  it('has 18 holes with par, name and length as written', () => {
    expect(course.holes).toHaveLength(18)
    for (const { properties, geometry } of file.features) {
      const hole = course.holes.find((item) => item.ref === properties.ref)!
      expect(hole.par).toBe(Number(properties.par))
      expect(hole.name).toBe(properties.name)
      const { lengthMetres } = report.holes.find((item) => item.ref === properties.ref)!
      expect(Math.abs(lengthMetres - geodesicLength(geometry.coordinates))).toBeLessThan(0.001)
    }
  })

  it('says what is missing to plan them: greens, tees and the fairways of all but the par 3s', () => {
    expect(report.missing).toHaveLength(3)
    expect(report.missing[0]).toBe('The outline of the green is missing on every hole.')
    expect(report.missing[1]).toBe('Tee markers are missing on every hole.')
    const long = course.holes.filter((hole) => (hole.par ?? 0) > 3).map((hole) => hole.ref)
    expect(report.missing[2]).toBe(`The fairway is missing on hole ${long.join(', ')}.`)
    expect(course.areas).toEqual([])
    expect(faults.some((fault) => fault.severity === 'error')).toBe(false)
  })
})
