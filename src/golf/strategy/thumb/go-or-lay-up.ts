import { TOO_CLOSE_STROKES } from '../settings.ts'
import type { GoOrLayUp } from '../thumb.ts'
import { bandsOf, rangeOf, zeroBetween } from './bands.ts'
import { strokeOf } from './rule-bands.ts'
import { cheapest, isAtGreen, type RuleOption, type RuleScene } from './rule-scene.ts'

type Choice = GoOrLayUp['bands'][number]['choice']

interface Place {
  readonly toPin: number
  readonly choice: Choice
  /** Strokes that going saves; `null` where one of the two is not possible. */
  readonly saves: number | null
  readonly go: RuleOption | null
  readonly layUp: RuleOption | null
}

/** Where to go for the green and where to lay up, over the places of one lie, far to near. */
export function goOrLayUp(scenes: readonly RuleScene[]): GoOrLayUp {
  const places = scenes.map(placeOf)
  const bands = bandsOf(places, ({ choice }) => choice).map(({ label, items }) => {
    const known = items.flatMap(({ saves }) => (saves === null ? [] : [Math.abs(saves)]))
    const middle = items[Math.floor((items.length - 1) / 2)]
    return {
      from_m: items[0]?.toPin ?? Number.NaN,
      to_m: items.at(-1)?.toPin ?? Number.NaN,
      choice: label,
      gains: known.length === 0 ? null : rangeOf(known),
      go: middle?.go ? strokeOf(middle.go) : null,
      layUp: middle?.layUp ? strokeOf(middle.layUp) : null,
    }
  })
  return { bands, switches: switchesOf(places) }
}

function placeOf(scene: RuleScene): Place {
  const { toPin, options } = scene
  const go = cheapest(options.filter((option) => isAtGreen(scene, option)))
  const layUp = cheapest(options.filter((option) => !isAtGreen(scene, option)))
  if (go === null) return { toPin, choice: 'out-of-reach', saves: null, go, layUp }
  if (layUp === null) return { toPin, choice: 'go', saves: null, go, layUp }
  const saves = layUp.strokes - go.strokes
  return { toPin, choice: choiceOf(saves), saves, go, layUp }
}

function choiceOf(saves: number): Choice {
  if (Math.abs(saves) < TOO_CLOSE_STROKES) return 'either'
  return saves > 0 ? 'go' : 'lay-up'
}

/** Every place where the cheaper of the two becomes the other one, going counted as dearer while it is out of reach. */
function switchesOf(places: readonly Place[]): GoOrLayUp['switches'] {
  return places.flatMap((place, index): GoOrLayUp['switches'][number][] => {
    const before = places[index - 1]
    if (!before || isGone(before) === isGone(place)) return []
    const to = isGone(place) ? 'go' : 'lay-up'
    if (before.saves === null || place.saves === null) return [{ at_m: place.toPin, to, by: 'reach' }]
    const at_m = zeroBetween(
      { at: before.toPin, value: before.saves },
      { at: place.toPin, value: place.saves },
    )
    return [{ at_m, to, by: 'cost' }]
  })
}

function isGone({ choice, saves }: Place): boolean {
  return saves === null ? choice === 'go' : saves > 0
}
