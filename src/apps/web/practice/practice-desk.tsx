import { type ReactElement, useMemo, useState } from 'react'
import type { PracticeNotes } from '#golf/round/practice-notes.ts'
import { practiceTable } from '#golf/round/practice-table.ts'
import { itemSentences, NOTHING_TO_PRACTISE, PRACTICE_BASIS } from '#golf/round/practice-words.ts'
import { retestDay } from '#golf/round/retest-day.ts'
import { practiceFacts } from '#paper/book/practice-facts.ts'
import { sheetTitle } from '#paper/book/sheet-words.ts'
import { roundHoles, teesOf } from '../card/round-holes.ts'
import { WordsSheet } from '../card/words-sheet.tsx'
import { useDay } from '../course/use-day.ts'
import { useKeeping } from '../documents/use-keeping.ts'
import { Choice } from '../ledger/choice.tsx'
import { Section } from '../ledger/section.tsx'
import { FigureTable } from '../page/figure-table.tsx'
import { Lines } from '../page/lines.tsx'
import type { OfPlayer } from '../page/page-of-player.tsx'
import { TroubleNote } from '../page/trouble-note.tsx'
import { PlanProgress } from '../planning/plan-progress.tsx'
import { keepNotes } from './kept-notes.ts'
import { OwnNotes } from './own-notes.tsx'
import { SpanFields } from './span-fields.tsx'
import { usePractice } from './use-practice.ts'

/** What to practise, once the player and the notes are there: three things, what every part is worth, and the notes themselves. */
export function PracticeDesk(props: OfPlayer & { readonly found: PracticeNotes }): ReactElement {
  const { library, course, courseId, player, playerId, found } = props
  const { day, dayId, chooseDay, dayTrouble } = useDay()
  const [tee, setTee] = useState('')
  const [notes, setNotes] = useState(found)
  const [span, setSpan] = useState(() => ({
    hours: 10,
    weeks: 6,
    from: new Date().toLocaleDateString('sv-SE'),
  }))
  const keeping = useKeeping(found, notes, keepNotes)
  const { holes, left: unlaid } = useMemo(() => roundHoles(course, tee, day), [course, tee, day])
  const on = useMemo(() => ({ holes, player, day }), [holes, player, day])
  const { work, practice, left } = usePractice(on, notes.rates)
  const { hours, weeks } = span
  const told = useMemo(
    () => ({ practice, notes, hours, weeks, retest: retestDay(span.from, weeks) }),
    [practice, notes, hours, weeks, span.from],
  )
  const title = sheetTitle(course.name, player)
  const words = useMemo(() => practiceFacts(told, title), [told, title])
  const isWhole = work.of > 0 && work.done === work.of && practice.holes > 0
  const shown = dayTrouble ?? keeping.trouble
  return (
    <>
      <div className="choices after-choices">
        <Choice
          label="Day"
          value={dayId}
          options={[
            { value: '', name: 'calm, normal' },
            ...library.days.map(({ id, name }) => ({ value: id, name })),
          ]}
          onChange={chooseDay}
        />
        <Choice
          label="Tee"
          value={tee}
          options={[
            { value: '', name: 'the usual' },
            ...teesOf(course).map((name) => ({ value: name, name })),
          ]}
          onChange={setTee}
        />
      </div>
      <SpanFields span={span} onChange={setSpan} />
      {shown !== null && <TroubleNote trouble={shown} />}
      <p className="after-lead">
        <b>
          {title}: what practice is worth{' '}
          {practice.holes > 0 && `on ${practice.holes} ${practice.holes === 1 ? 'hole' : 'holes'}`}
        </b>
      </p>
      <PlanProgress work={work} />
      {isWhole && (
        <>
          {practice.items.length === 0 ? (
            <Lines of={[NOTHING_TO_PRACTISE]} />
          ) : (
            <ol className="practice-items">
              {practice.items.map((item) => (
                <li key={item.part}>
                  {itemSentences(told, item).map((sentence) => (
                    <p key={sentence}>{sentence}</p>
                  ))}
                </li>
              ))}
            </ol>
          )}
          <Section title="Every part">
            <FigureTable caption="Every part, strokes a round" table={practiceTable(told)} />
          </Section>
        </>
      )}
      <Section title="Your own rates and drills" className="own-notes">
        <p className="after-basis" role="status">
          They are the same for every player, and kept as you write.
          {keeping.state === 'keeping' && ' They are being kept.'}
        </p>
        <OwnNotes notes={notes} onChange={setNotes} />
      </Section>
      <Section title="What this rests on">
        <Lines of={[...PRACTICE_BASIS, ...unlaid, ...left]} />
      </Section>
      {isWhole && <WordsSheet words={words} name={`${courseId}-${playerId}-practice`} />}
    </>
  )
}
