import { clubWords } from '#golf/strategy/plan-sentence.ts'
import { type Block, joinBlocks } from './blocks.ts'
import type { BookFacts } from './book-facts.ts'
import { rowBlock } from './row-block.ts'
import { headingBlock } from './sentence-blocks.ts'
import type { CardSetting } from './settings.ts'

/** Carry and total of every club, and between which lengths two good strikes in three carry. */
export function bagBlocks({ player, ruler }: BookFacts, type: CardSetting['type']): Block[] {
  const rows = player.clubs.map((club): Block => {
    const spread = club.carryMetres * club.carrySdShare
    return rowBlock(
      clubWords({ club: club.name, shape: 'stock' }),
      [
        ruler.figure(club.carryMetres),
        ruler.figure(club.totalMetres),
        `${ruler.figure(club.carryMetres - spread)} to ${ruler.figure(club.carryMetres + spread)}`,
      ],
      club.isGuess ? 'guess' : '',
      type,
    )
  })
  const head = rowBlock('', [`carry, ${ruler.sign}`, 'total', 'two in three carry'], '', type)
  const [first, ...others] = rows
  if (first === undefined) return []
  return [joinBlocks([headingBlock('The bag', type), head, first]), ...others]
}
