import type { Fault } from '#faults/fault.ts'
import type { Spot } from '#golf/round/follow-hole.ts'
import type { HoleRecap, Split, StrokeSplit } from '#golf/round/recap.ts'
import type { StrokeOfHole } from '#golf/round/recap-round.ts'
import type { ToldRecap } from '#golf/round/recap-words.ts'
import type { Round } from '#golf/round/round.ts'

/** What `marram recap` found out. */
export interface RecapAnswer extends ToldRecap {
  readonly course: string
  readonly player: string
  readonly round: Round
  readonly faults: readonly Fault[]
}

/** `recap/1`: a round split, in SI; strokes, positive where more were used than the plan expects. */
export function recapDocument({
  course,
  player,
  round,
  against,
  recap,
  card,
  match,
  faults,
}: RecapAnswer): object {
  return {
    schema: 'recap/1',
    course,
    player,
    date: round.date,
    tee: round.tee,
    against: against && { from: against.from, date: against.date },
    score: recap.score,
    value: recap.value,
    ...splitOf(recap),
    adds_up: recap.addsUp,
    parts: recap.parts.map(({ part, count, ...split }) => ({ part, count, ...splitOf(split) })),
    penalties: {
      count: recap.penalties.count,
      strokes: recap.penalties.strokes,
      ...splitOf(recap.penalties),
    },
    costly: recap.costly.map(referenceOf),
    best: recap.best.map(referenceOf),
    unsplit: recap.unsplit,
    card: 'card' in card ? card.card : null,
    match,
    holes: recap.holes.map(holeOf),
    faults,
  }
}

function splitOf({ decision, execution, luck }: Split): Split {
  return { decision, execution, luck }
}

function referenceOf({ hole, stroke }: StrokeOfHole): object {
  return { hole, stroke: stroke.number, club: stroke.club, plan: stroke.plan, ...splitOf(stroke) }
}

function holeOf(hole: HoleRecap): object {
  return {
    hole: hole.ref,
    par: hole.par,
    score: hole.score,
    value: hole.value,
    ...splitOf(hole),
    adds_up: hole.addsUp,
    strokes: hole.strokes.map(strokeOf),
  }
}

function strokeOf(stroke: StrokeSplit): object {
  return {
    stroke: stroke.number,
    count: stroke.count,
    used: stroke.used,
    penalty: stroke.penalty,
    part: stroke.part,
    club: stroke.club,
    plan: stroke.plan,
    from: { ...placeOf(stroke.from), pin_m: stroke.pinMetres },
    to: stroke.to === null ? 'holed' : placeOf(stroke.to),
    before: stroke.before,
    chosen: stroke.chosen,
    after: stroke.after,
    choice: stroke.choice,
    ...splitOf(stroke),
    unsplit: stroke.unsplit,
  }
}

function placeOf({ point, lie }: Spot): object {
  return { x_m: point[0], y_m: point[1], lie }
}
