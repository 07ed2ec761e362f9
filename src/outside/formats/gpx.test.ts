import { describe, expect, it } from 'vitest'
import { assembleCourse } from '#golf/course/assemble-course.ts'
import { distance, type Point } from '#numbers/geometry/point.ts'
import { polygonArea, polygonCentroid } from '#numbers/geometry/polygon.ts'
import { tangentPlane } from '#numbers/geometry/tangent-plane.ts'
import { seededGenerator } from '#numbers/statistics/seeded-generator.ts'
import { WALK } from './gpx/settings.ts'
import { readWalkName } from './gpx/walk-names.ts'
import { walkedOutline } from './gpx/walked-outline.ts'
import { parseGpx } from './gpx.ts'
import { readLineStart } from './line-start.ts'
import { readSource } from './read-source.ts'
import { readWalkSheet } from './walked-rows.ts'

const { toLonLat } = tangentPlane([-2.1, 55.9])

/** Elements and attributes as the schema of GPX 1.1 has them: http://www.topografix.com/GPX/1/1/gpx.xsd. */
function gpx(...parts: string[]): string {
  return `<?xml version="1.0" encoding="UTF-8"?>
<gpx version="1.1" creator="test" xmlns="http://www.topografix.com/GPX/1/1">
<metadata><name>not a walk</name></metadata>
${parts.join('\n')}
</gpx>`
}

function place(at: Point): string {
  const [lon, lat] = toLonLat(at)
  return `lat="${lat.toFixed(8)}" lon="${lon.toFixed(8)}"`
}

const track = (name: string, ...segments: (readonly Point[])[]): string =>
  `<trk><name>${name}</name>${segments
    .map(
      (points) =>
        `<trkseg>\n${points.map((at) => `<trkpt ${place(at)}><ele>12.1</ele></trkpt>`).join('\n')}\n</trkseg>`,
    )
    .join('')}</trk>`
const mark = (name: string, at: Point): string => `<wpt ${place(at)}><name>${name}</name></wpt>`

/** A walk round a circle, a step a second, with the jitter of a hand. */
function round(middle: Point, radius: number, turns: number, jitter = 0): Point[] {
  const random = seededGenerator(5)
  const steps = Math.round(2 * Math.PI * radius * Math.abs(turns))
  return Array.from({ length: steps + 1 }, (_, step): Point => {
    const angle = (2 * Math.PI * turns * step) / steps
    return [
      middle[0] + radius * Math.cos(angle) + jitter * (random() - 0.5),
      middle[1] + radius * Math.sin(angle) + jitter * (random() - 0.5),
    ]
  })
}

const HOLE = [mark('tee 7 white', [0, 0]), mark('pin 7 par 4', [0, 340])]

describe('a walk recorded as GPX 1.1', () => {
  it('becomes ground, points and a hole that can be played', () => {
    const half = round([0, 340], 13, 1)
    const text = gpx(
      ...HOLE,
      mark('tree', [20, 200]),
      track('7 green', half.slice(0, 40), half.slice(40)),
      `<rte><name>bunker left</name>${[
        [-20, 220],
        [-10, 220],
        [-10, 232],
        [-20, 232],
      ]
        .map(([x = 0, y = 0]) => `<rtept ${place([x, y])}/>`)
        .join('')}</rte>`,
    )
    const reading = readSource(new TextEncoder().encode(text), 'walk.gpx')
    expect(reading.kind).toBe('gpx')
    const { course, report } = assembleCourse(reading.features, reading)
    expect(report.needsPerson).toEqual([])
    expect(course.holes.map(({ ref, par }) => [ref, par])).toEqual([['7', 4]])
    expect(course.areas.map(({ ground }) => ground).toSorted()).toEqual(['bunker', 'green'])
    const area = polygonArea(course.areas.find(({ ground }) => ground === 'green')!.polygon)
    // A circle of 13 m, and no more off than the thinning along its edge.
    expect(Math.abs(area - Math.PI * 13 ** 2)).toBeLessThan(2 * Math.PI * 13 * WALK.tolerance)
    expect(reading.faults.map(({ code, severity }) => [code, severity])).toEqual([['MAR-IMPORT-037', 'note']])
  })

  it('keeps the other points when some are damaged, and says where', () => {
    const walk = track('fairway', round([0, 200], 40, 1)).split('\n')
    walk.splice(5, 2, '<trkpt lat="north" lon="-2.1"/>', '<trkpt lon="-2.1"/>')
    const { features, faults } = parseGpx(gpx(...HOLE, walk.join('\n')), 'walk.gpx')
    expect(features[0]?.geometry.kind).toBe('area')
    expect(faults[0]).toMatchObject({
      code: 'MAR-IMPORT-034',
      severity: 'warning',
      place: 'walk.gpx, line 11',
    })
    expect(faults[0]?.message).toContain('2 points of track 1')
  })

  it('is read as far as it goes where the file breaks off', () => {
    const text = gpx(...HOLE, track('fairway', round([0, 200], 40, 1)))
    const { features, faults } = parseGpx(text.slice(0, text.lastIndexOf('<trkpt') + 12), 'walk.gpx')
    expect(features.map(({ geometry }) => geometry.kind)).toEqual(['area', 'point', 'point', 'line'])
    expect(faults[0]).toMatchObject({ code: 'MAR-IMPORT-001', severity: 'warning' })
    expect(faults[0]?.place).toMatch(/^walk\.gpx, line \d+$/)
  })

  it('says of a walk that does not come back by how much, and asks what one without a word is', () => {
    const { features, faults } = parseGpx(
      gpx(...HOLE, track('water', round([60, 200], 30, 0.7)), track('Tuesday', round([0, 100], 10, 1))),
      'walk.gpx',
    )
    // A chord of a circle: twice the radius by the sine of half the angle that is missing.
    const missing = Math.round(2 * 30 * Math.sin(0.3 * Math.PI))
    const open = faults.find(({ code }) => code === 'MAR-IMPORT-035')
    expect(open?.message).toContain(`: ${missing} m are missing`)
    const { report } = assembleCourse(features, { kind: 'gpx' })
    expect(report.needsPerson.map(({ id }) => id)).toEqual(['track 2'])
  })
})

