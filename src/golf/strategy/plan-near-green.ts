import { Failure } from '#faults/failure.ts'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import { drawPlayer } from '#golf/player/draw-player.ts'
import type { Player } from '#golf/player/player.ts'
import { shortShots } from '#golf/player/short-shots.ts'
import { weightedQuantile } from '#numbers/statistics/quantile.ts'
import { cautionsOf } from './cautions.ts'
import type { Situation } from './evaluate-stroke.ts'
import { type NearGreenCorrections, nearGreenCorrections } from './near-green-corrections.ts'
import { nearGreenSentence } from './near-green-sentence.ts'
import type { Places } from './places.ts'
import type { Plan, PlanOption } from './plan.ts'
import type { LengthUnits } from './plan-sentence.ts'
import { DRAWS, SHORT_GAME_METRES } from './settings.ts'
import { FINAL_STRIKES, nearGreenScene, shortByClub } from './short/clubs-near-green.ts'
import type { ShortCandidate } from './short/find-short-aims.ts'
import { playShortShot, strokesOf } from './short/play-short-shot.ts'
import { shortFacts } from './short/short-option.ts'
import type { ShortScene } from './short/short-scene.ts'
import { type ShortStrikes, shortStrikes } from './short/short-strikes.ts'
import { verdictOf } from './verdict.ts'

/** What is asked of one stroke near the green. */
export interface NearGreenQuestion {
  readonly courseName: string
  readonly hole: Hole
  readonly player: Player
  readonly day: Day
  readonly club?: string
  readonly draws?: number
  readonly seed?: number
  readonly units?: LengthUnits
}

const DRAW_STRIKES: ShortStrikes = shortStrikes({ good: 96, poor: 16 })

/** The short game knows the ground under the ball, not how it sits there. */
const SIT_CAUTION =
  'How the ball sits and the slope under the feet are not in these figures near the green: make your own allowance.'

/** Whether a stroke is a putt, a chip or a pitch: on the green, or within 45 m of the pin. */
export function isNearGreen({ x, y, lie }: Situation, { pin }: Pick<Hole, 'pin'>): boolean {
  return lie === 'green' || Math.hypot(x - pin[0], y - pin[1]) <= SHORT_GAME_METRES
}

/**
 * The plan of one stroke near the green: every short shot that the player owns on its best landing spot and line, by what
 * it costs on this green today. Throws a Failure when no club is played from the lie, or not the one that was asked for.
 */
