import type { ReactElement } from 'react'
import type { HoleLine } from '#golf/course/course.ts'
import { type Action, runCommand } from '../commands/live-commands.ts'
import { useCommands } from '../commands/use-commands.ts'
import type { Desk, Reader } from '../desk/desk.ts'
import type { Library } from '../documents/use-library.ts'
import { Choice } from '../ledger/choice.tsx'
import { ReadingChoices } from '../reading/reading-choices.tsx'
import { shortDate } from '../words.ts'
import { coursePlace, NEW_PLAYER, PLAYERS, playerPlace, ROUNDS, shotsPlace } from './places.ts'

/** Steps back and forth. */
interface Steps {
  readonly canUndo: boolean
  readonly canRedo: boolean
  readonly undo: () => void
  readonly redo: () => void
}

/** The head of the desk: who plays what, from where, on which day; how the reader reads; undo and print. */
export function DeskHead(props: {
  readonly library: Library
  readonly desk: Desk
  readonly holes: readonly HoleLine[]
  readonly tees: readonly string[]
  readonly teeName: string
  readonly reader: Reader
  readonly steps: Steps
  readonly onReader: (reader: Reader) => void
  readonly onCourse: (id: string) => void
  readonly onHole: (ref: string) => void
  readonly onTee: (name: string) => void
  readonly onPlayer: (id: string) => void
  readonly onDay: (id: string) => void
  /** Whether the first lesson lies open. */
  readonly hasLesson: boolean
  readonly onLesson: (isOpen: boolean) => void
}): ReactElement {
  const { library, desk, holes, tees, reader, onReader, steps } = props
  const holeAfter = (by: number): Action => {
    const next = holes[holes.findIndex(({ ref }) => ref === desk.holeRef) + by]
    return next === undefined ? null : () => props.onHole(next.ref)
  }
  const print = (): void => window.print()
  const turnLesson = (): void => props.onLesson(!props.hasLesson)
  useCommands({
    undo: steps.canUndo ? steps.undo : null,
    redo: steps.canRedo ? steps.redo : null,
    print,
    nextHole: holeAfter(1),
    holeBefore: holeAfter(-1),
    toAim,
    lesson: turnLesson,
  })
  return (
    <header className="desk-head">
      <h1>
        Marram <small>the hole desk</small>
      </h1>
      <div className="choices">
        <Choice
          label="Course"
          value={desk.courseId}
          options={named(library.courses)}
          onChange={props.onCourse}
        />
        <Choice
          label="Hole"
          value={desk.holeRef}
          options={holes.map(({ ref, name }) => ({
            value: ref,
            name: name === null ? ref : `${ref} ${name}`,
          }))}
          onChange={props.onHole}
        />
        {tees.length > 1 && (
          <Choice
            label="Tee"
            value={props.teeName}
            options={tees.map((name) => ({ value: name, name }))}
            onChange={props.onTee}
          />
        )}
        <Choice
          label="Player"
          value={desk.playerId}
          options={named(library.players)}
          onChange={props.onPlayer}
        />
        <Choice
          label="Day"
          value={desk.dayId ?? ''}
          options={[
            { value: '', name: 'calm, normal' },
            ...named(library.days).map((day) => ({ ...day, name: dayName(day.name) })),
          ]}
          onChange={props.onDay}
        />
      </div>
      <div className="head-buttons">
        <a className="button" href={NEW_PLAYER}>
          New player
        </a>
        <a className="button" href={PLAYERS}>
          Players
        </a>
        <a className="button" href={coursePlace(desk.courseId)}>
          Holes
        </a>
        <a className="button" href={playerPlace('card', desk.courseId, desk.playerId)}>
          Card
        </a>
        <a className="button" href={shotsPlace(desk.playerId)}>
          Shots
        </a>
        <a className="button" href={ROUNDS}>
          Rounds
        </a>
        <button type="button" disabled={!steps.canUndo} onClick={steps.undo}>
          Undo
        </button>
        <button type="button" disabled={!steps.canRedo} onClick={steps.redo}>
          Redo
        </button>
        <ReadingChoices reader={reader} onReader={onReader} hasWind />
        <button type="button" onClick={print}>
          Print
        </button>
        <button type="button" aria-pressed={props.hasLesson} onClick={turnLesson}>
          Lesson
        </button>
        <button type="button" onClick={() => runCommand('find')}>
          Find
        </button>
        <button type="button" onClick={() => runCommand('keys')}>
          Keys
        </button>
      </div>
    </header>
  )
}

function toAim(): void {
  document.querySelector<HTMLElement>('.handle-aim')?.focus()
}

/** A day by its date as people write it, `18 Apr 2026`; another name as it stands. */
function dayName(name: string): string {
  return /^\d{4}-\d{2}-\d{2}$/.test(name) ? `${shortDate(name)} ${name.slice(0, 4)}` : name
}

/** Documents by name, those of one name told apart by their ids. */
function named(listed: readonly { id: string; name: string }[]): { value: string; name: string }[] {
  const isShared = (name: string): boolean => listed.filter((one) => one.name === name).length > 1
  return listed.map(({ id, name }) => ({ value: id, name: isShared(name) ? `${name} (${id})` : name }))
}
