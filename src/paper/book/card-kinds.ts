import type { SentenceReader } from '#golf/player/own-sentence.ts'
import { caddieRow } from './caddie-row.ts'
import { juniorRow } from './junior-row.ts'
import { playerRow } from './player-row.ts'
import type { RowWriter } from './row-words.ts'
import { CARD, type CardSetting, JUNIOR_CARD, LARGE_CARD } from './settings.ts'

/** A card for one kind of reader. */
export interface CardKind {
  readonly setting: CardSetting
  readonly rowOf: RowWriter
  /** What stands on it, for who cannot see it. */
  readonly description: string
  /** Whether its rows are taken from plans; where not, none is worked out. */
  readonly hasPlans: boolean
  /** Whose sentences stand on it; `null` where there are only numbers. */
  readonly reader: SentenceReader | null
  /** Whether bag, chips, day and relief stand on the other side; the cautions always do. */
  readonly hasFigures: boolean
}

const PLAYER: CardKind = {
  setting: CARD,
  rowOf: playerRow,
  description: 'Club, start line, safe side and next shot',
  hasPlans: true,
  reader: 'player',
  hasFigures: true,
}

/** The cards there are, by the word that asks for them. */
export const CARD_KINDS: Readonly<Record<'card' | 'large' | 'junior' | 'caddie', CardKind>> = {
  card: PLAYER,
  large: { ...PLAYER, setting: LARGE_CARD },
  junior: {
    ...PLAYER,
    setting: JUNIOR_CARD,
    reader: 'junior',
    rowOf: juniorRow,
    description: 'Club, start line and safe side in few words',
    hasFigures: false,
  },
  caddie: {
    ...PLAYER,
    rowOf: caddieRow,
    description: 'What to reach and to carry, and the green',
    hasPlans: false,
    reader: null,
  },
}
