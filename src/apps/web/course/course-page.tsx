import { type ReactElement, useMemo } from 'react'
import '../style/course.css'
import type { Day } from '#golf/course/day.ts'
import { dayPinWords } from '#golf/course/day-pin-words.ts'
import { drawHole } from '#paper/draw/draw-hole.ts'
import { Picture } from '../chart/picture.tsx'
import type { Reader } from '../desk/desk.ts'
import { useCourse, useLibrary } from '../documents/use-library.ts'
import { Choice } from '../ledger/choice.tsx'
import { CourseChoice } from '../page/course-choice.tsx'
import { PageHead } from '../page/page-head.tsx'
import {
  clubPlace,
  coursePlace,
  dayPlace,
  deskPlace,
  groupPlace,
  playerPlace,
  SURVEY,
  scorePlace,
} from '../page/places.ts'
import { TroubleNote } from '../page/trouble-note.tsx'
import { figure, length, unitSign, windOnHole, windSpeed } from '../words.ts'
import { type CardHole, courseCard } from './course-card.ts'
import { useDay } from './use-day.ts'

/** A course as a whole: every hole as a small chart with par, stroke index, lengths and the day, and the way to its desk. */
export function CoursePage(props: {
  readonly courseId: string
  readonly reader: Reader
  readonly onReader: (reader: Reader) => void
}): ReactElement {
  const { courseId, reader, onReader } = props
  const { library, trouble } = useLibrary()
  const course = useCourse(courseId)
  const { day, dayId, chooseDay, dayTrouble } = useDay()
  const card = useMemo(() => course.value && courseCard(course.value, day), [course.value, day])
  const shown = trouble ?? course.trouble ?? dayTrouble
  return (
    <>
      <PageHead
        what="the course"
        reader={reader}
        onReader={onReader}
        hasWind
        choices={
          library !== null && (
            <>
              <CourseChoice library={library} courseId={courseId} placeOf={coursePlace} />
              <Choice
                label="Day"
                value={dayId}
                options={[
                  { value: '', name: 'calm, normal' },
                  ...library.days.map(({ id, name }) => ({ value: id, name })),
                ]}
                onChange={chooseDay}
              />
            </>
          )
        }
      >
        <a className="button" href={playerPlace('card', courseId, null)}>
          The card
        </a>
        <a className="button" href={groupPlace(courseId)}>
          A group’s cards
        </a>
        <a className="button" href={clubPlace(courseId)}>
          The club’s rounds
        </a>
        <a className="button" href={scorePlace(courseId)}>
          A score
        </a>
        <a className="button" href={dayPlace(courseId)}>
          A day’s pins
        </a>
        <a className="button" href={SURVEY}>
          Survey a hole
        </a>
      </PageHead>
      <main className="course-page">
        {shown !== null && <TroubleNote trouble={shown} />}
        {card !== null && course.value !== null && (
          <>
            <p className="course-sum">
              {course.value.name}: {card.holes.length} {card.holes.length === 1 ? 'hole' : 'holes'}, par{' '}
              {card.par}
              {card.tees.map(({ name, metres, holes }) => (
                <span key={name}>
                  ; {name} {length(metres, reader)}
                  {holes < card.holes.length && ` over ${holes}`}
                </span>
              ))}
              .
            </p>
            <ol className="course-holes">
              {card.holes.map((hole) => (
                <HoleEntry key={hole.ref} entry={hole} courseId={courseId} day={day} reader={reader} />
              ))}
            </ol>
            {course.value.credit !== null && <p className="credit">{course.value.credit}</p>}
          </>
        )}
      </main>
    </>
  )
}

function HoleEntry(props: {
  readonly entry: CardHole
  readonly courseId: string
  readonly day: Day
  readonly reader: Reader
}): ReactElement {
  const { entry, courseId, day, reader } = props
  const { ref, name, hole } = entry
  const { units } = reader
  const drawing = useMemo(
    () => hole && drawHole(hole, { units, width: WIDTH, height: HEIGHT, hasTitle: false }),
    [hole, units],
  )
  return (
    <li className="course-hole">
      <h2>
        <b>{ref}</b> {name}
      </h2>
      {drawing !== null && <Picture drawing={drawing} isDecoration />}
      {hole === null ? (
        <p className="silent">{entry.trouble}</p>
      ) : (
        <>
          <p>
            par {hole.par}
            {hole.strokeIndex !== null && `, stroke index ${hole.strokeIndex}`}
          </p>
          <p>
            {Object.entries(entry.lengths)
              .map(([tee, metres]) => `${tee} ${figure(metres, reader)}`)
              .join(', ') || figure(hole.lengthMetres, reader)}{' '}
            {unitSign(reader)}
          </p>
          <p>{dayWords(day, ref, hole.bearingDegrees, reader)}</p>
        </>
      )}
      <a className="button" href={deskPlace({ courseId, holeRef: ref })}>
        Hole {ref} on the desk
      </a>
    </li>
  )
}

/** Room for a hole's chart among the others, CSS pixels. */
const WIDTH = 220
const HEIGHT = 330

/** What the day is on a hole: its wind and its pin. */
function dayWords(day: Day, ref: string, bearingDegrees: number, reader: Reader): string {
  const { speedMetresPerSecond, fromDegrees } = day.wind
  const speed = windSpeed(speedMetresPerSecond, reader)
  const wind = speed === 'calm' ? speed : `wind ${windOnHole(fromDegrees, bearingDegrees)}, ${speed}`
  const pin = day.pins[ref]
  return pin === undefined ? wind : `${wind}; pin ${dayPinWords(pin)}`
}
