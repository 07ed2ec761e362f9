import { degreesToRadians, metresToYards } from '#numbers/units/units.ts'
import { capital } from './capital.ts'
import { hazardWords, type MainHazard } from './main-hazard.ts'
import { isDearToBothSides, safeSide } from './misses.ts'
import type { Plan, PlanOption } from './plan.ts'

/** The units in which a person reads lengths. */
export type LengthUnits = 'yards' | 'metres'

/** What the sentence needs of a plan. */
export type PlanFacts = Pick<Plan, 'verdict' | 'options' | 'overruled'>

/** What sideways distances are said against. */
export interface SentenceLine {
  readonly words: 'hole line' | 'line off the tee' | 'pin'
  /** Its direction from the ball, degrees clockwise from the y axis. */
  readonly headingDegrees: number
}

/**
 * The plan in one or two plain sentences: the club, its start line, where it should finish, and the side on which to
 * miss. `hazard` is named when it lies on the other side. Lengths are rounded here and nowhere before. `costWords` says
 * what an option costs, in strokes by default.
 */
export function planSentence(
  plan: PlanFacts,
  lineFor: (option: PlanOption) => SentenceLine,
  hazard: MainHazard | null,
  units: LengthUnits,
  costWords: (cost: number) => string = strokesWords,
): string {
  const [first, second] = plan.options
  if (!first) return 'There is no club to play from here.'
  const words = (option: PlanOption): string => strokeWords(option, lineFor(option), hazard, units)
  const overruled = plan.overruled
    ? plan.options.find((option) => option.club === plan.overruled?.club)
    : undefined
  if (overruled && overruled !== first)
    return `${words(overruled)} It costs ${costWords(overruled.cost)} against the ${clubWords(first)}.`
  if (plan.verdict !== 'too-close' || !second) return words(first)
  return `Too close to call between the ${clubWords(first)} and the ${clubWords(second)}: take the one you trust. ${words(first)}`
}

function strokeWords(
  option: PlanOption,
  line: SentenceLine,
  hazard: MainHazard | null,
  units: LengthUnits,
): string {
  const miss = missWords(option, hazard)
  const trees = treeWords(option)
  if (option.trees.way === 'sideways') return `${sidewaysWords(option, line, units)}${trees}.`
  const { start_deg, heading_deg } = option.aim
  const offset = (degrees: number): number =>
    option.total_m * Math.sin(degreesToRadians(degrees - line.headingDegrees))
  const start = sideWords(offset(start_deg), units)
  const finish = sideWords(offset(heading_deg), units)
  const aim =
    start === finish
      ? `start it ${placeWords(finish, line)}`
      : `start it ${placeWords(start, line)} to finish ${placeWords(finish, line)}`
  const { growth } = option.trees
  const way = growth === null ? '' : ` ${option.trees.way} the ${growth}`
  return `${capital(clubWords(option))}${way}: ${aim}, ${lengthWords(option.total_m, units)} on; ${miss}${trees}.`
}

/** A stroke to the side, to the ground where most of its balls finish: its offset from the pin would say little. */
function sidewaysWords(option: PlanOption, line: SentenceLine, units: LengthUnits): string {
  const side = Math.sin(degreesToRadians(option.aim.heading_deg - line.headingDegrees)) < 0 ? 'left' : 'right'
  const to = option.outcomes.fairway > 0.5 ? ' to the fairway' : ''
  return `${capital(clubWords(option))} sideways to the ${side}${to}, ${lengthWords(option.total_m, units)}`
}

/** The gap in the player's own spread, and how many balls get past the trees; empty when hardly one is caught. */
function treeWords({ trees: { way, caught, gap } }: PlanOption): string {
  if (caught < LEAST_CAUGHT || (way === 'open' && gap === null)) return ''
  const through = `${Math.round(10 * (1 - caught))} in 10 get past the trees`
  if (gap === null || gap.spreads > WIDEST_GAP) return `; ${through}`
  return `; the gap is ${gap.spreads.toFixed(1)} of your spread wide, ${through}`
}

/** Under this share of balls caught, trees need no word; over this many spreads, a gap is none. Our assumption. */
const LEAST_CAUGHT = 0.1
const WIDEST_GAP = 3

/** Where to miss, or what to keep away from. The side of the hazard that matters most is never called safe. */
function missWords(option: PlanOption, hazard: MainHazard | null): string {
  const side = safeSide(option)
  const hazardSide = hazard && hazard.side !== 'across' ? hazard.side : null
  if (hazard && side && hazardSide && side !== hazardSide)
    return `the safe side is ${side}, away from the ${hazardWords(hazard)}`
  if (side && side !== hazardSide) return `the safe side is ${side}`
  if (isDearToBothSides(option)) return 'a miss is dear on either side'
  if (hazard && hazardSide) return `keep away from the ${hazardWords(hazard)} on the ${hazardSide}`
  return 'neither side is safer'
}

/** `12 yards right of the pin`, or `the pin` itself. */
function placeWords(side: string | null, line: SentenceLine): string {
  return side === null
    ? line.words === 'pin'
      ? 'at the pin'
      : `on the ${line.words}`
    : `${side} of the ${line.words}`
}

/** `7-iron`, `half sand wedge`, `8-iron chip`, `putter`. */
export function clubWords(option: Pick<PlanOption, 'club' | 'shape'>): string {
  const club = option.club.replace(/-wedge$/, ' wedge')
  switch (option.shape) {
    case 'stock':
    case 'putt':
      return club
    case 'half':
    case 'three-quarter':
    case 'punch':
      return `${option.shape} ${club}`
    case 'chip-out':
      return `chip-out with the ${club}`
    case 'sand':
      return `${club} out of the sand`
    default:
      return `${club} ${option.shape}`
  }
}

/** `12 yards right`; `null` when it rounds to nothing. */
function sideWords(offsetMetres: number, units: LengthUnits): string | null {
  const length = Math.abs(units === 'yards' ? metresToYards(offsetMetres) : offsetMetres)
  const rounded = length < 10 ? Math.round(length) : 5 * Math.round(length / 5)
  if (rounded === 0) return null
  const unit = units === 'yards' ? 'yard' : 'metre'
  return `${rounded} ${unit}${rounded === 1 ? '' : 's'} ${offsetMetres < 0 ? 'left' : 'right'}`
}

function lengthWords(metres: number, units: LengthUnits): string {
  return `${Math.round(units === 'yards' ? metresToYards(metres) : metres)} ${units}`
}

/** Strokes to a twentieth, as a sentence says them. */
function strokesWords(strokes: number): string {
  const twentieths = Math.round(strokes * 20)
  return twentieths === 0 ? 'less than 0.05 of a stroke' : `about ${(twentieths / 20).toFixed(2)} strokes`
}
