import type { Point, Ring } from '#numbers/geometry/point.ts'
import { distance } from '#numbers/geometry/point.ts'
import { tangentPlane } from '#numbers/geometry/tangent-plane.ts'
import { BACK_NINE } from './back-nine.ts'
import { FRONT_NINE } from './front-nine.ts'
import { greenSpots } from './green-spots.ts'
import { type CoverKind, type HoleDesign, type Hollow, pairs, triples } from './hole-design.ts'
import { COURSE_NAME, heightAt, ORIGIN, TEE_SETS, TRACTS, type Tract, WATERCOURSES } from './land.ts'
import { corridorOutline, type LineOfPlay, lineOfPlay } from './line-of-play.ts'
import { bandAlong, roundedOutline, smoothRing, unevenRing } from './shapes.ts'

/** All eighteen holes, in order of play. */
const HOLES: readonly HoleDesign[] = [...FRONT_NINE, ...BACK_NINE]

type Tags = Readonly<Record<string, string | number>>

const FIRST_CUT_METRES = 3.5
const FRINGE_METRES = 1.6
const SURROUND_METRES = 7

const OWN_NAMES: Readonly<Record<string, string>> = {
  'heron-pool': 'Heron pool',
  'candle-pool': 'Candle pool',
  'cold-cove': 'Cold Cove',
  clubhouse: 'clubhouse wall',
}

const PLAIN_NAMES: Readonly<Record<CoverKind | Tract['kind'], string>> = {
  heavy: 'long grass',
  scrub: 'gorse',
  heath: 'heath',
  wood: 'pines',
  'pond-red': 'pool',
  'pond-yellow': 'pool',
  'reeds-red': 'reeds',
  reeds: 'reeds',
  sea: 'sea',
  cove: 'cove',
  out: 'wall',
}

/** How uneven the edge of each kind of ground is, metres. */
const UNEVEN_METRES: Readonly<Record<CoverKind | Tract['kind'], number>> = {
  heavy: 2.2,
  scrub: 2.6,
  heath: 3,
  wood: 2.4,
  'pond-red': 0.9,
  'pond-yellow': 0.9,
  'reeds-red': 1.5,
  sea: 1.6,
  cove: 0.8,
  reeds: 1.5,
  out: 0,
}

const COVER_TAGS: Readonly<Record<CoverKind | Tract['kind'], Tags>> = {
  heavy: { golf: 'rough', 'marram:grass': 'heavy', 'marram:lost': 0.06 },
  scrub: { natural: 'scrub', 'marram:unplayable': 0.5, 'marram:lost': 0.25 },
  heath: { natural: 'heath', 'marram:unplayable': 0.2, 'marram:lost': 0.1 },
  wood: {
    natural: 'wood',
    'marram:height_m': 13,
    'marram:density': 0.03,
    'marram:unplayable': 0.3,
    'marram:lost': 0.08,
  },
  'pond-red': { golf: 'lateral_water_hazard', natural: 'water', 'marram:penalty': 'red' },
  'pond-yellow': { golf: 'water_hazard', natural: 'water', 'marram:penalty': 'yellow' },
  'reeds-red': { golf: 'lateral_water_hazard', natural: 'wetland', 'marram:penalty': 'red' },
  sea: { golf: 'lateral_water_hazard', natural: 'water', 'marram:penalty': 'red' },
  cove: { golf: 'water_hazard', natural: 'water', 'marram:penalty': 'yellow' },
  out: { golf: 'out_of_bounds' },
  reeds: { golf: 'lateral_water_hazard', natural: 'wetland', 'marram:penalty': 'red' },
}

