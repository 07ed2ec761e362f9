import type { Point } from '#numbers/geometry/point.ts'
import { contourLines, type Field } from '../contour-lines.ts'
import type { GroupShape, Shape, Step } from '../drawing.ts'
import { hashNoise } from '../hash-noise.ts'
import type { Pattern } from '../pattern.ts'
import { DRAW_SETTINGS } from '../settings.ts'
import type { Sheet } from '../sheet.ts'
import { polylineSteps, smoothRingSteps } from '../steps.ts'
import { levelOfShare, patternDensity } from './pattern-density.ts'

/** A pattern as the isolines that hold half and nine in ten of its finishes, with a scatter of sample finishes. */
export function drawPattern(pattern: Pattern, sheet: Sheet): GroupShape {
  const shapes =
    pattern.x.length === 0 ? [] : [...sampleFinishes(pattern, sheet), ...drawIsolines(pattern, sheet)]
  return { kind: 'group', name: 'pattern', shapes }
}

/** The isolines alone, each with its share beside it. */
export function drawIsolines(pattern: Pattern, sheet: Pick<Sheet, 'toSheet'>): Shape[] {
  const density = patternDensity(pattern)
  const shapes: Shape[] = []
  for (const [index, share] of DRAW_SETTINGS.isolineShares.entries()) {
    const lines = isolines(density, share, sheet)
    const steps = linesSteps(lines)
    shapes.push({
      kind: 'path',
      steps,
      stroke: {
        paint: 'spot',
        width: index === 0 ? DRAW_SETTINGS.heavyLine : DRAW_SETTINGS.line,
        ...(index === 0 ? {} : { dash: [5, 2.5] }),
        join: 'round',
      },
    })
    const longest = lines.toSorted((a, b) => b.points.length - a.points.length)[0]
    const rightmost = longest?.points.toSorted((a, b) => b[0] - a[0])[0]
    if (rightmost !== undefined)
      shapes.push({
        kind: 'text',
        text: share === 0.5 ? 'half' : `${share * 10} in 10`,
        at: [rightmost[0] + 4, rightmost[1] + 3],
        size: DRAW_SETTINGS.smallType,
        paint: 'spot',
        face: 'serif-italic',
        halo: 2,
      })
  }
  return shapes
}

/** A line on the sheet. */
interface Isoline {
  readonly isClosed: boolean
  readonly points: readonly Point[]
}

/** The isolines that hold a share of a pattern's finishes, without islands of a few shots: they would be read as targets of their own. */
function isolines(density: Field, share: number, sheet: Pick<Sheet, 'toSheet'>): readonly Isoline[] {
  const all = contourLines(density, levelOfShare(density, share))
  const longest = Math.max(...all.map(({ points }) => points.length))
  return all
    .filter(({ points }) => points.length > longest * 0.12)
    .map(({ isClosed, points }) => ({ isClosed, points: points.map(sheet.toSheet) }))
}

function linesSteps(lines: readonly Isoline[]): Step[] {
  return lines.flatMap(({ isClosed, points }) =>
    isClosed ? smoothRingSteps(thin(points)) : polylineSteps(points),
  )
}

/** The isolines that hold a share of a pattern's finishes, as one path. */
export function patternIsoline(pattern: Pattern, share: number, sheet: Pick<Sheet, 'toSheet'>): Step[] {
  return linesSteps(isolines(patternDensity(pattern), share, sheet))
}

/** Every third point of a line is enough for a smooth curve at drawing size. */
function thin(points: readonly Point[]): Point[] {
  const every = points.length > 36 ? 3 : 1
  return points.filter((_, index) => index % every === 0)
}

/** Systematic samples through the weights, so that each stands for the same share of shots: dots, crosses in trouble. */
function sampleFinishes(pattern: Pattern, sheet: Sheet): Shape[] {
  const total = pattern.weight.reduce((sum, weight) => sum + weight, 0)
  const count = DRAW_SETTINGS.sampleCount
  const dots: Point[] = []
  const crosses: Step[] = []
  let sum = 0
  let taken = 0
  const order = shuffledOrder(pattern.x.length)
  for (const finish of order) {
    sum += (pattern.weight[finish] ?? 0) / total
    while (taken < count && sum > (taken + 0.5) / count) {
      // Known to its cell only: spread over it, for dots in rows would look like a pattern that is not there.
      const cell = pattern.cellMetres ?? 0
      const [x, y] = sheet.toSheet([
        (pattern.x[finish] ?? 0) + (hashNoise(finish, taken, 62) - 0.5) * cell,
        (pattern.y[finish] ?? 0) + (hashNoise(finish, taken, 63) - 0.5) * cell,
      ])
      const ground = pattern.ground?.[finish]
      const isTrouble = ground === 'out' || ground === 'penalty'
      if (isTrouble)
        crosses.push(['M', x - 2, y - 2], ['L', x + 2, y + 2], ['M', x - 2, y + 2], ['L', x + 2, y - 2])
      else dots.push([x, y])
      taken += 1
    }
  }
  return [
    { kind: 'dots', points: dots, radius: 1.15, fill: 'spot' },
    ...(crosses.length === 0
      ? []
      : [{ kind: 'path', steps: crosses, stroke: { paint: 'spot', width: 1, cap: 'round' } } as const]),
  ]
}

/** The same shuffle every time: neighbouring finishes of a rule would otherwise give stripes. */
function shuffledOrder(length: number): number[] {
  const noise = Float64Array.from({ length }, (_, index) => hashNoise(index, 0, 61))
  return Array.from(noise.keys()).sort((a, b) => (noise[a] ?? 0) - (noise[b] ?? 0) || a - b)
}
