import { normalQuantile } from '#numbers/statistics/normal.ts'
import { seededGenerator } from '#numbers/statistics/seeded-generator.ts'

/** A club as the invented player really hits it: yards, degrees, shares. */
interface TrueClub {
  readonly name: string
  readonly carry: number
  readonly run: number
  /** Shots in a session. */
  readonly shots: number
}

/** A season's practice makes the player some yards longer than the file says, and leaves a hole below the 9-iron. */
const CLUBS: readonly TrueClub[] = [
  { name: 'driver', carry: 164, run: 21, shots: 6 },
  { name: '5-wood', carry: 141, run: 15, shots: 4 },
  { name: '9-wood', carry: 126, run: 11, shots: 3 },
  { name: '7-iron', carry: 110, run: 7, shots: 7 },
  { name: '9-iron', carry: 97, run: 4, shots: 5 },
  { name: 'pitching-wedge', carry: 81, run: 3, shots: 4 },
  { name: 'sand-wedge', carry: 65, run: 1, shots: 3 },
]
const PATTERN = {
  carrySdShare: 0.085,
  leftDegrees: 5,
  rightDegrees: 8,
  mishitShare: 0.2,
  mishitCarryShare: 0.5,
  mishitSdShare: 0.17,
}
const DAYS = [
  '2026-03-14',
  '2026-03-29',
  '2026-04-18',
  '2026-05-09',
  '2026-05-31',
  '2026-06-20',
  '2026-07-11',
  '2026-08-02',
  '2026-08-23',
  '2026-09-12',
  '2026-10-03',
]

/** `wren.shots.csv`: an invented season, the same bytes every time. */
export function buildShots(): string {
  const random = seededGenerator(29.8)
  const normal = (): number => normalQuantile(random())
  const rows = DAYS.flatMap((day) =>
    CLUBS.flatMap((club) => Array.from({ length: club.shots }, () => shotRow(day, club, random, normal))),
  )
  return `date,club,lie,carry_yd,total_yd,offline_yd,planned,strike\n${rows.join('\n')}\n`
}

function shotRow(day: string, club: TrueClub, random: () => number, normal: () => number): string {
  const isMishit = random() < PATTERN.mishitShare
  const share = isMishit
    ? Math.max(0.05, PATTERN.mishitCarryShare + PATTERN.mishitSdShare * normal())
    : 1 + PATTERN.carrySdShare * normal()
  const carry = club.carry * share
  const turn = normal() * (isMishit ? 1.7 : 1)
  const degrees = turn * (turn < 0 ? PATTERN.leftDegrees : PATTERN.rightDegrees)
  const offline = carry * Math.tan((degrees * Math.PI) / 180)
  const total = carry + club.run * (isMishit ? 1.5 : 1 + 0.25 * normal())
  // As people write: what was seen of the shot, in whole yards, and how it felt only now and then.
  const isSeenLanding = random() < 0.85
  const isSeenStopping = random() < 0.6 || !isSeenLanding
  const felt = random() < 0.3 ? (isMishit ? 'mishit' : 'good') : ''
  const cells = [
    day,
    club.name,
    club.name === 'driver' ? 'tee' : 'fairway',
    isSeenLanding ? Math.round(carry) : '',
    isSeenStopping ? Math.max(Math.round(total), isSeenLanding ? Math.round(carry) : 0) : '',
    Math.round(offline),
    '',
    felt,
  ]
  return cells.join(',')
}
