import { type ReactElement, useMemo, useState } from 'react'
import { seasonChangeWords } from '#golf/round/season-change-words.ts'
import {
  changeTable,
  choosingTable,
  roundsTable,
  struckTable,
  totalTable,
} from '#golf/round/season-tables.ts'
import { ALL_AS_PLANNED, seasonBasis, seasonWords } from '#golf/round/season-words.ts'
import { seasonFacts } from '#paper/book/season-facts.ts'
import { sheetTitle } from '#paper/book/sheet-words.ts'
import { drawSeason } from '#paper/draw/draw-season.ts'
import { WordsSheet } from '../card/words-sheet.tsx'
import { Section } from '../ledger/section.tsx'
import { FigureTable } from '../page/figure-table.tsx'
import { Lines } from '../page/lines.tsx'
import type { OfPlayer } from '../page/page-of-player.tsx'
import { ROUNDS } from '../page/places.ts'
import { WidePicture } from '../page/wide-picture.tsx'
import { PlanProgress } from '../planning/plan-progress.tsx'
import { closedRounds } from '../rounds/closed-rounds.ts'
import type { KeptDay, KeptRounds } from '../rounds/kept-round.ts'
import { loadWall, WallButton } from '../wall/wall-button.tsx'
import { type CountedRounds, RoundsThatCount } from './counted-rounds.tsx'
import { roundsOf } from './rounds-of-season.ts'
import { seasonPictures } from './season-pictures.ts'
import { useSeason } from './use-season.ts'

/** A season once its rounds are there: which of them count, and what they say together. */
export function SeasonDesk(
  props: OfPlayer & { readonly kept: KeptRounds; readonly days: readonly KeptDay[] },
): ReactElement {
  const { course, courseId, player, playerId, kept, days } = props
  const [choice, setChoice] = useState<CountedRounds>({ leftOut: new Set(), begins: '' })
  const { leftOut, begins } = choice
  const [isQuick, setQuick] = useState(true)
  const own = useMemo(
    () => roundsOf(kept.rounds, { id: courseId, name: course.name }, { id: playerId, name: player.name }),
    [kept, courseId, course, playerId, player],
  )
  const { rounds, notes } = useMemo(
    () =>
      closedRounds(
        own,
        days.map(({ day }) => day),
      ),
    [own, days],
  )
  const counted = useMemo(() => rounds.filter(({ id }) => !leftOut.has(id)), [rounds, leftOut])
  const on = useMemo(() => ({ course, player, tee: null }), [course, player])
  const taken = useSeason(on, counted, begins, isQuick)
  const { work, season, change, left } = taken
  const told = useMemo(
    () => ({ season, withoutDay: counted.filter(({ day }) => day === null).length, isQuick, change }),
    [season, change, counted, isQuick],
  )
  const title = sheetTitle(course.name, player)
  const words = useMemo(() => seasonFacts(told, title), [told, title])
  const draw = useMemo(() => (width: number) => drawSeason(season, width), [season])
  const isDone = work.of > 0 && work.done === work.of
  const isWhole = isDone && season.rounds > 0
  if (rounds.length === 0)
    return (
      <>
        <p className="after-lead">
          No closed round of {player.name} on this course is kept yet.{' '}
          <a href={ROUNDS}>Write one down, or see the rounds that are kept</a>.
        </p>
        <Lines of={[...notes, ...kept.unread]} />
      </>
    )
  const choosing = choosingTable(season)
  return (
    <>
      <p className="after-lead">
        <b>{isWhole ? words.title : title}</b>
      </p>
      <button type="button" aria-pressed={isQuick} onClick={() => setQuick(!isQuick)}>
        Soon and rough
      </button>
      <PlanProgress work={work} />
      {(counted.length === 0 || (isDone && !isWhole)) && (
        <Lines of={['No round that counts is of this season.']} />
      )}
      {isWhole && (
        <>
          <Section title="The letter">
            <Lines of={[...seasonWords(season), ...(change === null ? [] : seasonChangeWords(change))]} />
          </Section>
          <Section title="Struck against the profile, strokes a round">
            <WidePicture draw={draw} />
            <WallButton
              load={loadWall}
              show={{ pictures: () => seasonPictures(season), foot: words.title }}
            />
            <FigureTable caption="Struck against the profile, strokes a round" table={struckTable(season)} />
          </Section>
          <Section title="Ways of choosing, strokes a round">
            {choosing.rows.length === 0 ? (
              <Lines of={[ALL_AS_PLANNED]} />
            ) : (
              <FigureTable caption="Ways of choosing, strokes a round" table={choosing} />
            )}
          </Section>
          <Section title="From plan to score, strokes a round">
            <FigureTable caption="From plan to score, strokes a round" table={totalTable(season)} />
          </Section>
          {change !== null && (
            <Section title="Against the season before, strokes a round">
              <FigureTable caption="Against the season before, strokes a round" table={changeTable(change)} />
            </Section>
          )}
          <Section title="Round by round">
            <FigureTable caption="Round by round, strokes" table={roundsTable(taken.rounds)} />
          </Section>
          <Section title="What this rests on">
            <Lines of={[...seasonBasis(told), 'The profile is the one that is kept today.']} />
          </Section>
        </>
      )}
      <RoundsThatCount rounds={rounds} {...choice} onChange={setChoice} />
      {[...left, ...notes, ...kept.unread].length > 0 && (
        <Section title="What does not make sense, and what is left out">
          <Lines of={[...left, ...notes, ...kept.unread]} />
        </Section>
      )}
      {isWhole && <WordsSheet words={words} name={`${courseId}-${playerId}-season`} />}
    </>
  )
}
