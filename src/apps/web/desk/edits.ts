import { type Day, REFERENCE_DAY } from '#golf/course/day.ts'
import type { HazardMove } from '#golf/course/move-hazards.ts'
import type { OwnCarries } from '#golf/player/own-carries.ts'
import type { Lie } from '#golf/player/player.ts'
import type { ReliefRow } from '#golf/strategy/relief.ts'
import { MOST_STROKES } from '#golf/strategy/settings.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { DESK_SETTINGS } from '../settings.ts'
import { type Ball, type Desk, MARKERS } from './desk.ts'
import type { Format } from './format.ts'

/** Every edit of the desk: a pure function from the old desk to the new one, so that undo is a list. */

/** Another course: its first hole, from its usual tee. */
export function chooseCourse(desk: Desk, courseId: string, firstHole: string): Desk {
  return { ...chooseHole(desk, firstHole), courseId, teeName: null }
}

/** Another hole; tees of one name are looked for again. */
export function chooseHole(desk: Desk, holeRef: string): Desk {
  return {
    ...teeUp(desk),
    holeRef,
    pin: 'day',
    moved: {},
    format: { ...desk.format, through: null, played: 0 },
  }
}

/** Other markers. */
export function chooseTee(desk: Desk, teeName: string | null): Desk {
  return { ...teeUp(desk), teeName }
}

/** Another player; the clubs are theirs, so the choice of club goes. */
export function choosePlayer(desk: Desk, playerId: string): Desk {
  return { ...ownLine(desk), playerId, carries: {}, spread: 1 }
}

/** A course, a hole and a player laid on the desk; what is absent or there already stays. */
export function layOut(
  desk: Desk,
  { courseId, holeRef, playerId }: { courseId?: string; holeRef?: string; playerId?: string },
): Desk {
  let next = desk
  if (courseId !== undefined && courseId !== next.courseId) next = chooseCourse(next, courseId, holeRef ?? '')
  if (holeRef !== undefined && holeRef !== next.holeRef) next = chooseHole(next, holeRef)
  if (playerId !== undefined && playerId !== next.playerId) next = choosePlayer(next, playerId)
  return next
}

/** Carries of one's own for the player shown; what is left out is filled in. */
export function typeCarries(desk: Desk, carries: OwnCarries): Desk {
  return { ...ownLine(desk), carries }
}

/** Other conditions from the store, or the calm reference day. */
export function chooseDay(desk: Desk, dayId: string | null, day: Day): Desk {
  return { ...desk, dayId, day: dayId === null ? REFERENCE_DAY : day, pin: 'day', aimDegrees: null }
}

/** Another hole location. */
export function movePin(desk: Desk, pin: Desk['pin']): Desk {
  return { ...desk, pin, aimDegrees: null }
}

/** The pin a step to the right and further, metres, from where it is now. */
export function stepPin(desk: Desk, from: Point, right: number, further: number): Desk {
  return movePin(desk, [from[0] + right, from[1] + further])
}

/** Wind speed, metres a second, kept inside the scale. */
export function setWindSpeed(desk: Desk, speed: number): Desk {
  const speedMetresPerSecond = clamp(speed, 0, DESK_SETTINGS.mostWind)
  return changeDay(desk, { wind: { ...desk.day.wind, speedMetresPerSecond } })
}

/** Where the wind comes from, true bearing in degrees. */
export function setWindFrom(desk: Desk, degrees: number): Desk {
  return changeDay(desk, { wind: { ...desk.day.wind, fromDegrees: ((degrees % 360) + 360) % 360 } })
}

/** A wind taken apart along a hole that runs along a bearing, m/s. */
export interface WindParts {
  readonly into: number
  readonly fromRight: number
}

/** The wind of the desk taken apart along a bearing. */
export function windParts({ day: { wind } }: Pick<Desk, 'day'>, bearingDegrees: number): WindParts {
  const turn = ((wind.fromDegrees - bearingDegrees) * Math.PI) / 180
  return {
    into: wind.speedMetresPerSecond * Math.cos(turn),
    fromRight: wind.speedMetresPerSecond * Math.sin(turn),
  }
}

/** One part of the wind, the other as it is; together they stay inside the scale of the wind. */
export function setWindPart(desk: Desk, bearingDegrees: number, part: keyof WindParts, value: number): Desk {
  const before = windParts(desk, bearingDegrees)
  const other = part === 'into' ? before.fromRight : before.into
  const room = Math.sqrt(Math.max(0, DESK_SETTINGS.mostWind ** 2 - other ** 2))
  const held = clamp(value, -room, room)
  const { into, fromRight } = part === 'into' ? { ...before, into: held } : { ...before, fromRight: held }
  const speedMetresPerSecond = Math.hypot(into, fromRight)
  if (speedMetresPerSecond < LEAST_WIND) return setWindSpeed(desk, 0)
  const fromDegrees = (bearingDegrees + (Math.atan2(fromRight, into) * 180) / Math.PI + 720) % 360
  return changeDay(desk, { wind: { ...desk.day.wind, speedMetresPerSecond, fromDegrees } })
}

/** Under this a wind is calm, and keeps the bearing that it had; m/s. */
const LEAST_WIND = 1e-6

/** Firmness: soft 0.4, normal 1, firm 1.7. */
export function setFirmness(desk: Desk, firmness: number): Desk {
  return changeDay(desk, { firmness: clamp(firmness, DESK_SETTINGS.softest, DESK_SETTINGS.firmest) })
}

