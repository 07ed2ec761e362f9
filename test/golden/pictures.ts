import { measureHole } from '#golf/course/measure-hole.ts'
import { learnTestDay } from '#golf/player/learn-test-day.ts'
import { testDayCurves } from '#golf/player/test-day-curves.ts'
import type { StationResult } from '#golf/player/test-day-results.ts'
import { STATIONS, type Station } from '#golf/player/test-day-stations.ts'
import { playerOfLevel } from '#golf/player/level.ts'
import { bagPatterns } from '#golf/strategy/bag-patterns.ts'
import type { StruckPart } from '#golf/round/part-results.ts'
import type { PlanOption } from '#golf/strategy/plan.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { type ClubPatternPicture, drawClubPattern } from '#paper/draw/draw-club-pattern.ts'
import { drawAskedLine } from '#paper/draw/draw-asked-line.ts'
import { drawBag } from '#paper/draw/draw-bag.ts'
import { drawSeason } from '#paper/draw/draw-season.ts'
import { drawWaterfall } from '#paper/draw/draw-waterfall.ts'
import { drawCostBar, drawCostBars } from '#paper/draw/draw-cost-bars.ts'
import { drawFlipScale } from '#paper/draw/draw-flip-scale.ts'
import { drawGoOrLayUp } from '#paper/draw/draw-go-or-lay-up.ts'
import { drawShortShot } from '#paper/draw/draw-short-shot.ts'
import { drawGreen } from '#paper/draw/draw-green.ts'
import { drawHole } from '#paper/draw/draw-hole.ts'
import { drawTestSheet } from '#paper/draw/draw-test-sheet.ts'
import { drawTestCurves } from '#paper/draw/draw-test-curves.ts'
import { drawRange } from '#paper/draw/draw-range.ts'
import { drawCross, drawTapped } from '#paper/draw/draw-tapped.ts'
import { drawRelief } from '#paper/draw/draw-relief.ts'
import type { Drawing } from '#paper/draw/drawing.ts'
import { layOutRange } from '#paper/draw/range-sheet.ts'
import { layOutSheet } from '#paper/draw/sheet.ts'
import { everyGround, inventedPattern, inventedProfile, inventedValues, overWater, tieredGreen } from './invented-holes.ts'
import { inventedRelief } from './invented-relief.ts'

