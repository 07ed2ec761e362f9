import { degreesToRadians } from '#numbers/units/units.ts'
import { clubKind } from './club-names.ts'
import { interpolateKnots } from './interpolate-knots.ts'
import {
  FRINGE_PUTT_DIRECTION_FACTOR,
  FRINGE_PUTT_DISTANCE_FACTOR,
  READING_DIRECTION_SD_DEGREES,
  READING_DISTANCE_SD_SHARE,
} from './near-green-settings.ts'
import type { Lie, Player } from './player.ts'
import { isChipped, priorRollPerCarry } from './roll-per-carry.ts'
import {
  FAIRWAY_PUTT_DIRECTION_FACTOR,
  FAIRWAY_PUTT_DISTANCE_FACTOR,
  MOST_POOR_SHARE,
  SHORT_LIE_RULES,
  SHORT_POOR_BY_LOFT,
  SHORT_SHOT_RULES,
  SHORT_SPREAD_BY_LOFT,
  type ShortLie,
  type ShortLieRule,
  type ShortShotKind,
  type ShortShotRule,
} from './short-game-settings.ts'
import { priorShortSpread, type ShortSpread } from './short-spread.ts'

/** One way of playing a ball near the green: a club, how it is swung, and how far such shots differ from this lie. */
export interface ShortShot {
  /** As in the player file; `putter` for a putt. */
  readonly club: string
  readonly kind: ShortShotKind
  /** Roll per carry from this lie, level green of the ladder's speed; a putt has no carry. */
  readonly rollPerCarry: number
  /** Above level, for the flight in a picture. */
  readonly launchRadians: number
  /** Carries it is played over, metres; of a putt the lengths of its roll. */
  readonly carryMetres: readonly [least: number, most: number]
  readonly spread: ShortSpread
}

/** What the short shots need to know of a player. */
export type ShortShotPlayer = Pick<Player, 'clubs' | 'putting' | 'shortGame'>

/** Every way this player has of playing a ball in this lie near the green, lowest flight first. */
export function shortShots(player: ShortShotPlayer, lie: Lie): ShortShot[] {
  const shots = lie === 'green' ? [] : lofted(player, lie)
  const putt = puttFrom(player, lie)
  return [...(putt === null ? [] : [putt]), ...shots.sort((a, b) => b.rollPerCarry - a.rollPerCarry)]
}

function lofted(player: ShortShotPlayer, lie: Lie): ShortShot[] {
  const rule = SHORT_LIE_RULES[shortLie(lie)]
  const loftiest = Math.max(0, ...player.clubs.map(({ name }) => clubKind(name)?.loftDegrees ?? 0))
  return player.clubs.flatMap((club) => {
    const kind = clubKind(club.name)
    if (kind === null || club.lies[lie] === false) return []
    const loft = kind.loftDegrees
    return (Object.keys(SHORT_SHOT_RULES) as (keyof typeof SHORT_SHOT_RULES)[]).flatMap((name) => {
      const shot = SHORT_SHOT_RULES[name]
      // A bag without any usual club still has to play the ball: then with its most lofted one.
      const isUsual = loft >= Math.max(shot.leastLoftDegrees, rule.leastLoftDegrees) || loft === loftiest
      if (!shot.lies.includes(lie) || !isUsual || (!isChipped(kind) && loft !== loftiest)) return []
      const chipRoll = player.shortGame.rollPerCarry?.[club.name] ?? priorRollPerCarry(loft)
      return [
        {
          club: club.name,
          kind: name,
          rollPerCarry: chipRoll * shot.rollShare * rule.run,
          launchRadians: degreesToRadians(loft * shot.launchShare),
          carryMetres: shot.carryMetres,
          spread: spreadOf(player, shot, rule, loft),
        },
      ]
    })
  })
}

function shortLie(lie: Lie): ShortLie {
  return lie === 'green' || lie === 'fringe' || lie === 'tee' ? 'fairway' : lie
}

function spreadOf(
  player: ShortShotPlayer,
  shot: ShortShotRule,
  rule: ShortLieRule,
  loftDegrees: number,
): ShortSpread {
  const { strokesLost, ...typed } = player.shortGame
  const own = { ...priorShortSpread(strokesLost), ...typed }
  const wider = shot.spread * interpolateKnots(SHORT_SPREAD_BY_LOFT, loftDegrees)
  const poorer = shot.poor * interpolateKnots(SHORT_POOR_BY_LOFT, loftDegrees)
  return {
    carrySdShare: own.carrySdShare * wider * rule.carry,
    carrySdMetres: own.carrySdMetres * wider * rule.metres,
    directionSdDegrees: own.directionSdDegrees * wider * rule.direction,
    rollSdShare: own.rollSdShare * rule.roll,
    poorShare: Math.min(MOST_POOR_SHARE, own.poorShare * poorer * rule.poor),
    caughtShare: rule.caught,
  }
}

/** A putt is played from the green, the fringe and mown fairway. */
function puttFrom({ putting }: ShortShotPlayer, lie: Lie): ShortShot | null {
  const factors = PUTT_FACTORS[lie]
  if (factors === undefined) return null
  return {
    club: 'putter',
    kind: 'putt',
    rollPerCarry: 0,
    launchRadians: 0,
    carryMetres: [0.3, 80],
    spread: {
      carrySdShare: Math.hypot(putting.distanceSdShare * factors[1], READING_DISTANCE_SD_SHARE),
      carrySdMetres: 0,
      directionSdDegrees: Math.hypot(putting.directionSdDegrees * factors[0], READING_DIRECTION_SD_DEGREES),
      rollSdShare: 0,
      poorShare: 0,
      caughtShare: 0,
    },
  }
}

const PUTT_FACTORS: Partial<Record<Lie, readonly [direction: number, distance: number]>> = {
  green: [1, 1],
  fringe: [FRINGE_PUTT_DIRECTION_FACTOR, FRINGE_PUTT_DISTANCE_FACTOR],
  fairway: [FAIRWAY_PUTT_DIRECTION_FACTOR, FAIRWAY_PUTT_DISTANCE_FACTOR],
}
