import { type ReactElement, useMemo, useState } from 'react'
import { EngravedFor, type Engraving } from '../chart/picture.tsx'
import { CommandSheets } from '../commands/command-sheets.tsx'
import type { Reader } from '../desk/desk.ts'
import { useReader } from '../reading/use-reader.ts'
import { DESK_SETTINGS } from '../settings.ts'
import { LatePart } from './late-part.tsx'
import { OpenDesk } from './open-desk.tsx'
import {
  courseOfClubPlace,
  courseOfDayPlace,
  courseOfFoursomesPlace,
  courseOfGroupPlace,
  courseOfPlace,
  courseOfScorePlace,
  DESK,
  NEW_PLAYER,
  PLAYERS,
  playerOfPlace,
  playerPageOfPlace,
  ROUNDS,
  recapOfPlace,
  SURVEY,
  usePlace,
} from './places.ts'

/** Pages beside the desk come when they are asked for, so that the desk itself opens sooner. */
const loadNewPlayer = async () => (await import('../new-player/new-player.tsx')).NewPlayer
const loadShots = async () => (await import('../shots/shots-page.tsx')).ShotsPage
const loadCoursePage = async () => (await import('../course/course-page.tsx')).CoursePage
const loadCard = async () => (await import('../card/card-page.tsx')).CardPage
const loadDay = async () => (await import('../day/day-page.tsx')).DayPage
const loadSeason = async () => (await import('../season/season-page.tsx')).SeasonPage
const loadPractice = async () => (await import('../practice/practice-page.tsx')).PracticePage
const loadGroup = async () => (await import('../group/group-page.tsx')).GroupPage
const loadClub = async () => (await import('../club/club-page.tsx')).ClubPage
const loadScore = async () => (await import('../score/score-page.tsx')).ScorePage
const loadFoursomes = async () => (await import('../foursomes/foursomes-page.tsx')).FoursomesPage
const loadPlayers = async () => (await import('../players/players-page.tsx')).PlayersPage
const loadRecap = async () => (await import('../recap/recap-page.tsx')).RecapPage
const loadRounds = async () => (await import('../rounds/rounds-page.tsx')).RoundsPage
const loadSurvey = async () => (await import('../survey/survey-page.tsx')).SurveyPage

const PLAYER_PAGES = {
  card: { what: 'the card', load: loadCard },
  season: { what: 'the season', load: loadSeason },
  practice: { what: 'the practice', load: loadPractice },
} as const

/** The desk, the ten questions that lead to it, the shots of a player, the survey of a hole, a course or the players, as the reader likes to read. */
export function OpenPage(): ReactElement {
  const [reader, setReader] = useReader()
  const { theme, print } = reader
  const engraving = useMemo<Engraving>(
    () => ({
      lineWeight: theme === 'sun' ? DESK_SETTINGS.sunLineWeight : 1,
      chartTypeScale: print === 'large' ? DESK_SETTINGS.largePrintScale : 1,
    }),
    [theme, print],
  )
  return (
    <EngravedFor value={engraving}>
      <PageOfPlace reader={reader} onReader={setReader} />
      <CommandSheets />
    </EngravedFor>
  )
}

function PageOfPlace(props: {
  readonly reader: Reader
  readonly onReader: (reader: Reader) => void
}): ReactElement {
  const [playerId, setPlayerId] = useState<string | null>(null)
  const place = usePlace()
  const shotsOf = playerOfPlace(place)
  const onKept = (id: string): void => {
    setPlayerId(id)
    location.hash = DESK
  }
  const dayCourse = courseOfDayPlace(place)
  if (dayCourse !== undefined)
    return <LatePart key="day" what="the day" load={loadDay} show={{ ...props, courseId: dayCourse }} />
  const ofPlayer = playerPageOfPlace(place)
  if (ofPlayer !== undefined) {
    const { page, ...of } = ofPlayer
    const { what, load } = PLAYER_PAGES[page]
    return <LatePart key={page} what={what} load={load} show={{ ...props, ...of }} />
  }
  const groupCourse = courseOfGroupPlace(place)
  if (groupCourse !== undefined)
    return (
      <LatePart key="group" what="the group" load={loadGroup} show={{ ...props, courseId: groupCourse }} />
    )
  const pairCourse = courseOfFoursomesPlace(place)
  if (pairCourse !== undefined)
    return (
      <LatePart
        key="pair"
        what="the foursomes"
        load={loadFoursomes}
        show={{ ...props, courseId: pairCourse }}
      />
    )
  const clubCourse = courseOfClubPlace(place)
  if (clubCourse !== undefined)
    return <LatePart key="club" what="the club" load={loadClub} show={{ ...props, courseId: clubCourse }} />
  const scoreCourse = courseOfScorePlace(place)
  if (scoreCourse !== undefined)
    return (
      <LatePart key="score" what="the score" load={loadScore} show={{ ...props, courseId: scoreCourse }} />
    )
  const courseId = courseOfPlace(place)
  if (courseId !== undefined)
    return <LatePart key="course" what="the course" load={loadCoursePage} show={{ ...props, courseId }} />
  const roundId = recapOfPlace(place)
  if (roundId !== undefined)
    return <LatePart key="recap" what="the recap" load={loadRecap} show={{ ...props, roundId }} />
  if (place === ROUNDS) return <LatePart key="rounds" what="the rounds" load={loadRounds} show={props} />
  if (place === PLAYERS) return <LatePart key="players" what="the players" load={loadPlayers} show={props} />
  if (shotsOf === undefined && place !== NEW_PLAYER && place !== SURVEY)
    return <OpenDesk {...props} playerId={playerId} />
  if (shotsOf !== undefined)
    return (
      <LatePart
        key="shots"
        what="the page of shots"
        load={loadShots}
        show={{ ...props, playerId: shotsOf, onKept }}
      />
    )
  if (place === SURVEY) return <LatePart key="survey" what="the survey" load={loadSurvey} show={props} />
  return <LatePart key="player" what="the ten questions" load={loadNewPlayer} show={{ ...props, onKept }} />
}
