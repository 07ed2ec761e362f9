import { useMemo } from 'react'
import { REFERENCE_DAY } from '#golf/course/day.ts'
import type { PlayedOn } from '#golf/round/recap-questions.ts'
import type { RoundRecap } from '#golf/round/recap-round.ts'
import { type Season, seasonOf } from '#golf/round/season.ts'
import { type SeasonChange, seasonChange } from '#golf/round/season-change.ts'
import { type SplitRound, seasonQuestions, splitRounds } from '#golf/round/season-questions.ts'
import { faultWords } from '../page/fault-words.ts'
import { afterRound, afterState } from '../planning/after-round.ts'
import { useWork, type Work } from '../planning/use-work.ts'
import type { ClosedRound } from '../rounds/closed-rounds.ts'
import { isOfSeasonBefore } from './counted-rounds.tsx'

/** A season as far as its holes are solved. */
export interface SeasonWork {
  readonly work: Work<unknown>
  /** Those of this season. */
  readonly rounds: readonly SplitRound[]
  readonly season: Season
  /** Against the rounds before it; `null` where there are none. */
  readonly change: SeasonChange | null
  /** Holes that are left out, and what in the logs does not make sense. */
  readonly left: readonly string[]
}

/**
 * Takes rounds together in workers, a hole with all that was logged on it at a time; `on` and `rounds` must be kept by the caller.
 * `begins`: first day of the season, as in `CountedRounds`.
 */
export function useSeason(
  on: Omit<PlayedOn, 'day'>,
  rounds: readonly ClosedRound[],
  begins: string,
  isQuick: boolean,
): SeasonWork {
  const asked = useMemo(() => {
    const { questions, faults } = seasonQuestions(rounds, { ...on, day: REFERENCE_DAY }, isQuick)
    return {
      faults,
      key: JSON.stringify(['season', on, rounds, isQuick]),
      pieces: questions.map((of, index) => ({
        name: `${of.hole.ref} ${index}`,
        question: { kind: 'season', of } as const,
      })),
    }
  }, [on, rounds, isQuick])
  const work = useWork(asked, afterRound, afterState)
  const { states } = work
  const taken = useMemo(() => {
    const found = asked.pieces.map(({ name, question }) => ({ question: question.of, state: states[name] }))
    const answers = found.flatMap(({ question, state }) =>
      state !== undefined && 'recaps' in state ? [{ question, answer: state }] : [],
    )
    const missing = found.flatMap(({ state }) =>
      state !== undefined && 'missing' in state ? [state.missing] : [],
    )
    const split = splitRounds(rounds, answers)
    const now = split.rounds.filter((one) => !isOfSeasonBefore(one, begins))
    const before = split.rounds.filter((one) => isOfSeasonBefore(one, begins))
    const [recaps, recapsBefore] = [now, before].map((of) => of.map(({ recap }) => recap)) as [
      RoundRecap[],
      RoundRecap[],
    ]
    return {
      rounds: now,
      season: seasonOf(recaps, on.player),
      change: before.length === 0 ? null : seasonChange(recapsBefore, recaps, on.player),
      left: [...missing, ...[...asked.faults, ...split.faults].map(faultWords)],
    }
  }, [asked, states, rounds, begins, on])
  return { work, ...taken }
}
