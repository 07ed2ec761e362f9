import { useCallback, useEffect, useRef, useState } from 'react'
import { Failure } from '#faults/failure.ts'
import type { Course } from '#golf/course/course.ts'
import type { Player } from '#golf/player/player.ts'
import type { Trouble } from '../planning/questions.ts'
import { copyAll, listDocuments } from './fetch-document.ts'
import { loadCourse } from './load-course.ts'
import { loadPlayer } from './load-player.ts'
import type { Listed } from './server-documents.ts'

/** What the store can be asked for. */
export interface Library {
  readonly courses: readonly Listed[]
  readonly players: readonly Listed[]
  readonly days: readonly Listed[]
}

/** A document of the store: `null` until it is here, or what went wrong. */
export interface Loaded<Value> {
  readonly value: Value | null
  readonly trouble: Trouble | null
}

/** The lists of the store, once they are there, and how to ask for them again; or what went wrong. */
export function useLibrary(): {
  readonly library: Library | null
  readonly trouble: Trouble | null
  readonly reload: () => void
} {
  const [state, setState] = useState<{ library: Library | null; trouble: Trouble | null }>({
    library: null,
    trouble: null,
  })
  const [times, setTimes] = useState(0)
  // biome-ignore lint/correctness/useExhaustiveDependencies: `times` asks the store again.
  useEffect(() => {
    let isWanted = true
    Promise.all([listDocuments('courses'), listDocuments('players'), listDocuments('days')])
      .then(([courses, players, days]) => {
        if (courses.length === 0 || players.length === 0)
          throw new Failure(
            'MAR-WEB-003',
            `The store holds ${courses.length === 0 ? 'no course' : 'no player'}. Put one in, then load this page again.`,
          )
        if (isWanted) setState({ library: { courses, players, days }, trouble: null })
      })
      .catch((error: unknown) => {
        if (isWanted) setState({ library: null, trouble: troubleOf(error) })
      })
    return () => {
      isWanted = false
    }
  }, [times])
  const { library } = state
  useEffect(() => {
    // By now the desk has asked for what it shows.
    if (library !== null)
      void copyAll('courses', library.courses)
        .then(() => copyAll('players', library.players))
        .then(() => copyAll('days', library.days))
        // A log may be typed, and another card made, without the server.
        .then(async () => copyAll('cards', await listDocuments('cards')))
        .catch(() => {})
  }, [library])
  const reload = useCallback(() => setTimes((before) => before + 1), [])
  return { ...state, reload }
}

/** A course of the store by id. */
export function useCourse(id: string | null): Loaded<Course> {
  return useLoaded(id, loadCourse)
}

/** A player of the store by id. */
export function usePlayer(id: string | null): Loaded<Player> {
  return useLoaded(id, loadPlayer)
}

/**
 * Loads by id, each once; what was loaded for another id is never shown. `load` must be the same function every time.
 * What is here stays usable when the server has gone.
 */
export function useLoaded<Value>(id: string | null, load: (id: string) => Promise<Value>): Loaded<Value> {
  const [state, setState] = useState<{ readonly id: string | null } & Loaded<Value>>({
    id: null,
    value: null,
    trouble: null,
  })
  const loaded = useRef(new Map<string, Value>())
  useEffect(() => {
    if (id === null) return
    const known = loaded.current.get(id)
    if (known !== undefined) {
      setState({ id, value: known, trouble: null })
      return
    }
    let isWanted = true
    load(id)
      .then((value) => {
        loaded.current.set(id, value)
        if (isWanted) setState({ id, value, trouble: null })
      })
      .catch((error: unknown) => isWanted && setState({ id, value: null, trouble: troubleOf(error) }))
    return () => {
      isWanted = false
    }
  }, [id, load])
  return state.id === id ? state : { value: null, trouble: null }
}

/** Any error in words: an expected failure with its code, anything else as it says itself. */
export function troubleOf(error: unknown): Trouble {
  if (error instanceof Failure) return { code: error.code, message: error.message, where: error.where }
  return { code: '', message: error instanceof Error ? error.message : String(error), where: '' }
}
