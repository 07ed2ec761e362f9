import { splitHole } from '../../src/golf/round/recap-hole.ts'
import type { RoundRecap } from '../../src/golf/round/recap-round.ts'
import { recapRound } from '../../src/golf/round/recap-round.ts'
import { type Season, seasonOf } from '../../src/golf/round/season.ts'
import { seededGenerator } from '../../src/numbers/statistics/seeded-generator.ts'
import { GOLFERS, type Golfer } from './golfers.ts'
import { holePlayer } from './play-hole.ts'
import type { StudyHole } from './study-hole.ts'

/** How much is played by each golfer. */
export interface SeasonCounts {
  readonly seasons: number
  /** Rounds of a season. */
  readonly rounds: number
  readonly seed: number
}

/** What the seasons of one golfer came to. */
export interface GolferSeasons {
  readonly golfer: Golfer
  readonly seasons: readonly Season[]
  /** Largest |score − expected − splits| of a round, and the least cost of a choice. */
  readonly worstSum: number
  readonly leastDecision: number
  /** What decisions came to at most in a round. */
  readonly mostDecision: number
}

/** Plays the golfers' seasons on some holes, one golfer after the other, each round split as a recap splits it. */
export function* playSeasons(
  holes: readonly StudyHole[],
  { seasons, rounds, seed }: SeasonCounts,
  golfers: readonly Golfer[] = GOLFERS,
): Generator<GolferSeasons> {
  const played = holes.map((hole) => ({ ...hole, play: holePlayer(hole) }))
  const player = (holes[0] as StudyHole).solved.model.player
  for (const [index, golfer] of golfers.entries()) {
    const random = seededGenerator(seed + index)
    const round = (): RoundRecap =>
      recapRound(played.map(({ solved, judge, play }) => splitHole(solved, play(golfer, random), judge)))
    const seasonsPlayed = Array.from({ length: seasons }, () => Array.from({ length: rounds }, round))
    const all = seasonsPlayed.flat()
    yield {
      golfer,
      seasons: seasonsPlayed.map((one) => seasonOf(one, player)),
      worstSum: Math.max(...all.flatMap((one) => [one, ...one.holes].map(({ addsUp }) => Math.abs(addsUp)))),
      leastDecision: Math.min(
        ...all.flatMap((one) => one.holes.flatMap(({ strokes }) => strokes.map(({ decision }) => decision))),
      ),
      mostDecision: Math.max(...all.map(({ decision }) => decision)),
    }
  }
}

/** What a season names first; `null` = nothing. */
export function firstNamed({ findings }: Season): string | null {
  const [first] = findings
  return first === undefined ? null : first.kind === 'part' ? first.part.part : first.choosing.way
}

/** Share of seasons whose first finding is the golfer's fault, or that find nothing where there is none. */
export function rightShare({ golfer, seasons }: GolferSeasons): number {
  return seasons.filter((season) => firstNamed(season) === golfer.fault).length / seasons.length
}

/** The head of the study's Markdown table. */
export const SEASON_TABLE_HEAD: readonly string[] = [
  '| golfer | named first as it should be | a round: choices | struck | luck | a season: strokes from sand beside the green, further away | other findings |',
  '|---|---|---|---|---|---|---|',
]

/** One golfer's row of it. */
export function seasonRow(result: GolferSeasons): string {
  const { golfer, seasons } = result
  const mean = (of: (season: Season) => number): number =>
    seasons.reduce((sum, season) => sum + of(season), 0) / seasons.length
  const others = new Map<string, number>()
  for (const season of seasons) {
    const first = firstNamed(season)
    if (first !== golfer.fault) others.set(first ?? 'nothing', (others.get(first ?? 'nothing') ?? 0) + 1)
  }
  const cells = [
    golfer.name,
    `${Math.round(rightShare(result) * seasons.length)} of ${seasons.length}`,
    ...(['decision', 'execution', 'luck'] as const).map((what) => mean((season) => season[what]).toFixed(2)),
    [0, 1].map((place) => mean(({ sand }) => sand[place]?.count ?? 0).toFixed(0)).join(', '),
    [...others].map(([what, count]) => `${what} ${count}`).join(', '),
  ]
  return `| ${cells.join(' | ')} |`
}
