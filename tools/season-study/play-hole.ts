import type { Lie } from '#golf/player/player.ts'
import type { Spot } from '#golf/round/follow-hole.ts'
import type { JudgedChoice } from '#golf/round/judge-choice.ts'
import type { RoundHole, RoundStroke } from '#golf/round/round.ts'
import { type Candidate, evaluateStroke, type Situation } from '#golf/strategy/evaluate-stroke.ts'
import { lieOfGround } from '#golf/strategy/lie-of-ground.ts'
import { AT_REST, outcomeKind, outcomePlace } from '#golf/strategy/outcome.ts'
import { groundOf } from '#golf/strategy/places.ts'
import { isNearGreen } from '#golf/strategy/plan-near-green.ts'
import { aimOf } from '#golf/strategy/plan-options.ts'
import { strokeTries } from '#golf/strategy/stroke-tries.ts'
import { type Golfer, type Menu, menuOf } from './golfers.ts'
import { puttsFrom, shortGame } from './short-game.ts'
import type { StudyHole } from './study-hole.ts'

const MOST_STROKES = 30

/** Plays a hole with whole shots from the pattern's own ends, short strokes and putts at random, and logs every stroke. */
export function holePlayer({
  solved,
  judge,
}: StudyHole): (golfer: Golfer, random: () => number) => RoundHole {
  const { model, values, shots, quadrature, lineStepDegrees } = solved
  const { places, costs, hole, player } = model
  const short = shortGame(solved)
  const menus = new Map<string, Menu>()
  return (golfer, random) => {
    const strokes: RoundStroke[] = []
    let at: Spot = { point: [0, 0], lie: 'tee', ground: 'tee' }
    for (;;) {
      if (strokes.length > MOST_STROKES) throw new Error(`hole ${hole.ref} does not end`)
      const situation: Situation = { x: at.point[0], y: at.point[1], lie: at.lie }
      if (at.lie === 'green') break
      if (isNearGreen(situation, hole)) {
        const end = short.play(at, at.lie === 'bunker' ? golfer.sand : 1, random)
        if (end === 'holed') {
          strokes.push(logged(strokes, { isAsPlanned: true }))
          return { ref: hole.ref, strokes, putts: 0, ...ENDED }
        }
        at = end === 'stays' ? at : end
        strokes.push(logged(strokes, { isAsPlanned: true, finish: finishOf(at), lie: at.lie }))
        continue
      }
      const { candidate: plan } = asPlanned(at)
      if (plan === null) throw new Error(`hole ${hole.ref} has no plan from ${at.point}`)
      const choices = { plan, menu: () => menuAt(situation) }
      const played = golfer.chooses(choices, situation, model, random)
      const aim =
        played === plan || played === menus.get(keyOf(situation))?.plan
          ? { club: played.shot.club, isAsPlanned: true }
          : { club: played.shot.club, aimOffsetMetres: aimOf(situation, played).offset_m }
      const isFat = golfer.isPoorFromAllSand && at.lie === 'bunker' && random() < fatShare(golfer, at)
      const { spot, penalty } = isFat ? { spot: at, penalty: 0 } : endOf(played, at, random)
      at = spot ?? at
      const finish: RoundStroke['finish'] = spot === null ? { letter: 'o', leftMetres: null } : finishOf(at)
      strokes.push(logged(strokes, { ...aim, finish, lie: spot?.lie ?? null, penalty }))
    }
    const worth = judge(solved, at, logged([], { club: 'putter' })).before
    return {
      ref: hole.ref,
      strokes,
      putts: puttsFrom(worth, player, golfer.putting(player.putting), random),
      ...ENDED,
    }
  }

  function menuAt(situation: Situation): Menu {
    const key = keyOf(situation)
    const known = menus.get(key)
    if (known !== undefined) return known
    const tries = strokeTries(model, shots, situation, lineStepDegrees)
    const menu = menuOf(model, situation, evaluateStroke(model, values, { situation, quadrature, tries }))
    menus.set(key, menu)
    return menu
  }

  /**
   * Share of strokes from sand out of reach of the short game that stay in it. Each costs one stroke and is played again, so
   * share / (1 − share) strokes are lost: as many as make strokes to hole out the golfer's multiple of the plan's.
   */
  function fatShare({ sand }: Golfer, at: Spot): number {
    const lost = (sand - 1) * asPlanned(at).before
    return lost / (1 + lost)
  }

  function asPlanned(at: Spot): JudgedChoice {
    return judge(solved, at, logged([], { isAsPlanned: true }))
  }

  /** Where one ball of a stroke ends, relief taken where it is cheapest; `null` = played again from where it was. */
  function endOf(
    { ends }: Candidate,
    from: Spot,
    random: () => number,
  ): { spot: Spot | null; penalty: number } {
    const outcome = ends.outcome[drawn(ends.weight, random)] as number
    if (costs.isSpecial[outcome] === 1 && costs.isKnown[outcome] === 0) costs.workOut(outcome, values)
    const chance = random()
    const played = costs.isSpecial[outcome] === 1 ? (costs.played[outcome] as number) : 1
    if (chance < played && outcomeKind(places, outcome) === AT_REST)
      return { spot: middleOf(outcomePlace(places, outcome)), penalty: 0 }
    const drop = costs.drop[outcome] as number
    const relief = costs.relief[outcome] as number
    if (
      chance < played + (costs.relieved[outcome] as number) &&
      drop >= 0 &&
      relief <= 1 + asPlanned(from).before
    )
      return { spot: middleOf(drop), penalty: 1 }
    return { spot: null, penalty: 1 }
  }

  function middleOf(place: number): Spot {
    const ground = groundOf(places, place)
    return {
      point: [places.x[place] as number, places.y[place] as number],
      lie: lieOfGround(ground) as Lie,
      ground,
    }
  }
}

const ENDED = { firstPuttMetres: null, isPickedUp: false, place: 'study' } as const

function finishOf({ point }: Spot): RoundStroke['finish'] {
  return { x: point[0], y: point[1] }
}

function logged(before: readonly RoundStroke[], stroke: Partial<RoundStroke>): RoundStroke {
  return {
    club: null,
    aimOffsetMetres: null,
    from: null,
    finish: null,
    lie: null,
    penalty: 0,
    isAsPlanned: false,
    place: `stroke ${before.length + 1}`,
    ...stroke,
  }
}

function keyOf({ x, y, lie }: Situation): string {
  return `${x} ${y} ${lie}`
}

/** Picks one of some things by their weights. */
function drawn(weights: Float64Array, random: () => number): number {
  let left = random() * weights.reduce((sum, one) => sum + one, 0)
  for (let k = 0; k < weights.length; k++) {
    left -= weights[k] as number
    if (left < 0) return k
  }
  return weights.length - 1
}
