import { type Competition, type Counting, type Play, SIDES } from '#golf/round/competition.ts'
import type { HoleLimit } from '#golf/rules/hole-limit.ts'

/** The balls of a side: a round for each, by id, and who plays where partners have one ball. Empty = nothing is chosen yet. */
export interface SideChoice {
  readonly roundIds: readonly string[]
  /** Only where the side has one ball; otherwise each round says whose it is. */
  readonly playerIds: readonly string[]
}

/** What is scored and how, as it is chosen on the page. */
export interface ScoreChoice {
  readonly play: Play
  readonly by: Counting
  readonly limit: HoleLimit
  /** Of handicaps: as published, the Committee's own per cent, or none received. */
  readonly handicaps: 'published' | 'own' | 'gross'
  readonly allowance: number
  /** Markers of all rounds; empty = as each says. */
  readonly tee: string
  /** The second counts only where `isAgainst`. */
  readonly sides: readonly [SideChoice, SideChoice]
  readonly isAgainst: boolean
}

const NOBODY: SideChoice = { roundIds: [], playerIds: [] }

/** Before anything is chosen. */
export const FIRST_SCORE_CHOICE: ScoreChoice = {
  play: 'singles',
  by: 'strokes',
  limit: { kind: 'net-double-bogey' },
  handicaps: 'published',
  allowance: 100,
  tee: '',
  sides: [NOBODY, NOBODY],
  isAgainst: false,
}

/** The competition of a choice. An own allowance is only where each has a ball of their own: elsewhere it is published part by part. */
export function competitionOf({ play, by, limit, handicaps, allowance }: ScoreChoice): Competition {
  const isOwn = handicaps === 'own' && SIDES[play].hasOwnBalls
  return { play, by, limit, allowance: isOwn ? allowance : null, isGross: handicaps === 'gross' }
}

/** How many sides are asked for: a match has two. */
export function sideCount({ by, isAgainst }: ScoreChoice): 1 | 2 {
  return by === 'match' || isAgainst ? 2 : 1
}

/** Whether a side has as many rounds and players as its form of play. */
export function isSideWhole({ roundIds, playerIds }: SideChoice, play: Play): boolean {
  const { least, hasOwnBalls } = SIDES[play]
  const chosen = (ids: readonly string[], count: number): boolean =>
    Array.from({ length: count }, (_, index) => ids[index] ?? '').every((id) => id !== '')
  return hasOwnBalls ? chosen(roundIds, least) : chosen(roundIds, 1) && chosen(playerIds, least)
}

/** The list with one entry changed, as long as it need be. */
export function withEntry(ids: readonly string[], index: number, id: string): readonly string[] {
  return Array.from({ length: Math.max(ids.length, index + 1) }, (_, at) =>
    at === index ? id : (ids[at] ?? ''),
  )
}
