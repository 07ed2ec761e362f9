import { normalCdf, normalPdf, normalQuantile } from '#numbers/statistics/normal.ts'
import { seededGenerator } from '#numbers/statistics/seeded-generator.ts'
import { splitNormalPdf } from '#numbers/statistics/split-normal.ts'
import { clubDoubts } from '../club-doubts.ts'
import type { Player } from '../player.ts'
import { MISHIT_DIRECTION_FACTOR, MISHIT_SPREAD_CORRELATION, RUN_NOISE } from '../settings.ts'
import type { ShotRecord } from '../shot-record.ts'
import {
  CHANCE_OF_CHANGE,
  CHANGE_SIZE,
  MISHIT_RUN_FACTOR,
  STRAY,
  STRAY_RUN,
  TOPPED_CARRY_SHARE,
} from './learn-settings.ts'
import { isKnown } from './learned-numbers.ts'

/** One state of the chain in words: what each club's pattern would be. */
export interface ReferenceClub {
  readonly carry: number
  readonly run: number
  readonly directionSd: number
  readonly side: number
  readonly carrySd: number
  readonly mishit: number
  readonly mishitCarry: number
  readonly mishitCarrySd: number
}

/** In the order of a club's own parts. */
const NUMBERS = [
  'carry',
  'directionSd',
  'carrySd',
  'side',
  'mishit',
  'mishitCarry',
  'mishitCarrySd',
  'run',
] as const
const OWN = NUMBERS.length

/**
 * The same posterior as `learnPlayer`'s by another road, slow and plain: random-walk Metropolis over the standard
 * normal parts of everything unknown (mixtures of two normals for known numbers, which may have changed), each shot's chance summed over good strike, mishit and stray. For complete
 * shots from the reference lie, all of one season and of today, of a right-hander. Returns the kept states.
 */
export function referencePosterior(
  player: Player,
  shots: readonly ShotRecord[],
  sweeps: number,
  seed: number,
): readonly (readonly ReferenceClub[])[] {
  const uniform = seededGenerator(seed)
  const normal = (): number => normalQuantile(Math.min(1 - 1e-15, Math.max(1e-300, uniform())))
  const doubts = clubDoubts(player)
  const byClub = player.clubs.map(({ name }) => shots.filter(({ club }) => club === name))
  // Factors: skill, length, mishit, side, mishit's carry, its spread, run.
  const factors = new Float64Array(7)
  const own = new Float64Array(player.clubs.length * OWN)

  const patternOf = (index: number): ReferenceClub => {
    const club = player.clubs[index]!
    const doubt = doubts[index]!
    const part = (one: { shared: number; own: number }, factor: number, place: number): number =>
      one.shared * factor + one.own * own[index * OWN + place]!
    const factorOf = (one: { shared: number; own: number }, factor: number, place: number): number =>
      Math.exp(part(one, factor, place) - (one.shared ** 2 + one.own ** 2) / 2)
    const poor =
      MISHIT_SPREAD_CORRELATION * factors[0]! + Math.sqrt(1 - MISHIT_SPREAD_CORRELATION ** 2) * factors[2]!
    const odds = (club.mishitShare / (1 - club.mishitShare)) * Math.exp(part(doubt.mishit, poor, 4))
    const left = club.leftShare * Math.exp(part(doubt.side, factors[3]!, 3))
    const right = (club.leftShare * club.rightShare) / left
    return {
      carry: club.carryMetres * factorOf(doubt.carry, factors[1]!, 0),
      run: (club.totalMetres - club.carryMetres) * (1 + part(doubt.run, factors[6]!, 7)),
      directionSd: club.directionSdDegrees * factorOf(doubt.directionSd, factors[0]!, 1),
      side: left / (left + right),
      carrySd: club.carrySdShare * factorOf(doubt.carrySd, factors[0]!, 2),
      mishit: odds / (1 + odds),
      mishitCarry: club.mishitCarryShare * factorOf(doubt.mishitCarry, factors[4]!, 5),
      mishitCarrySd: club.mishitCarrySdShare * factorOf(doubt.mishitCarrySd, factors[5]!, 6),
    }
  }

  const likelihoodOf = (index: number): number => {
    const club = player.clubs[index]!
    const pattern = patternOf(index)
    let sum = 0
    for (const shot of byClub[index]!) sum += Math.log(chanceOf(shot, pattern, club))
    return sum
  }

  // A known number's own part is a mixture: as it was known to be, or changed. In standard deviations without a change.
  const widths = player.clubs.flatMap((club, index) => {
    const doubt = doubts[index]!
    return NUMBERS.map((number) =>
      isKnown(number, club, player.guesses)
        ? Math.hypot(doubt[number].own, CHANGE_SIZE[number]) / doubt[number].own
        : 1,
    )
  })
  const logPrior = (parts: Float64Array, at: number): number => {
    const width = parts === own ? widths[at]! : 1
    const value = parts[at]!
    return Math.log(
      (1 - CHANCE_OF_CHANGE) * normalPdf(value) + (CHANCE_OF_CHANGE * normalPdf(value / width)) / width,
    )
  }

  const likelihoods = player.clubs.map((_, index) => likelihoodOf(index))
  const stepOf = new Map<Float64Array, Float64Array>([
    [factors, new Float64Array(factors.length).fill(0.5)],
    [own, new Float64Array(own.length).fill(0.8)],
  ])
  const settling = Math.floor(sweeps / 4)
  const states: (readonly ReferenceClub[])[] = []
  for (let sweep = 0; sweep < sweeps; sweep++) {
    for (const [parts, steps] of stepOf)
      for (let at = 0; at < parts.length; at++) {
        const before = parts[at]!
        const likelyBefore = logPrior(parts, at)
        const touched = parts === own ? [Math.floor(at / OWN)] : player.clubs.map((_, index) => index)
        parts[at] = before + steps[at]! * normal()
        const tried = touched.map(likelihoodOf)
        const gain =
          tried.reduce((sum, one, k) => sum + one - likelihoods[touched[k]!]!, 0) +
          logPrior(parts, at) -
          likelyBefore
        const isTaken = Math.log(1 - uniform()) < gain
        if (isTaken)
          touched.forEach((index, k) => {
            likelihoods[index] = tried[k]!
          })
        else parts[at] = before
        // Towards four in ten taken, while settling only.
        if (sweep < settling) steps[at] = steps[at]! * Math.exp((isTaken ? 0.6 : -0.4) / Math.sqrt(1 + sweep))
      }
    if (sweep >= settling) states.push(player.clubs.map((_, index) => patternOf(index)))
  }
  return states
}

