import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import geographiclib from 'geographiclib-geodesic'
import { describe, expect, it } from 'vitest'
import { assembleCourse } from '#golf/course/assemble-course.ts'
import { checkCourse } from '#golf/course/check-course.ts'
import type { Area } from '#golf/course/course.ts'
import { greenSurface } from '#golf/course/green-surface.ts'
import type { Hole } from '#golf/course/hole.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import { measureHole } from '#golf/course/measure-hole.ts'
import { parseDay } from '#golf/course/parse-day.ts'
import { completePlayer } from '#golf/player/complete-player.ts'
import { parsePlayer } from '#golf/player/parse-player.ts'
import { distance, type Point } from '#numbers/geometry/point.ts'
import { polygonArea, polygonContains } from '#numbers/geometry/polygon.ts'
import { pointAlong, polylineLength } from '#numbers/geometry/polyline.ts'
import { selfCrossing } from '#numbers/geometry/self-crossing.ts'
import { readSource } from '#outside/formats/read-source.ts'
import { exampleFiles } from '../../tools/draw-example-course.ts'

const EXAMPLES = fileURLToPath(new URL('../../examples/', import.meta.url))
const COURSE_FILE = 'sandrel-ness.course.geojson'
const METRES_PER_YARD = 0.9144

const source = readSource(readFileSync(EXAMPLES + COURSE_FILE), COURSE_FILE)
const { course, report, faults } = assembleCourse(source.features, source)
const tees = course.teeSets.map((set) => set.name)

function hole(ref: string, tee?: string): Hole {
  return holeFromCourse(course, ref, { tee })
}

/** Places on a green: its corners drawn in towards their mean by a tenth to all of the way. */
function placesOn(ring: readonly Point[]): Point[] {
  const mean = (k: 0 | 1): number => ring.reduce((sum, point) => sum + point[k], 0) / ring.length
  const [x, y] = [mean(0), mean(1)]
  return [0, 0.1, 0.25, 0.4, 0.55, 0.7, 0.85].flatMap((share) =>
    ring.map((point): Point => [point[0] + share * (x - point[0]), point[1] + share * (y - point[1])]),
  )
}

function areasOf(ground: Area['ground']): readonly Area[] {
  return course.areas.filter((area) => area.ground === ground)
}

function text(name: string): string {
  return readFileSync(EXAMPLES + name, 'utf8')
}

function names(ending: string): readonly string[] {
  return readdirSync(EXAMPLES).filter((name) => name.endsWith(ending))
}

