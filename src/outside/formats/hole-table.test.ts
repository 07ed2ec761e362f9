import geodesic from 'geographiclib-geodesic'
import { describe, expect, it } from 'vitest'
import { Failure } from '#faults/failure.ts'
import { assembleCourse } from '#golf/course/assemble-course.ts'
import { greenSurface } from '#golf/course/green-surface.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { polygonBounds } from '#numbers/geometry/polygon.ts'
import type { LonLat } from '#numbers/geometry/tangent-plane.ts'
import { degreesToRadians, METRES_PER_YARD } from '#numbers/units/units.ts'
import { parseHoleTable } from './hole-table.ts'
import { fromStart, lineStartText, readLineStart, toStart } from './line-start.ts'
import { readSource } from './read-source.ts'
import { encodeTypedTable, parseTypedTable } from './typed-hole-table.ts'

const EIGHT_ROWS = `hole,what,side,from_yd,to_yd,near_yd,far_yd,note
7,tee,,0,,,,white
7,fairway,,180,340,,34,
7,bunker,left,225,245,14,24,
7,water-red,right,240,330,22,60,the mere
7,trees,left,100,300,30,80,
7,out,right,,,75,,
7,ditch-yellow,across,300,302,,,
7,green,,350,378,,26,"par 4, index 3"
`

function assemble(text: string): ReturnType<typeof assembleCourse> {
  const reading = parseHoleTable(text, 'typed.csv')
  return assembleCourse(reading.features, reading)
}

function codeOf(work: () => unknown): string {
  try {
    work()
  } catch (error) {
    if (error instanceof Failure) return error.code
    throw error
  }
  return 'none'
}

/** The box around an area, in yards from the tee of a hole that lies alone in its table. */
function yardsOf(text: string, id: string): Record<string, number> {
  const area = assemble(text).course.areas.find((item) => item.id === id)!
  const box = polygonBounds(area.polygon)
  return Object.fromEntries(
    Object.entries(box).map(([key, metres]) => [key, Math.round((metres / METRES_PER_YARD) * 1000) / 1000]),
  )
}