function chanceOf(shot: ShotRecord, pattern: ReferenceClub, club: Player['clubs'][number]): number {
  const along = shot.carryMetres!
  const offline = shot.offlineMetres!
  const length = Math.hypot(along, offline)
  const direction = (Math.atan2(offline, along) * 180) / Math.PI
  const run = shot.totalMetres! - along
  const stock = club.totalMetres - club.carryMetres
  const runSd = Math.max(RUN_NOISE.leastMetres, RUN_NOISE.share * stock)
  const size = Math.sqrt(club.leftShare * club.rightShare)
  const ratio = Math.sqrt(pattern.side / (1 - pattern.side))
  const ofDirection = (width: number): number => {
    const sd = pattern.directionSd * width * size
    return splitNormalPdf(direction, sd * ratio, sd / ratio)
  }
  const ofRun = (sd: number): number =>
    ((1 - STRAY_RUN.share) * normalPdf((run - pattern.run) / sd)) / sd + STRAY_RUN.share / STRAY_RUN.metres
  const topped = TOPPED_CARRY_SHARE * club.carryMetres
  const sd = pattern.carry * pattern.mishitCarrySd
  const mean = pattern.carry * pattern.mishitCarry
  const isTopped = length < topped
  const good = isTopped
    ? 0
    : normalPdf((length - pattern.carry) / (pattern.carry * pattern.carrySd)) /
      (pattern.carry * pattern.carrySd)
  const poor = isTopped ? normalCdf((topped - mean) / sd) : normalPdf((length - mean) / sd) / sd
  const stray =
    (isTopped ? topped : 1) / (STRAY.mostCarryShare * club.carryMetres) / STRAY.degrees / STRAY_RUN.metres
  return (
    (1 - pattern.mishit) * good * ofDirection(1) * ofRun(runSd) +
    pattern.mishit * poor * ofDirection(MISHIT_DIRECTION_FACTOR) * ofRun(MISHIT_RUN_FACTOR * runSd) +
    STRAY.share * stray
  )
}
