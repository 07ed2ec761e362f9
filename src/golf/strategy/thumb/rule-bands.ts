import type { ThumbBand, ThumbRule, ThumbStroke, ThumbTurn } from '../thumb.ts'
import { bandsOf, rangeOf, zeroBetween } from './bands.ts'
import type { Rule } from './rule.ts'
import type { RuleOption, RuleScene } from './rule-scene.ts'
import { type WeighedRule, weighRule } from './weigh-rule.ts'

interface WeighedPlace extends WeighedRule {
  readonly toPin: number
}

/** One rule over the places of one lie, far to near; `null` where it has nothing to say at any of them. */
export function ruleBands(rule: Rule, scenes: readonly RuleScene[]): ThumbRule | null {
  const weighed = scenes.map((scene): WeighedPlace | null => {
    const one = weighRule(rule, scene)
    return one && { ...one, toPin: scene.toPin }
  })
  const bands = bandsOf(weighed, (one) => one?.verdict ?? null).map(({ label, items }) =>
    bandOf(
      label,
      items.filter((one) => one !== null),
    ),
  )
  if (bands.length === 0) return null
  return { rule: rule.name, hazard: rule.hazard, bands, turns: turnsOf(weighed) }
}

function bandOf(verdict: WeighedRule['verdict'], places: readonly WeighedPlace[]): ThumbBand {
  const dearest = places.reduce((most, one) => (Math.abs(one.saves) > Math.abs(most.saves) ? one : most))
  return {
    from_m: places[0]?.toPin ?? Number.NaN,
    to_m: places.at(-1)?.toPin ?? Number.NaN,
    verdict,
    saves: rangeOf(places.map(({ saves }) => saves)),
    follow: strokeOf(dearest.follow),
    depart: strokeOf(dearest.depart),
  }
}

/** The stroke of an option as it is reported. */
export function strokeOf({ shot, toPin }: RuleOption): ThumbStroke {
  return { club: shot.club, shape: shot.shape, leave_m: toPin }
}

/** Every change from right to wrong or back, indifferent places between them passed over; a silent place ends the search. */
function turnsOf(weighed: readonly (WeighedPlace | null)[]): ThumbTurn[] {
  const turns: ThumbTurn[] = []
  let sure: WeighedPlace | null = null
  let before: WeighedPlace | null = null
  let zero = Number.NaN
  for (const place of weighed) {
    if (place && before && before.saves > 0 !== place.saves > 0)
      zero = zeroBetween({ at: before.toPin, value: before.saves }, { at: place.toPin, value: place.saves })
    if (place === null) sure = null
    else if (place.verdict !== 'indifferent') {
      if (sure && sure.verdict !== place.verdict) {
        const [right, wrong] = place.verdict === 'wrong' ? [sure, place] : [place, sure]
        turns.push({ right_m: right.toPin, wrong_m: wrong.toPin, at_m: zero })
      }
      sure = place
    }
    before = place
  }
  return turns
}
