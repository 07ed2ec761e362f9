import { type ReactElement, useMemo } from 'react'
import type { Competition } from '#golf/round/competition.ts'
import type { CompetitionCard } from '#golf/round/competition-card.ts'
import { handicapWords, scoreTable, scoreTitle, standingWords, starWords } from '#golf/round/score-words.ts'
import { scoreFacts } from '#paper/book/score-facts.ts'
import { WordsSheet } from '../card/words-sheet.tsx'
import { Section } from '../ledger/section.tsx'
import { faultWords } from '../page/fault-words.ts'
import { FigureTable } from '../page/figure-table.tsx'
import { Lines } from '../page/lines.tsx'
import { TroubleNote } from '../page/trouble-note.tsx'
import type { Trouble } from '../planning/questions.ts'

/** A card, or what it waits for, or why there is none. */
export type Scored =
  | { readonly competition: Competition; readonly card: CompetitionCard }
  | { readonly waiting: string }
  | { readonly trouble: Trouble }

/** The card of a score, or what it waits for. */
export function CardOfScore(props: {
  readonly scored: Scored
  readonly course: string
  /** Of the file, without its ending. */
  readonly name: string
}): ReactElement {
  const { scored, ...of } = props
  if ('waiting' in scored) return <p className="after-basis">{scored.waiting}</p>
  if ('trouble' in scored) return <TroubleNote trouble={scored.trouble} />
  return <WholeCard {...scored} {...of} />
}

/** Who plays off what, hole by hole, how it stands, and the sheet. */
function WholeCard(props: {
  readonly competition: Competition
  readonly card: CompetitionCard
  readonly course: string
  readonly name: string
}): ReactElement {
  const { card, competition, course, name } = props
  const words = useMemo(() => scoreFacts(card, competition, course), [card, competition, course])
  const { by } = competition
  const faults = card.faults.map(faultWords)
  return (
    <>
      <p className="after-lead" role="status">
        <b>{standingWords(card, by).join(' ')}</b>
      </p>
      <Section title="Hole by hole">
        <FigureTable caption={scoreTitle(course, competition)} table={scoreTable(card, by)} />
        <Lines of={starWords(card)} />
      </Section>
      <Section title="Handicaps">
        <Lines of={handicapWords(card, competition)} />
      </Section>
      {faults.length > 0 && (
        <Section title="What does not fit">
          <Lines of={faults} />
        </Section>
      )}
      <WordsSheet words={words} name={name} />
    </>
  )
}
