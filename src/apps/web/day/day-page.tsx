import { type ReactElement, useState } from 'react'
import '../style/ruled-page.css'
import '../style/day.css'
import type { Day } from '#golf/course/day.ts'
import type { Reader } from '../desk/desk.ts'
import { useCourse, useLibrary } from '../documents/use-library.ts'
import { Choice } from '../ledger/choice.tsx'
import { Section } from '../ledger/section.tsx'
import { CourseChoice } from '../page/course-choice.tsx'
import { PageHead } from '../page/page-head.tsx'
import { coursePlace, dayPlace, playerPlace } from '../page/places.ts'
import { TroubleNote } from '../page/trouble-note.tsx'
import { PinsOfDay, useHolesOfDay } from './pins-of-day.tsx'
import { dayOf } from './typed-day.ts'
import { useTypedDay } from './use-typed-day.ts'
import { Weather } from './weather.tsx'

/** A day on a course as it is typed in the morning: its weather, and the pin of every green in paces. */
export function DayPage(props: {
  readonly courseId: string
  readonly reader: Reader
  readonly onReader: (reader: Reader) => void
}): ReactElement {
  const { courseId, reader, onReader } = props
  const { library, trouble, reload } = useLibrary()
  const course = useCourse(courseId)
  const { typed, isChanged, change, begin, keep, trouble: dayTrouble } = useTypedDay()
  const [said, setSaid] = useState('')
  const [asked, setAsked] = useState<string | null>(null)
  const { day, lines } = typed
  const holes = useHolesOfDay(course.value, day, lines)
  const unread = Object.entries(holes).filter(
    ([ref, { fault }]) => fault !== null && (lines[ref] ?? '').trim() !== '',
  )
  const shown = trouble ?? course.trouble ?? dayTrouble
  const open = (dayId: string): void => {
    setAsked(null)
    setSaid('')
    begin(dayId)
  }
  const keepIt = async (): Promise<void> => {
    const kept = dayOf(typed, Object.keys(holes))
    if (!(await keep(kept))) return
    setSaid(keptWords(kept))
    reload()
  }
  return (
    <>
      <PageHead
        what="a day’s pins"
        back={coursePlace(courseId)}
        backTo="the course"
        reader={reader}
        onReader={onReader}
        hasWind
        choices={
          library !== null && (
            <>
              <CourseChoice library={library} courseId={courseId} placeOf={dayPlace} />
              <Choice
                label="Day"
                value={typed.dayId}
                options={[
                  { value: '', name: 'a new day' },
                  ...library.days.map(({ id, name }) => ({ value: id, name })),
                ]}
                onChange={(id) => (isChanged ? setAsked(id) : open(id))}
              />
            </>
          )
        }
      >
        <a className="button" href={playerPlace('card', courseId, null)}>
          The card
        </a>
      </PageHead>
      <main className="ruled-page day-page">
        {shown !== null && <TroubleNote trouble={shown} />}
        {asked !== null && (
          <p className="day-asked">
            What was typed is not kept yet.{' '}
            <button type="button" onClick={() => open(asked)}>
              Let go of it
            </button>{' '}
            <button type="button" onClick={() => setAsked(null)}>
              Stay
            </button>
          </p>
        )}
        {course.value !== null && (
          <>
            <Section title="The day">
              <Weather
                day={day}
                reader={reader}
                onDay={(part: Partial<Day>) => change({ day: { ...day, ...part } })}
              />
            </Section>
            <Section title="The pins">
              <p>
                Paces on from the front of the green, then in from a side: 14 on, 6 left; 14 6L for short; 14
                middle. An empty line leaves the pin where the survey has it. Enter goes to the next.
              </p>
              <PinsOfDay
                key={`${courseId} ${typed.dayId}`}
                course={course.value}
                lines={lines}
                onLine={(ref, line) => change({ lines: { ...lines, [ref]: line } })}
                holes={holes}
              />
            </Section>
            <p className="day-keep">
              <button
                type="button"
                disabled={unread.length > 0 || day.date === null || !isChanged}
                onClick={() => void keepIt()}
              >
                Keep the day
              </button>{' '}
              <span role="status">{unread.length > 0 ? unreadWords(unread.map(([ref]) => ref)) : said}</span>
            </p>
          </>
        )}
      </main>
    </>
  )
}

function unreadWords(refs: readonly string[]): string {
  return `The ${refs.length === 1 ? 'line' : 'lines'} of hole ${refs.join(', ')} must be read first.`
}

function keptWords({ date, pins }: Day): string {
  const count = Object.keys(pins).length
  return `The day ${date ?? ''} is kept with ${count} ${count === 1 ? 'pin' : 'pins'}. The card prints its pin sheet, and every page can choose it.`
}
