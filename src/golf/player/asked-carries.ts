import { METRES_PER_YARD } from '#numbers/units/units.ts'
import { clubKind } from './club-names.ts'
import { clubWords } from './club-words.ts'
import type { Club, Player } from './player.ts'
import { driverCarryFromClub, ladderCarry } from './prior.ts'
import { ASKED_CARRIES } from './said-settings.ts'

/**
 * Asks about carries that were said and do not go together: two clubs far nearer, or far further apart, than clubs of
 * their lofts are. One sentence a pair of neighbours among the said ones; the carries stay as said.
 */
export function askedCarries({ clubs, guesses }: Player, units: 'yards' | 'metres'): readonly string[] {
  const known = clubs.filter(({ name }) => !guesses.has(`clubs.${name}.carry_m`))
  const whole = (metres: number): number => Math.round(units === 'yards' ? metres / METRES_PER_YARD : metres)
  return known.slice(1).flatMap((short, index) => {
    const long = known[index] as Club
    const usual = usualLogRatio(long, short)
    const said = Math.log(long.carryMetres / short.carryMetres)
    const { least, most, apart } = ASKED_CARRIES
    if (usual === null || Math.abs(said - usual) < apart || (said > least * usual && said < most * usual))
      return []
    const by = whole(long.carryMetres) - whole(short.carryMetres)
    const often = whole(short.carryMetres * Math.expm1(usual))
    return [
      `The ${clubWords(long.name)} is said to carry ${by} ${units === 'yards' ? 'yd' : 'm'} more than the ${clubWords(short.name)}, where about ${often} is usual: look at both figures, whether they are carries, and at their unit.`,
    ]
  })
}

/** How much further a club carries than a shorter one of the same player, as a logarithm. */
function usualLogRatio(long: Club, short: Club): number | null {
  const [one, other] = [clubKind(long.name), clubKind(short.name)]
  if (!one || !other) return null
  const driver = driverCarryFromClub(one, long.carryMetres)
  return Math.log(long.carryMetres / ladderCarry(other, driver))
}
