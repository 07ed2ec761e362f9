import { type ReactElement, useMemo, useState } from 'react'
import type { Course } from '#golf/course/course.ts'
import type { Day } from '#golf/course/day.ts'
import type { Player } from '#golf/player/player.ts'
import type { PlanNumbers } from '#golf/round/plan-numbers.ts'
import type { RoundRecap } from '#golf/round/recap-round.ts'
import { holeTable, partTable } from '#golf/round/recap-tables.ts'
import {
  basisWords,
  bestLines,
  cardLines,
  costlyLines,
  scoreWords,
  unsplitLines,
} from '#golf/round/recap-words.ts'
import { roundCard } from '#golf/round/round-card.ts'
import { MOST_TOLD_STROKES } from '#golf/round/settings.ts'
import { QUICK_WORDS } from '#golf/strategy/rough-words.ts'
import { recapFacts, recapWaterfall, sentence } from '#paper/book/recap-facts.ts'
import { sheetTitle } from '#paper/book/sheet-words.ts'
import { drawWaterfall } from '#paper/draw/draw-waterfall.ts'
import { WordsSheet } from '../card/words-sheet.tsx'
import type { Reader } from '../desk/desk.ts'
import { Section } from '../ledger/section.tsx'
import { faultWords } from '../page/fault-words.ts'
import { FigureTable } from '../page/figure-table.tsx'
import { Lines } from '../page/lines.tsx'
import { deskPlace, playerPlace } from '../page/places.ts'
import { WidePicture } from '../page/wide-picture.tsx'
import { PlanProgress } from '../planning/plan-progress.tsx'
import type { KeptRoundFile } from '../rounds/kept-round.ts'
import { loadWall, WallButton } from '../wall/wall-button.tsx'
import { recapPictures } from './recap-pictures.ts'
import { useRecap } from './use-recap.ts'

/** One round taken apart, once all of it is there. */
export function RecapDesk(props: {
  readonly kept: KeptRoundFile
  readonly course: Course
  readonly courseId: string
  readonly player: Player
  /** The player as kept today, whose handicap counts. */
  readonly holder: Player
  readonly playerId: string
  readonly day: Day
  readonly hasDay: boolean
  /** Whose numbers the two are; `null` = those kept today. */
  readonly against: PlanNumbers | null
  readonly reader: Reader
}): ReactElement {
  const { kept, course, courseId, player, holder, playerId, day, hasDay, against, reader } = props
  const { round } = kept
  const { units } = reader
  const [isQuick, setQuick] = useState(false)
  const on = useMemo(() => ({ course, player, day, tee: round.tee }), [course, player, day, round])
  const { work, recap, left } = useRecap(on, round, isQuick)
  const told = useMemo(
    () => ({
      ...{ round, hasDay, against, recap },
      card: roundCard(course, holder, round, round.tee),
      match: null,
    }),
    [round, hasDay, against, recap, course, holder],
  )
  const title = sheetTitle(course.name, player)
  const words = useMemo(() => recapFacts(told, title, units), [told, title, units])
  const draw = useMemo(() => (width: number) => drawWaterfall(recapWaterfall(recap), width), [recap])
  const wrong = [...left, ...kept.faults.map(faultWords)]
  const isWhole = work.done === work.of && recap.holes.length > 0
  return (
    <>
      <p className="after-lead">
        <b>
          {words.title}
          {recap.holes.length > 0 && `: ${scoreWords(recap)}`}
        </b>
      </p>
      <p className="after-basis">
        Strokes more (+) or fewer (−) than the plan expects of this player
        {against === null ? ', by the numbers kept today' : ''}.{' '}
        {[...basisWords(told), ...(isQuick ? [QUICK_WORDS] : [])].join(' ')}
      </p>
      <button type="button" aria-pressed={isQuick} onClick={() => setQuick(!isQuick)}>
        Soon and rough
      </button>
      <PlanProgress work={work} />
      {wrong.length > 0 && (
        <Section title="What does not make sense, and holes left out">
          <Lines of={wrong} />
        </Section>
      )}
      {recap.holes.length > 0 && (
        <>
          <Section title="From plan to score">
            <WidePicture draw={draw} />
          </Section>
          <Section title="Choices that cost most">
            <Lines of={costlyLines(recap, units).map(sentence)} />
            <CostlyHoles recap={recap} place={{ courseId, playerId }} />
          </Section>
          {recap.best.length > 0 && (
            <Section title="Best strokes">
              <Lines of={bestLines(recap, units).map(sentence)} />
            </Section>
          )}
          <Section title="By part of the game">
            <FigureTable caption="By part of the game, strokes" table={partTable(recap)} />
          </Section>
          <Section title="By hole">
            <FigureTable caption="By hole, strokes" table={holeTable(recap)} />
          </Section>
          <Section title="On the card">
            <Lines of={cardLines(told)} />
          </Section>
          {unsplitLines(recap).length > 0 && (
            <Section title="What cannot be told apart">
              <Lines of={unsplitLines(recap).map(sentence)} />
            </Section>
          )}
        </>
      )}
      <div className="head-buttons after-links">
        <a className="button" href={playerPlace('season', courseId, playerId)}>
          The season
        </a>
        <a className="button" href={playerPlace('practice', courseId, playerId)}>
          What to practise
        </a>
        {recap.holes.length > 0 && (
          <WallButton load={loadWall} show={{ pictures: () => recapPictures(recap), foot: words.title }} />
        )}
      </div>
      {isWhole && <WordsSheet words={words} name={`${kept.id}-recap`} />}
    </>
  )
}

/** The holes of the dearest choices, on the desk. */
function CostlyHoles(props: {
  readonly recap: RoundRecap
  readonly place: { readonly courseId: string; readonly playerId: string }
}): ReactElement {
  const holes = new Set(props.recap.costly.slice(0, MOST_TOLD_STROKES).map(({ hole }) => hole))
  return (
    <div className="head-buttons">
      {[...holes].map((holeRef) => (
        <a key={holeRef} className="button" href={deskPlace({ ...props.place, holeRef })}>
          Hole {holeRef} on the desk
        </a>
      ))}
    </div>
  )
}
