import { type Conditions, windShareOverGrass } from '#golf/ball/conditions.ts'
import { REFERENCE_DENSITY } from '#golf/ball/flight-settings.ts'
import { flights } from '#golf/ball/flights.ts'
import { type LoftedCarry, playsAs } from '#golf/ball/plays-as.ts'
import type { Hole } from '#golf/course/hole.ts'
import { CLUB_KINDS } from '#golf/player/club-names.ts'
import { PLAYING_DRIVER_METRES, PLAYING_STROKE_METRES } from './settings.ts'

/** How long a hole plays, whoever plays it. */
export interface PlayingLength {
  /** On the level in still reference air it would be so long, metres. */
  readonly playsMetres: number
  /** What height, wind and air add to its length, each alone, metres; together they need not add up. */
  readonly byHeightMetres: number
  readonly byWindMetres: number
  readonly byAirMetres: number
}

/** Neither wind nor slope, in reference air. */
const STILL: Conditions = {
  windX: 0,
  windY: 0,
  windShare: windShareOverGrass,
  density: REFERENCE_DENSITY,
  risePerMetre: 0,
  riseHeading: 0,
}

/** An ordinary bag by its usual lofts and carries. */
const ORDINARY_CLUBS: readonly LoftedCarry[] = CLUB_KINDS.map(({ loftDegrees, carryShare }) => ({
  loftDegrees,
  carryMetres: carryShare * PLAYING_DRIVER_METRES,
}))

/**
 * The playing length of a hole under the conditions of a day: its line in equal strokes of at most
 * {@link PLAYING_STROKE_METRES}, each as it plays with an ordinary club for it.
 */
export function playingLength(hole: Hole, conditions: Conditions): PlayingLength {
  const { windX, windY, density, risePerMetre, riseHeading } = conditions
  const added = (part: Partial<Conditions>): number =>
    lengthIn(hole, { ...STILL, ...part }) - hole.lengthMetres
  return {
    playsMetres: lengthIn(hole, conditions),
    byHeightMetres: added({ risePerMetre, riseHeading }),
    byWindMetres: added({ windX, windY }),
    byAirMetres: added({ density }),
  }
}

function lengthIn(hole: Hole, conditions: Conditions): number {
  const flown = flights(conditions)
  return hole.line.reduce((sum, to, index) => {
    const from = hole.line[index - 1]
    if (!from) return sum
    const metres = Math.hypot(to[0] - from[0], to[1] - from[1])
    const strokes = Math.max(1, Math.ceil(metres / PLAYING_STROKE_METRES))
    const heading = Math.atan2(to[0] - from[0], to[1] - from[1])
    return sum + strokes * playsAs(flown, ORDINARY_CLUBS, metres / strokes, heading)
  }, 0)
}