describe('parseHoleTable', () => {
  it('makes a hole that can be played of eight rows', () => {
    const { course, report, faults } = assemble(EIGHT_ROWS)
    expect(faults.filter((fault) => fault.severity !== 'note')).toEqual([])
    expect(report.missing).toEqual([])
    const hole = holeFromCourse(course, '7')
    expect(hole.par).toBe(4)
    expect(hole.strokeIndex).toBe(3)
    expect(hole.teeName).toBe('white')
    expect(hole.lengthMetres).toBeCloseTo(364 * METRES_PER_YARD, 6)
    expect(hole.green).not.toBeNull()
    expect(hole.areas.map((area) => area.ground).sort()).toEqual(
      ['bunker', 'fairway', 'green', 'out', 'penalty-red', 'penalty-yellow', 'tee', 'trees'].sort(),
    )
  })

  it('puts every object where its cells say, to the millimetre', () => {
    expect(yardsOf(EIGHT_ROWS, 'line 4')).toEqual({ minX: -24, maxX: -14, minY: 225, maxY: 245 })
    expect(yardsOf(EIGHT_ROWS, 'line 5')).toEqual({ minX: 22, maxX: 60, minY: 240, maxY: 330 })
    expect(yardsOf(EIGHT_ROWS, 'line 3')).toEqual({ minX: -17, maxX: 17, minY: 180, maxY: 340 })
    expect(yardsOf(EIGHT_ROWS, 'line 9')).toEqual({ minX: -13, maxX: 13, minY: 350, maxY: 378 })
  })

  it('reads metres, semicolons and decimal commas as the same hole', () => {
    const text = EIGHT_ROWS.split('\n')
      .map((line, index) =>
        index === 0
          ? 'hole;what;side;from_m;to_m;near_m;far_m;note'
          : line
              .replace('"par 4, index 3"', 'par 4 index 3')
              .split(',')
              .map((cell, column) =>
                column >= 3 && column <= 6 && cell !== ''
                  ? String(Number(cell) * METRES_PER_YARD)
                      .replace('.', ',')
                      .slice(0, 9)
                  : cell,
              )
              .join(';'),
      )
      .join('\n')
    const metric = assemble(text)
    expect(metric.faults.filter((fault) => fault.severity === 'error')).toEqual([])
    const there = assemble(EIGHT_ROWS).course.areas.map((area) => area.polygon.flat())
    for (const [index, area] of metric.course.areas.entries()) {
      for (const [corner, point] of area.polygon.flat().entries()) {
        const other = there[index]![corner]! as Point
        expect(Math.hypot(point[0] - other[0], point[1] - other[1])).toBeLessThan(1e-3)
      }
    }
  })

  it('takes the sep= line that spreadsheets write first for what it is', () => {
    const typed = EIGHT_ROWS.replaceAll(',', ';').replace('par 4; index 3', 'par 4, index 3')
    const [told, without] = [assemble(`sep=;\n${typed}`).course, assemble(typed).course]
    expect(told.holes.map(({ line }) => line)).toEqual(without.holes.map(({ line }) => line))
    expect(told.areas.map(({ polygon }) => polygon)).toEqual(without.areas.map(({ polygon }) => polygon))
    expect(readSource(new TextEncoder().encode(`sep=;\n${typed}`), 'typed.txt').kind).toBe('hole-table')
  })

  it('guesses par only where no note gives it, and says so', () => {
    const { report, faults } = assemble(EIGHT_ROWS.replace('"par 4, index 3"', ''))
    expect(report.holes[0]).toMatchObject({ par: 4, parFrom: 'guess' })
    expect(faults.filter((fault) => fault.severity === 'warning').map((fault) => fault.code)).toEqual([
      'MAR-IMPORT-010',
    ])
  })

  it('bends the line and everything along it', () => {
    const sharp = assemble(
      'hole,what,side,from_m,to_m,near_m,far_m,note\n1,bend,right,200,,,,90 deg\n1,green,,300,320,,20,par 4\n',
    )
    expect(sharp.faults.map((fault) => fault.code)).toContain('MAR-IMPORT-019')
    const bent = assemble(
      'hole,what,side,from_m,to_m,near_m,far_m,note\n1,bend,right,200,,,,60 deg\n1,bunker,left,240,250,10,20,\n1,green,,290,310,,20,par 4\n',
    ).course
    const end = bent.holes[0]!.line.at(-1)!
    expect(end[0]).toBeCloseTo(100 * Math.sin(Math.PI / 3), 6)
    expect(end[1]).toBeCloseTo(200 + 100 * Math.cos(Math.PI / 3), 6)
    const bunker = bent.areas.find((area) => area.ground === 'bunker')!.polygon[0]!
    // 45 m past the bend and 15 m to the left, along and across a heading of 60 degrees.
    const middle = bunker.reduce((sum, p) => [sum[0]! + p[0] / 4, sum[1]! + p[1] / 4], [0, 0])
    expect(middle[0]).toBeCloseTo(45 * Math.sin(Math.PI / 3) - 15 * Math.cos(Math.PI / 3), 6)
    expect(middle[1]).toBeCloseTo(200 + 45 * Math.cos(Math.PI / 3) + 15 * Math.sin(Math.PI / 3), 6)
  })

  it('keeps the holes of a table out of each other’s corridors', () => {
    const rows = Array.from({ length: 18 }, (_, index) => [
      `${index + 1},water-red,left,100,200,20,,`,
      `${index + 1},out,right,,,40,,`,
      `${index + 1},green,,480,500,,20,par 5`,
    ]).flat()
    const { course, report } = assemble(['hole,what,side,from_m,to_m,near_m,far_m,note', ...rows].join('\n'))
    expect(course.holes.map((hole) => hole.ref)).toEqual(
      rows.filter((_, i) => i % 3 === 0).map((_, i) => String(i + 1)),
    )
    for (const hole of report.holes) expect(hole.hazards).toHaveLength(2)
    for (const hole of course.holes) expect(holeFromCourse(course, hole.ref).areas).toHaveLength(3)
  })

  it('keeps every row it cannot read, with the reason and the line', () => {
    const { report, faults } = assemble(
      `${EIGHT_ROWS}7,lava,left,100,120,10,20,\n7,bunker,up,1,2,3,4,\n7,bunker,left,abc,2,3,4,\n7,bunker,left,20,10,3,4,\n`,
    )
    expect(report.needsPerson.map((item) => item.id).sort()).toEqual([
      'line 10',
      'line 11',
      'line 12',
      'line 13',
    ])
    const errors = faults.filter((fault) => fault.severity === 'error')
    expect(errors.map((fault) => [fault.place, fault.code])).toEqual(
      expect.arrayContaining([
        ['line 10', 'MAR-IMPORT-018'],
        ['line 11', 'MAR-IMPORT-019'],
        ['line 12', 'MAR-IMPORT-019'],
        ['line 13', 'MAR-IMPORT-019'],
      ]),
    )
  })

  it('trusts no row of an open quotation mark, and says so as a fault of the table', () => {
    const { faults, report } = assemble(EIGHT_ROWS.replace('60,the mere', '60,"the mere'))
    const torn = faults.filter((fault) => fault.code === 'MAR-IMPORT-019')
    expect(torn).toHaveLength(1)
    expect(torn[0]).toMatchObject({ severity: 'error', place: 'line 5' })
    expect(torn[0]?.message).toContain('quotation mark')
    expect(torn[0]?.advice).toContain('row of the hole table')
    // The green was inside: nothing is made of half a hole.
    expect(report.holes).toEqual([])
  })

  it('warns of two greens under one number, which are most often two holes', () => {
    const text = `${EIGHT_ROWS}7,green,,150,170,,20,par 3\n`
    const warnings = parseHoleTable(text, 'typed.csv').faults.filter((fault) => fault.severity === 'warning')
    expect(warnings.map(({ code, place }) => [code, place])).toEqual([['MAR-IMPORT-027', 'line 10']])
    expect(assemble(text).course.holes.map((hole) => hole.par)).toEqual([4])
  })

  it('refuses a header it cannot trust', () => {
    expect(codeOf(() => parseHoleTable('hole,what,side,from,to,near,far\n', 'x.csv'))).toBe('MAR-IMPORT-016')
    expect(codeOf(() => parseHoleTable('hole,what,side,from_ft,to_ft,near_ft,far_ft\n', 'x.csv'))).toBe(
      'MAR-IMPORT-016',
    )
    expect(codeOf(() => parseHoleTable('hole,what,from_m,to_m,near_m,far_m\n', 'x.csv'))).toBe(
      'MAR-IMPORT-015',
    )
    expect(codeOf(() => parseHoleTable('hole what side from_m to_m near_m far_m\n', 'x.csv'))).toBe(
      'MAR-IMPORT-017',
    )
    expect(codeOf(() => parseHoleTable('a,b\n1,2\n', 'x.csv'))).toBe('MAR-IMPORT-015')
    expect(codeOf(() => parseHoleTable('hole,what,side,from_m,to_m,near_m,far_m\n', 'x.csv'))).toBe(
      'MAR-IMPORT-020',
    )
  })

  it('leaves out a hole without a green row and says what to add', () => {
    const { course } = assemble(
      'hole,what,side,from_m,to_m,near_m,far_m,note\n3,bunker,left,200,210,10,20,\n',
    )
    expect(course.holes).toEqual([])
    const reading = parseHoleTable(
      'hole,what,side,from_m,to_m,near_m,far_m,note\n3,bunker,left,200,210,10,20,\n',
      'x.csv',
    )
    expect(reading.faults.map((fault) => fault.code)).toEqual(['MAR-IMPORT-020'])
  })
})

