import type { ShotRecord } from '#golf/player/shot-record.ts'
import { UNIT_GAP } from './settings.ts'

/** Carries that look as if part of them were written in the other unit. */
export type MixedUnits =
  /** On these days every club goes further, by the factor, than on the others. */
  | { readonly kind: 'days'; readonly days: readonly string[]; readonly factor: number }
  /** The carries of one club lie in two heaps with nothing between. */
  | { readonly kind: 'club'; readonly club: string; readonly factor: number }

/**
 * Where shots of a player look like yards among metres: groups of days on which all clubs differ by 1.094, and clubs
 * whose carries lie in two heaps that far apart. Our rule, see {@link UNIT_GAP}; a question, never a correction,
 * because a winter may cost as much.
 */
export function mixedUnits(shots: readonly ShotRecord[]): readonly MixedUnits[] {
  const byClub = new Map<string, { logarithm: number; date: string | null }[]>()
  for (const { club, carryMetres, totalMetres, date } of shots) {
    const metres = carryMetres ?? totalMetres ?? 0
    if (metres <= 0) continue
    const own = byClub.get(club)
    const entry = { logarithm: Math.log(metres), date }
    if (own === undefined) byClub.set(club, [entry])
    else own.push(entry)
  }
  const days = mixedDays([...byClub.values()])
  if (days !== null) return [days]
  return [...byClub].flatMap(([club, entries]) => {
    const factor = twoHeapsOfClub(entries.map(({ logarithm }) => logarithm))
    return factor === null ? [] : [{ kind: 'club' as const, club, factor }]
  })
}

type Entry = { readonly logarithm: number; readonly date: string | null }

function mixedDays(clubs: readonly (readonly Entry[])[]): MixedUnits | null {
  const days = dayOffsets(clubs)
  const split = days.length < UNIT_GAP.leastDays ? null : twoHeaps(days.map(({ offset }) => offset))
  if (split === null) return null
  const far = days.filter(({ offset }) => offset > split.at)
  const near = days.filter(({ offset }) => offset <= split.at)
  const isFarFewer = shotsOf(far) <= shotsOf(near)
  return {
    kind: 'days',
    days: (isFarFewer ? far : near).flatMap((one) => one.days).sort(),
    factor: Math.exp(isFarFewer ? split.difference : -split.difference),
  }
}

type Days = { readonly days: readonly string[]; readonly offset: number; readonly shots: number }

/** How much further than usual the clubs went on each day, or on some days together where there were few shots, as a logarithm. */
function dayOffsets(clubs: readonly (readonly Entry[])[]): readonly Days[] {
  const sums = new Map<string, { shots: number; sum: number }>()
  for (const entries of clubs) {
    const usual = median(entries.map(({ logarithm }) => logarithm))
    for (const { date, logarithm } of entries) {
      if (date === null || isFar(logarithm, usual)) continue
      const known = sums.get(date) ?? { shots: 0, sum: 0 }
      sums.set(date, { shots: known.shots + 1, sum: known.sum + logarithm - usual })
    }
  }
  const inOrder = [...sums].sort(([a], [b]) => (a < b ? -1 : 1))
  return together(inOrder.map(([day, { shots, sum }]) => ({ days: [day], shots, sum })))
}

interface DaySum {
  readonly days: readonly string[]
  readonly shots: number
  readonly sum: number
}

/** Days with few shots go together with the next such ones until they are enough to be heard. */
function together(inOrder: readonly DaySum[]): readonly Days[] {
  const heard: Days[] = []
  let few: DaySum = { days: [], shots: 0, sum: 0 }
  for (const day of inOrder) {
    const isEnough = day.shots >= UNIT_GAP.leastOnDay
    if (!isEnough)
      few = { days: [...few.days, ...day.days], shots: few.shots + day.shots, sum: few.sum + day.sum }
    const one = isEnough ? day : few
    if (one.shots < UNIT_GAP.leastOnDay) continue
    heard.push({ days: one.days, offset: one.sum / one.shots, shots: one.shots })
    if (!isEnough) few = { days: [], shots: 0, sum: 0 }
  }
  return heard
}

/** What is far from the rest is a mishit or a misread number, not another unit. */
function isFar(logarithm: number, usual: number): boolean {
  return Math.abs(logarithm - usual) > 2 * UNIT_GAP.logarithm
}

function shotsOf(days: readonly Days[]): number {
  return days.reduce((sum, { shots }) => sum + shots, 0)
}

/**
 * The cut between two heaps of values and the distance of their means, `null` when there is one heap, or two that are
 * not a unit apart. The cut is where the heaps are narrowest.
 */
function twoHeaps(
  all: readonly number[],
  least = 0,
): { readonly at: number; readonly difference: number } | null {
  const values = [...all].sort((a, b) => a - b)
  const count = values.length
  const total = values.reduce((sum, value) => sum + value, 0)
  const squares = values.reduce((sum, value) => sum + value * value, 0)
  let best = { at: 0, difference: 0, inside: Number.POSITIVE_INFINITY }
  let lowSum = 0
  for (const [index, value] of values.entries()) {
    lowSum += value
    const low = index + 1
    if (low === count || Math.min(low, count - low) < least) continue
    const lowMean = lowSum / low
    const highMean = (total - lowSum) / (count - low)
    const variance = (squares - low * lowMean ** 2 - (count - low) * highMean ** 2) / count
    const inside = Math.sqrt(Math.max(0, variance))
    if (inside < best.inside) best = { at: value, difference: highMean - lowMean, inside }
  }
  const isUnit = Math.abs(best.difference - UNIT_GAP.logarithm) < UNIT_GAP.within
  return isUnit && best.inside < UNIT_GAP.mostInside * best.difference ? best : null
}

/** The factor between two heaps of one club's carries. */
function twoHeapsOfClub(all: readonly number[]): number | null {
  const middle = median(all)
  const values = all.filter((value) => !isFar(value, middle))
  if (values.length < UNIT_GAP.leastOfClub) return null
  const split = twoHeaps(values, values.length * UNIT_GAP.leastPart)
  return split === null ? null : Math.exp(split.difference)
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b)
  const half = sorted.length >> 1
  return sorted.length % 2 === 1 ? (sorted[half] ?? 0) : ((sorted[half - 1] ?? 0) + (sorted[half] ?? 0)) / 2
}
