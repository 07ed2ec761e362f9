import type { Player } from '#golf/player/player.ts'

/** Hand and index of a player, and how the numbers are known: `Left-handed, off 24.5. Every carry is a guess.` */
export function knownWords(player: Pick<Player, 'hand' | 'handicapIndex' | 'clubs'>): string {
  const { hand, handicapIndex, clubs } = player
  const off = handicapIndex < 0 ? `+${(-handicapIndex).toFixed(1)}` : handicapIndex.toFixed(1)
  const shots = clubs.reduce((sum, club) => sum + club.shots, 0)
  const guessed = clubs.filter(({ isGuess }) => isGuess).length
  const carries =
    guessed === 0
      ? 'Every carry is known'
      : guessed === clubs.length
        ? 'Every carry is a guess'
        : `${clubs.length - guessed} of ${clubs.length} carries are known`
  const learned =
    shots === 0
      ? 'no pattern is from shots'
      : `the patterns are from ${shots} ${shots === 1 ? 'shot' : 'shots'}`
  return `${hand === 'left' ? 'Left' : 'Right'}-handed, off ${off}. ${carries}; ${learned}.`
}
