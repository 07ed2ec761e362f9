import { chipRatios } from '#golf/player/chip-ratios.ts'
import { clubWords } from '#golf/strategy/plan-sentence.ts'
import { type Block, joinBlocks } from './blocks.ts'
import type { BookFacts } from './book-facts.ts'
import { rowBlock } from './row-block.ts'
import { headingBlock } from './sentence-blocks.ts'
import type { CardSetting } from './settings.ts'

/** How far a chip of each club rolls for what it carries, on the green of the day; nothing for who chips with no club. */
export function chipBlocks({ player, day }: BookFacts, type: CardSetting['type']): Block[] {
  const rows = chipRatios(player, day.greenSpeedFeet).map(({ club, rollPerCarry }) =>
    rowBlock(clubWords({ club, shape: 'stock' }), [`1 to ${rollPerCarry.toFixed(1)}`], '', type),
  )
  const [first, ...others] = rows
  if (first === undefined) return []
  const head = rowBlock('', ['carry to roll'], '', type)
  return [joinBlocks([headingBlock('Chips, on the level', type), head, first]), ...others]
}
