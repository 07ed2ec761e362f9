import { useMemo } from 'react'
import type { Course } from '#golf/course/course.ts'
import type { Player } from '#golf/player/player.ts'
import { type Club, clubOf } from '#golf/round/club.ts'
import { clubOfRounds, clubQuestions, type MemberRound } from '#golf/round/club-rounds.ts'
import { splitRounds } from '#golf/round/season-questions.ts'
import { afterRound, afterState } from '../planning/after-round.ts'
import { useWork, type Work } from '../planning/use-work.ts'

/** A club's rounds as far as their holes are solved. */
export interface ClubWork {
  readonly work: Work<unknown>
  readonly club: Club
  /** Holes that are left out, by whatever fault: which would say whose they are. */
  readonly holesLeft: number
}

/**
 * Takes the rounds of many members together in workers, each hole of a member at a time; nothing is worked on while there are
 * fewer members than `minimum`. `rounds` and `players` must be kept by the caller.
 */
export function useClub(
  course: Course,
  rounds: readonly MemberRound[],
  players: readonly Player[],
  minimum: number,
  isQuick: boolean,
): ClubWork {
  const isEnough = players.length >= minimum
  const asked = useMemo(() => {
    const { questions, faults } = clubQuestions(rounds, players, course, isQuick)
    return {
      faults,
      key: JSON.stringify(['club', course, rounds, players, isQuick]),
      pieces: questions.map((of, index) => ({
        name: String(index),
        question: { kind: 'season', of } as const,
      })),
    }
  }, [course, rounds, players, isQuick])
  const work = useWork(isEnough ? asked : null, afterRound, afterState)
  const { states } = work
  return useMemo(() => {
    const found = asked.pieces.map(({ name, question }) => ({ question: question.of, state: states[name] }))
    const answers = found.flatMap(({ question, state }) =>
      state !== undefined && 'recaps' in state ? [{ question, answer: state }] : [],
    )
    const missing = found.filter(({ state }) => state !== undefined && 'missing' in state).length
    const split = splitRounds(rounds, answers)
    return {
      work,
      club: isEnough ? clubOfRounds(split.rounds, minimum) : clubOf([], minimum),
      holesLeft: missing + asked.faults.length + split.faults.length,
    }
  }, [asked, states, rounds, isEnough, minimum, work])
}