/** The text of the invented course's file: one feature a line, the same bytes every time. */
export function buildCourse(): string {
  const plane = tangentPlane(ORIGIN)
  const lines: string[] = []

  function add(
    id: string,
    tags: Tags,
    geometry: { readonly type: string; readonly coordinates: unknown },
  ): void {
    lines.push(JSON.stringify({ type: 'Feature', id, properties: tags, geometry }))
  }
  function position(point: Point): [number, number] {
    const [longitude, latitude] = plane.toLonLat(point)
    return [Number(longitude.toFixed(7)), Number(latitude.toFixed(7))]
  }
  function addPoint(id: string, tags: Tags, point: Point): void {
    add(id, tags, { type: 'Point', coordinates: position(point) })
  }
  function addLine(id: string, tags: Tags, points: readonly Point[]): void {
    add(id, tags, { type: 'LineString', coordinates: points.map(position) })
  }
  function addArea(id: string, tags: Tags, ring: Ring): void {
    const anticlockwise = signedArea(ring) > 0 ? ring : ring.toReversed()
    const closed = [...anticlockwise, anticlockwise[0] as Point]
    add(id, tags, { type: 'Polygon', coordinates: [closed.map(position)] })
  }

  for (const tract of TRACTS) {
    // A wall turns sharply and a shore does not.
    const ring =
      tract.kind === 'out'
        ? tract.corners
        : unevenRing(tract.name, smoothRing(tract.corners, 5), UNEVEN_METRES[tract.kind])
    addArea(tract.name, { ...COVER_TAGS[tract.kind], name: nameOf(tract.name, tract.kind) }, ring)
  }
  for (const water of WATERCOURSES) {
    const tags = COVER_TAGS[water.penalty === 'red' ? 'pond-red' : 'pond-yellow']
    const ring = bandAlong(water.name, water.points, water.widthMetres, 5)
    addArea(water.name, { ...tags, name: water.name.startsWith('burn') ? 'burn' : 'ditch' }, ring)
  }
  for (const hole of HOLES) addHole(hole)

  function addHole(hole: HoleDesign): void {
    const play = lineOfPlay(pairs(hole.line))
    const id = (what: string): string => `hole-${hole.ref}-${what}`
    const own: Tags = { 'marram:hole': hole.ref }
    const tees = teePlaces(hole, play)
    const lengths = teeLengths(hole)

    addLine(
      id('line'),
      {
        golf: 'hole',
        ref: hole.ref,
        par: hole.par,
        handicap: hole.strokeIndex,
        name: hole.name,
        dist: lengths.drift,
        'dist:skerry': lengths.skerry,
        'dist:drift': lengths.drift,
        'dist:shell': lengths.shell,
      },
      pairs(hole.line),
    )
    for (const [set, point] of Object.entries(tees)) {
      const tags = { golf: 'tee', tee: set, ref: hole.ref, 'marram:elevation_m': height(point, 0.6) }
      addArea(id(`tee-${set}`), tags, teeOutline(point, play.headingAt(0)))
    }
    hole.fairways.forEach((numbers, i) => {
      const stations = triples(numbers)
      const name = id(`fairway-${i + 1}`)
      const cut = corridorOutline(play, name, stations, FIRST_CUT_METRES)
      addArea(`${name}-first-cut`, { golf: 'rough', 'marram:grass': 'first-cut' }, cut)
      addArea(name, { golf: 'fairway', ...own }, corridorOutline(play, name, stations, 0))
    })
    addGreen(hole, play, id, own)
    const bunkers: Hollow[] = [
      ...hole.fairwayBunkers,
      ...hole.greensideBunkers.map((hollow): Hollow => [play.lengthMetres + hollow[0], ...tail(hollow)]),
    ]
    bunkers.forEach(([along, off, long, wide, turnDegrees], i) => {
      const name = id(`bunker-${i + 1}`)
      const turn = play.headingAt(along) + radians(turnDegrees)
      const middle = play.toPlane([along, off])
      const outline = { name, middle, long, wide, turn, waist: 0.18, unevenness: 0.1, step: 2 }
      addArea(name, { golf: 'bunker' }, roundedOutline(outline))
    })
    for (const cover of hole.covers) {
      const ring = smoothRing(
        pairs(cover.outline).map((place) => play.toPlane(place)),
        4,
      )
      const name = id(cover.name)
      addArea(
        name,
        { ...COVER_TAGS[cover.kind], name: nameOf(cover.name, cover.kind) },
        unevenRing(name, ring, UNEVEN_METRES[cover.kind]),
      )
    }
    triples(hole.trees).forEach(([along, off, metres], i) => {
      const tags = { natural: 'tree', 'marram:height_m': metres, 'marram:density': 0.15 }
      addPoint(id(`tree-${i + 1}`), tags, play.toPlane([along, off]))
    })
  }

  function addGreen(hole: HoleDesign, play: LineOfPlay, id: (what: string) => string, own: Tags): void {
    const { green } = hole
    const heading = play.headingAt(play.lengthMetres)
    const middle = play.toPlane([play.lengthMetres, 0])
    const outline = (more: number): Ring =>
      roundedOutline({
        name: id('green'),
        middle,
        long: green.long + 2 * more,
        wide: green.wide + 2 * more,
        turn: heading + radians(green.turnDegrees),
        waist: green.waist,
        unevenness: 0.055,
        step: 3,
      })
    const toward = Math.round(degrees(heading) + green.fallTowardDegrees + 720) % 360
    addArea(id('surround'), { golf: 'rough', 'marram:grass': 'first-cut' }, outline(SURROUND_METRES))
    addArea(id('fringe'), { golf: 'fringe' }, outline(FRINGE_METRES))
    addArea(
      id('green'),
      {
        golf: 'green',
        ...own,
        // The heights say it better.
        ...(green.contours
          ? {}
          : { 'marram:fall_percent': green.fallPercent, 'marram:fall_toward_deg': toward }),
        'marram:elevation_m': height(middle, 1),
      },
      outline(0),
    )
    greenSpots(green, play, outline(0)).forEach(({ position: at, above }, index) => {
      const elevation = Number((height(middle, 1) + above).toFixed(2))
      addPoint(
        id(`spot-${index + 1}`),
        { 'marram:survey': 'spot-height', 'marram:elevation_m': elevation },
        at,
      )
    })
    addPoint(id('pin'), { golf: 'pin', ...own }, middle)
  }

  const head = {
    schema: 'course/1',
    name: COURSE_NAME,
    origin: ORIGIN,
    tees: TEE_SETS,
    localRules: ['E-5'],
  }
  return `{"type":"FeatureCollection","marram":${JSON.stringify(head)},
"marram:source":"invented: no such place; the position is open sea",
"features":[
${lines.join(',\n')}
]}
`
}