describe('a start row', () => {
  const placed = `${EIGHT_ROWS}7,start,,,,,,55.9412 -1.8031 toward 43
`
  const positionsOf = (text: string, id: string): readonly LonLat[] => {
    const found = parseHoleTable(text, 'typed.csv').features.find((one) => one.id === id)?.geometry
    return found?.kind === 'line' ? found.positions : []
  }

  it('lays the hole where it says: its green so far along the geodesic of its heading (GeographicLib)', () => {
    const [tee, green] = positionsOf(placed, 'hole 7')
    expect(tee).toEqual([-1.8031, 55.9412])
    const { lat2, lon2 } = geodesic.Geodesic.WGS84.Direct(55.9412, -1.8031, 43, 364 * METRES_PER_YARD)
    expect(green?.[0]).toBeCloseTo(lon2 as number, 9)
    expect(green?.[1]).toBeCloseTo(lat2 as number, 9)
    const hole = holeFromCourse(assemble(placed).course, '7')
    expect(hole.bearingDegrees).toBeCloseTo(43, 2)
    expect(hole.isBearingInvented).toBe(false)
    expect(holeFromCourse(assemble(EIGHT_ROWS).course, '7').isBearingInvented).toBe(true)
    expect(hole.lengthMetres).toBeCloseTo(364 * METRES_PER_YARD, 6)
  })

  it('is passed over where a hole is wanted in the plane of its rows', () => {
    expect(parseHoleTable(placed, 'typed.csv', false).collection.marram).toEqual(
      parseHoleTable(EIGHT_ROWS, 'typed.csv').collection.marram,
    )
  })

  it('says of a hole without one that its place is invented, and keeps it clear of the others', () => {
    const both = `${placed}${EIGHT_ROWS.split('\n').slice(1).join('\n').replaceAll('7,', '8,')}`
    const { course, faults } = assemble(both)
    expect(parseHoleTable(both, 'typed.csv').faults.find(({ place }) => place === 'hole 8')).toMatchObject({
      code: 'MAR-IMPORT-027',
      severity: 'warning',
    })
    const [seven, eight] = course.holes.map(({ line }) => line[0] as Point)
    expect(
      Math.hypot((seven?.[0] ?? 0) - (eight?.[0] ?? 0), (seven?.[1] ?? 0) - (eight?.[1] ?? 0)),
    ).toBeGreaterThan(4000)
    expect(faults.filter(({ severity }) => severity === 'error')).toEqual([])
  })

  it('whose sign is wrong is far from the others, and that is said', () => {
    const far = `${placed}${EIGHT_ROWS.split('\n').slice(1).join('\n').replaceAll('7,', '8,')}8,start,,,,,,55.9412 1.8031 toward 43
`
    const said = (text: string) =>
      parseHoleTable(text, 'typed.csv').faults.filter(({ code }) => code === 'MAR-IMPORT-040')
    expect(said(far)).toMatchObject([{ place: 'hole 8', severity: 'warning' }])
    expect(said(far.replace('55.9412 1.8031', '55.9450 -1.8031'))).toEqual([])
  })

  it.each([
    ['7,start,,,,,,by the oak', 'latitude'],
    ['7,start,,,,,,91 -1.8031 toward 43', 'latitude'],
    ['7,start,,,,,,55.9412 -1.8031 toward 361', 'latitude'],
    ['7,start,,,,,,55.9412 -1.8031 toward 43\n7,start,,,,,,56 -2 toward 43', 'already'],
    ['7,start,left,30,,,,55.9412 -1.8031 toward 43', 'nothing but a note'],
  ])('that says nothing of the kind is told of: %s', (row, word) => {
    const { faults, report } = assemble(`${EIGHT_ROWS}${row}\n`)
    expect(JSON.stringify([faults, report])).toContain(word)
  })
})

