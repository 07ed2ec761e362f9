import { type LearnedPlayer, learnPlayer } from '../../src/golf/player/learn-player.ts'
import type { Club, Player } from '../../src/golf/player/player.ts'
import { seededGenerator } from '../../src/numbers/statistics/seeded-generator.ts'
import { TRUTH } from './calibration-trials.ts'
import { hitShots } from './hit-shots.ts'
import { normals, truePlayer } from './true-player.ts'

type Learned = keyof LearnedPlayer['clubs'][number]['numbers']

/** What was said of one number of one club, and whether it had changed. */
export interface ChangeTrial {
  readonly number: Learned
  readonly chance: number
  readonly hasChanged: boolean
  /** Whether the truth after the change lies in what was learned. */
  readonly isInHalf: boolean
  readonly isInNinety: boolean
}

export interface ChangeStudy {
  readonly guesses: readonly Player[]
  readonly players: number
  /** Shots with every club before and after the change. */
  readonly before: number
  readonly after: number
  readonly seed: number
}

/**
 * Draws players, learns them from shots, changes one number in four of theirs by as much as real changes are taken to
 * be, learns on from new shots, and notes what was said of each number.
 */
export function chancesOfChange(
  study: ChangeStudy,
  told: (players: number) => void = () => undefined,
): readonly ChangeTrial[] {
  const trials: ChangeTrial[] = []
  for (let player = 0; player < study.players; player++) {
    const guess = study.guesses[player % study.guesses.length] as Player
    const truth = truePlayer(guess, study.seed + player)
    const known = learnPlayer(guess, hitShots(truth, guess, study.before, study.seed + player)).player
    const uniform = seededGenerator(study.seed + player + 0.125)
    const normal = normals(study.seed + player + 0.375)
    const isChanged = truth.clubs.map(() => NUMBERS.map(() => uniform() < CHANGED_SHARE))
    const changed: Player = {
      ...truth,
      clubs: truth.clubs.map((club, index) =>
        NUMBERS.reduce(
          (one, number, place) =>
            isChanged[index]?.[place] ? CHANGES[number](one, SIZE[number] * normal()) : one,
          club,
        ),
      ),
    }
    const shots = hitShots(changed, known, study.after, study.seed + player + 500_000)
    learnPlayer(known, shots).clubs.forEach(({ numbers }, index) => {
      NUMBERS.forEach((number, place) => {
        const { chanceOfChange: chance, half, ninety } = numbers[number]
        const hasChanged = isChanged[index]?.[place] ?? false
        const value = TRUTH[number](changed.clubs[index] as Club)
        const isIn = ([low, high]: readonly [number, number]): boolean => value >= low && value <= high
        if (chance !== null)
          trials.push({ number, chance, hasChanged, isInHalf: isIn(half), isInNinety: isIn(ninety) })
      })
    })
    told(player + 1)
  }
  return trials
}

/** What learning assumes of changes (`CHANGE_SIZE`, `CHANCE_OF_CHANGE`), written out once more: a study holds it against that. */
const SIZE: Readonly<Record<Learned, number>> = {
  carry: 0.04,
  run: 0.3,
  directionSd: 0.2,
  carrySd: 0.2,
  side: 0.1,
  mishit: 0.5,
  mishitCarry: 0.1,
  mishitCarrySd: 0.2,
}
const CHANGED_SHARE = 0.25
const NUMBERS = Object.keys(SIZE) as Learned[]

/** A club with one number moved by so much, on the scale of its doubt. */
const CHANGES: Readonly<Record<Learned, (club: Club, by: number) => Club>> = {
  carry: (club, by) => ({
    ...club,
    carryMetres: club.carryMetres * Math.exp(by),
    totalMetres: club.totalMetres + club.carryMetres * (Math.exp(by) - 1),
  }),
  run: (club, by) => ({
    ...club,
    totalMetres: club.carryMetres + (club.totalMetres - club.carryMetres) * Math.max(0, 1 + by),
  }),
  directionSd: (club, by) => ({ ...club, directionSdDegrees: club.directionSdDegrees * Math.exp(by) }),
  carrySd: (club, by) => ({ ...club, carrySdShare: club.carrySdShare * Math.exp(by) }),
  side: (club, by) => ({
    ...club,
    leftShare: club.leftShare * Math.exp(by),
    rightShare: club.rightShare * Math.exp(-by),
  }),
  mishit: (club, by) => {
    const odds = (club.mishitShare / (1 - club.mishitShare)) * Math.exp(by)
    return { ...club, mishitShare: odds / (1 + odds) }
  },
  mishitCarry: (club, by) => ({ ...club, mishitCarryShare: club.mishitCarryShare * Math.exp(by) }),
  mishitCarrySd: (club, by) => ({ ...club, mishitCarrySdShare: club.mishitCarrySdShare * Math.exp(by) }),
}
