import type { Club, Player } from './player.ts'
import { ADULT_AGE, DOUBT, type Doubt, LEAST_KNOWN_SHARE, RUN_NOISE } from './settings.ts'

/** How unsure each number of a club is: of the logarithm, of the log odds for the mishit share. */
export interface ClubDoubts {
  readonly carry: Doubt
  readonly directionSd: Doubt
  readonly carrySd: Doubt
  readonly mishit: Doubt
  /** Of the logarithm of the left share; the right share goes the other way. */
  readonly side: Doubt
  /** Of the run as a share of the run. */
  readonly run: Doubt
  readonly mishitCarry: Doubt
  readonly mishitCarrySd: Doubt
}

/**
 * How unsure a player's clubs are, in their order: what a plan draws from and what shots are learned against. Guesses
 * are doubted most, typed numbers less. Numbers with shots behind them come from those: nothing more was known before
 * than of a guess, and the shots have told their part.
 */
export function clubDoubts(player: Player): readonly ClubDoubts[] {
  const isSaid = ({ name, shots }: Club): boolean =>
    shots === 0 && player.said?.carries?.includes(name) === true
  const placed = player.clubs.filter((club) => !club.isGuess)
  const isJunior = player.age !== undefined && player.age < ADULT_AGE
  const unplaced = isJunior ? DOUBT.carry.junior : DOUBT.carry.guess
  const beside =
    placed.length === 0 ? unplaced : placed.every(isSaid) ? DOUBT.carry.besideSaid : DOUBT.carry.beside
  return player.clubs.map((club) => {
    const { shots, isGuess } = club
    const isGuessed = (number: string): boolean =>
      shots > 0 || player.guesses.has(`clubs.${club.name}.${number}`)
    const known = (number: string): 'guess' | 'typed' => (isGuessed(number) ? 'guess' : 'typed')
    const typed = isSaid(club) ? DOUBT.carry.said : DOUBT.carry.typed
    const carry = shots > 0 ? unplaced : isGuess ? beside : typed
    const side = isGuessed('left_share') && isGuessed('right_share') ? DOUBT.side.guess : DOUBT.side.typed

    // Information of n shots: a spread's logarithm 2n, a mean carry n / share², log odds n·p·(1 − p).
    const good = shots * (1 - club.mishitShare)
    const mishits = shots - good
    return {
      carry: informed(carry, good / club.carrySdShare ** 2),
      directionSd: informed(DOUBT.spread[known('direction_sd_deg')], 2 * good),
      carrySd: informed(DOUBT.spread[known('carry_sd_share')], 2 * good),
      mishit: informed(DOUBT.mishit[known('mishit_share')], good * club.mishitShare),
      side: informed(side, good),
      run: informed(DOUBT.run[known('total_m')], good / RUN_NOISE.share ** 2),
      mishitCarry: informed(
        DOUBT.mishitCarry[known('mishit_carry_share')],
        mishits * (club.mishitCarryShare / Math.max(club.mishitCarrySdShare, LEAST_KNOWN_SHARE)) ** 2,
      ),
      mishitCarrySd: informed(DOUBT.mishitCarrySd[known('mishit_carry_sd_share')], 2 * mishits),
    }
  })
}

/** A doubt after so much information: as a normal prior of its variance would shrink. */
function informed(doubt: Doubt, information: number): Doubt {
  const left = 1 / Math.sqrt(1 + (doubt.shared ** 2 + doubt.own ** 2) * information)
  return { shared: doubt.shared * left, own: doubt.own * left }
}
