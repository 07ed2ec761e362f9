import type { BatchQuestion, FiledPlayer, UnplannedHole } from './batch-tasks.ts'
import type { BatchRow } from './plan-batch.ts'
import type { PlannedHole } from './plan-one.ts'

/** What one player was asked to play, in the order of the course. */
export interface PlannedRound {
  readonly player: FiledPlayer
  readonly planned: readonly PlannedHole[]
  readonly unplanned: readonly UnplannedHole[]
  /** Expected strokes over the holes that have a plan. */
  readonly strokes: number
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
    }
  })
}

/** `round-plan/1` of one player, `round-plans/1` of several. */
export function roundDocument(courseName: string, rounds: readonly PlannedRound[]): unknown {
  const documents = rounds.map(({ player, planned, unplanned, strokes }) => ({
    schema: 'round-plan/1',
    course: courseName,
    player: player.player.name,
    playerFile: player.file,
    value: { strokes },
    plans: planned.map(({ plan }) => plan),
    unplanned,
  }))
  return documents.length === 1
    ? documents[0]
    : { schema: 'round-plans/1', course: courseName, rounds: documents }
}

/** `plan-line/1`: one line of a stream, a plan or why there is none. */
export function roundLine(row: BatchRow): unknown {
  const { player, file } = row.player
  const line = { schema: 'plan-line/1', player: player.name, playerFile: file }
  if ('planned' in row) return { ...line, hole: row.planned.hole.ref, plan: row.planned.plan }
  const { hole, ...error } = row.unplanned
  return { ...line, hole, error }
}
