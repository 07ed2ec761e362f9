import type { Course } from '#golf/course/course.ts'
import { HANDICAP_ALLOWANCES } from '#golf/rules/handicap-allowances.ts'
import { handicapOn } from '#golf/strategy/handicap-on.ts'
import { chanceOfBreaking, roundScores, winningShares } from '#golf/strategy/round-scores.ts'
import type { FiledPlayer } from './batch-tasks.ts'
import type { PlannedHole } from './plan-one.ts'

/** How many holes a card has. */
const CARD_HOLES = 18
/** Chances between these are worth a word. Our assumption. */
const LEAST_SAID = 0.02
const MOST_SAID = 0.98
/** Numbers to break are multiples of this, and where a round is too short for two of them, of 1. Common practice. */
const NUMBERS_APART = 5

/** What each player holed, by chance. */
export interface PlayedRound {
  readonly player: FiledPlayer
  readonly planned: readonly PlannedHole[]
}

/** A field over the same holes: each player's share of winning it, gross, and net where the card tells the handicaps. */
export interface FieldShares {
  readonly gross: readonly number[]
  readonly net: readonly number[] | null
}

/** Shares of winning, or `null` for one player alone and where not all are planned on the same holes. */
export function fieldShares({ teeSets }: Course, rounds: readonly PlayedRound[]): FieldShares | null {
  const holes = rounds.map(({ planned }) => planned.map(({ hole }) => hole.ref).join(' '))
  if (rounds.length < 2 || holes[0] === '' || holes.some((one) => one !== holes[0])) return null
  const totals = rounds.map(({ planned }) => roundScores(planned.map(({ plan }) => plan)))
  const handicaps = rounds.flatMap(({ player, planned }) => {
    const [tee, ...others] = [...new Set(planned.map(({ hole }) => hole.teeName))]
    if (tee === undefined || others.length > 0 || planned.length !== CARD_HOLES) return []
    const handicap = handicapOn(teeSets, tee, player.player, HANDICAP_ALLOWANCES['Individual stroke play'])
    return handicap === null ? [] : [handicap]
  })
  return {
    gross: winningShares(totals),
    net: handicaps.length === rounds.length ? winningShares(totals, handicaps) : null,
  }
}

/** Which numbers are broken how often: `Breaks 95 in 22 rounds of 100, 100 in 61.` Empty for none. */
export function breakingLines({ planned }: PlayedRound): string[] {
  if (planned.length < 2) return []
  const scores = roundScores(planned.map(({ plan }) => plan))
  const said = (apart: number): { readonly number: number; readonly chance: number }[] =>
    scores
      .map((_, number) => ({ number, chance: chanceOfBreaking(scores, number) }))
      .filter(({ number, chance }) => number % apart === 0 && chance >= LEAST_SAID && chance <= MOST_SAID)
  const byFives = said(NUMBERS_APART)
  const [first, ...others] = byFives.length > 1 ? byFives : said(1)
  if (first === undefined) return []
  const words = others.map(({ number, chance }) => `${number} in ${Math.round(100 * chance)}`)
  return [
    `Breaks ${[`${first.number} in ${Math.round(100 * first.chance)} rounds of 100`, ...words].join(', ')}; a good or bad day, which moves every hole, is not counted.`,
  ]
}
