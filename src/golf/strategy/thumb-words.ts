import { metresToYards } from '#numbers/units/units.ts'
import type { LengthUnits } from './plan-sentence.ts'
import { HELD_BACK_METRES } from './thumb/settings.ts'
import type { BestLeave, GoOrLayUp, LieThumb, ThumbRule } from './thumb.ts'

const RULES: Readonly<Record<Exclude<ThumbRule['rule'], 'short-of-water'>, string>> = {
  'back-number': 'Play to the back number',
  'fat-side': 'Miss on the fat side',
  'full-club': 'Lay up to a full club',
}

/** A rule in the words of the trade: `Stay short of the burn`. */
export function ruleWords({ rule, hazard }: Pick<ThumbRule, 'rule' | 'hazard'>): string {
  return rule === 'short-of-water' ? `Stay short of the ${hazard}` : RULES[rule]
}

/** `From the tee`, `From the fairway`, `From first cut`, `Out of a bunker`. */
export function fromWords(lie: LieThumb['lie']): string {
  switch (lie) {
    case 'tee':
    case 'fairway':
      return `From the ${lie}`
    case 'bunker':
      return 'From a bunker'
    case 'heavy':
      return 'From heavy grass'
    default:
      return `From ${lie.replace('-', ' ')}`
  }
}

/** Where each rule turns, a sentence each: right at one distance, wrong at another. */
export function turnSentences({ lie, rules }: LieThumb, units: LengthUnits): string[] {
  return rules.flatMap((rule) =>
    rule.turns.map(
      ({ right_m, wrong_m, at_m }) =>
        `${fromWords(lie)} "${ruleWords(rule)}" is right at ${far(right_m, units)} and wrong at ${far(wrong_m, units)}; it turns at about ${far(at_m, units)}.`,
    ),
  )
}

/** Where each choice between going and laying up turns; empty where none does. */
export function switchSentences({ lie, go }: Pick<LieThumb, 'lie' | 'go'>, units: LengthUnits): string[] {
  return go.flatMap(({ over, switches }) =>
    switches.map(({ at_m, to, by }) => {
      const target = over === null ? 'go for the green' : `go over the ${over}`
      const short = over === null ? 'lay up' : `lay up short of the ${over}`
      const where = `${fromWords(lie)} ${to === 'go' ? target : short} from ${far(at_m, units)} in`
      return by === 'reach' && to === 'go' ? `${where}, as soon as it is in reach.` : `${where}.`
    }),
  )
}

/** One choice between going and laying up in words: where it turns, where it is too close to call, or what holds all along. */
export function choiceSentences(lie: LieThumb['lie'], go: GoOrLayUp, units: LengthUnits): string[] {
  const turns = switchSentences({ lie, go: [go] }, units)
  const close = go.bands
    .filter(({ choice }) => choice === 'either')
    .map(({ from_m, to_m }) =>
      far(from_m, units) === far(to_m, units)
        ? `At ${far(from_m, units)} it is too close to call.`
        : `Between ${bare(to_m, units)} and ${far(from_m, units)} it is too close to call.`,
    )
  const choices = new Set(go.bands.map(({ choice }) => choice))
  if (turns.length > 0) return [...turns, ...close]
  const target = go.over === null ? 'the green' : `the ground beyond the ${go.over}`
  const going = go.over === null ? 'going for the green' : `going over the ${go.over}`
  if (choices.has('go')) return [`${fromWords(lie)} ${going} costs less wherever it is in reach.`, ...close]
  if (choices.has('lay-up')) return [`${fromWords(lie)} laying up costs less all along.`, ...close]
  if (choices.has('either')) return close
  return [`${fromWords(lie)} ${target} is out of reach all along.`]
}

/** Where the best layup holds back, and what it leaves; empty where it goes as far as it can. */
export function layupSentences({ lie, places }: LieThumb, units: LengthUnits): string[] {
  const held = places.filter(
    ({ number, leave_m, nearest_m }) => number === 'layup' && leave_m - nearest_m >= HELD_BACK_METRES,
  )
  if (lie === 'tee' || held.length === 0) return []
  const leaves = held.map(({ from_m, leave_m }) => `leave ${bare(leave_m, units)} from ${far(from_m, units)}`)
  return [`${fromWords(lie)} hold back: ${leaves.join(', ')}.`]
}

/** What to leave: nearer is better, but where it is not. */
export function leaveSentences({ strokes, worseThanLonger }: BestLeave, units: LengthUnits): string[] {
  if (strokes.length === 0) return []
  if (worseThanLonger.length === 0) return ['In the fairway nearer is better for every full stroke.']
  return worseThanLonger.map(
    ({ leave_m, longer_m }) =>
      `In the fairway ${far(leave_m, units)} left costs more than ${far(longer_m, units)}: leave the longer one.`,
  )
}

function far(metres: number, units: LengthUnits): string {
  return `${bare(metres, units)} ${units}`
}

function bare(metres: number, units: LengthUnits): number {
  return Math.round(units === 'yards' ? metresToYards(metres) : metres)
}
