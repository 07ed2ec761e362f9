import { GROUND_CLASSES, type Ground } from '#golf/course/ground.ts'
import type { HoleModel } from '#golf/strategy/hole-model.ts'
import {
  AT_REST,
  IN_RED,
  IN_YELLOW,
  OUT_OF_BOUNDS,
  outcomeKind,
  outcomePlace,
} from '#golf/strategy/outcome.ts'
import { restPoint } from '#golf/strategy/rest-point.ts'
import type { StrokeEnds } from '#golf/strategy/stroke-ends.ts'
import { distance, type Point } from '#numbers/geometry/point.ts'
import { isGroundOf } from './letter-place.ts'
import type { FinishLetter } from './round.ts'
import {
  DROP_METRES,
  FINISH_SD_METRES,
  FINISH_SD_SHARE,
  PACED_SD_METRES,
  PACED_SD_SHARE,
} from './settings.ts'

/** What was written of how a stroke ended. */
export type WrittenEnd =
  /** At rest at a place of the hole. */
  | { readonly kind: 'place'; readonly point: Point }
  /** At rest on the ground of a letter, so far from the pin, metres. */
  | {
      readonly kind: 'letter'
      readonly letter: Exclude<FinishLetter, 'o' | 'p'>
      readonly leftMetres: number
    }
  /** In a penalty area or unplayable, dropped at a place, or so far from the pin. */
  | { readonly kind: 'drop'; readonly point: Point | null; readonly leftMetres: number }
  /** In a penalty area, where the ball was seen to go in. */
  | { readonly kind: 'splash'; readonly point: Point }
  /** Played again from where it was: out of bounds or lost alone, or whatever cost a penalty. */
  | { readonly kind: 'again'; readonly isLost: boolean }

/**
 * How likely what was written is of one end of a stroke, 0 to 1. `fromSd`: how well the place it was played from is known,
 * metres. A place is as well known as in a recap; a paced distance half as well as it is looked for.
 */
export function writtenLikelihood(
  model: HoleModel,
  from: Point,
  written: WrittenEnd,
  fromSd: number,
): (ends: StrokeEnds, end: number, blur: number) => number {
  const { places, costs, hole } = model
  const like = (off: number, sd: number, blur: number): number => Math.exp(-((off / (sd * blur)) ** 2) / 2)
  const place = (ends: StrokeEnds, end: number): number => outcomePlace(places, ends.outcome[end] as number)
  const placeSd = (point: Point): number =>
    Math.hypot(FINISH_SD_METRES, FINISH_SD_SHARE * distance(from, point), fromSd)
  const toGrief = (ends: StrokeEnds, end: number): number =>
    1 - playedShare(model, ends.outcome[end] as number)

  switch (written.kind) {
    case 'place': {
      const sd = placeSd(written.point)
      return (ends, end, blur) =>
        playedShare(model, ends.outcome[end] as number) *
        like(distance(restPoint(places, ends, end), written.point), sd, blur)
    }
    case 'letter': {
      const sd = Math.hypot(pacedSd(written.leftMetres), fromSd)
      return (ends, end, blur) => {
        const ground = GROUND_CLASSES[places.ground[place(ends, end)] as number] as Ground
        if (!isGroundOf(written.letter, ground)) return 0
        const left = distance(restPoint(places, ends, end), hole.pin)
        return playedShare(model, ends.outcome[end] as number) * like(left - written.leftMetres, sd, blur)
      }
    }
    case 'splash': {
      const sd = placeSd(written.point)
      return (ends, end, blur) => {
        const kind = outcomeKind(places, ends.outcome[end] as number)
        if (kind !== IN_RED && kind !== IN_YELLOW) return 0
        return like(distance(restPoint(places, ends, end), written.point), sd, blur)
      }
    }
    case 'drop':
      return (ends, end, blur) => {
        const outcome = ends.outcome[end] as number
        const relieved = costs.relieved[outcome] as number
        // From a yellow penalty area and back on the line a drop may lie anywhere behind: then only that there was one counts.
        if (outcomeKind(places, outcome) === IN_YELLOW) return relieved
        const crossed: Point = [places.x[place(ends, end)] as number, places.y[place(ends, end)] as number]
        const off =
          written.point === null
            ? distance(crossed, hole.pin) - written.leftMetres
            : distance(crossed, written.point)
        const sd = Math.hypot(
          DROP_METRES / 2,
          fromSd,
          written.point === null ? pacedSd(written.leftMetres) : 0,
        )
        return relieved * (FAR_DROP + (1 - FAR_DROP) * like(off, sd, blur))
      }
    case 'again':
      return (ends, end) => {
        const outcome = ends.outcome[end] as number
        if (!written.isLost) return toGrief(ends, end)
        return outcomeKind(places, outcome) === OUT_OF_BOUNDS ? 1 : (costs.returned[outcome] as number)
      }
  }
}

/** How well a distance that was paced is known, metres. */
export function pacedSd(leftMetres: number): number {
  return Math.hypot(PACED_SD_METRES, PACED_SD_SHARE * leftMetres)
}

/** Share of drops that are taken far from where the ball crossed, back on the line, and may lie anywhere. Our assumption. */
const FAR_DROP = 0.02

function playedShare({ places, costs }: HoleModel, outcome: number): number {
  if (outcomeKind(places, outcome) !== AT_REST) return 0
  return costs.isSpecial[outcome] === 1 ? (costs.played[outcome] as number) : 1
}
