import type { Lie } from '#golf/player/player.ts'
import { puttingValues } from '#golf/player/putting-values.ts'
import { type Candidate, evaluateStroke, type StrokeEvaluation } from '#golf/strategy/evaluate-stroke.ts'
import { lieOfGround } from '#golf/strategy/lie-of-ground.ts'
import { AT_REST, outcomeKind, outcomePlace } from '#golf/strategy/outcome.ts'
import { groundOf } from '#golf/strategy/places.ts'
import { aimOf } from '#golf/strategy/plan-options.ts'
import { strokeTries } from '#golf/strategy/stroke-tries.ts'
import type { RecapHole } from './judge-choice.ts'
import type { RoundHole, RoundStroke } from './round.ts'

/** Which of the strokes that may be played a simulated player plays. */
export type Chooses = (evaluation: StrokeEvaluation, random: () => number) => Candidate

/** Picks one of some things by their weights. */
function drawn(weights: ArrayLike<number>, random: () => number): number {
  let left = random() * Array.from(weights).reduce((sum, one) => sum + one, 0)
  for (let k = 0; k < weights.length; k++) {
    left -= weights[k] as number
    if (left < 0) return k
  }
  return weights.length - 1
}

/**
 * Plays a hole at random and logs it stroke by stroke: whole shots by the pattern's own ends, one chip to a few feet, putts
 * by the putting table. Every logged club and line is the one that was played.
 */
export function playedHole(solved: RecapHole, chooses: Chooses, random: () => number): RoundHole {
  const { model, values, shots, quadrature, lineStepDegrees } = solved
  const { places, costs, hole } = model
  const strokes: RoundStroke[] = []
  let at = { x: 0, y: 0, lie: 'tee' as Lie }
  const log = (stroke: Partial<RoundStroke>): void => {
    strokes.push({ ...UNKNOWN, place: `stroke ${strokes.length + 1}`, ...stroke })
  }
  const isNear = (): boolean => at.lie === 'green' || Math.hypot(at.x - hole.pin[0], at.y - hole.pin[1]) <= 45
  while (!isNear()) {
    const evaluation = evaluateStroke(model, values, {
      situation: at,
      quadrature,
      tries: strokeTries(model, shots, at, lineStepDegrees),
    })
    const played = chooses(evaluation, random)
    const outcome = played.ends.outcome[drawn(played.ends.weight, random)] as number
    const aim = { club: played.shot.club, aimOffsetMetres: aimOf(at, played).offset_m }
    const drop = costs.drop[outcome] as number
    const isSpecial = costs.isSpecial[outcome] === 1
    const isPlayed = !isSpecial || random() < (costs.played[outcome] as number)
    if (isPlayed && outcomeKind(places, outcome) === AT_REST) at = middleOf(outcomePlace(places, outcome))
    else if (drop >= 0 && random() < (costs.relieved[outcome] as number)) at = middleOf(drop)
    else {
      log({ ...aim, finish: { letter: 'o', leftMetres: null } })
      continue
    }
    log({ ...aim, finish: { x: at.x, y: at.y }, penalty: isPlayed ? 0 : 1 })
  }
  if (at.lie !== 'green') {
    log({ club: 'sand-wedge', finish: { letter: 'g', leftMetres: 0.5 + 4 * random() } })
    at = { ...at, x: hole.pin[0], y: hole.pin[1] - 2, lie: 'green' }
  }
  const putts =
    1 + drawn(puttingValues(model.player).shares(Math.hypot(at.x - hole.pin[0], at.y - hole.pin[1])), random)
  return { ref: hole.ref, strokes, putts, firstPuttMetres: null, isPickedUp: false, place: 'line 1' }

  function middleOf(place: number): typeof at {
    const lie = lieOfGround(groundOf(places, place)) as Lie
    return { x: places.x[place] as number, y: places.y[place] as number, lie }
  }
}

/** Nothing known of a stroke. */
export const UNKNOWN: RoundStroke = {
  club: null,
  aimOffsetMetres: null,
  from: null,
  finish: null,
  lie: null,
  penalty: null,
  isAsPlanned: false,
  place: '',
}
