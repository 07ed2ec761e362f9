import { bagGaps } from '#golf/player/bag-gaps.ts'
import type { LearnedClub, LearnedLie, LearnedNumber } from '#golf/player/learn-player.ts'
import { questionsOfShots } from '#golf/player/questions-of-shots.ts'
import { nearGreenDocument } from './near-green-document.ts'
import type { PatternAnswer } from './pattern-command.ts'

/** `pattern/1`: what shots changed in a player, in SI, degrees and shares. */
export function patternDocument({
  before,
  learned,
  bag,
  reading,
  rounds,
  nearGreen,
  faults,
  out,
  plans,
}: PatternAnswer): object {
  const [from = null, to = null] = daysOf(bag.shots)
  return {
    schema: 'pattern/1',
    player: before.name,
    out,
    shots: {
      rows: reading.rows,
      used: bag.shots.length - learned.unused.length,
      unused: learned.unused.length,
      repeated: reading.repeated,
      set_aside: reading.setAside,
      unread: reading.unread,
      from,
      to,
    },
    ...(rounds === null
      ? {}
      : {
          rounds: {
            rounds: rounds.rounds,
            without_day: rounds.withoutDay,
            shots: rounds.shots.length,
            putts: rounds.putts.length,
            short_strokes: rounds.strokes.length,
            without_line: rounds.withoutLine,
            unused: rounds.unused,
          },
        }),
    added_clubs: bag.added,
    clubs: learned.clubs.map((club) => clubDocument(club)),
    lies: learned.lies.map(lieDocument),
    ...(nearGreen === null ? {} : { near_green: nearGreenDocument(nearGreen) }),
    season: learned.season,
    gaps: bagGaps(learned.player.clubs).map(({ club, next, gapMetres, verdict }) => ({
      club: club.name,
      carry_m: club.carryMetres,
      total_m: club.totalMetres,
      guess: learned.player.guesses.has(`clubs.${club.name}.carry_m`),
      next: next?.name ?? null,
      gap_m: gapMetres,
      verdict,
    })),
    ...(plans === null ? {} : { plans }),
    questions: questionsOfShots({ before, learned, bag }),
    faults,
  }
}

function clubDocument({ name, shots, weight, strays, numbers }: LearnedClub): object {
  return {
    club: name,
    shots,
    weight,
    strays,
    carry_m: numberDocument(numbers.carry),
    run_m: numberDocument(numbers.run),
    direction_sd_deg: numberDocument(numbers.directionSd),
    left_of_line_share: numberDocument(numbers.side),
    carry_sd_share: numberDocument(numbers.carrySd),
    mishit_share: numberDocument(numbers.mishit),
    mishit_carry_share: numberDocument(numbers.mishitCarry),
    mishit_carry_sd_share: numberDocument(numbers.mishitCarrySd),
  }
}

function lieDocument({ lie, shots, weight, factors }: LearnedLie): object {
  const { carry, direction, distance, mishit } = factors
  return { lie, shots, weight, carry, direction, distance, mishit }
}

function numberDocument({ before, after, half, ninety, chanceOfChange }: LearnedNumber): object {
  return { before, after, half, ninety, chance_of_change: chanceOfChange }
}

/** The first and the last day of shots. */
export function daysOf(shots: readonly { readonly date: string | null }[]): readonly string[] {
  let [first, last]: [string | null, string | null] = [null, null]
  for (const { date } of shots) {
    if (date === null) continue
    if (first === null || date < first) first = date
    if (last === null || date > last) last = date
  }
  return first === null || last === null ? [] : [first, last]
}
