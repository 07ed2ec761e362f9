import type { HazardMeasure } from '#golf/course/hole-measures.ts'
import { TOO_CLOSE_STROKES } from '../settings.ts'
import type { GoOrLayUp } from '../thumb.ts'
import { bandsOf, rangeOf, zeroBetween } from './bands.ts'
import { strokeOf } from './rule-bands.ts'
import { cheapest, isAtGreen, type RuleOption, type RuleScene } from './rule-scene.ts'
import { isWater, waterWords } from './short-of-water.ts'

type Choice = GoOrLayUp['bands'][number]['choice']

/** What there is to go for: which options do, and which lay up; `null` from where there is no such choice. */
interface Target {
  readonly over: GoOrLayUp['over']
  sort(scene: RuleScene): ((option: RuleOption) => 'go' | 'lay-up' | 'neither') | null
}

interface Place {
  readonly toPin: number
  readonly choice: Choice
  /** Strokes that going saves; `null` where one of the two is not possible. */
  readonly saves: number | null
  readonly go: RuleOption | null
  readonly layUp: RuleOption | null
}

/** Where to go for the green and over each water across the line, and where to lay up, over the places of one lie, far to near. */
export function goOrLayUp(scenes: readonly RuleScene[]): GoOrLayUp[] {
  const waters = scenes[0]?.measures.hazards.filter((one) => isWater(one) && one.side === 'across') ?? []
  return [...waters.flatMap(overWater), forGreen].flatMap((target) => {
    const places = scenes.map((scene) => placeOf(target, scene))
    const bands = bandsOf(places, (place) => place?.choice ?? null).map(({ label, items }) =>
      bandOf(
        label,
        items.filter((place) => place !== null),
      ),
    )
    return bands.length === 0
      ? []
      : [{ over: target.over, bands, curve: curveOf(places), switches: switchesOf(places) }]
  })
}

const forGreen: Target = {
  over: null,
  sort: (scene) => (option) => (isAtGreen(scene, option) ? 'go' : 'lay-up'),
}

/** Going is a usual finish past the water's far edge, laying up one short of its near edge. */
function overWater(water: HazardMeasure): Target[] {
  const { reachMetres, carryMetres } = water
  if (carryMetres === null) return []
  const sideOf = ({ along }: RuleOption): 'go' | 'lay-up' | 'neither' =>
    along > carryMetres ? 'go' : along < reachMetres ? 'lay-up' : 'neither'
  return [{ over: waterWords(water), sort: ({ along }) => (along < reachMetres ? sideOf : null) }]
}

function placeOf(target: Target, scene: RuleScene): Place | null {
  const { toPin, options } = scene
  const sideOf = target.sort(scene)
  if (sideOf === null) return null
  const go = cheapest(options.filter((option) => sideOf(option) === 'go'))
  const layUp = cheapest(options.filter((option) => sideOf(option) === 'lay-up'))
  if (go === null) return { toPin, choice: 'out-of-reach', saves: null, go, layUp }
  if (layUp === null) return { toPin, choice: 'go', saves: null, go, layUp }
  const saves = layUp.strokes - go.strokes
  return { toPin, choice: choiceOf(saves), saves, go, layUp }
}

function choiceOf(saves: number): Choice {
  if (Math.abs(saves) < TOO_CLOSE_STROKES) return 'either'
  return saves > 0 ? 'go' : 'lay-up'
}

function bandOf(choice: Choice, places: readonly Place[]): GoOrLayUp['bands'][number] {
  const gains = places.flatMap(({ saves }) => (saves === null ? [] : [Math.abs(saves)]))
  const middle = places[Math.floor((places.length - 1) / 2)]
  return {
    from_m: places[0]?.toPin ?? Number.NaN,
    to_m: places.at(-1)?.toPin ?? Number.NaN,
    choice,
    gains: gains.length === 0 ? null : rangeOf(gains),
    go: middle?.go ? strokeOf(middle.go) : null,
    layUp: middle?.layUp ? strokeOf(middle.layUp) : null,
  }
}

function curveOf(places: readonly (Place | null)[]): GoOrLayUp['curve'] {
  return places.flatMap((place) =>
    place === null
      ? []
      : [{ from_m: place.toPin, go: place.go?.strokes ?? null, lay_up: place.layUp?.strokes ?? null }],
  )
}

/** Every place where the cheaper of the two becomes the other one; what is out of reach is not gone for. */
function switchesOf(places: readonly (Place | null)[]): GoOrLayUp['switches'] {
  return places.flatMap((place, index): GoOrLayUp['switches'][number][] => {
    const before = places[index - 1]
    if (!place || !before || isGone(before) === isGone(place)) return []
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
