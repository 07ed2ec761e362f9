import { metresToYards } from '#numbers/units/units.ts'
import { interpolateKnots } from './interpolate-knots.ts'
import {
  FIRST_CUT_BETWEEN_FAIRWAY_AND_ROUGH,
  FRINGE_PUTT_DIRECTION_FACTOR,
  FRINGE_PUTT_DISTANCE_FACTOR,
  HEAVY_BEYOND_ROUGH,
  STROKES_LOST_BY_LIE,
  STROKES_LOST_DISTANCE_POWER,
  TOUR_FROM_FAIRWAY,
  TOUR_FROM_ROUGH,
  TOUR_FROM_SAND,
  TOUR_FROM_TROUBLE,
  TREES_BETWEEN_HEAVY_AND_TROUBLE,
} from './near-green-settings.ts'
import type { Lie, Player } from './player.ts'
import { puttingValues } from './putting-values.ts'

/** What the short game needs to know of a player. */
export type ShortGamePlayer = Pick<Player, 'putting' | 'shortGame'>

/**
 * Expected strokes to hole out from off the green with the ball in this lie, `metres` from the hole (meant for 1 to
 * 60): the tour's published value, plus what this player loses, growing with distance and with a worse lie. From the
 * fringe the cheaper of a putt and a chip; on the green the putt. Never falls with distance. Trees and scrub: the
 * ball is playable but its way is barred.
 */
export function shortGameValue(player: ShortGamePlayer, lie: Lie, metres: number): number {
  if (lie === 'green') return puttingValues(player).expected(metres)
  if (lie === 'fringe') return Math.min(fringePutt(player, metres), chip(player, 'fairway', metres))
  return chip(player, lie === 'tee' ? 'fairway' : lie, metres)
}

function chip(player: ShortGamePlayer, lie: ChipLie, metres: number): number {
  const growth = (Math.max(0, metres) / 20) ** STROKES_LOST_DISTANCE_POWER
  return (
    tourValue(lie, metresToYards(metres)) + player.shortGame.strokesLost * growth * STROKES_LOST_BY_LIE[lie]
  )
}

type ChipLie = keyof typeof STROKES_LOST_BY_LIE

function tourValue(lie: ChipLie, yards: number): number {
  const fairway = interpolateKnots(TOUR_FROM_FAIRWAY, yards)
  const rough = interpolateKnots(TOUR_FROM_ROUGH, yards)
  const heavy = rough + HEAVY_BEYOND_ROUGH * (rough - fairway)
  const trouble = interpolateKnots(TOUR_FROM_TROUBLE, yards)
  switch (lie) {
    case 'fairway':
      return fairway
    case 'first-cut':
      return fairway + FIRST_CUT_BETWEEN_FAIRWAY_AND_ROUGH * (rough - fairway)
    case 'rough':
      return rough
    case 'heavy':
      return heavy
    case 'bunker':
      return interpolateKnots(TOUR_FROM_SAND, yards)
    case 'trees':
      return heavy + TREES_BETWEEN_HEAVY_AND_TROUBLE * (trouble - heavy)
    case 'scrub':
      return trouble
  }
}

function fringePutt(player: ShortGamePlayer, metres: number): number {
  return puttingValues({
    putting: {
      directionSdDegrees: player.putting.directionSdDegrees * FRINGE_PUTT_DIRECTION_FACTOR,
      distanceSdShare: player.putting.distanceSdShare * FRINGE_PUTT_DISTANCE_FACTOR,
    },
  }).expected(metres)
}
