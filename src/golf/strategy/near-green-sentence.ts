import { METRES_PER_FOOT, METRES_PER_YARD } from '#numbers/units/units.ts'
import type { OutcomeGround, PlanOption, ShortPart } from './plan.ts'
import { clubWords, type LengthUnits, type PlanFacts } from './plan-sentence.ts'

/** The plan of a stroke near the green in one or two plain sentences: club, landing spot, start, roll, leave, worst case. `wordsOfCost` says what an option costs, in strokes by default. */
export function nearGreenSentence(
  plan: PlanFacts,
  units: LengthUnits,
  wordsOfCost: (cost: number) => string = costWords,
): string {
  const [first, second] = plan.options
  if (first === undefined) return 'There is no club to play from here.'
  const overruled = plan.options.find(({ club }) => club === plan.overruled?.club)
  if (overruled !== undefined && overruled !== first)
    return `${shotWords(overruled, units)} It costs ${wordsOfCost(overruled.cost)} against the ${clubWords(first)}.`
  if (plan.verdict !== 'too-close' || second === undefined) return shotWords(first, units)
  return `Too close to call between the ${clubWords(first)} and the ${clubWords(second)}: take the one you trust. ${shotWords(first, units)}`
}

/** One short shot in a sentence: landing spot, start, roll, leave, and how the worst tenth ends. */
export function shotWords(option: PlanOption, units: LengthUnits): string {
  const { short } = option
  const name = clubWords(option)
  const start = startWords(short?.start_beside_pin_m ?? 0, units)
  const leave = `the usual leave is ${shortLengthWords(option.leave_m.p50, units)}`
  const worst = short === undefined ? '' : `, and the worst one in ten ${worstWords(short, units)}`
  const head = name.charAt(0).toUpperCase() + name.slice(1)
  if (short === undefined || option.shape === 'putt')
    return `${head}: start it ${start}, to roll ${pacesWords(option.total_m)}; ${leave}${worst}.`
  return `${head}: land it ${landingWords(short)}, start it ${start} and let it run ${pacesWords(short.roll_m)}; ${leave}${worst}.`
}

/** `3 paces on the green, 8 paces from the ball`. */
export function landingWords({ landing, carry_m: carry }: ShortPart): string {
  const from = `${pacesWords(carry)} from the ball`
  if (landing.on_green_m === null) return `short of the green, ${from}`
  return `${pacesWords(landing.on_green_m)} on the green, ${from}`
}

/** A length in paces of a yard, as short shots are stepped off. */
export function pacesWords(metres: number): string {
  const paces = Math.round(metres / METRES_PER_YARD)
  if (paces === 0) return 'half a pace'
  return paces === 1 ? 'a pace' : `${paces} paces`
}

/** A short length in feet, or in metres to a tenth. */
export function shortLengthWords(metres: number, units: LengthUnits): string {
  if (units === 'metres') return metres < 0.05 ? 'nothing' : `${metres.toFixed(1)} metres`
  const feet = Math.round(metres / METRES_PER_FOOT)
  return feet === 0 ? 'a few inches' : `${feet} ${feet === 1 ? 'foot' : 'feet'}`
}

/** `at the pin`, or `2 feet left of the pin`. */
export function startWords(besideMetres: number, units: LengthUnits): string {
  if (Math.abs(besideMetres) < METRES_PER_FOOT / 2) return 'at the pin'
  const side = besideMetres < 0 ? 'left' : 'right'
  return `${shortLengthWords(Math.abs(besideMetres), units)} ${side} of the pin`
}

/** `cost about 4.10 strokes from here, ending in the sand`. */
function worstWords({ worst }: ShortPart, units: LengthUnits): string {
  const cost = `cost about ${twentieth(worst.strokes)} strokes from here`
  if (worst.ground === 'green') return `${cost}, ending ${shortLengthWords(worst.to_pin_m, units)} away`
  return `${cost}, ending ${GROUND_WORDS[worst.ground] ?? `in the ${worst.ground}`}`
}

const GROUND_WORDS: Partial<Record<OutcomeGround, string>> = {
  bunker: 'in the sand',
  fringe: 'on the fringe',
  fairway: 'on the fairway',
  'first-cut': 'in the first cut',
  heavy: 'in the heavy grass',
  penalty: 'in the penalty area',
  out: 'out of bounds',
  path: 'on the path',
  tee: 'on a tee',
}

/** Strokes to a twentieth, as a sentence says them. */
function costWords(strokes: number): string {
  const words = twentieth(strokes)
  return words === '0.00' ? 'less than 0.05 of a stroke' : `about ${words} strokes`
}

function twentieth(strokes: number): string {
  return (Math.round(strokes * 20) / 20).toFixed(2)
}