describe('the invented course', () => {
  it('is drawn again by its script to the last byte', () => {
    for (const [name, drawn] of exampleFiles()) expect(text(name) === drawn, name).toBe(true)
  })

  it('is read without a fault and without a feature left over', () => {
    expect(source.faults).toEqual([])
    expect(faults).toEqual([])
    expect(checkCourse(course)).toEqual([])
    expect(report.holes).toHaveLength(18)
    expect(report.holes.map((found) => found.ref)).toEqual(Array.from({ length: 18 }, (_, i) => `${i + 1}`))
  })

  it('has par 71 in nines of 35 and 36, four short holes and three long ones', () => {
    const pars = course.holes.map((line) => line.par ?? 0)
    const sum = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0)
    expect(sum(pars.slice(0, 9))).toBe(35)
    expect(sum(pars.slice(9))).toBe(36)
    expect(pars.filter((par) => par === 3)).toHaveLength(4)
    expect(pars.filter((par) => par === 5)).toHaveLength(3)
    for (const set of course.teeSets) expect(set.par).toBe(71)
  })

  it('gives every hole its own name, and its strokes odd going out and even coming home', () => {
    expect(new Set(course.holes.map((line) => line.name)).size).toBe(18)
    const indexes = course.holes.map((line) => line.strokeIndex ?? 0)
    expect([...indexes].sort((a, b) => a - b)).toEqual(Array.from({ length: 18 }, (_, i) => i + 1))
    // Common practice: one nine has the odd strokes, the other the even ones.
    expect(indexes.slice(0, 9).every((index) => index % 2 === 1)).toBe(true)
  })

  // Rules of Handicapping (2020 and 2024), Appendix F, recommended lengths for a par, yards.
  const MEN: Readonly<Record<number, readonly [number, number]>> = {
    3: [0, 260],
    4: [240, 490],
    5: [450, 710],
  }
  const WOMEN: Readonly<Record<number, readonly [number, number]>> = {
    3: [0, 220],
    4: [200, 420],
    5: [370, 600],
  }
  it.each([
    ['skerry', MEN],
    ['drift', MEN],
    ['shell', WOMEN],
  ])('has pars that fit the published lengths from the %s tees', (tee, ranges) => {
    for (const line of course.holes) {
      const { par, lengthMetres } = hole(line.ref, tee)
      const [least, most] = ranges[par] ?? [0, 0]
      expect(lengthMetres / METRES_PER_YARD, `hole ${line.ref}`).toBeGreaterThanOrEqual(least)
      expect(lengthMetres / METRES_PER_YARD, `hole ${line.ref}`).toBeLessThanOrEqual(most)
    }
  })

  it('is as long as its card says from every tee, and as geodesics say', () => {
    expect(tees).toEqual(['skerry', 'drift', 'shell'])
    for (const line of course.holes) {
      for (const tee of tees) {
        const card = line.cardLengths[tee] ?? 0
        expect(Math.abs(hole(line.ref, tee).lengthMetres / card - 1), `hole ${line.ref} ${tee}`).toBeLessThan(
          0.02,
        )
      }
      const feature = source.features.find(({ id }) => id === `hole-${line.ref}-line`)
      const positions = feature?.geometry.kind === 'line' ? feature.geometry.positions : []
      // Karney's algorithm by GeographicLib, independent of our plane.
      const geodesic = positions.slice(1).reduce((metres, [longitude, latitude], i) => {
        const from = positions[i] ?? [0, 0]
        return (
          metres +
          (geographiclib.Geodesic.WGS84.Inverse(from[1], from[0], latitude, longitude).s12 ?? Number.NaN)
        )
      }, 0)
      expect(Math.abs(geodesic - (line.cardLengths[''] ?? 0))).toBeLessThan(0.51)
      expect(Math.abs(geodesic - polylineLength(line.line))).toBeLessThan(0.001)
    }
  })

  it('has tees apart by name: back before middle before forward', () => {
    for (const line of course.holes) {
      const [back, middle, forward] = ['skerry', 'drift', 'shell'].map(
        (tee) => hole(line.ref, tee).lengthMetres,
      )
      expect(back).toBeGreaterThan((middle ?? 0) + 10)
      expect(middle).toBeGreaterThan((forward ?? 0) + 20)
      expect(hole(line.ref).teeName).toBe('drift')
    }
  })

  it('plays no hole across another: 60 m between lines where balls land, 45 m where a green and a tee meet', () => {
    for (const [i, a] of course.holes.entries()) {
      for (const b of course.holes.slice(i + 1)) {
        const label = `holes ${a.ref} and ${b.ref}`
        expect(leastGap(a.line, b.line, 0), label).toBeGreaterThan(45)
        expect(leastGap(a.line, b.line, 90), label).toBeGreaterThan(60)
      }
    }
  })

  it('walks from each green to the next tee in under 120 m, and both nines come home', () => {
    for (const [i, line] of course.holes.entries()) {
      const next = course.holes[i + 1]
      const green = line.line.at(-1) as Point
      const tee = next?.line[0]
      if (tee && i !== 8) expect(distance(green, tee), `from ${line.ref}`).toBeLessThan(120)
    }
    const first = course.holes[0]?.line[0] as Point
    for (const ref of ['9', '18']) {
      const green = course.holes.find((line) => line.ref === ref)?.line.at(-1) as Point
      expect(distance(green, first)).toBeLessThan(150)
    }
  })

  it('has greens of 350 to 650 m² that fall, and fairways of 25 to 42 m where drives finish', () => {
    for (const line of course.holes) {
      const { green, greenFallPercent, par } = hole(line.ref)
      if (!green) throw new Error(`hole ${line.ref} has no green`)
      expect(polygonArea(green), `hole ${line.ref}`).toBeGreaterThan(350)
      expect(polygonArea(green), `hole ${line.ref}`).toBeLessThan(650)
      expect(greenFallPercent).toBeGreaterThanOrEqual(1.5)
      if (par === 3) continue
      const widths = measureHole(hole(line.ref)).fairway.filter(
        (at) => at.atMetres >= 150 && at.atMetres <= 220,
      )
      expect(widths.length, `hole ${line.ref}`).toBeGreaterThanOrEqual(3)
      for (const { widthMetres, atMetres } of widths) {
        // Sand in the middle of the ninth fairway leaves a lane on either side.
        if (line.ref === '9' && atMetres === 200) continue
        expect(widthMetres, `hole ${line.ref} at ${atMetres} m`).toBeGreaterThan(24)
        expect(widthMetres, `hole ${line.ref} at ${atMetres} m`).toBeLessThan(42)
      }
    }
  })

  it('has six greens surveyed by spot heights, with tiers, false fronts and run-offs, and twelve by their fall', () => {
    const steepest = course.holes.flatMap((line) => {
      const one = hole(line.ref)
      const surface = greenSurface(one)
      if (surface.source === 'mean-fall') return []
      expect(surface.source, `hole ${line.ref}`).toBe('spot-heights')
      const places = placesOn(one.green?.[0] ?? [])
      return [
        { ref: line.ref, slope: Math.max(...places.map((at) => Math.hypot(...surface.gradientAt(...at)))) },
      ]
    })
    expect(steepest.map(({ ref }) => ref)).toEqual(['6', '7', '8', '11', '14', '18'])
    for (const { ref, slope } of steepest) {
      // A plane is as steep everywhere as in the mean.
      expect(slope, `hole ${ref}`).toBeGreaterThan((2 * hole(ref).greenFallPercent) / 100)
      expect(slope, `hole ${ref}`).toBeLessThan(0.25)
    }
  })

  it('has every kind of trouble', () => {
    const counts = [
      'out',
      'trees',
      'scrub',
      'heavy',
      'first-cut',
      'penalty-red',
      'penalty-yellow',
      'bunker',
      'fringe',
    ]
    for (const ground of counts) expect(areasOf(ground as Area['ground']).length, ground).toBeGreaterThan(1)
    expect(course.trees.length).toBeGreaterThan(20)
    const crossing = course.holes.filter((line) =>
      measureHole(hole(line.ref)).hazards.some((h) => h.ground === 'penalty-yellow' && h.side === 'across'),
    )
    expect(crossing.map((line) => line.ref)).toEqual(['2', '3', '10', '11', '13', '17', '18'])
    const bends = course.holes.map((line) => measureHole(hole(line.ref)).legs[0]?.bendDegrees ?? 0)
    expect(bends.filter((bend) => bend > 10).length).toBeGreaterThanOrEqual(3)
    expect(bends.filter((bend) => bend < -10).length).toBeGreaterThanOrEqual(3)
  })

  it('draws no outline across itself', () => {
    for (const area of course.areas) {
      for (const ring of area.polygon) expect(selfCrossing(ring), area.id).toBeNull()
    }
  })

  it('has water beside the seventh where a drive by a bogey golfer finishes', () => {
    const pool = measureHole(hole('7')).hazards.find((hazard) => hazard.name === 'Heron pool')
    expect(pool?.side).toBe('left')
    expect(pool?.reachMetres).toBeGreaterThan(175)
    expect(pool?.reachMetres).toBeLessThan(200)
    expect(pool?.offsetMetres).toBeLessThan(20)
  })
})

