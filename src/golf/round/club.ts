import { GAME_PARTS, type GamePart, type HoleRecap, type StrokeSplit, sumOf } from './recap.ts'
import type { RoundRecap } from './recap-round.ts'
import { ROUND_HOLES } from './settings.ts'

/** A round of a member, who is a number here and nothing else. */
export interface ClubRound {
  readonly member: number
  readonly tee: string | null
  /** Where the hole was cut by hole ref, in words; a hole whose location is not known is absent. */
  readonly locations: Readonly<Record<string, string>>
  readonly recap: RoundRecap
}

/** How many members a figure is of. */
interface Cell {
  readonly members: number
}

/** A hole as the members play it. */
export interface ClubHole extends Cell {
  readonly ref: string
  readonly par: number
  /** Strokes more than par, and more than each member's own plan expects. */
  readonly overPar: number
  readonly overPlan: number
}

/** A part of the game, strokes a round of eighteen holes more than each member's own plan expects. */
export interface ClubPart extends Cell {
  readonly part: GamePart
  readonly choices: number
  readonly struck: number
}

/** The members who play from one set of markers. */
export interface ClubTee extends Cell {
  readonly tee: string
  /** Share of holes whose green was reached in par less two. */
  readonly greens: number
  readonly overPlan: number
}

/** A hole with the hole cut in one place. */
export interface ClubLocation extends Cell {
  readonly ref: string
  readonly location: string
  readonly overPlan: number
}

/** What a club may know of its members' rounds without knowing whose they are. */
export interface Club {
  /** No figure is of fewer members than this. */
  readonly minimum: number
  readonly members: number
  readonly rounds: number
  readonly holes: readonly ClubHole[]
  readonly parts: readonly ClubPart[]
  readonly tees: readonly ClubTee[]
  readonly locations: readonly ClubLocation[]
  /** Figures that are not shown because too few members stand behind them. */
  readonly withheld: number
}

/**
 * Sums up the rounds of many members. Every member weighs the same, however many rounds were kept, so that no figure is
 * one member's. A figure of fewer members than `minimum` is not there; where figures split a group (by tee, by hole location)
 * all of them are left out when one would be, or when those of whom tee or location is not known are too few, because the one could be reckoned from the rest. Source of both rules, the
 * threshold and secondary suppression: Hundepool et al., Statistical Disclosure Control, Wiley 2012, chapter 4 (from memory).
 */
export function clubOf(rounds: readonly ClubRound[], minimum: number): Club {
  const played = rounds.flatMap(({ member, tee, locations, recap }) =>
    recap.holes.map((hole): Played => ({ member, tee, location: locations[hole.ref] ?? null, hole })),
  )
  const holes = grouped(played, ({ hole }) => hole.ref).map(
    (own): ClubHole => ({
      ref: own[0].hole.ref,
      par: own[0].hole.par,
      members: membersOf(own),
      overPar: meanOfMembers(own, ({ hole }) => hole.score - hole.par),
      overPlan: meanOfMembers(own, overPlan),
    }),
  )
  const parts = GAME_PARTS.map(
    (part): ClubPart => ({
      part,
      members: membersOf(played.filter(({ hole }) => hole.strokes.some((stroke) => stroke.part === part))),
      choices: ROUND_HOLES * meanOfMembers(played, ({ hole }) => sumOf(ofPart(hole, part)).decision),
      struck: ROUND_HOLES * meanOfMembers(played, ({ hole }) => sumOf(ofPart(hole, part)).execution),
    }),
  ).filter(({ members }) => members > 0)
  const tees = grouped(played, ({ tee }) => tee).map(
    (own): ClubTee => ({
      tee: own[0].tee as string,
      members: membersOf(own),
      greens: meanOfMembers(own, ({ hole }) => (isGreenReached(hole) ? 1 : 0)),
      overPlan: meanOfMembers(own, overPlan),
    }),
  )
  const locations = grouped(
    played,
    ({ location, hole }) => location && JSON.stringify([hole.ref, location]),
  ).map(
    (own): ClubLocation => ({
      ref: own[0].hole.ref,
      location: own[0].location as string,
      members: membersOf(own),
      overPlan: meanOfMembers(own, overPlan),
    }),
  )
  const isEnough = ({ members }: Cell): boolean => members >= minimum
  // Who is in no part of a split can be reckoned from the parts and the whole.
  const isNoneOrEnough = (rest: readonly Played[]): boolean => rest.length === 0 || membersOf(rest) >= minimum
  const shown = {
    holes: holes.filter(isEnough).sort((a, b) => b.overPar - a.overPar),
    parts: parts.filter(isEnough),
    tees: tees.every(isEnough) && isNoneOrEnough(played.filter(({ tee }) => tee === null)) ? tees : [],
    locations: locations.filter(
      ({ ref }) =>
        locations.every((other) => other.ref !== ref || isEnough(other)) &&
        isNoneOrEnough(played.filter(({ hole, location }) => hole.ref === ref && location === null)),
    ),
  }
  const count = (of: Pick<Club, 'holes' | 'parts' | 'tees' | 'locations'>): number =>
    of.holes.length + of.parts.length + of.tees.length + of.locations.length
  return {
    minimum,
    members: new Set(rounds.map(({ member }) => member)).size,
    rounds: rounds.length,
    ...shown,
    withheld: count({ holes, parts, tees, locations }) - count(shown),
  }
}

interface Played {
  readonly member: number
  readonly tee: string | null
  readonly location: string | null
  readonly hole: HoleRecap
}

type Some = readonly [Played, ...Played[]]

/** Holes by a key, in the order they come; those without one are in no group. */
function grouped(played: readonly Played[], keyOf: (one: Played) => string | null): readonly Some[] {
  const groups = new Map<string, [Played, ...Played[]]>()
  for (const one of played) {
    const key = keyOf(one)
    if (key === null) continue
    const known = groups.get(key)
    if (known === undefined) groups.set(key, [one])
    else known.push(one)
  }
  return [...groups.values()]
}

function membersOf(played: readonly Played[]): number {
  return new Set(played.map(({ member }) => member)).size
}

/** The mean of the members' own means. */
function meanOfMembers(played: readonly Played[], figureOf: (one: Played) => number): number {
  const sums = new Map<number, { sum: number; count: number }>()
  for (const one of played) {
    const known = sums.get(one.member) ?? { sum: 0, count: 0 }
    sums.set(one.member, { sum: known.sum + figureOf(one), count: known.count + 1 })
  }
  const total = [...sums.values()].reduce((all, { sum, count }) => all + sum / count, 0)
  return sums.size === 0 ? 0 : total / sums.size
}

function overPlan({ hole }: Played): number {
  return hole.score - hole.value
}

function ofPart({ strokes }: HoleRecap, part: GamePart): readonly StrokeSplit[] {
  return strokes.filter((stroke) => stroke.part === part)
}

/** Whether the ball lay on the green, or was holed, in par less two. */
function isGreenReached({ par, score, strokes }: HoleRecap): boolean {
  const first = strokes.findIndex(({ part }) => part === 'putting')
  const used = first < 0 ? score : sumUsed(strokes.slice(0, first))
  return used <= par - 2
}

function sumUsed(strokes: readonly StrokeSplit[]): number {
  return strokes.reduce((sum, { used }) => sum + used, 0)
}
