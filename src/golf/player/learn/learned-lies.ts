import type { LearnedLie } from '../learn-player.ts'
import { lieEffect } from '../lie-effects.ts'
import type { Club, LieFactors, Player } from '../player.ts'
import { LIE_FACTOR_RANGES } from '../player-file.ts'
import { shotsBehind } from './lie-doubts.ts'
import { LEARNED_LIES, type LearnedLieName, LIE_NUMBERS, type LieNumber } from './lie-of-shots.ts'
import type { ClubObservations } from './observations.ts'
import type { PosteriorDraws } from './sample-posterior.ts'
import { intervals } from './summarise.ts'

/** The lies that were hit from, in the order of {@link LEARNED_LIES}. */
export function learnedLies(
  { lies: draws }: Pick<PosteriorDraws, 'lies'>,
  observations: readonly ClubObservations[],
): readonly LearnedLie[] {
  return LEARNED_LIES.flatMap((lie, place): LearnedLie[] => {
    const { shots, weight, assumed } = shotsFrom(observations, place)
    if (shots === 0) return []
    const learned = LIE_NUMBERS.map((number, step) => {
      const logs = Float64Array.from(draws, (row) => row[place * LIE_NUMBERS.length + step] as number)
      const times = Math.exp(logs.reduce((sum, one) => sum + one / logs.length, 0))
      const before = assumed[number]
      const factor = {
        before,
        after: before * times,
        ...intervals(logs.map((one) => before * Math.exp(one))),
      }
      return { number, times, factor }
    })
    const record = <Value>(of: (one: (typeof learned)[number]) => Value): Record<LieNumber, Value> =>
      Object.fromEntries(learned.map((one) => [one.number, of(one)])) as Record<LieNumber, Value>
    return [
      { lie, shots, weight, factors: record(({ factor }) => factor), times: record(({ times }) => times) },
    ]
  })
}

function shotsFrom(
  observations: readonly ClubObservations[],
  place: number,
): {
  readonly shots: number
  readonly weight: number
  readonly assumed: Readonly<Record<LieNumber, number>>
} {
  let [count, weight] = [0, 0]
  const sums = { carry: 0, direction: 0, distance: 0, mishit: 0 }
  for (const { lies, shots } of observations) {
    const number = lies.findIndex((lie) => lie.place === place)
    const lie = lies[number]
    if (lie === undefined) continue
    for (let k = 0; k < shots.count; k++) {
      if (shots.lie[k] !== number) continue
      count += 1
      weight += shots.weight[k] as number
      for (const one of LIE_NUMBERS) sums[one] += lie[one]
    }
  }
  for (const one of LIE_NUMBERS) sums[one] /= count
  return { shots: count, weight, assumed: sums }
}

/**
 * The lies of a club with what was learned, where the player uses it: the club is hit from there, or it is usual. A club
 * that the player says is not used there stays so.
 */
export function liesLearned(
  club: Club,
  player: Player,
  learned: readonly LearnedLie[],
  { lies: hit }: ClubObservations,
): Club['lies'] {
  const own = learned.flatMap(({ lie, times, weight }): [LearnedLieName, LieFactors][] => {
    const effect = lieEffect(lie, club.name, player)
    const isHit = hit.some(({ place }) => LEARNED_LIES[place] === lie)
    if (club.lies[lie] === false || !(isHit || effect.allowed)) return []
    const factors = LIE_FACTOR_RANGES.map(([factor, least, most]) => [
      factor,
      Math.min(most, Math.max(least, effect[factor] * times[factor])),
    ])
    const shots = shotsBehind(player, lie) + Math.max(1, Math.round(weight))
    return [[lie, { ...Object.fromEntries(factors), shots }]]
  })
  return own.length === 0 ? club.lies : { ...club.lies, ...Object.fromEntries(own) }
}