describe('the typed tables', () => {
  it.each([
    ['tables/sandrel-ness.csv', 18],
    ['tables/hole-7.csv', 1],
  ])('%s reads without a fault of severity error and closes with the drawn course', (name, holes) => {
    const table = readSource(readFileSync(EXAMPLES + name), name)
    const typed = assembleCourse(table.features, table)
    const all = [...table.faults, ...typed.faults, ...checkCourse(typed.course)]
    expect(all.filter(({ severity }) => severity !== 'note')).toEqual([])
    expect(typed.course.holes).toHaveLength(holes)
    for (const { ref } of typed.course.holes) {
      const drawn = measureHole(hole(ref))
      const paced = measureHole(holeFromCourse(typed.course, ref))
      expect(paced.par).toBe(drawn.par)
      expect(paced.strokeIndex).toBe(drawn.strokeIndex)
      expect(Math.abs(paced.lengthMetres / drawn.lengthMetres - 1), `hole ${ref}`).toBeLessThan(0.02)
      expect(Math.abs((paced.green?.depthMetres ?? 0) - (drawn.green?.depthMetres ?? 0))).toBeLessThan(2)
      expect(Math.abs((paced.green?.widthMetres ?? 0) - (drawn.green?.widthMetres ?? 0))).toBeLessThan(2)
    }
  })

  it('has a hole of eight rows, in yards', () => {
    const rows = text('tables/hole-7.csv').trim().split('\n')
    expect(rows[0]).toBe('hole,what,side,from_yd,to_yd,near_yd,far_yd,note')
    expect(rows).toHaveLength(1 + 8)
  })

  it('puts the carry over every crossing water where the drawing has it', () => {
    const table = readSource(readFileSync(`${EXAMPLES}tables/sandrel-ness.csv`), 'table.csv')
    const typed = assembleCourse(table.features, table).course
    for (const ref of ['2', '3', '10', '11', '13', '17', '18']) {
      const carry = (course: typeof typed): number =>
        measureHole(holeFromCourse(course, ref)).hazards.find((hazard) => hazard.side === 'across')
          ?.carryMetres ?? 0
      expect(carry(course), `hole ${ref}`).toBeGreaterThan(40)
      expect(Math.abs(carry(typed) - carry(course)), `hole ${ref}`).toBeLessThan(4)
    }
  })
})