/** Every picture under test, by the name of its file: one function a picture. */
export const PICTURES: Readonly<Record<string, () => Drawing>> = {
  'every-ground': () => drawHole(everyGround(), { courseName: 'Invented', units: 'metres', width: 400, height: 560 }),
  'pattern-and-aim': () => {
    const hole = everyGround()
    return drawHole(hole, {
      width: 480,
      height: 680,
      courseName: 'Invented',
      playerName: 'A. Player',
      measures: measureHole(hole),
      pattern: inventedPattern('5-wood', 180, -1.5),
      aim: { from: [0, 0], headingDegrees: -1.5, atMetres: 180, startDegrees: 1.5 },
      arcs: [
        { club: 'driver', carryMetres: 195 },
        { club: '5-wood', carryMetres: 163 },
      ],
      wind: { speedMetresPerSecond: 5, fromDegrees: 250, label: '5 m/s' },
      credit: 'Invented ground.',
    })
  },
  'over-water': () =>
    drawHole(overWater(), {
      width: 390,
      height: 520,
      measures: measureHole(overWater()),
      wind: { speedMetresPerSecond: 0, fromDegrees: 0, label: 'calm' },
    }),
  'tiered-green': () =>
    drawHole(tieredGreen(), { width: 390, height: 520, measures: measureHole(tieredGreen()) }),
  'green-slopes': () => drawGreen(tieredGreen(), { width: 420, height: 400, units: 'yards' }) as Drawing,
  'expected-score': () => drawHole(overWater(), { width: 390, height: 520, values: inventedValues(overWater().pin) }),
  'relief-on-the-hole': () => {
    const hole = everyGround()
    return drawHole(hole, { width: 400, height: 560, relief: { of: inventedRelief(hole, [100, 270]), pin: hole.pin } })
  },
  'relief-red': () => relief([100, 270]),
  'relief-yellow': () => relief([0, 115]),
  'relief-bunker': () => relief([-20, 218], 'unplayable'),
  'relief-out': () =>
    drawRelief(
      { ...everyGround(), localRules: ['E-5'] },
      inventedRelief({ ...everyGround(), localRules: ['E-5'] }, [-74, 210]),
      { units: 'metres', courseName: 'Invented' },
    ),
  'range-with-shots': () => {
    const size = { width: 560, height: 720 }
    const sheet = layOutRange(150, size)
    const marks = [
      { at: [-6, 148], isMishit: false, isLast: false },
      { at: [9, 152], isMishit: false, isLast: false },
      { at: [14, 96], isMishit: true, isLast: true },
    ] as const
    return {
      ...size,
      title: 'A range for the 5-wood',
      description: 'Three shots over the pattern.',
      shapes: [
        ...drawRange(sheet, {
          units: 'yards',
          club: '5-wood',
          basis: 'carry 164 yd, from 44 shots',
          pattern: inventedPattern('5-wood', 150, 1),
        }),
        drawTapped(marks, sheet),
        drawCross([4, 140], sheet),
      ],
    }
  },
  'asked-line': () => {
    const size = { width: 400, height: 560 }
    const sheet = layOutSheet(everyGround(), size)
    const aim = { from: [0, 0], headingDegrees: -1.5, atMetres: 180, startDegrees: 1.5 } as const
    return {
      ...size,
      title: 'The line that is asked for',
      description: 'The line a shot is asked to finish on, over the pattern of the 5-wood.',
      shapes: [drawAskedLine(aim, inventedPattern('5-wood', 180, -1.5), sheet)],
    }
  },
  'moved-and-measured': () => {
    const hole = everyGround()
    const lake = hole.areas.find(({ id }) => id === 'lake')!.polygon
    const now = lake.map((ring) => ring.map(([x, y]): Point => [x - 18, y - 12]))
    return drawHole(hole, {
      width: 400,
      height: 560,
      moved: [{ surveyed: lake, now }],
      measured: [
        [0, 0],
        [4, 212],
      ],
    })
  },
  bag: () => drawBag(bagPatterns(playerOfLevel('15')), { playerName: 'A. Player', units: 'yards' }),
  'test-sheet': () =>
    drawTestSheet({ playerName: 'A. Player', stationWords: ({ name }) => `Station ${name}`, leaveUnit: 'feet' }),
  'cost-bar': () => drawCostBar(option('driver', 0.14, 0.02, 0.3), 0.5, 220, true),
  'cost-bars': () =>
    drawCostBars(
      [
        option('5-wood', 0, 0, 0.01),
        option('driver', 0.04, -0.01, 0.1),
        option('5-hybrid', 0.13, 0.09, 0.17),
        option('7-iron', 0.31, 0.24, 0.36),
        option('sand-wedge', 1.24, 1.1, 1.4),
      ],
      { chosen: '5-wood' },
    ),
  waterfall: () =>
    drawWaterfall({
      expected: 91.348,
      steps: [
        { name: 'choices', strokes: 0.884 },
        { name: 'struck: off the tee', strokes: -1.2149 },
        { name: 'struck: approach', strokes: 2.4051 },
        { name: 'struck: around the green', strokes: 0.3 },
        { name: 'struck: putting', strokes: 0 },
        { name: 'luck', strokes: -1.7222 },
      ],
      score: 92,
    }),
  season: () => {
    const part = (part: StruckPart, count: number, strokes: number, half: number) => ({
      part,
      count,
      strokes,
      mean: strokes / count,
      sd: 0.5,
      low: strokes - half,
      high: strokes + half,
    })
    const parts = [
      part('tee', 140, -4.1, 9.3),
      part('approach', 210, 6.2, 11.8),
      part('recovery', 3, 1.1, 2),
      part('around', 61, 1.9, 6.1),
      part('sand', 12, 5.4, 4.4),
      part('holing-putts', 180, -9.6, 8.2),
      part('three-putts', 180, 0.4, 4.1),
    ]
    const [, , , , sand] = parts
    if (sand === undefined) throw new RangeError('no sand')
    return drawSeason({
      rounds: 10,
      holes: 180,
      decision: 0.4,
      execution: 0,
      luck: 0.1,
      over: 0.5,
      judged: 300,
      kept: 280,
      choosing: [],
      parts,
      sand: [],
      gains: [],
      findings: [{ kind: 'part', strokesARound: 0.54, part: sand }],
    })
  },
  'flip-scale': () =>
    drawFlipScale({
      title: 'Wind along the hole',
      low: -15,
      high: 15,
      rest: 0,
      ends: ['behind', 'into'],
      crossings: [
        { at: -3.1, below: 'driver', above: '5-wood' },
        { at: 4.4, below: '5-wood', above: '5-hybrid' },
        { at: 5.2, below: '7-iron', above: '6-iron' },
      ],
      width: 420,
    }),
  'go-or-lay-up': () =>
    drawGoOrLayUp({
      title: 'Go for the green or lay up',
      description: 'From the fairway go for the green from 216 yards in.',
      // A layup costs a little more with every step; going costs much more as the green goes out of reach.
      places: Array.from({ length: 22 }, (_, place) => {
        const from_m = 260 - 10 * place
        return {
          from_m,
          go: from_m > 215 ? null : 2.95 + (from_m - 50) ** 2 / 22000,
          lay_up: from_m < 70 ? null : 3.2 + (from_m - 50) / 200,
        }
      }),
      crossings: [197.33],
      units: 'yards',
      width: 520,
    }),
  'chip-from-the-side': () =>
    drawShortShot({
      profile: inventedProfile(16, 20),
      title: 'Hole 4: 9-iron chip',
      sentence:
        '9-iron chip: land it a pace on the green, 5 paces from the ball, start it 1 foot left of the pin and let it run 13 paces; the usual leave is 4 feet, and the worst one in ten cost about 3.10 strokes from here, ending in the rough.',
      carryMetres: 4.6,
      apexMetres: 0.55,
      landMetres: 4.6,
      restMetres: 16.3,
    }),
  'sand-shot-from-the-side': () =>
    drawShortShot({
      profile: inventedProfile(11, 16, 'bunker'),
      title: 'Hole 4: sand wedge out of the sand',
      sentence: 'Sand wedge out of the sand: land it 4 metres on the green and let it run.',
      carryMetres: 8.2,
      apexMetres: 2.3,
      landMetres: 8.2,
      restMetres: 11.4,
      units: 'metres',
      width: 420,
    }),
  'club-pattern': () => drawClubPattern(inventedClub('9-iron', 'metres')),
  'club-before-and-after': () => {
    const guessed = inventedClub('driver', 'yards')
    const learned = inventedClub('driver', 'yards', 1.04)
    return drawClubPattern({
      ...learned,
      before: { pattern: guessed.now, isGuess: false },
      sentences: ['The carry: 8 yd longer than was known; 97 chances in 100 that it has really changed.'],
    })
  },
  'test-day-curves': () => {
    const player = playerOfLevel('20')
    const results = { stations: STATIONS.map(inventedResult) }
    return drawTestCurves(testDayCurves(player, learnTestDay(player, results), results), {
      playerName: 'A. Player',
      units: 'yards',
      basis: '42 putts, 28 short shots',
    })
  },
  'flip-scale-none': () =>
    drawFlipScale({
      title: 'Firmness',
      low: 0.4,
      high: 1.7,
      rest: 1,
      ends: ['soft', 'firm'],
      crossings: [],
      width: 300,
    }),
}

