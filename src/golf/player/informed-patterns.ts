import type { ClubKind } from './club-names.ts'
import { type KnownRung, neighbourCorrection } from './neighbour-correction.ts'
import type { Player } from './player.ts'
import type { ClubFile, ClubNumber } from './player-file.ts'
import { type PriorPattern, priorPattern } from './prior.ts'
import type { Said } from './said.ts'
import { saidPattern } from './said-prior.ts'
import { LEAST_KNOWN_SHARE, PATTERN_SHARED_BY_CLUBS } from './settings.ts'

/** The numbers of a pattern and their names in the file; `curveShare` can be 0 or negative, the others are ratios. */
const NUMBERS: readonly (readonly [number: keyof PriorPattern, written: ClubNumber])[] = [
  ['directionSdDegrees', 'direction_sd_deg'],
  ['leftShare', 'left_share'],
  ['rightShare', 'right_share'],
  ['curveShare', 'curve_share'],
  ['carrySdShare', 'carry_sd_share'],
  ['mishitShare', 'mishit_share'],
  ['mishitCarryShare', 'mishit_carry_share'],
  ['mishitCarrySdShare', 'mishit_carry_sd_share'],
]

/** Shares stay shares, whatever the neighbours (our assumption). */
const MOST_INFORMED: Readonly<Partial<Record<keyof PriorPattern, number>>> = {
  mishitShare: 0.6,
  mishitCarryShare: 0.95,
}

/**
 * Pattern of every club of the bag, as far as it is not typed: the prior of the handicap index and of what was said, moved towards what
 * was typed for neighbouring clubs (in the logarithm; curve plainly). A club takes over only the part of a
 * neighbour's difference that one player's clubs have in common.
 */
export function informedPatterns(
  kinds: readonly ClubKind[],
  written: ReadonlyMap<string, ClubFile>,
  player: Pick<Player, 'handicapIndex' | 'sex' | 'hand'> & { readonly said: Said },
): ReadonlyMap<string, PriorPattern> {
  const patterns = new Map(
    kinds.map((kind) => {
      const prior = priorPattern(kind, player.handicapIndex, player.sex)
      return [kind.name, saidPattern(kind, prior, player.said, player.hand)]
    }),
  )
  for (const [number, field] of NUMBERS) {
    const isPlain = number === 'curveShare'
    const known = kinds.flatMap((kind): KnownRung[] => {
      const typed = written.get(kind.name)?.[field]
      const prior = patterns.get(kind.name)?.[number]
      if (typed === undefined || prior === undefined) return []
      const correction = isPlain ? typed - prior : Math.log(Math.max(LEAST_KNOWN_SHARE, typed) / prior)
      return [{ rung: Math.log(kind.carryShare), correction }]
    })
    for (const kind of kinds) {
      const pattern = patterns.get(kind.name)
      if (pattern === undefined) continue
      const correction = PATTERN_SHARED_BY_CLUBS * neighbourCorrection(known, Math.log(kind.carryShare))
      const moved = isPlain ? pattern[number] + correction : pattern[number] * Math.exp(correction)
      patterns.set(kind.name, { ...pattern, [number]: Math.min(MOST_INFORMED[number] ?? moved, moved) })
    }
  }
  return patterns
}
