import { type Day, REFERENCE_DAY } from '#golf/course/day.ts'
import type { HazardMove } from '#golf/course/move-hazards.ts'
import type { OwnCarries } from '#golf/player/own-carries.ts'
import type { Lie } from '#golf/player/player.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { FEWEST_STROKES, type Format } from './format.ts'

/** Everything a person has chosen on the hole desk: the whole of it is one step of undo. */
export interface Desk {
  readonly courseId: string
  readonly holeRef: string
  /** `null` = the tee nearest the start of the hole line. */
  readonly teeName: string | null
  readonly playerId: string
  /** `null` = calm reference conditions. */
  readonly dayId: string | null
  readonly day: Day
  /** `day` = where the day's pin sheet cuts it, else the middle; a point is in the hole frame. */
  readonly pin: 'day' | 'front' | 'middle' | 'back' | Point
  /** Where the ball lies; `null` = on the markers. */
  readonly ball: Ball | null
  /** Hazards of the hole moved to see what they do, by the ids of their areas. */
  readonly moved: Readonly<Record<string, HazardMove>>
  /** Carries typed for the player shown; the file's are left aside while there are any. */
  readonly carries: OwnCarries
  /** How wide the player's shots are taken to spread: 1 = as they do. */
  readonly spread: number
  /** What the hole is played for. */
  readonly format: Format
  /** The club looked at; `null` = the plan's. */
  readonly club: string | null
  /** Where it is aimed, degrees clockwise from the y axis; `null` = its best line. */
  readonly aimDegrees: number | null
}

/** A ball somewhere on the hole. */
export interface Ball {
  /** Hole frame. */
  readonly at: Point
  /** `null` = the lie that the ground there gives. */
  readonly lie: Lie | null
  /** What is said of it: perhaps unplayable, or lost about there; `null` = the ground decides. */
  readonly said: 'in question' | 'lost' | null
  /** Where the stroke was made that brought it there, hole frame. */
  readonly from: Point
}

/** The markers in the hole frame. */
export const MARKERS: Point = [0, 0]

/** How the reader likes to read; no step of undo. */
export interface Reader {
  readonly units: 'yards' | 'metres'
  readonly windUnit: 'm/s' | 'mph' | 'knots'
  /** The light the page is read in. */
  readonly theme: 'day' | 'night' | 'sun'
  readonly print: 'usual' | 'large'
}

/** A desk as it is first opened. */
export function openDesk(courseId: string, holeRef: string, playerId: string): Desk {
  return {
    courseId,
    holeRef,
    teeName: null,
    playerId,
    dayId: null,
    day: REFERENCE_DAY,
    pin: 'day',
    ball: null,
    moved: {},
    carries: {},
    spread: 1,
    format: FEWEST_STROKES,
    club: null,
    aimDegrees: null,
  }
}