describe('the players', () => {
  it.each(names('.player.json'))('%s can be read and completed', (name) => {
    const player = completePlayer(parsePlayer(text(name), name))
    expect(player.clubs.length).toBeGreaterThanOrEqual(8)
    const carries = player.clubs.map((club) => club.carryMetres)
    expect([...carries].sort((a, b) => b - a)).toEqual(carries)
    for (const club of player.clubs) expect(club.totalMetres).toBeGreaterThanOrEqual(club.carryMetres)
  })

  it('are four, one of them left-handed, one a junior by first name only', () => {
    const players = names('.player.json').map((name) => parsePlayer(text(name), name))
    expect(players).toHaveLength(4)
    expect(players.filter((player) => player.hand === 'left')).toHaveLength(1)
    expect(players.map((player) => player.name)).toContain('Wren')
  })
})

describe('the days', () => {
  it.each(names('.day.json'))('%s can be read, and its holes are cut on their greens', (name) => {
    const day = parseDay(text(name), name)
    for (const ref of Object.keys(day.pins)) {
      const { pin, green } = holeFromCourse(course, ref, { day })
      expect(green !== null && polygonContains(green, pin), `hole ${ref}`).toBe(true)
    }
  })

  it('are a windy soft one with every hole cut, and a warm firm one', () => {
    const windy = parseDay(text('westerly.day.json'), 'westerly')
    const firm = parseDay(text('high-summer.day.json'), 'high-summer')
    expect(Object.keys(windy.pins)).toHaveLength(18)
    expect(windy.wind.speedMetresPerSecond).toBeGreaterThan(2 * firm.wind.speedMetresPerSecond)
    expect(windy.firmness).toBeLessThan(1)
    expect(firm.firmness).toBeGreaterThan(1)
    expect(windy.temperatureCelsius).toBeLessThan(firm.temperatureCelsius)
  })
})

/** Least distance between two hole lines from so far along each, looked for at every metre of the first. */
function leastGap(a: readonly Point[], b: readonly Point[], from: number): number {
  let least = Number.POSITIVE_INFINITY
  const other = Array.from({ length: Math.floor(polylineLength(b)) - from }, (_, metre) =>
    pointAlong(b, from + metre),
  )
  for (let along = from; along <= polylineLength(a); along++) {
    const place = pointAlong(a, along)
    for (const point of other) least = Math.min(least, distance(place, point))
  }
  return least
}