/** What a golfer might play from a station: most of the near ones holed, the rest left a tenth to a quarter of the way. */
function inventedResult(station: Station): StationResult {
  const { balls, metres, kind, hasLeaves } = station
  const holed = kind === 'putt' ? Math.round(balls / (0.9 + (metres / 3) ** 1.5)) : 0
  const leaves = Array.from({ length: hasLeaves ? balls - holed : 0 }, (_, ball) => ({
    metres: metres * (0.08 + (0.17 * ((ball * 5) % 7)) / 7),
    isOffGreen: false,
  }))
  return { station, holed, balls, leaves }
}

/** A club of a golfer of index 15, so much longer than expected, with a few balls about its pattern. */
function inventedClub(name: string, units: 'yards' | 'metres', longer = 1): ClubPatternPicture {
  const level = playerOfLevel('15')
  const player = {
    ...level,
    clubs: level.clubs.map((club) => ({ ...club, carryMetres: club.carryMetres * longer, rightShare: 1.2 * longer })),
  }
  const now = bagPatterns(player).find(({ club }) => club.name === name)!
  const places = Array.from({ length: 24 }, (_, ball) => {
    const at = (ball * 211) % now.x.length
    return { x: now.x[at]! + 1, y: now.y[at]! - 1, isMishit: at >= now.goodCount }
  })
  return {
    playerName: 'A. Player',
    units,
    now,
    marks: { places, withoutSide: [now.club.carryMetres - 4], withoutCarry: 0 },
    basis: '25 shots, which count for 22 by now',
    sentences: [],
  }
}

/** What the Rules give a ball on the hole with every ground. */
function relief(ball: Point, said?: 'unplayable'): Drawing {
  const hole = everyGround()
  return drawRelief(hole, inventedRelief(hole, ball, said), { courseName: 'Invented' })
}

/** A row of the ledger with nothing but its cost. */
function option(club: string, cost: number, low: number, high: number): PlanOption {
  return {
    club,
    shape: 'stock',
    aim: { heading_deg: 0, offset_m: 0, at_m: 150, start_deg: 0 },
    total_m: 150,
    strokes: 4 + cost,
    cost,
    cost_low: low,
    cost_high: high,
    best_in_draws: 0.5,
    misses: { left: 0, right: 0 },
    trees: { way: 'open', growth: null, caught: 0, gap: null },
    outcomes: {
      out: 0,
      trees: 0,
      scrub: 0,
      rough: 0.5,
      heavy: 0,
      'first-cut': 0,
      path: 0,
      fairway: 0.5,
      penalty: 0,
      bunker: 0,
      fringe: 0,
      green: 0,
      tee: 0,
    },
    leave_m: { p10: 100, p50: 120, p90: 140 },
    scores: { '4': 1 },
    aimCosts: [],
  }
}
