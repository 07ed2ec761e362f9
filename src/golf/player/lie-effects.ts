import { type ClubKind, clubKind } from './club-names.ts'
import { interpolateKnots } from './interpolate-knots.ts'
import { LIE_RULES, type LieRule } from './lie-settings.ts'
import type { Club, Lie, Player } from './player.ts'

/** Multipliers of a lie on a club's stock pattern; 1 = as from the reference lie. */
export interface LieEffect {
  readonly carry: number
  readonly direction: number
  /** On the spread of carry. */
  readonly distance: number
  /** On the mishit share; the product stays a share. */
  readonly mishit: number
  /** False when the player should not, or says that they do not, use the club from this lie. */
  readonly allowed: boolean
}

/**
 * What this lie does to this club in this player's hands. A lie adds its own spread to the player's, so a
 * precise player loses more of their precision than a wild one. From trees and scrub, if the ball is playable at
 * all, only a punch: a low shot of part of the carry. No full shot is played on the green. The player's own
 * `lies` overrule what is allowed, either way. A club the player does not have is not allowed.
 */
export function lieEffect(lie: Lie, clubName: string, player: Pick<Player, 'clubs'>): LieEffect {
  const kind = clubKind(stockName(clubName))
  if (lie === 'green' || kind === null) return { ...NO_CHANGE, allowed: false }
  const rule = LIE_RULES[lie === 'fringe' ? 'fairway' : lie]
  const stock = player.clubs.find((one) => one.name === kind.name)
  if (stock === undefined) return { ...NO_CHANGE, allowed: false }
  const allowed = stock.lies[lie] ?? (isUsual(rule, kind) || isLastResort(rule, kind, player))
  return { ...spreadEffect(rule, stock, kind.loftDegrees), allowed }
}

function isUsual(rule: LieRule, kind: ClubKind): boolean {
  const isWood = kind.name.endsWith('-wood') || kind.name === 'driver'
  return kind.loftDegrees >= rule.leastLoftDegrees && (rule.woods || !isWood)
}

/** A bag without any usual club still has to play the ball: then with its most lofted club. */
function isLastResort(rule: LieRule, kind: ClubKind, player: Pick<Player, 'clubs'>): boolean {
  const kinds = player.clubs.flatMap((club) => clubKind(club.name) ?? [])
  return kinds.every((other) => !isUsual(rule, other) && other.loftDegrees <= kind.loftDegrees)
}

const NO_CHANGE = { carry: 1, direction: 1, distance: 1, mishit: 1 } as const

function spreadEffect(rule: LieRule, club: Club, loftDegrees: number): Omit<LieEffect, 'allowed'> {
  const mishit = interpolateKnots(rule.mishit, loftDegrees)
  return {
    carry: interpolateKnots(rule.carry, loftDegrees),
    direction: Math.hypot(1, rule.addsDirectionDegrees / club.directionSdDegrees),
    distance: Math.hypot(1, rule.addsCarryShare / club.carrySdShare),
    mishit: Math.min(mishit, Math.max(1, MISHIT_MOST / club.mishitShare)),
  }
}

/** A lie never makes more than this share mishit (our assumption). */
const MISHIT_MOST = 0.7

/** `sand-wedge half` is played with the sand wedge. */
function stockName(clubName: string): string {
  return clubName.replace(/ (half|three-quarter)$/, '')
}
