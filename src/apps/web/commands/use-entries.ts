import { useEffect, useMemo, useState } from 'react'
import type { Course } from '#golf/course/course.ts'
import { keptDesk } from '../desk/kept-desk.ts'
import { listDocuments } from '../documents/fetch-document.ts'
import { loadCourse } from '../documents/load-course.ts'
import { tabStorage } from '../documents/own-storage.ts'
import type { Listed } from '../documents/server-documents.ts'
import {
  clubPlace,
  coursePlace,
  DESK,
  dayPlace,
  deskPlace,
  foursomesPlace,
  groupPlace,
  NEW_PLAYER,
  PLAYERS,
  playerPlace,
  ROUNDS,
  SURVEY,
  scorePlace,
  shotsPlace,
} from '../page/places.ts'
import type { Entry } from './find-entries.ts'
import { type CommandName, KEY_TABLE, type KeyRow } from './key-table.ts'
import { liveCommands, runCommand } from './live-commands.ts'

/** Everything that can be found: commands and pages at once, then what the store lists, and the holes of each course as it comes. */
export function useEntries(): readonly Entry[] {
  const [stored, setStored] = useState<readonly Entry[]>([])
  const fixed = useMemo(() => [...pageEntries(), ...commandEntries()], [])
  useEffect(() => {
    let isWanted = true
    const gather = async (): Promise<void> => {
      for await (const entries of storedEntries()) {
        if (!isWanted) return
        setStored((before) => [...before, ...entries])
      }
    }
    // What the store does not answer is not found; the page says itself that the server is away.
    gather().catch(() => {})
    return () => {
      isWanted = false
    }
  }, [])
  return useMemo(() => [...stored, ...fixed], [stored, fixed])
}

/** Players and courses, then the holes of each course as it comes, those of the course on the desk first: a number alone means its hole. */
async function* storedEntries(): AsyncGenerator<readonly Entry[]> {
  const [players, courses] = await Promise.all([listDocuments('players'), listDocuments('courses')])
  yield players.flatMap(({ id, name }) => playerEntries(id, name))
  yield courses.flatMap(({ id, name }) => [
    { name, kind: 'course', go: to(coursePlace(id)) },
    { name: `A day’s pins on ${name}`, kind: 'page', go: to(dayPlace(id)) },
    { name: `A group’s cards on ${name}`, kind: 'page', go: to(groupPlace(id)) },
    { name: `Foursomes on ${name}`, kind: 'page', go: to(foursomesPlace(id)) },
    { name: `A score on ${name}`, kind: 'page', go: to(scorePlace(id)) },
    { name: `The club on ${name}, without names`, kind: 'page', go: to(clubPlace(id)) },
  ])
  yield courses.flatMap((course) => players.flatMap((player) => playerOnCourseEntries(player, course)))
  const onDesk = keptDesk({ players, courses }, tabStorage)?.courseId
  for (const { id } of courses.toSorted(
    (one, other) => Number(other.id === onDesk) - Number(one.id === onDesk),
  ))
    yield await loadCourse(id).then(
      (course) => holeEntries(id, course),
      () => [],
    )
}

function to(place: string): () => void {
  return () => {
    location.hash = place
  }
}

function playerEntries(id: string, name: string): readonly Entry[] {
  return [
    { name, kind: 'player, on the desk', go: to(deskPlace({ playerId: id })) },
    { name: `Shots of ${name}`, kind: 'page', go: to(shotsPlace(id)) },
  ]
}

/** What is said of a player after rounds on a course, a page each. */
function playerOnCourseEntries(player: Listed, course: Listed): readonly Entry[] {
  return (
    [
      ['Season', 'season'],
      ['Practice', 'practice'],
    ] as const
  ).map(([words, page]) => ({
    name: `${words} of ${player.name} on ${course.name}`,
    kind: 'page',
    go: to(playerPlace(page, course.id, player.id)),
  }))
}

function holeEntries(courseId: string, { name: courseName, holes }: Course): readonly Entry[] {
  return holes.map(({ ref, name }) => ({
    name: name === null ? ref : `${ref} ${name}`,
    kind: `hole of ${courseName}`,
    go: to(deskPlace({ courseId, holeRef: ref })),
  }))
}

function pageEntries(): readonly Entry[] {
  return [
    { name: 'The hole desk', kind: 'page', go: to(DESK) },
    { name: 'Players', kind: 'page', go: to(PLAYERS) },
    { name: 'Rounds', kind: 'page', go: to(ROUNDS) },
    { name: 'New player', kind: 'page', go: to(NEW_PLAYER) },
    { name: 'Survey a hole', kind: 'page', go: to(SURVEY) },
  ]
}

function commandEntries(): readonly Entry[] {
  const rows: Readonly<Record<CommandName, KeyRow>> = { ...KEY_TABLE.page.rows, ...KEY_TABLE.desk.rows }
  return liveCommands()
    .filter((name) => name !== 'find')
    .map((name) => ({ name: rows[name].words, kind: 'command', go: () => runCommand(name) }))
}
