import { radiansToDegrees } from '#numbers/units/units.ts'
import { ASKED_MIRROR_ODDS, ASKED_UNIT_MOVE } from './bag-settings.ts'
import type { LearnedFromShots } from './learn-from-shots.ts'
import type { Club, Player } from './player.ts'

/** What only a person can say of a table of shots: whether its unit is right, and whether it is of this player's hand. */
export function questionsOfShots(known: LearnedFromShots): readonly string[] {
  return [unitQuestion(known), handQuestion(known), firstOfLeftHander(known)].flatMap(
    (question) => question ?? [],
  )
}

/** The unit may be the other one when every club whose carry was known comes out longer, or shorter, by about what a metre is more than a yard. */
function unitQuestion({ learned }: LearnedFromShots): string | null {
  const moves = learned.clubs.flatMap(({ numbers: { carry } }) =>
    carry.chanceOfChange === null ? [] : [Math.log(carry.after / carry.before)],
  )
  const mean = moves.reduce((sum, move) => sum + move, 0) / moves.length
  const isAsked = moves.every(
    (move) =>
      Math.sign(move) === Math.sign(mean) &&
      Math.abs(move) > ASKED_UNIT_MOVE.each &&
      Math.abs(mean) > ASKED_UNIT_MOVE.least &&
      Math.abs(mean) < ASKED_UNIT_MOVE.most,
  )
  if (moves.length === 0 || !isAsked) return null
  const [way, was, read] = mean > 0 ? ['longer', 'yards', 'metres'] : ['shorter', 'metres', 'yards']
  const whose = moves.length === 1 ? 'The one carry that was known is' : 'All carries that were known are'
  return `${whose} about ${Math.round(100 * Math.abs(Math.expm1(mean)))} % ${way} by these shots. Were they measured in ${was} and read as ${read}? That makes 9 %.`
}

/**
 * The shots may be of the other hand, or of somebody else, when they are far likelier in a mirror: by the split normal of
 * directions that the pattern has, with the sides that were known or said against the same sides exchanged, and as wide as
 * the shots show. A guess of the level's says nothing of a side.
 */
function handQuestion({ before, bag, learned }: LearnedFromShots): string | null {
  let mirrorOdds = 0
  let leftward = 0
  for (const { club: name, carryMetres, totalMetres, offlineMetres, strike } of bag.shots) {
    const index = before.clubs.findIndex((club) => club.name === name)
    const [told, now] = [before.clubs[index], learned.player.clubs[index]]
    const along = carryMetres ?? totalMetres
    if (told === undefined || now === undefined || along === null || offlineMetres === null) continue
    if (strike === 'mishit' || !isSideTold(before, told)) continue
    const degrees = radiansToDegrees(Math.atan2(offlineMetres, along))
    const size = Math.sqrt(now.leftShare * now.rightShare) * now.directionSdDegrees
    // A stray must not decide alone.
    const off = Math.min(MOST_SPREADS, Math.abs(degrees) / size)
    const wider = told.leftShare / told.rightShare
    mirrorOdds += Math.sign(offlineMetres) * ((off * off) / 2) * (wider - 1 / wider)
    leftward += Math.log(wider)
  }
  if (mirrorOdds < Math.log(ASKED_MIRROR_ODDS)) return null
  const [side, other] = leftward > 0 ? ['left', 'right'] : ['right', 'left']
  return `These shots spread wider to the ${other}, where the ${side} was known or said to be the wider side. Are they ${before.name}'s, hit ${before.hand}-handed, with left and right the right way round?`
}

/**
 * Of a left-hander nothing was known of a side and the shots show one: since most golfers play right-handed, a table from
 * elsewhere may be another's, or have left and right as a right-hander's faces them. Where no side shows, a mirror changes no plan.
 */
function firstOfLeftHander({ before, learned }: LearnedFromShots): string | null {
  if (before.hand !== 'left' || before.clubs.some((club) => isSideTold(before, club))) return null
  const wider = learned.clubs.filter(({ shots, numbers: { side } }) => shots > 0 && !holdsEven(side.ninety))
  const [first] = wider
  if (first === undefined) return null
  const side = first.numbers.side.after > EVEN ? 'left' : 'right'
  return `Nothing was known of the side ${before.name} misses to; by these shots it is the ${side} with the ${first.name}. Were they hit left-handed, with left and right as seen towards the target?`
}

/** Share of good strikes to the left of the line where no side is the wider. */
const EVEN = 0.5
const holdsEven = ([low, high]: readonly [number, number]): boolean => low <= EVEN && EVEN <= high

/** Beyond so many spreads a direction speaks no louder. */
const MOST_SPREADS = 3

/** Whether anybody told the side of a club's misses: by a number, or by the big miss. */
function isSideTold({ guesses, said }: Player, { name }: Club): boolean {
  const isBigMissTold = said?.big_miss === 'left' || said?.big_miss === 'right'
  return isBigMissTold || !guesses.has(`clubs.${name}.left_share`)
}
