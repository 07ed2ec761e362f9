import type { FaultCode } from '#faults/codes.ts'
import type { Fault } from '#faults/fault.ts'
import type { Ground } from '#golf/course/ground.ts'
import { groundReader } from '#golf/course/ground-at.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Lie } from '#golf/player/player.ts'
import { lieOfGround } from '#golf/strategy/lie-of-ground.ts'
import { distance, type Point } from '#numbers/geometry/point.ts'
import { letterPlace } from './letter-place.ts'
import { type FinishLetter, penaltyOf, type RoundHole, type RoundStroke } from './round.ts'

/** A place from which a stroke was played, hole frame, metres. */
export interface Spot {
  readonly point: Point
  readonly lie: Lie
  readonly ground: Ground
}

/** Strokes between two places that are known: one, or several where the places between were not logged. */
export interface Stretch {
  /** Numbers of its strokes on the hole, from 1, penalty strokes not among them. */
  readonly first: number
  readonly strokes: readonly RoundStroke[]
  readonly from: Spot
  /** `null` = holed. */
  readonly to: Spot | null
  /** Strokes used, penalties counted. */
  readonly used: number
  readonly penalty: number
}

/** A hole as it was played, stretch by stretch, and what was noticed on the way. */
export interface FollowedHole {
  readonly stretches: readonly Stretch[]
  readonly faults: readonly Fault[]
}

/** Where a ball in a penalty area is dropped when nobody wrote it down; `null` where no drop is known. */
export type DropFrom = (point: Point, ground: 'penalty-red' | 'penalty-yellow') => Point | null

/** Finds the places of every stroke of a logged hole. Strokes whose places are not known are joined to the next that is. */
export function followHole(hole: Hole, logged: RoundHole, dropFrom: DropFrom): FollowedHole {
  const faults: Fault[] = []
  const groundOf = groundReader(hole)
  const strokes = [...logged.strokes, ...puttsOf(logged)]
  const stretches: Stretch[] = []
  let from: Spot = { point: [0, 0], lie: 'tee', ground: groundOf([0, 0]) }

  let open: { first: number; strokes: RoundStroke[]; penalty: number } | null = null

  for (const [index, stroke] of strokes.entries()) {
    open ??= { first: index + 1, strokes: [], penalty: 0 }
    open.strokes.push(stroke)
    open.penalty += penaltyOf(stroke)
    const isLast = index === strokes.length - 1
    const isBeforePutts = logged.putts > 0 && index === logged.strokes.length - 1
    let to = isLast ? null : spotAfter(stroke, strokes[index + 1])
    if (isBeforePutts) to = onGreen(to)
    if (!isLast && to === null) continue
    stretches.push({ ...open, from, to, used: open.strokes.length + open.penalty })
    open = null
    if (to) {
      from = to
    }
  }
  return { stretches, faults }

  function say(code: FaultCode, stroke: RoundStroke, message: string, advice: string): void {
    faults.push({ severity: 'warning', code, message, place: `hole ${hole.ref}, ${stroke.place}`, advice })
  }

  function spotAfter(stroke: RoundStroke, next: RoundStroke | undefined): Spot | null {
    const { finish } = stroke
    // A stroke that goes back starts from where it did: known only when that place is.
    const startedAt = open?.strokes.length === 1 ? from : null
    const lie = stroke.lie ?? next?.from ?? null
    if (finish === null) return null
    if ('letter' in finish) {
      const { letter, leftMetres } = finish
      if (letter === 'o' && !(hole.localRules.includes('E-5') && leftMetres !== null)) return startedAt
      if (leftMetres === null) return null
      const found = letterPlace(hole, letter === 'o' ? 'f' : letter, leftMetres, from.point)
      if (!found.isSurveyed || Math.abs(found.leftMetres - leftMetres) > 0.5) sayMoved(stroke, letter, found)
      return { point: found.point, lie: lie ?? found.lie, ground: groundOf(found.point) }
    }
    const point: Point = [finish.x, finish.y]
    const ground = groundOf(point)
    if (ground === 'out' && penaltyOf(stroke) > 0) return startedAt
    if ((ground === 'penalty-red' || ground === 'penalty-yellow') && penaltyOf(stroke) > 0) {
      const drop = dropFrom(point, ground)
      say(
        'MAR-ROUND-012',
        stroke,
        'The ball was logged in the penalty area and not where it was dropped: the cheapest drop was taken.',
        'Log the place of the drop.',
      )
      return (
        drop && { point: drop, lie: lie ?? lieOfGround(groundOf(drop)) ?? 'rough', ground: groundOf(drop) }
      )
    }
    const known = lie ?? lieOfGround(ground)
    if (known !== null) return { point, lie: known, ground }
    say(
      'MAR-ROUND-012',
      stroke,
      'By the survey the ball lies out of bounds or in a penalty area, but no penalty stroke was logged: its place was left open.',
      'Add the penalty stroke, or what the ball lay in.',
    )
    return null
  }

  function sayMoved(stroke: RoundStroke, letter: FinishLetter, found: ReturnType<typeof letterPlace>): void {
    say(
      'MAR-ROUND-009',
      stroke,
      found.isSurveyed
        ? `The survey has no ${letter} at the written distance: the ball was put ${found.leftMetres.toFixed(0)} m from the pin.`
        : `The survey has no ${letter} about the written distance: the ball was put on the line, in the lie of the letter.`,
      'Look at letter and distance, or at the survey of the hole.',
    )
  }

  /** Where the first putt was: the logged place, at the logged length of the putt. */
  function onGreen(spot: Spot | null): Spot | null {
    const { firstPuttMetres } = logged
    const { pin } = hole
    const point = ((): Point | null => {
      if (firstPuttMetres === null) return spot?.point ?? null
      const away = spot && distance(spot.point, pin) > 0.1 ? spot.point : from.point
      const reach = Math.max(distance(away, pin), 1e-9)
      const share = firstPuttMetres / reach
      return [pin[0] + share * (away[0] - pin[0]), pin[1] + share * (away[1] - pin[1])]
    })()
    return point && { point, lie: spot?.lie === 'fringe' ? 'fringe' : 'green', ground: groundOf(point) }
  }
}

/** Putts that were only counted: nothing is known of them but the club. */
function puttsOf(logged: RoundHole): RoundStroke[] {
  return Array.from({ length: logged.putts }, () => ({
    club: 'putter',
    aimOffsetMetres: null,
    from: null,
    finish: null,
    lie: null,
    penalty: null,
    isAsPlanned: false,
    place: `${logged.place}, putts`,
  }))
}
