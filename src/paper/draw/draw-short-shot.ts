import type { ShortProfile } from '#golf/strategy/short-profile.ts'
import type { Point } from '#numbers/geometry/point.ts'
import type { Drawing, Shape, Step } from './drawing.ts'
import { hashNoise } from './hash-noise.ts'
import { type Ruler, rulerOf } from './ruler.ts'
import { DRAW_SETTINGS } from './settings.ts'
import { lineSteps, polylineSteps } from './steps.ts'
import { textLines } from './text-lines.ts'

/** A shot near the green as seen from the side: lengths along the line from the ball to the pin, metres. */
export interface ShortShotPicture {
  readonly profile: ShortProfile
  /** What is played, in words: `8-iron chip`. */
  readonly title: string
  /** One line about it. */
  readonly sentence: string
  readonly carryMetres: number
  readonly apexMetres: number
  /** Where it lands and stops if it goes as meant, the hole left out. */
  readonly landMetres: number
  readonly restMetres: number
  readonly units?: 'yards' | 'metres'
  readonly width?: number
}

const MARGIN = 22
const TOP = 66
/** Room under the ground for its pattern, the measures and the rule, units. */
const UNDER = 84
const FLAG_METRES = 2.1
const PENNANT_METRES: Point = [0.75, 0.5]
const MOST_UNITS_PER_METRE = 46

/**
 * A short shot from the side, to true scale: the ground as it is cut, the flight, the landing spot, the roll and the
 * hole, over a rule of paces or metres. Ground is told by its pattern, as on the chart of the hole.
 */
export function drawShortShot(picture: ShortShotPicture): Drawing {
  const width = picture.width ?? DRAW_SETTINGS.sheetWidth
  const ruler = rulerOf(picture.units)
  const { points, pinMetres } = picture.profile
  const length = points.at(-1)?.along ?? 1
  const scale = Math.min(MOST_UNITS_PER_METRE, (width - 2 * MARGIN) / length)
  const heights = points.map(({ height }) => height)
  const highest = Math.max(...heights, FLAG_METRES, flightTop(picture)) + 0.2
  const lowest = Math.min(...heights)
  const left = (width - length * scale) / 2
  const ground = TOP + highest * scale
  const at = (along: number, height: number): Point => [left + along * scale, ground - height * scale]
  const heightAt = (along: number): number => {
    const index = Math.min(points.length - 2, Math.max(0, Math.floor((along / length) * (points.length - 1))))
    const [low, high] = [points[index], points[index + 1]]
    if (low === undefined || high === undefined) return 0
    return low.height + ((along - low.along) / (high.along - low.along)) * (high.height - low.height)
  }
  const bottom = ground - lowest * scale
  return {
    width,
    height: bottom + UNDER,
    title: `${picture.title}, from the side`,
    description: picture.sentence,
    shapes: [
      ...words(picture, width),
      ...groundShapes(picture.profile, at, scale),
      ...flagShapes(at, pinMetres, heightAt(pinMetres)),
      ...shotShapes(picture, at, heightAt),
      ...measureShapes(picture, at, bottom, ruler),
      ...ruleShapes(length, at, bottom, ruler),
    ],
  }
}

function flightTop({ apexMetres, profile }: ShortShotPicture): number {
  return apexMetres + Math.max(...profile.points.map(({ height }) => height))
}

function words({ title, sentence }: ShortShotPicture, width: number): Shape[] {
  const text = { kind: 'text', paint: 'ink', anchor: 'middle' } as const
  const most = Math.floor((width - 2 * MARGIN) / (DRAW_SETTINGS.smallType * 0.5))
  return [
    { ...text, text: title, at: [width / 2, 20], size: 17, face: 'serif' },
    ...textLines(sentence, most).map((line, index) => ({
      ...text,
      text: line,
      at: [width / 2, 35 + 12 * index] as Point,
      size: DRAW_SETTINGS.smallType,
      face: 'serif-italic' as const,
    })),
  ]
}

