import { useMemo } from 'react'
import { type PlayedOn, recapQuestions } from '#golf/round/recap-questions.ts'
import { type RoundRecap, recapRound } from '#golf/round/recap-round.ts'
import type { Round } from '#golf/round/round.ts'
import { faultWords } from '../page/fault-words.ts'
import { afterRound, afterState } from '../planning/after-round.ts'
import { useWork, type Work } from '../planning/use-work.ts'

/** A round split as far as its holes are solved. */
export interface RecapWork {
  readonly work: Work<unknown>
  readonly recap: RoundRecap
  /** Holes that are left out, and what in the log does not make sense. */
  readonly left: readonly string[]
}

/** Splits a round in workers; `on` and `round` must be kept by the caller. */
export function useRecap(on: PlayedOn, round: Round, isQuick: boolean): RecapWork {
  const asked = useMemo(() => {
    const { questions, faults } = recapQuestions(on, round.holes)
    return {
      faults,
      key: JSON.stringify(['recap', on, round, isQuick]),
      pieces: questions.map((question) => ({
        name: question.hole.ref,
        question: { kind: 'recap', of: { ...question, isQuick } } as const,
      })),
    }
  }, [on, round, isQuick])
  const work = useWork(asked, afterRound, afterState)
  const { states } = work
  const split = useMemo(() => {
    const holes = asked.pieces.flatMap(({ name }) => {
      const state = states[name]
      return state !== undefined && 'recap' in state ? [state.recap] : []
    })
    const missing = asked.pieces.flatMap(({ name }) => {
      const state = states[name]
      return state !== undefined && 'missing' in state ? [state.missing] : []
    })
    const faults = [...asked.faults, ...holes.flatMap((hole) => hole.faults)]
    return { recap: recapRound(holes), left: [...missing, ...faults.map(faultWords)] }
  }, [asked, states])
  return { work, ...split }
}
