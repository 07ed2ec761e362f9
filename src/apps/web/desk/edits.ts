import { type Day, REFERENCE_DAY } from '#golf/course/day.ts'
import type { HazardMove } from '#golf/course/move-hazards.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { DESK_SETTINGS } from '../settings.ts'
import type { Desk } from './desk.ts'

/** Every edit of the desk: a pure function from the old desk to the new one, so that undo is a list. */

/** Another course: its first hole, from its usual tee. */
export function chooseCourse(desk: Desk, courseId: string, firstHole: string): Desk {
  return { ...ownLine(desk), courseId, holeRef: firstHole, teeName: null, pin: 'day', moved: {} }
}

/** Another hole; tees of one name are looked for again. */
export function chooseHole(desk: Desk, holeRef: string): Desk {
  return { ...ownLine(desk), holeRef, pin: 'day', moved: {} }
}

/** Other markers. */
export function chooseTee(desk: Desk, teeName: string | null): Desk {
  return { ...ownLine(desk), teeName }
}

/** Another player; the clubs are theirs, so the choice of club goes. */
export function choosePlayer(desk: Desk, playerId: string): Desk {
  return { ...ownLine(desk), playerId, spread: 1 }
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

/** Looks at a club with its best line; the plan's own club when it is chosen twice. */
export function chooseClub(desk: Desk, club: string | null): Desk {
  return { ...desk, club, aimDegrees: null }
}

/** Aims the club somewhere else than its best line. */
export function aimAt(desk: Desk, club: string, degrees: number): Desk {
  return { ...desk, club, aimDegrees: clamp(degrees, -DESK_SETTINGS.widestAim, DESK_SETTINGS.widestAim) }
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