describe('the slope of a green of a hole that lies on the earth', () => {
  const SLOPES = ['fall 6 toward left', 'tier 12:60:4', 'fall 3 toward back right, tier 12:60:4']
  const green = (slope: string, start: string) =>
    holeFromCourse(
      assemble(`hole,what,side,from_m,to_m,near_m,far_m,note
7,fairway,,50,330,,30,
${start}
7,green,,340,366,,26,"par 4, ${slope}"
`).course,
      '7',
    )

  it.each([0, 43, 90, 270])('turns with it: toward %i', (heading) => {
    for (const slope of SLOPES) {
      const [bare, placed] = [
        green(slope, '7,bunker,left,225,245,14,24,'),
        green(slope, `7,start,,,,,,55.9412 -1.8031 toward ${heading}`),
      ]
      // Both are told from the hole's own axis.
      const off = degreesToRadians(placed.greenFallTowardDegrees - bare.greenFallTowardDegrees)
      expect(Math.cos(off)).toBeCloseTo(1, 6)
      const [flat, turned] = [greenSurface(bare), greenSurface(placed)]
      const [x, y] = bare.pin
      for (const [right, on] of [
        [0, -8],
        [0, 8],
        [-8, 0],
        [8, 0],
      ] as const) {
        const rise = (surface: typeof flat): number =>
          surface.heightAt(x + right, y + on) - surface.heightAt(x, y)
        // The nodes of a grid lie elsewhere on a turned green.
        expect(Math.abs(rise(turned) - rise(flat))).toBeLessThan(0.01)
      }
    }
  })
})

describe('readLineStart', () => {
  it.each([
    '55.9412,-1.8031 toward 43',
    '55,9412 -1,8031 toward 43',
    '55.9412 -1.8031 towards 43',
    '+55.9412 −1.8031 toward 43',
    '55.9412° -1.8031° toward 43°',
    'par 4, index 3, 55.9412 -1.8031 toward 43',
    '55.9412 -1.8031 toward 43, par 4',
  ])('takes %s', (note) => {
    const read = { latitude: 55.9412, longitude: -1.8031, headingDegrees: 43 }
    expect(readLineStart(note)).toEqual(read)
    const typed = parseTypedTable(
      `hole;what;side;from_m;to_m;near_m;far_m;note\n7;start;;;;;;"${note}"\n`,
      't',
    )
    expect(readLineStart(typed.holes[0]?.rows[0]?.note ?? '')).toEqual(read)
    const again = parseTypedTable(encodeTypedTable(typed), 't')
    expect(again.holes[0]?.rows[0]?.note).toBe(typed.holes[0]?.rows[0]?.note)
  })

  it('reads what lineStartText writes, to a centimetre', () => {
    const start = { latitude: -33.8567844, longitude: 151.2152967, headingDegrees: 310.25 }
    expect(readLineStart(lineStartText(start))).toEqual(start)
    expect(readLineStart('55.9412, -1.8031 toward 43 deg')).toEqual({
      latitude: 55.9412,
      longitude: -1.8031,
      headingDegrees: 43,
    })
  })

  it('goes to the earth and back within a micrometre', () => {
    const start = { latitude: 55.9412, longitude: -1.8031, headingDegrees: 217 }
    const [x, y] = toStart(start)(fromStart(start)([31, 412]))
    expect(x).toBeCloseTo(31, 6)
    expect(y).toBeCloseTo(412, 6)
  })
})