/** Green speed, feet of the ramp test. */
export function setGreenSpeed(desk: Desk, feet: number): Desk {
  return changeDay(desk, {
    greenSpeedFeet: clamp(feet, DESK_SETTINGS.slowestGreen, DESK_SETTINGS.fastestGreen),
  })
}

/** The markers of the hole so far ahead of where they stand in the survey, metres; behind is less than nothing. */
export function moveMarkers(desk: Desk, metres: number): Desk {
  const movedMetres = clamp(metres, -DESK_SETTINGS.furthestMarkers, DESK_SETTINGS.furthestMarkers)
  return changeDay(desk, { tees: { ...desk.day.tees, [desk.holeRef]: { movedMetres } } })
}

/** The player's shots so many times as wide as they are. */
export function setSpread(desk: Desk, spread: number): Desk {
  return { ...desk, spread: clamp(spread, DESK_SETTINGS.tightest, DESK_SETTINGS.widest), aimDegrees: null }
}

/** A hazard so far from where it was surveyed, side by side; all else of the desk stays. */
export function moveHazard(desk: Desk, id: string, move: HazardMove): Desk {
  const most = DESK_SETTINGS.furthestHazard
  const held = {
    near: clamp(move.near, -most, most),
    far: clamp(move.far, -most, most),
    left: clamp(move.left, -most, most),
    right: clamp(move.right, -most, most),
  }
  if (Object.values(held).every((metres) => metres === 0)) return restoreHazard(desk, id)
  return { ...desk, moved: { ...desk.moved, [id]: held }, aimDegrees: null }
}

/** A hazard back where it was surveyed. */
export function restoreHazard(desk: Desk, id: string): Desk {
  const { [id]: _, ...moved } = desk.moved
  return { ...desk, moved, aimDegrees: null }
}

/** The ball somewhere on the hole; the lie that was told for it stays. */
export function placeBall(desk: Desk, at: Point): Desk {
  const { lie, said, from } = desk.ball ?? { lie: null, said: null, from: MARKERS }
  return { ...ownLine(desk), ball: { at, lie, said, from } }
}

/** What is said of the ball: perhaps unplayable, lost about there, or nothing. */
export function sayOfBall(desk: Desk, said: Ball['said']): Desk {
  return desk.ball === null ? desk : { ...ownLine(desk), ball: { ...desk.ball, lie: null, said } }
}

/** The stroke that brings the ball to where it is put next is made from where it lies now. */
export function strikeFromHere(desk: Desk): Desk {
  return desk.ball === null ? desk : { ...ownLine(desk), ball: { ...desk.ball, from: desk.ball.at } }
}

/** Relief taken: the ball on its spot, the penalty counted. */
export function takeRelief(desk: Desk, { spot, penalty }: Pick<ReliefRow, 'spot' | 'penalty'>): Desk {
  const format = { ...desk.format, played: desk.format.played + penalty }
  const at: Point = [spot.x_m, spot.y_m]
  const { lie } = spot
  if (lie === 'tee') return { ...ownLine(desk), ball: null, format }
  return { ...ownLine(desk), ball: { at, lie, said: null, from: desk.ball?.from ?? MARKERS }, format }
}

/** What the ball lies in, whatever the ground there; `null` = as the ground is. A ball on the markers stays there. */
export function setLie(desk: Desk, lie: Lie | null): Desk {
  return desk.ball === null ? desk : { ...ownLine(desk), ball: { ...desk.ball, lie } }
}

/** The ball back on the markers. */
export function teeUp(desk: Desk): Desk {
  return { ...ownLine(desk), ball: null, format: { ...desk.format, played: 0 } }
}

/** What the hole is played for, in one or more of its parts; only the numbers that its kind has room for. */
export function setFormat(desk: Desk, change: Partial<Format>): Desk {
  const next = { ...desk.format, ...change }
  const most = next.through === null ? MOST_STROKES - 1 : MOST_STROKES * MOST_HOLES
  return {
    ...ownLine(desk),
    format: {
      ...next,
      atMost: clamp(next.atMost, 1, most),
      opponentScore: clamp(next.opponentScore, 1, MOST_STROKES),
      played: clamp(next.played, 0, MOST_STROKES),
    },
  }
}

/** Holes of a round. */
const MOST_HOLES = 18

/** Looks at a club with its best line; the plan's own club when it is chosen twice. */
export function chooseClub(desk: Desk, club: string | null): Desk {
  return { ...desk, club, aimDegrees: null }
}

/** Aims the club somewhere else than its best line. */
export function aimAt(desk: Desk, club: string, degrees: number): Desk {
  // From the markers nobody aims far from the first leg; from elsewhere the pin may lie on any side.
  const widest = desk.ball === null ? DESK_SETTINGS.widestAim : 180
  return { ...desk, club, aimDegrees: clamp(degrees, -widest, widest) }
}

/** Back to the club's best line. */
export function aimBest(desk: Desk): Desk {
  return { ...desk, aimDegrees: null }
}

function ownLine(desk: Desk): Desk {
  return { ...desk, club: null, aimDegrees: null }
}

function changeDay(desk: Desk, change: Partial<Day>): Desk {
  return { ...desk, day: { ...desk.day, ...change } }
}

function clamp(value: number, low: number, high: number): number {
  return Math.max(low, Math.min(high, value))
}
