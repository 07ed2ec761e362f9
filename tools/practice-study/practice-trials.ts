import { REFERENCE_DAY } from '../../src/golf/course/day.ts'
import type { Hole } from '../../src/golf/course/hole.ts'
import type { Player } from '../../src/golf/player/player.ts'
import { improvedPlayer, PRACTICE_PARTS, type PracticePart } from '../../src/golf/round/improved-player.ts'
import { type PracticeItem, type PracticeRates, practiceOf } from '../../src/golf/round/practice.ts'
import { practiceHole } from '../../src/golf/round/practice-hole.ts'
import { type HoleGround, holeGround } from '../../src/golf/strategy/hole-model.ts'
import { QUICK } from '../../src/golf/strategy/settings.ts'
import { type GroundUnder, groundGrid } from './ground-grid.ts'
import { type OwnPlan, ownPlan, planWhenBetter } from './own-plan.ts'
import { simulatedHole } from './simulated-hole.ts'
import { type StudyGolfer, struckBy } from './study-golfers.ts'

/** A hole of the study, laid out for the planner and for the simulator. */
interface StudyGround {
  readonly hole: Hole
  readonly planner: HoleGround
  readonly groundUnder: GroundUnder
}

/** How much is played, and of what. */
export interface TrialCounts {
  /** Times that each hole is played by each player. */
  readonly rounds: number
  readonly seed: number
  /** Hours of practice whose worth is simulated. */
  readonly hours: number
  /** By name: what an hour makes better. */
  readonly rates: Readonly<Record<string, PracticeRates>>
}

/** One part of one golfer's game: what the advice says of it, and what it was worth when it was played. Strokes for eighteen holes. */
export interface PartTrial extends PracticeItem {
  readonly advised: number
  readonly played: number
}

/** The advice to one golfer under some rates, held against play. */
export interface PracticeTrial {
  readonly golfer: StudyGolfer
  readonly rates: string
  /** Most rewarding by the advice first. */
  readonly parts: readonly PartTrial[]
  /** What the advised part saved more than the best of the others in play, and the standard error of that; see {@link leadOf}. */
  readonly lead: number
  readonly standardError: number
}

const ROUND_HOLES = 18

/** Lays out the holes of a study once for all golfers. */
export function studyGrounds(holes: readonly Hole[]): readonly StudyGround[] {
  return holes.map((hole) => ({
    hole,
    planner: holeGround(hole, QUICK.cellMetres),
    groundUnder: groundGrid(hole),
  }))
}

/** Gives a golfer practice advice, then plays the holes as he is and with each part better by as much as was practised. */
export function practiceTrials(
  grounds: readonly StudyGround[],
  golfer: StudyGolfer,
  { rounds, seed, hours, rates }: TrialCounts,
): readonly PracticeTrial[] {
  const { player } = golfer
  const weighed = grounds.map(({ hole }) => practiceHole({ hole, player, day: REFERENCE_DAY }))
  const scale = ROUND_HOLES / grounds.length
  const plans = grounds.map(({ planner }) => ownPlan(planner, player))
  const playedBy = (better: Player, own: readonly OwnPlan[]): Int16Array =>
    scoresOver(grounds, own, struckBy(player, better), { rounds, seed })
  const base = playedBy(player, plans)
  const played = new Map<string, Int16Array>()
  const scoresOf = (part: PracticePart, share: number): Int16Array => {
    const key = `${part} ${share}`
    const better = improvedPlayer(player, part, share)
    const scores =
      played.get(key) ??
      playedBy(
        better,
        // Strokes near the green do not change what is played from further away.
        better.clubs === player.clubs ? plans : plans.map((plan) => planWhenBetter(plan, better)),
      )
    played.set(key, scores)
    return scores
  }
  return Object.entries(rates).map(([name, of]) => {
    const { parts } = practiceOf(weighed, of)
    const scores = new Map(parts.map(({ part, rate }) => [part, scoresOf(part, rate * hours)]))
    const trials = parts.map((item) => ({
      ...item,
      advised: item.strokesAnHour * hours * scale,
      played: scale * meanGap(base, scores.get(item.part) as Int16Array).mean,
    }))
    const [first, ...others] = trials
    if (first === undefined) throw new Error('no parts')
    const playedAs = ({ part }: PartTrial): Int16Array => scores.get(part) as Int16Array
    const gap = leadOf(playedAs(first), others.map(playedAs))
    return {
      golfer,
      rates: name,
      parts: trials,
      lead: scale * gap.mean,
      standardError: scale * gap.standardError,
    }
  })
}

/** Scores over all holes together, round by round, of a player who plays his own plan. */
function scoresOver(
  grounds: readonly StudyGround[],
  plans: readonly OwnPlan[],
  golfer: Player,
  { rounds, seed }: Pick<TrialCounts, 'rounds' | 'seed'>,
): Int16Array {
  const scores = new Int16Array(rounds)
  for (const [index, { groundUnder }] of grounds.entries()) {
    const play = simulatedHole(plans[index] as OwnPlan, golfer, groundUnder)
    for (let round = 0; round < rounds; round++)
      scores[round] = (scores[round] as number) + play(seed + index, round)
  }
  return scores
}

/**
 * What the advised part saved more than the best of the others. Which is the best is found in half of the rounds and measured in
 * the other half, and the other way about: the luck that makes a part the best of six must not count for it.
 */
function leadOf(advised: Int16Array, others: readonly Int16Array[]): ReturnType<typeof meanGap> {
  const [one, other] = [0, 1].map((half) => {
    const savedBy = (scores: Int16Array): number => meanGap(advised, scores, half).mean
    const rival = others.reduce((best, each) => (savedBy(each) > savedBy(best) ? each : best))
    return meanGap(rival, advised, 1 - half)
  }) as [ReturnType<typeof meanGap>, ReturnType<typeof meanGap>]
  return {
    mean: (one.mean + other.mean) / 2,
    standardError: Math.hypot(one.standardError, other.standardError) / 2,
  }
}

/** Mean of first − second over the same rounds, all or every other one from the first or second on, and its standard error. */
function meanGap(
  first: Int16Array,
  second: Int16Array,
  half: number | null = null,
): { readonly mean: number; readonly standardError: number } {
  let [sum, squares, count] = [0, 0, 0]
  for (let round = half ?? 0; round < first.length; round += half === null ? 1 : 2) {
    const gap = (first[round] as number) - (second[round] as number)
    sum += gap
    squares += gap * gap
    count += 1
  }
  const mean = sum / count
  return { mean, standardError: Math.sqrt((squares / count - mean * mean) / count) }
}

/** The same share an hour for every part, so that the advice is of the game and not of the rates. */
export const EQUAL_RATES: PracticeRates = Object.fromEntries(
  PRACTICE_PARTS.map((part) => [part, 0.01]),
) as PracticeRates