export function planNearGreen(question: NearGreenQuestion, places: Places, situation: Situation): Plan {
  const { hole, player, day } = question
  const from: readonly [number, number] = [situation.x, situation.y]
  const nearGreen = nearGreenCorrections(hole, places, player, day)
  const scene = nearGreenScene(question, places, situation, player, nearGreen)
  const best = shortByClub(scene, shortShots(player, situation.lie), from)
  const [first] = best
  if (first === undefined)
    throw new Failure(
      'MAR-PLAN-002',
      `No club of the player is played from ${situation.lie}.`,
      `lie ${situation.lie}`,
    )
  const chosen = question.club === undefined ? first : best.find(({ shot }) => shot.club === question.club)
  if (chosen === undefined)
    throw new Failure(
      'MAR-PLAN-003',
      `The player does not play a ${question.club} from ${situation.lie} here. Clubs: ${best.map(({ shot }) => shot.club).join(', ')}.`,
      `club ${question.club}`,
    )
  const draws = question.draws ?? DRAWS
  const doubt = doubtOf(question, places, situation, best, draws, nearGreen)
  const options = best.map((candidate, index): PlanOption => {
    const cost = candidate.strokes - first.strokes
    const gaps = doubt.gaps[index] ?? []
    return {
      club: candidate.shot.club,
      shape: candidate.shot.kind,
      strokes: candidate.strokes,
      cost,
      cost_low: Math.min(cost, quantile(gaps, 0.1) ?? cost),
      cost_high: Math.max(cost, quantile(gaps, 0.9) ?? cost),
      // Trees on the short way to the green are not looked at: no path of the short game is followed.
      trees: { way: 'open', growth: null, caught: 0, gap: null },
      best_in_draws: draws === 0 ? Number(index === 0) : (doubt.wins[index] ?? 0) / draws,
      ...shortFacts(
        scene,
        player,
        from,
        situation.lie,
        candidate,
        FINAL_STRIKES,
        playShortShot(scene, candidate.shot, from, candidate.aim, FINAL_STRIKES),
      ),
      aimCosts: aimCostsOf(scene, from, candidate, first.strokes),
    }
  })
  const facts = {
    verdict: verdictOf(options, draws),
    options,
    overruled:
      question.club === undefined ? null : { club: chosen.shot.club, cost: chosen.strokes - first.strokes },
  }
  return {
    schema: 'plan/1',
    course: question.courseName,
    hole: { ref: hole.ref, par: hole.par, length_m: hole.lengthMetres, tee: hole.teeName },
    player: player.name,
    situation: { x_m: situation.x, y_m: situation.y, lie: situation.lie, objective: 'strokes' },
    value: {
      strokes: first.strokes,
      low: Math.min(first.strokes, quantile(doubt.values, 0.1) ?? first.strokes),
      high: Math.max(first.strokes, quantile(doubt.values, 0.9) ?? first.strokes),
    },
    plays: null,
    ...facts,
    flips: [],
    avoid: null,
    // biome-ignore lint/suspicious/noThenProperty: `then` is promised by plan/1, and no plan is ever awaited.
    then: [],
    format: null,
    sentence: nearGreenSentence(facts, question.units ?? 'yards'),
    cautions: [
      'For lessons and practice: during a counting round nothing may be computed from where the ball lies, and no device may read the green (Rule 4.3).',
      ...(situation.sit === undefined && situation.stance === undefined ? [] : [SIT_CAUTION]),
      ...cautionsOf(hole, day, player.guesses, true),
    ],
    guesses: [...player.guesses],
    method: {
      cell_m: places.fine.resolution,
      states: 0,
      quadrature: FINAL_STRIKES.count,
      refined_quadrature: null,
      sweeps: 0,
      residual: 0,
      tolerance: 0,
      converged: true,
      draws,
      milliseconds: 0,
    },
  }
}

/** What the same shots cost other players that this one may be: each club's gap to the first, wins, and the least cost. */
function doubtOf(
  question: NearGreenQuestion,
  places: Places,
  situation: Situation,
  best: readonly ShortCandidate[],
  draws: number,
  nearGreen: NearGreenCorrections | null,
): { readonly gaps: number[][]; readonly wins: number[]; readonly values: number[] } {
  const gaps = best.map((): number[] => [])
  const wins = best.map(() => 0)
  const values: number[] = []
  const from: readonly [number, number] = [situation.x, situation.y]
  for (let draw = 0; draw < draws; draw++) {
    const player = drawPlayer(question.player, (question.seed ?? 1) + draw)
    const scene = nearGreenScene(question, places, situation, player, nearGreen)
    const shots = shortShots(player, situation.lie)
    const strokes = best.map(({ shot, aim }) => {
      const drawn = shots.find(({ club, kind }) => club === shot.club && kind === shot.kind) ?? shot
      return strokesOf(scene, playShortShot(scene, drawn, from, aim, DRAW_STRIKES))
    })
    const least = Math.min(...strokes)
    strokes.forEach((one, index) => {
      gaps[index]?.push(one - (strokes[0] ?? one))
    })
    const winner = strokes.indexOf(least)
    wins[winner] = (wins[winner] ?? 0) + 1
    values.push(least)
  }
  return { gaps, wins, values }
}

function quantile(list: readonly number[], share: number): number | null {
  if (list.length === 0) return null
  return weightedQuantile(Float64Array.from(list), new Float64Array(list.length).fill(1), share)
}

/** Lines beside the best one, degrees. */
const LINES_DEGREES = [-6, -3, 0, 3, 6] as const

function aimCostsOf(
  scene: ShortScene,
  from: readonly [number, number],
  { shot, aim }: ShortCandidate,
  least: number,
): PlanOption['aimCosts'] {
  const distance = Math.hypot(scene.pin[0] - from[0], scene.pin[1] - from[1])
  return LINES_DEGREES.map((degrees) => {
    const heading = aim.heading + (degrees * Math.PI) / 180
    return {
      offset_m: from[0] + distance * Math.sin(heading),
      cost: strokesOf(scene, playShortShot(scene, shot, from, { ...aim, heading }, DRAW_STRIKES)) - least,
    }
  })
}
