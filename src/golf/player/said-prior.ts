import { logOdds, shareOfLogOdds } from '#numbers/statistics/log-odds.ts'
import { monotoneCubic } from '#numbers/statistics/monotone-cubic.ts'
import { METRES_PER_YARD } from '#numbers/units/units.ts'
import type { ClubKind } from './club-names.ts'
import { interpolateKnots } from './interpolate-knots.ts'
import { TOUR_FROM_FAIRWAY, UP_AND_DOWN_STEEPNESS, UP_AND_DOWN_SURE_MEAN } from './near-green-settings.ts'
import type { Player } from './player.ts'
import type { PriorPattern } from './prior.ts'
import type { Said } from './said.ts'
import {
  BIG_MISS_SIDE_SHARE,
  CURVE_SHARE,
  HANDICAP_BY_HALF_HOLED,
  LEAST_UP_AND_DOWN_SHARE,
  SAID_COUNTS,
  SHAPE_BY_LOFT,
  SHORT_MISS_CARRY_FACTOR,
} from './said-settings.ts'
import { MISHIT_BY_LOFT, MISHIT_SHARE_RANGE } from './settings.ts'

/** The prior's pattern of a club, moved by what was said of the player: shape, big miss, how often a mishit. */
export function saidPattern(
  kind: ClubKind,
  prior: PriorPattern,
  said: Said,
  hand: Player['hand'],
): PriorPattern {
  const byLoft = interpolateKnots(SHAPE_BY_LOFT, kind.loftDegrees)
  const { shape = 'straight', big_miss, mishit_share } = said
  // A right-hander's hook and draw bend to the left, a left-hander's to the right.
  const toLeft = (shape === 'hook' || shape === 'draw') === (hand === 'right')
  const curve = CURVE_SHARE[shape] * byLoft
  const side = big_miss === 'left' || big_miss === 'right' ? BIG_MISS_SIDE_SHARE * byLoft : 0
  const more = big_miss === 'left' ? side : -side
  return {
    ...prior,
    curveShare: prior.curveShare + (curve === 0 ? 0 : toLeft ? -curve : curve),
    leftShare: prior.leftShare * (1 + more),
    rightShare: prior.rightShare * (1 - more),
    mishitShare: mishit_share === undefined ? prior.mishitShare : saidMishits(kind, prior, mishit_share),
    mishitCarryShare: prior.mishitCarryShare * (big_miss === 'short' ? SHORT_MISS_CARRY_FACTOR : 1),
  }
}

/** The said share goes to each club as the prior's does, by loft; taken in with the level's in log odds. */
function saidMishits(kind: ClubKind, prior: PriorPattern, share: number): number {
  const [least, most] = MISHIT_SHARE_RANGE
  const ofClub = Math.min(most, Math.max(least, share * interpolateKnots(MISHIT_BY_LOFT, kind.loftDegrees)))
  const odds = SAID_COUNTS * logOdds(ofClub) + (1 - SAID_COUNTS) * logOdds(prior.mishitShare)
  return shareOfLogOdds(odds)
}

/** Strokes lost on a chip from 20 m: the level's, moved towards those at which the said share is holed in two. */
export function saidStrokesLost(priorLost: number, said: Said): number {
  if (said.up_and_down_share === undefined) return priorLost
  const share = Math.max(LEAST_UP_AND_DOWN_SHARE, said.up_and_down_share)
  const mean = UP_AND_DOWN_SURE_MEAN - Math.log(share) / UP_AND_DOWN_STEEPNESS
  const lost = mean - interpolateKnots(TOUR_FROM_FAIRWAY, 20 / METRES_PER_YARD)
  return SAID_COUNTS * lost + (1 - SAID_COUNTS) * priorLost
}

/** Handicap index whose putting is expected: the level's, moved towards the one that holes half from as far as was said. */
export function saidPuttingHandicap(skill: number, said: Said): number {
  if (said.half_holed_m === undefined) return skill
  const asSaid = monotoneCubic(HANDICAP_BY_HALF_HOLED, said.half_holed_m)
  return SAID_COUNTS * asSaid + (1 - SAID_COUNTS) * skill
}
