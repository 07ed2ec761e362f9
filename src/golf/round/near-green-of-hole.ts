import type {
  LoggedNearGreen,
  LoggedPutt,
  LoggedShortStroke,
  ShortPlace,
} from '#golf/player/logged-near-green.ts'
import { puttingDistance } from '#golf/player/putting-distance.ts'
import { puttingValues } from '#golf/player/putting-values.ts'
import { shortGameValue } from '#golf/player/short-game-values.ts'
import { nearGreenValue } from '#golf/strategy/near-green-value.ts'
import { isNearGreen } from '#golf/strategy/plan-near-green.ts'
import { distance } from '#numbers/geometry/point.ts'
import type { DatedHole } from './dated-hole.ts'
import { followHole, type Spot, type Stretch } from './follow-hole.ts'
import type { RecapHole } from './judge-choice.ts'
import { cheapestDrop } from './recap-hole.ts'
import type { RoundHole } from './round.ts'

/** Why a putt or a stroke near the green is not learned from. */
export const UNLEARNED_NEAR_GREEN = ['length', 'fringe', 'near-green'] as const
export type UnlearnedNearGreen = (typeof UNLEARNED_NEAR_GREEN)[number]

/** What a hole that was played says of its player near the green. */
export interface NearGreenOfHole extends LoggedNearGreen {
  /** Strokes that say nothing, by why. */
  readonly unused: Readonly<Record<UnlearnedNearGreen, number>>
}

/**
 * Putts and strokes near the green of a hole that is solved already. A length of a putt is one that was written down as such:
 * a place on a picture of the hole is too rough for putts. Where the survey knows the slopes a putt counts as the one on a
 * level green that is worth as much.
 */
export function nearGreenOfHole(solved: RecapHole, { hole: logged, date }: DatedHole): NearGreenOfHole {
  const { hole } = solved.model
  const putts: LoggedPutt[] = []
  const strokes: LoggedShortStroke[] = []
  const unused = { length: 0, fringe: 0, 'near-green': 0 }
  const lengths = new Map<Spot, number>()
  const { stretches } = followHole(hole, logged, cheapestDrop(solved))
  for (const stretch of stretches) {
    const written = stretch.to && writtenLength(stretch, logged)
    if (stretch.to !== null && written !== null) lengths.set(stretch.to, written)
  }
  const onGreen = stretches.findIndex(({ from }) => from.lie === 'green')
  const sloping = onGreen < 0 || !isSloping(stretches[onGreen]?.from as Spot) ? [] : stretches.slice(onGreen)
  if (sloping.length > 0) {
    const putt = numberOf(sloping)
    if (putt === null) unused.length += sloping.reduce((sum, one) => sum + one.strokes.length, 0)
    else putts.push({ date, ...putt })
  }
  for (const stretch of sloping.length > 0 ? stretches.slice(0, onGreen) : stretches) {
    const { from } = stretch
    const count = stretch.strokes.length
    if (from.lie === 'green') {
      const putt = puttOf(stretch)
      if (putt === null) unused.length += count
      else putts.push({ date, ...putt })
    } else if (isNearGreen({ x: from.point[0], y: from.point[1], lie: from.lie }, hole)) {
      const stroke = strokeOf(stretch)
      if (from.lie === 'fringe') unused.fringe += count
      else if (stroke === null) unused['near-green'] += count
      else strokes.push({ date, ...stroke })
    }
  }
  return { putts, strokes, unused }

  /**
   * Putts of a sloping green by their number alone: how far a miss runs there is the slope's as much as the player's. `null` where
   * they were not all putts, or not played out.
   */
  function numberOf(all: readonly Stretch[]): Omit<LoggedPutt, 'date'> | null {
    const metres = levelLength((all[0] as Stretch).from)
    const isWhole = all.every(({ from, penalty }) => from.lie === 'green' && penalty === 0)
    if (metres === null || !isWhole || logged.isPickedUp) return null
    return { metres, end: { putts: all.reduce((sum, { strokes: played }) => sum + played.length, 0) } }
  }

  function isSloping(spot: Spot): boolean {
    return Math.abs(slopesAt(spot)) >= LEVEL_STROKES
  }

  /** Putts that the slopes add there. */
  function slopesAt(spot: Spot): number {
    return valueAt(spot) - puttingValues(solved.model.player).expected(distance(spot.point, hole.pin))
  }

  function puttOf({ from, to, strokes: played, penalty }: Stretch): Omit<LoggedPutt, 'date'> | null {
    const metres = levelLength(from)
    if (metres === null || penalty > 0) return null
    if (to === null) return logged.isPickedUp ? null : { metres, end: { putts: played.length } }
    const leftMetres = lengths.get(to)
    return played.length > 1 || leftMetres === undefined ? null : { metres, end: { leftMetres } }
  }

  function strokeOf({ from, to, strokes: played, used }: Stretch): Omit<LoggedShortStroke, 'date'> | null {
    if (played.length > 1) return null
    const start = { ...shortPlace(from), used }
    if (to === null) return logged.isPickedUp ? null : { ...start, after: null }
    if (to.lie !== 'green') return { ...start, after: shortPlace(to) }
    const puttMetres = levelLength(to)
    return puttMetres === null ? null : { ...start, after: { puttMetres } }
  }

  function shortPlace(spot: Spot): ShortPlace {
    const { lie, point } = spot
    const metres = distance(point, hole.pin)
    return { lie, metres, added: valueAt(spot) - shortGameValue(solved.model.player, lie, metres) }
  }

  /** The putt on a level green that is worth as much as the written one, metres; `null` where no length was written. */
  function levelLength(spot: Spot): number | null {
    const metres = lengths.get(spot)
    if (metres === undefined) return null
    if (!isSloping(spot)) return metres
    const { player } = solved.model
    return puttingDistance(player, puttingValues(player).expected(metres) + slopesAt(spot))
  }

  function valueAt({ point, ground, lie }: Spot): number {
    return nearGreenValue(solved.model, solved.values, point, ground, lie)
  }
}

/** Slopes that add less than this to a putt leave its length as it was written. Numerical choice. */
const LEVEL_STROKES = 0.002

/** What was written of how long a putt a stroke left, metres; `null` where nothing was, or only a place. */
function writtenLength(
  { strokes, to }: Stretch,
  { strokes: all, putts, firstPuttMetres }: RoundHole,
): number | null {
  if (to?.lie !== 'green') return null
  const last = strokes.at(-1)
  if (putts > 0 && last === all.at(-1) && firstPuttMetres !== null) return firstPuttMetres
  const finish = last?.finish ?? null
  return finish !== null && 'letter' in finish ? finish.leftMetres : null
}