/** Where the markers of each set stand, course plane in metres. */
function teePlaces(
  hole: HoleDesign,
  play: LineOfPlay,
): { readonly skerry: Point; readonly drift: Point; readonly shell: Point } {
  return {
    skerry: play.toPlane(hole.backTee),
    drift: play.toPlane([0, 0]),
    shell: play.toPlane(hole.forwardTee),
  }
}

/** Length of the hole from each set of tees in whole metres: from the markers to the first bend, then along the line. */
function teeLengths(hole: HoleDesign): {
  readonly skerry: number
  readonly drift: number
  readonly shell: number
} {
  const tees = teePlaces(hole, lineOfPlay(pairs(hole.line)))
  const from = (tee: Point): number => {
    const line = [tee, ...pairs(hole.line).slice(1)]
    return Math.round(line.slice(1).reduce((sum, point, i) => sum + distance(line[i] as Point, point), 0))
  }
  return { skerry: from(tees.skerry), drift: from(tees.drift), shell: from(tees.shell) }
}

/** A mown platform 10 m deep and 8 m wide with its corners cut off. */
function teeOutline(middle: Point, heading: number): Ring {
  const corners: readonly Point[] = [
    [-3, -5],
    [-4, -4],
    [-4, 4],
    [-3, 5],
    [3, 5],
    [4, 4],
    [4, -4],
    [3, -5],
  ]
  return corners.map(([x, y]) => [
    middle[0] + x * Math.cos(heading) + y * Math.sin(heading),
    middle[1] - x * Math.sin(heading) + y * Math.cos(heading),
  ])
}

function height(point: Point, raised: number): number {
  return Number((heightAt(point) + raised).toFixed(1))
}

function tail(hollow: Hollow): [off: number, long: number, wide: number, turnDegrees: number] {
  return [hollow[1], hollow[2], hollow[3], hollow[4]]
}

/** What a player calls it: a name of its own where it has one, else the plain word. */
function nameOf(name: string, kind: CoverKind | Tract['kind']): string {
  return OWN_NAMES[name] ?? PLAIN_NAMES[kind]
}

function signedArea(ring: Ring): number {
  return ring.reduce((sum, a, i) => {
    const b = ring[(i + 1) % ring.length] as Point
    return sum + (a[0] * b[1] - b[0] * a[1]) / 2
  }, 0)
}

function radians(angle: number): number {
  return (angle * Math.PI) / 180
}

function degrees(angle: number): number {
  return (angle * 180) / Math.PI
}