describe('a walk for the survey of one hole', () => {
  const sheet = readWalkSheet(
    gpx(...HOLE, track('Old Kiln bunker', round([20, 200], 8, 1)), track('water', [[40, 150]])),
    'walk.gpx',
  )
  const kinds = new Map(sheet.items.map(({ id, kind }) => [id, kind]))

  it('does not drop what encloses no ground without a word', () => {
    expect(sheet.lay(kinds, 'm')).toMatchObject({
      rows: [],
      fault: { code: 'MAR-IMPORT-012', place: 'walk.gpx', message: expect.stringContaining('“water”') },
    })
  })

  it('keeps the rest of a name as it was written, and says where on the earth the hole begins', () => {
    const { rows } = sheet.lay(new Map(kinds).set('track 2', ''), 'm')
    expect(rows.slice(0, 2).map(({ what, note }) => [what, note])).toEqual([
      ['bunker', 'Old Kiln'],
      ['tee', 'white'],
    ])
    const [start] = rows.slice(2)
    expect(start?.what).toBe('start')
    const read = readLineStart(start?.note ?? '')
    const tee = toLonLat([0, 0])
    expect(read?.longitude).toBeCloseTo(tee[0], 6)
    expect(read?.latitude).toBeCloseTo(tee[1], 6)
  })

  it('lays them by the start of a hole that has one, and knows no first leg of a hole that bends', () => {
    const laid = new Map(kinds).set('track 2', '')
    const [longitude, latitude] = toLonLat([0, 0])
    // The walk leads north; the first leg of the hole 30 degrees to the right of it.
    const start = { latitude, longitude, headingDegrees: 30 }
    const { rows } = sheet.lay(laid, 'm', { start, isBent: true })
    expect(rows.map(({ what }) => what)).toEqual(['bunker', 'tee'])
    const [x, y] = polygonCentroid([rows[0]?.outline ?? []])
    const turn = (30 * Math.PI) / 180
    expect(x).toBeCloseTo(20 * Math.cos(turn) - 200 * Math.sin(turn), 0)
    expect(y).toBeCloseTo(20 * Math.sin(turn) + 200 * Math.cos(turn), 0)
    const bent = sheet.lay(laid, 'm', { start: null, isBent: true }).rows
    expect(bent.map(({ what }) => what)).toEqual(['bunker', 'tee'])
  })
})

describe('walkedOutline', () => {
  it('lets go of what was walked beyond the start, and of the jitter', () => {
    const { corners, isClosed, gapMetres } = walkedOutline(round([0, 0], 20, 1.15, 1))
    expect(isClosed).toBe(true)
    expect(gapMetres).toBeLessThan(1.5)
    expect(corners.length).toBeLessThan(30)
    for (const corner of corners) expect(Math.abs(distance(corner, [0, 0]) - 20)).toBeLessThan(1)
  })
})

describe('readWalkName', () => {
  it.each([
    ['7 bunker left', 'bunker', '7'],
    ['Tee 12 yellow', 'tee', '12'],
    ['hole 3 par 5', 'hole', '3'],
    ['Green', 'green', null],
    ['big tree', 'tree', null],
    ['trees 4', 'trees', '4'],
    ['Morning walk', null, null],
  ])('%s', (name, kind, ref) => {
    expect(readWalkName(name)).toMatchObject({ kind, ref })
  })
})
