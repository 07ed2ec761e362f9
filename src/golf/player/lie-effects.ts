import { type ClubKind, clubKind } from './club-names.ts'
import { interpolateKnots } from './interpolate-knots.ts'
import { lieName } from './lie-names.ts'
import { LIE_RULES, type LieRule, SITTING_DOWN_SHARE } from './lie-settings.ts'
import type { Club, Lie, LieFactors, Player, Sit } from './player.ts'

/** Multipliers of a lie on a club's stock pattern; 1 = as from the reference lie. */
export interface LieEffect {
  readonly carry: number
  readonly direction: number
  /** On the spread of carry. */
  readonly distance: number
  /** On the mishit share; the product stays a share. */
  readonly mishit: number
  /** On the backspin of a landing. */
  readonly spin: number
  /** False when the player should not, or says that they do not, use the club from this lie. */
  readonly allowed: boolean
}

/** What is known of a lie beyond its ground: how the ball sits, and how long the rough is. */
export interface LieDetail {
  readonly sit?: Sit | undefined
  readonly rough?: keyof typeof SITTING_DOWN_SHARE
}

/**
 * What this lie does to this club in this player's hands. A lie adds its own spread to the player's, so a
 * precise player loses more of their precision than a wild one. Among trees and in scrub branches are in the way of a
 * full swing; a low shot, named `5-iron punch`, has room. What the ball meets on its way is not a matter of the lie. No
 * full shot is played on the green, and no low one from a tee, from sand or from the fringe. The player's own `lies`
 * overrule what is allowed, either way, and their own factors stand in place of ours. Rough whose ball has not been seen
 * is the mixture of one that sits well and one that sits down. A club the player does not have is not allowed.
 */
export function lieEffect(
  lie: Lie,
  clubName: string,
  player: Pick<Player, 'clubs'>,
  detail: LieDetail = {},
): LieEffect {
  const kind = clubKind(stockName(clubName))
  if (lie === 'green' || kind === null) return { ...NO_CHANGE, allowed: false }
  const stock = player.clubs.find((one) => one.name === kind.name)
  if (stock === undefined) return { ...NO_CHANGE, allowed: false }
  const name = lieName(lie, detail.sit)
  const rule = ruleFor(name)
  const own = stock.lies[name] ?? stock.lies[lie]
  const isUsed = typeof own === 'object' ? true : own
  const isLow = LOW_SHOT.test(clubName)
  const known = oursFor(name, stock, kind.loftDegrees, detail.rough ?? 'normal')
  const ours = isLow ? known : { ...known, carry: known.carry * (rule.fullSwing ?? 1) }
  const isRoom = !(isLow && NO_LOW_SHOTS.has(lie))
  return {
    ...withOwnFactors(ours, stock, lie, name, kind.loftDegrees, detail.rough ?? 'normal'),
    allowed: isRoom && (isUsed ?? (isUsual(rule, kind) || isLastResort(rule, kind, player))),
  }
}

type Effect = Omit<LieEffect, 'allowed'>

function ruleFor(name: ReturnType<typeof lieName>): LieRule {
  return name === 'fringe' || name === 'green' ? LIE_RULES.fairway : LIE_RULES[name]
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

const NO_CHANGE: Effect = { carry: 1, direction: 1, distance: 1, mishit: 1, spin: 1 }

/** Our own factors for a lie by its name. */
function oursFor(
  name: ReturnType<typeof lieName>,
  club: Club,
  loftDegrees: number,
  rough: keyof typeof SITTING_DOWN_SHARE,
): Effect {
  if (name !== 'rough' || rough === 'normal') return effectOf(numbersOf(ruleFor(name), loftDegrees), club)
  const good = numbersOf(LIE_RULES['rough:good'], loftDegrees)
  const down = numbersOf(LIE_RULES['rough:down'], loftDegrees)
  const unseen = { ...mixed(good, down, SITTING_DOWN_SHARE[rough]), spin: LIE_RULES.rough.spin }
  return effectOf(unseen, club)
}

/** A lie's rule for one loft. */
interface LieNumbers {
  readonly carry: number
  readonly addsDirectionDegrees: number
  readonly addsCarryShare: number
  readonly mishit: number
  readonly spin: number
}

function numbersOf(rule: LieRule, loftDegrees: number): LieNumbers {
  return {
    carry: interpolateKnots(rule.carry, loftDegrees),
    addsDirectionDegrees: rule.addsDirectionDegrees,
    addsCarryShare: rule.addsCarryShare,
    mishit: interpolateKnots(rule.mishit, loftDegrees),
    spin: rule.spin,
  }
}

/** Two lies taken together: their means, and in the spread of carry also what the two means differ by. */
function mixed(one: LieNumbers, other: LieNumbers, otherShare: number): LieNumbers {
  const mean = (a: number, b: number): number => a + otherShare * (b - a)
  const apart = otherShare * (1 - otherShare) * (one.carry - other.carry) ** 2
  return {
    carry: mean(one.carry, other.carry),
    addsDirectionDegrees: Math.sqrt(mean(one.addsDirectionDegrees ** 2, other.addsDirectionDegrees ** 2)),
    addsCarryShare: Math.sqrt(mean(one.addsCarryShare ** 2, other.addsCarryShare ** 2) + apart),
    mishit: mean(one.mishit, other.mishit),
    spin: mean(one.spin, other.spin),
  }
}

function effectOf(numbers: LieNumbers, club: Club): Effect {
  return {
    carry: numbers.carry,
    direction: Math.hypot(1, numbers.addsDirectionDegrees / club.directionSdDegrees),
    distance: Math.hypot(1, numbers.addsCarryShare / club.carrySdShare),
    mishit: Math.min(numbers.mishit, Math.max(1, MISHIT_MOST / club.mishitShare)),
    spin: numbers.spin,
  }
}

/**
 * The player's own factors in place of ours. What they say of a lie as a whole holds for a ball seen in it, and for short
 * and long rough, by the proportion that ours have to each other.
 */
function withOwnFactors(
  ours: Effect,
  club: Club,
  lie: Lie,
  name: ReturnType<typeof lieName>,
  loftDegrees: number,
  rough: keyof typeof SITTING_DOWN_SHARE,
): Effect {
  const seen = club.lies[name]
  const whole = club.lies[lie]
  const isOfThisDay = name !== 'rough' || rough === 'normal'
  if (typeof seen === 'object' && isOfThisDay) {
    const { shots: _, ...factors } = seen
    return { ...ours, ...factors }
  }
  if (typeof whole !== 'object') return ours
  const usual = oursFor(lie, club, loftDegrees, 'normal')
  const scaled = (factor: Exclude<keyof LieFactors, 'shots'>): number => {
    const own = whole[factor]
    return own === undefined ? ours[factor] : (own * ours[factor]) / usual[factor]
  }
  return {
    ...ours,
    carry: scaled('carry'),
    direction: scaled('direction'),
    distance: scaled('distance'),
    mishit: Math.min(scaled('mishit'), Math.max(1, MISHIT_MOST / club.mishitShare)),
  }
}

/** A lie never makes more than this share mishit (our assumption). */
const MISHIT_MOST = 0.7

/** `sand-wedge half` is played with the sand wedge. */
function stockName(clubName: string): string {
  return clubName.replace(/ (half|three-quarter|punch|chip-out)$/, '')
}

const LOW_SHOT = / (punch|chip-out)$/
const NO_LOW_SHOTS: ReadonlySet<Lie> = new Set(['tee', 'bunker', 'fringe', 'green'])