/** The line of the ground, with what grows on it or fills it. */
function groundShapes(
  profile: ShortProfile,
  at: (along: number, height: number) => Point,
  scale: number,
): Shape[] {
  const { points } = profile
  const on: Step[] = []
  const dots: Point[] = []
  const green: Step[] = []
  points.forEach(({ along, height, ground }, index) => {
    const next = points[index + 1]
    if (next === undefined) return
    const spread = (next.along - along) * scale
    const [x, y] = at(along, height)
    const noise = (salt: number): number => hashNoise(index, 0, salt)
    switch (ground) {
      case 'green':
        green.push(...lineSteps([x, y + 3], [x + spread, at(next.along, next.height)[1] + 3]))
        break
      case 'fringe':
      case 'first-cut':
        on.push(...lineSteps([x, y], [x, y - 2.2]))
        break
      case 'rough':
      case 'heavy':
      case 'trees':
      case 'scrub': {
        const blade = ground === 'rough' ? 5 : 9
        on.push(...lineSteps([x, y], [x + 2.4 * (noise(1) - 0.5), y - blade * (0.7 + 0.5 * noise(2))]))
        break
      }
      case 'bunker':
        for (let dot = 0; dot < spread * 0.9; dot += 1)
          dots.push([x + spread * noise(3 + dot), y + 2 + 9 * noise(60 + dot)])
        break
      case 'penalty-red':
      case 'penalty-yellow':
        for (const down of [4, 8])
          on.push(
            ['M', x, y + down],
            ['C', x + spread / 3, y + down - 2, x + (2 * spread) / 3, y + down + 2, x + spread, y + down],
          )
        break
      case 'out':
        on.push(...lineSteps([x, y], [x - 4, y + 7]))
        break
      default:
        break
    }
  })
  const line = points.map(({ along, height }) => at(along, height))
  return [
    { kind: 'path', steps: on, stroke: { paint: 'ink', width: DRAW_SETTINGS.hairline } },
    { kind: 'path', steps: green, stroke: { paint: 'ink', width: DRAW_SETTINGS.hairline } },
    ...(dots.length === 0
      ? []
      : [{ kind: 'dots', points: dots, radius: DRAW_SETTINGS.sandDotRadius, fill: 'ink' } as const]),
    {
      kind: 'path',
      steps: polylineSteps(line),
      stroke: { paint: 'ink', width: DRAW_SETTINGS.line, join: 'round' },
    },
  ]
}

function flagShapes(at: (along: number, height: number) => Point, pin: number, height: number): Shape[] {
  const [foot, head] = [at(pin, height), at(pin, height + FLAG_METRES)]
  const low = at(pin, height + FLAG_METRES - PENNANT_METRES[1])
  const tip = at(pin + PENNANT_METRES[0], height + FLAG_METRES - PENNANT_METRES[1] / 2)
  return [
    {
      kind: 'path',
      steps: lineSteps([foot[0], foot[1] + 6], head),
      stroke: { paint: 'ink', width: DRAW_SETTINGS.line },
    },
    { kind: 'path', steps: [...polylineSteps([head, tip, low]), ['Z']], fill: 'ink' },
    {
      kind: 'path',
      steps: lineSteps([foot[0] - 3, foot[1] + 6], [foot[0] + 3, foot[1] + 6]),
      stroke: { paint: 'ink', width: DRAW_SETTINGS.fineLine },
    },
  ]
}

