import { type ReactElement, useMemo, useState } from 'react'
import { choosingTable, roundsTable, struckTable, totalTable } from '#golf/round/season-tables.ts'
import { ALL_AS_PLANNED, seasonBasis, seasonWords } from '#golf/round/season-words.ts'
import { seasonFacts } from '#paper/book/season-facts.ts'
import { sheetTitle } from '#paper/book/sheet-words.ts'
import { drawSeason } from '#paper/draw/draw-season.ts'
import { WordsSheet } from '../card/words-sheet.tsx'
import { Section } from '../ledger/section.tsx'
import { FigureTable } from '../page/figure-table.tsx'
import { Lines } from '../page/lines.tsx'
import type { OfPlayer } from '../page/page-of-player.tsx'
import { ROUNDS, recapPlace } from '../page/places.ts'
import { WidePicture } from '../page/wide-picture.tsx'
import { PlanProgress } from '../planning/plan-progress.tsx'
import { type ClosedRound, closedRounds } from '../rounds/closed-rounds.ts'
import type { KeptDay, KeptRounds } from '../rounds/kept-round.ts'
import { loadWall, WallButton } from '../wall/wall-button.tsx'
import { roundsOf } from './rounds-of-season.ts'
import { seasonPictures } from './season-pictures.ts'
import { useSeason } from './use-season.ts'

/** A season once its rounds are there: which of them count, and what they say together. */
export function SeasonDesk(
  props: OfPlayer & { readonly kept: KeptRounds; readonly days: readonly KeptDay[] },
): ReactElement {
  const { course, courseId, player, playerId, kept, days } = props
  const [leftOut, setLeftOut] = useState<ReadonlySet<string>>(new Set())
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
  const taken = useSeason(on, counted, isQuick)
  const { work, season, left } = taken
  const told = useMemo(
    () => ({ season, withoutDay: counted.filter(({ day }) => day === null).length, isQuick, change: null }),
    [season, counted, isQuick],
  )
  const title = sheetTitle(course.name, player)
  const words = useMemo(() => seasonFacts(told, title), [told, title])
  const draw = useMemo(() => (width: number) => drawSeason(season, width), [season])
  const isWhole = work.of > 0 && work.done === work.of && season.rounds > 0
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
      {isWhole && (
        <>
          <Section title="The letter">
            <Lines of={seasonWords(season)} />
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
          <Section title="Round by round">
            <FigureTable caption="Round by round, strokes" table={roundsTable(taken.rounds)} />
          </Section>
          <Section title="What this rests on">
            <Lines of={[...seasonBasis(told), 'The profile is the one that is kept today.']} />
          </Section>
        </>
      )}
      <RoundsThatCount
        rounds={rounds}
        leftOut={leftOut}
        onCount={(id, isCounted) =>
          setLeftOut(
            (before) => new Set(isCounted ? [...before].filter((each) => each !== id) : [...before, id]),
          )
        }
      />
      {[...left, ...notes, ...kept.unread].length > 0 && (
        <Section title="What does not make sense, and what is left out">
          <Lines of={[...left, ...notes, ...kept.unread]} />
        </Section>
      )}
      {isWhole && <WordsSheet words={words} name={`${courseId}-${playerId}-season`} />}
    </>
  )
}

function RoundsThatCount(props: {
  readonly rounds: readonly ClosedRound[]
  /** Ids of those that were taken out by hand. */
  readonly leftOut: ReadonlySet<string>
  readonly onCount: (id: string, isCounted: boolean) => void
}): ReactElement {
  const { rounds, leftOut, onCount } = props
  return (
    <Section title="Rounds that count here" className="counted-rounds">
      <ul>
        {rounds.map(({ id, name, round, day }) => (
          <li key={id} className="kept-round">
            <span>
              {name}, {round.holes.length} {round.holes.length === 1 ? 'hole' : 'holes'}
              {day === null && ', its day is not kept'}
            </span>
            <button
              type="button"
              aria-pressed={!leftOut.has(id)}
              aria-label={`${name} counts`}
              onClick={() => onCount(id, leftOut.has(id))}
            >
              Counts
            </button>
            <a className="button" href={recapPlace(id)} aria-label={`Recap of ${name}`}>
              Recap
            </a>
          </li>
        ))}
      </ul>
    </Section>
  )
}
