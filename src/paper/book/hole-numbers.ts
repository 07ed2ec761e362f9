import type { HazardMeasure, HoleMeasures } from '#golf/course/hole-measures.ts'
import type { Ruler } from '../draw/ruler.ts'

/** What to reach and what to carry from the markers, nearest first: `bunker left 196–210`. */
export function reachAndCarry({ hazards }: HoleMeasures, ruler: Ruler): string[] {
  return hazards.flatMap((hazard) => hazardWords(hazard, ruler))
}

/** `Green: front 152, middle 160, back 168; 16 deep, 20 wide.`; empty where the survey lacks it. */
export function greenNumbers({ green }: HoleMeasures, ruler: Ruler): string {
  if (green === null) return ''
  const { frontMetres, middleMetres, backMetres } = green.straight
  return `Green: front ${ruler.figure(frontMetres)}, middle ${ruler.figure(middleMetres)}, back ${ruler.figure(backMetres)}; ${ruler.figure(green.depthMetres)} deep, ${ruler.figure(green.widthMetres)} wide.`
}

/** `bunker left 196–210`; none for what lies far from the line and for growth, which has no number to carry. */
function hazardWords(hazard: HazardMeasure, ruler: Ruler): string[] {
  const { ground, name, side, straight, offsetMetres, farMetres } = hazard
  const kind = NUMBERED[ground]
  if (kind === undefined || offsetMetres >= FAR_ASIDE || farMetres <= NEAR_TEE) return []
  const what = name ?? kind
  const carry = straight.carryMetres === null ? '' : `–${ruler.figure(straight.carryMetres)}`
  return [`${what}${side === 'across' ? '' : ` ${side}`} ${ruler.figure(straight.reachMetres)}${carry}`]
}

const NUMBERED: Readonly<Partial<Record<HazardMeasure['ground'], string>>> = {
  bunker: 'bunker',
  'penalty-red': 'water',
  'penalty-yellow': 'water',
  out: 'out of bounds',
}

/** Further than this from the line, or wholly within this of the markers, a hazard is nobody's number, metres. Our assumption. */
const FAR_ASIDE = 40
const NEAR_TEE = 40