/** Ball, flight, landing spot and roll, in the player's colour. */
function shotShapes(
  { carryMetres, apexMetres, landMetres, restMetres }: ShortShotPicture,
  at: (along: number, height: number) => Point,
  heightAt: (along: number) => number,
): Shape[] {
  const [start, land] = [at(0, heightAt(0)), at(landMetres, heightAt(landMetres))]
  const top = (heightAt(0) + heightAt(landMetres)) / 2 + 2 * apexMetres
  const lift = at(landMetres / 2, top)[1]
  // A parabola is a cubic whose inner points lie two thirds of the way to the quadratic's one.
  const inner = (from: Point): Point => [
    from[0] + (2 / 3) * ((start[0] + land[0]) / 2 - from[0]),
    from[1] + (2 / 3) * (lift - from[1]),
  ]
  const [first, second] = [inner(start), inner(land)]
  const steps = Math.max(1, Math.ceil(Math.abs(restMetres - landMetres) / 0.25))
  const roll = Array.from({ length: steps + 1 }, (_, index): Point => {
    const along = landMetres + ((restMetres - landMetres) * index) / steps
    const [x, y] = at(along, heightAt(along))
    return [x, y - 2.2]
  })
  const rest = roll.at(-1) ?? land
  const spot = { paint: 'spot', width: DRAW_SETTINGS.heavyLine } as const
  return [
    ...(carryMetres > 0
      ? [
          {
            kind: 'path',
            steps: [
              ['M', ...start],
              ['C', ...first, ...second, ...land],
            ] as Step[],
            stroke: { ...spot, width: DRAW_SETTINGS.line },
          } as const,
          {
            kind: 'path',
            steps: [
              ...lineSteps([land[0] - 5, land[1] - 5], land),
              ...lineSteps([land[0] + 5, land[1] - 5], land),
            ],
            stroke: spot,
          } as const,
        ]
      : []),
    {
      kind: 'path',
      steps: polylineSteps(roll),
      stroke: { ...spot, width: DRAW_SETTINGS.line, dash: [3, 2.5] },
    },
    { kind: 'dots', points: [[start[0], start[1] - 2.4]], radius: 2.6, fill: 'spot' },
    { kind: 'dots', points: [[rest[0], rest[1] - 0.4]], radius: 1.8, fill: 'spot' },
  ]
}

/** Carry and roll as measures under the ground. */
function measureShapes(
  { carryMetres, landMetres, restMetres }: ShortShotPicture,
  at: (along: number, height: number) => Point,
  bottom: number,
  ruler: Ruler,
): Shape[] {
  const level = bottom + 26
  const measure = (from: number, to: number, word: string): Shape[] => {
    const [a, b] = [at(from, 0)[0], at(to, 0)[0]]
    return [
      {
        kind: 'path',
        steps: [
          ...lineSteps([a, level], [b, level]),
          ...lineSteps([a, level - 4], [a, level + 4]),
          ...lineSteps([b, level - 4], [b, level + 4]),
        ],
        stroke: { paint: 'spot', width: DRAW_SETTINGS.fineLine },
      },
      {
        kind: 'text',
        text: `${word} ${ruler.figure(Math.abs(to - from))}`,
        at: [(a + b) / 2, level + 13],
        size: DRAW_SETTINGS.smallType,
        paint: 'spot',
        face: 'sans',
        anchor: 'middle',
        halo: 2,
      },
    ]
  }
  return [
    ...(carryMetres > 0 ? measure(0, landMetres, 'carry') : []),
    ...measure(landMetres, restMetres, 'roll'),
  ]
}

/** The rule along the bottom: a tick a pace or metre, a figure every five. */
function ruleShapes(
  length: number,
  at: (along: number, height: number) => Point,
  bottom: number,
  ruler: Ruler,
): Shape[] {
  const level = bottom + 56
  const count = Math.floor(length / ruler.metres)
  const ticks: Step[] = [...lineSteps([at(0, 0)[0], level], [at(length, 0)[0], level])]
  const figures: Shape[] = []
  for (let tick = 0; tick <= count; tick += 1) {
    const [x] = at(tick * ruler.metres, 0)
    ticks.push(...lineSteps([x, level], [x, level + (tick % 5 === 0 ? 6 : 3)]))
    if (tick % 5 === 0)
      figures.push({
        kind: 'text',
        text: tick === 0 ? `0 ${ruler.word === 'yards' ? 'paces' : 'm'}` : String(tick),
        at: [x, level + 17],
        size: DRAW_SETTINGS.smallType,
        paint: 'ink',
        face: 'sans',
        anchor: tick === 0 ? 'start' : 'middle',
      })
  }
  return [{ kind: 'path', steps: ticks, stroke: { paint: 'ink', width: DRAW_SETTINGS.fineLine } }, ...figures]
}
