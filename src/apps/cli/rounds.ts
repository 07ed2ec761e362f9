import type { Course } from '#golf/course/course.ts'
import { roundScores } from '#golf/strategy/round-scores.ts'
import type { BatchQuestion, FiledPlayer, UnplannedHole } from './batch-tasks.ts'
import type { BatchRow } from './plan-batch.ts'
import type { PlannedHole } from './plan-one.ts'
import { fieldShares } from './round-chances.ts'

/** What one player was asked to play, in the order of the course. */
export interface PlannedRound {
  readonly player: FiledPlayer
  readonly planned: readonly PlannedHole[]
  readonly unplanned: readonly UnplannedHole[]
  /** Expected strokes over the holes that have a plan. */
  readonly strokes: number
  /** Expected points over them; `null` where they are not what is played for. */
  readonly points: number | null
}

/** Rows as they came → a round a player, players as typed and holes in the order of the course. */
export function roundsOf({ course, players }: BatchQuestion, rows: readonly BatchRow[]): PlannedRound[] {
  const places = new Map(course.holes.map(({ ref }, place) => [ref, place]))
  const byPlace =
    <One>(refOf: (one: One) => string) =>
    (a: One, b: One): number =>
      (places.get(refOf(a)) ?? 0) - (places.get(refOf(b)) ?? 0)
  return players.map((player) => {
    const own = rows.filter((row) => row.player === player)
    const planned = own.flatMap((row) => ('planned' in row ? [row.planned] : []))
    const unplanned = own.flatMap((row) => ('unplanned' in row ? [row.unplanned] : []))
    return {
      player,
      planned: planned.sort(byPlace(({ hole }) => hole.ref)),
      unplanned: unplanned.sort(byPlace(({ hole }) => hole)),
      strokes: planned.reduce((sum, { plan }) => sum + plan.value.strokes, 0),
      points: pointsOf(planned),
    }
  })
}

/** `round-plan/1` of one player, `round-plans/1` of several, with the chance of each total and the shares of winning. */
export function roundDocument(course: Course, rounds: readonly PlannedRound[]): unknown {
  const field = fieldShares(course, rounds)
  const documents = rounds.map(({ player, planned, unplanned, strokes, points }, place) => ({
    schema: 'round-plan/1',
    course: course.name,
    player: player.player.name,
    playerFile: player.file,
    value: { strokes, ...(points === null ? {} : { points }) },
    scores: totalsOf(planned),
    ...(field && { wins: { gross: field.gross[place], net: field.net?.[place] ?? null } }),
    plans: planned.map(({ plan }) => plan),
    unplanned,
  }))
  return documents.length === 1
    ? documents[0]
    : { schema: 'round-plans/1', course: course.name, rounds: documents }
}

function pointsOf(planned: readonly PlannedHole[]): number | null {
  const isForPoints = planned.length > 0 && planned.every(({ plan }) => plan.situation.objective === 'points')
  return isForPoints ? planned.reduce((sum, { plan }) => sum + (plan.format?.value ?? 0), 0) : null
}

/** Chance of each total over the holes that have a plan, by strokes. */
function totalsOf(planned: readonly PlannedHole[]): Record<string, number> {
  const totals = roundScores(planned.map(({ plan }) => plan))
  return Object.fromEntries(
    totals.flatMap((chance, strokes) => (chance > LEAST_CHANCE ? [[String(strokes), chance]] : [])),
  )
}

/** Chances below this are left out of a document. Our assumption. */
const LEAST_CHANCE = 1e-9

/** `plan-line/1`: one line of a stream, a plan or why there is none. */
export function roundLine(row: BatchRow): unknown {
  const { player, file } = row.player
  const line = { schema: 'plan-line/1', player: player.name, playerFile: file }
  if ('planned' in row) return { ...line, hole: row.planned.hole.ref, plan: row.planned.plan }
  const { hole, ...error } = row.unplanned
  return { ...line, hole, error }
}
