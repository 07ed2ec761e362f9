import { distance, type Point } from '#numbers/geometry/point.ts'
import { STEP_TO_NEXT_HOLE_METRES } from './settings.ts'

/** A hole line with its ref; at least one point. */
export interface RefLine {
  readonly ref: string
  readonly line: readonly Point[]
}

/**
 * Splits hole lines into courses in which every ref occurs once, the one with most holes first. Where refs repeat,
 * the walk decides: from the end of hole k to the nearest start of hole k + 1, at most 400 m. Chains that the walk
 * leaves apart (a long way round from 9 to 10) join the course that lacks their refs and lies nearest. One or two
 * refs that repeat are no second course but holes drawn twice: the line that fits the walk stays, each spare stands alone.
 */
export function splitCourses<Line extends RefLine>(lines: readonly Line[]): Line[][] {
  const repeated = repeatedRefs(lines)
  if (lines.length === 0) return []
  if (repeated.size < LEAST_HOLES_OF_A_COURSE) return withoutSpares(lines, repeated)
  const courses: Line[][] = []
  for (const chain of walkChains(lines).sort((a, b) => b.length - a.length)) {
    const open = courses.filter((course) => !course.some((own) => chain.some((line) => line.ref === own.ref)))
    const nearest = open.sort((a, b) => gap(a, chain) - gap(b, chain))[0]
    if (nearest) nearest.push(...chain)
    else courses.push([...chain])
  }
  const order = new Map(lines.map((line, index) => [line, index]))
  for (const course of courses) course.sort((a, b) => (order.get(a) ?? 0) - (order.get(b) ?? 0))
  return courses.sort((a, b) => b.length - a.length)
}

/** Fewer holes than this whose refs are taken are holes drawn twice, not a course. Our assumption: the shortest courses have three. */
export const LEAST_HOLES_OF_A_COURSE = 3

function repeatedRefs(lines: readonly RefLine[]): Set<string> {
  const seen = new Set<string>()
  return new Set(lines.map(({ ref }) => ref).filter((ref) => seen.has(ref) || !seen.add(ref)))
}

function withoutSpares<Line extends RefLine>(
  lines: readonly Line[],
  repeated: ReadonlySet<string>,
): Line[][] {
  const sure = lines.filter((line) => !repeated.has(line.ref))
  const neighbour = (line: Line, step: number): Line | undefined =>
    sure.find((other) => Number(other.ref) === Number(line.ref) + step)
  const walk = (line: Line): number => {
    const before = neighbour(line, -1)
    const after = neighbour(line, 1)
    return (
      (before ? distance(endOf(before), startOf(line)) : 0) +
      (after ? distance(endOf(line), startOf(after)) : 0)
    )
  }
  const kept = new Set<Line>(sure)
  for (const ref of repeated) {
    const [best] = lines.filter((line) => line.ref === ref).sort((a, b) => walk(a) - walk(b))
    if (best) kept.add(best)
  }
  return [
    lines.filter((line) => kept.has(line)),
    ...lines.filter((line) => !kept.has(line)).map((line) => [line]),
  ]
}

function walkChains<Line extends RefLine>(lines: readonly Line[]): Line[][] {
  const steps: { from: Line; to: Line; metres: number }[] = []
  for (const from of lines) {
    for (const to of lines) {
      if (Number(to.ref) !== Number(from.ref) + 1) continue
      const metres = distance(endOf(from), startOf(to))
      if (metres <= STEP_TO_NEXT_HOLE_METRES) steps.push({ from, to, metres })
    }
  }
  // The shortest steps are the surest, so they are taken first; each hole has one before and one after.
  const next = new Map<Line, Line>()
  const reached = new Set<Line>()
  for (const { from, to } of steps.sort((a, b) => a.metres - b.metres)) {
    if (next.has(from) || reached.has(to)) continue
    next.set(from, to)
    reached.add(to)
  }
  return lines
    .filter((line) => !reached.has(line))
    .map((first) => {
      const chain: Line[] = []
      for (let line: Line | undefined = first; line; line = next.get(line)) chain.push(line)
      return chain
    })
}

function gap(course: readonly RefLine[], chain: readonly RefLine[]): number {
  let least = Number.POSITIVE_INFINITY
  for (const a of course) {
    for (const b of chain) {
      least = Math.min(least, distance(endOf(a), startOf(b)), distance(endOf(b), startOf(a)))
    }
  }
  return least
}

function startOf(line: RefLine): Point {
  return line.line[0] ?? [0, 0]
}

function endOf(line: RefLine): Point {
  return line.line.at(-1) ?? [0, 0]
}
