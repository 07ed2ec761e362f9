import { type ReactElement, useMemo, useState } from 'react'
import type { Fault } from '#faults/fault.ts'
import type { Course } from '#golf/course/course.ts'
import { SIDES } from '#golf/round/competition.ts'
import { competitionCard } from '#golf/round/competition-card.ts'
import type { EnteredSide } from '#golf/round/entered-side.ts'
import { troubleOf } from '../documents/use-library.ts'
import { type FieldPlayer, useField } from '../group/use-field.ts'
import { Section } from '../ledger/section.tsx'
import { Lines } from '../page/lines.tsx'
import { ROUNDS } from '../page/places.ts'
import { leftWords, type RoundsOfPlayer } from '../rounds/closed-of-players.ts'
import type { Named } from '../rounds/kept-round.ts'
import type { OfRounds } from '../rounds/page-of-rounds.tsx'
import { CardOfScore, type Scored } from './card-of-score.tsx'
import { FormFields } from './form-fields.tsx'
import {
  competitionOf,
  FIRST_SCORE_CHOICE,
  isSideWhole,
  type ScoreChoice,
  type SideChoice,
  sideCount,
} from './score-choice.ts'
import { SideFields } from './side-fields.tsx'

/** Scores once the rounds are there: what is played, whose rounds, and the card of it at once. */
export function ScoreDesk({ course, courseId, players, of, left, unread }: OfRounds): ReactElement {
  const [choice, setChoice] = useState<ScoreChoice>(FIRST_SCORE_CHOICE)
  const rounds = useMemo(() => roundNames(of), [of])
  const sides = choice.sides.slice(0, sideCount(choice))
  const ids = useMemo(
    () => [...new Set(choice.sides.flatMap((side) => playersOf(side, choice, of)))],
    [choice, of],
  )
  const field = useField(ids)
  const scored = useMemo(() => scoreOf(course, choice, of, field), [course, choice, of, field])
  if (of.length === 0)
    return (
      <p className="after-lead">
        No closed round on this course is kept yet.{' '}
        <a href={ROUNDS}>Write one down, or see the rounds that are kept</a>.
      </p>
    )
  const setSide = (number: number, side: SideChoice): void =>
    setChoice({
      ...choice,
      sides: [number === 0 ? side : choice.sides[0], number === 1 ? side : choice.sides[1]],
    })
  return (
    <>
      <FormFields choice={choice} tees={course.teeSets.map(({ name }) => name)} onChange={setChoice} />
      {sides.map((side, number) => (
        <SideFields
          // biome-ignore lint/suspicious/noArrayIndexKey: a side is its number.
          key={number}
          name={sides.length === 1 ? 'The side' : number === 0 ? 'The first side' : 'The second side'}
          play={choice.play}
          side={side}
          rounds={rounds}
          players={players}
          onChange={(changed) => setSide(number, changed)}
        />
      ))}
      {choice.by !== 'match' && (
        <button
          type="button"
          aria-pressed={choice.isAgainst}
          onClick={() => setChoice({ ...choice, isAgainst: !choice.isAgainst })}
        >
          Against another side
        </button>
      )}
      <CardOfScore scored={scored} course={course.name} name={`${courseId}-score`} />
      {[...unread, ...leftWords(left)].length > 0 && (
        <Section title="What is left out">
          <Lines of={[...unread, ...leftWords(left)]} />
        </Section>
      )}
    </>
  )
}

/** Every round by its day and player, the newest first. */
function roundNames(of: readonly RoundsOfPlayer[]): readonly Named[] {
  return of
    .flatMap(({ player, rounds }) =>
      rounds.map(({ id, name, round }) => {
        const holes = `${round.holes.length} ${round.holes.length === 1 ? 'hole' : 'holes'}`
        return { id, name: `${name}, ${player.name}, ${holes}`, date: round.date ?? '' }
      }),
    )
    .sort((one, other) => other.date.localeCompare(one.date) || one.name.localeCompare(other.name))
}

/** Who plays on a side, by id: whose the rounds are, or the partners of one ball. */
function playersOf(side: SideChoice, { play }: ScoreChoice, of: readonly RoundsOfPlayer[]): string[] {
  const { least, most, hasOwnBalls } = SIDES[play]
  if (!hasOwnBalls) return side.playerIds.slice(0, most).filter((id) => id !== '')
  return side.roundIds
    .slice(0, least)
    .flatMap((id) => of.find(({ rounds }) => rounds.some((one) => one.id === id))?.player.id ?? [])
}

function scoreOf(
  course: Course,
  choice: ScoreChoice,
  of: readonly RoundsOfPlayer[],
  field: Readonly<Record<string, FieldPlayer>>,
): Scored {
  const { play, tee } = choice
  const sides = choice.sides.slice(0, sideCount(choice))
  if (!sides.every((side) => isSideWhole(side, play)))
    return { waiting: 'Choose a round for every ball; where partners share one, choose them too.' }
  const balls = SIDES[play].hasOwnBalls ? SIDES[play].least : 1
  const chosen = sides.flatMap(({ roundIds }) => roundIds.slice(0, balls))
  if (new Set(chosen).size < chosen.length)
    return { waiting: 'One round stands for two balls: choose each once.' }
  const named = sides.flatMap((side) => playersOf(side, choice, of))
  if (new Set(named).size < named.length)
    return { waiting: 'One player stands twice: each plays on one side, and one ball.' }
  const all = of.flatMap(({ player, rounds }) => rounds.map((one) => ({ ...one, player })))
  const faults: Fault[] = []
  try {
    const entered = sides.map((side): EnteredSide => {
      const files = playersOf(side, choice, of).map((id) => field[id])
      const unread = files.find((file) => file !== undefined && 'trouble' in file)
      if (unread !== undefined && 'trouble' in unread) throw new Error(unread.trouble)
      return {
        players: files.flatMap((file) => (file !== undefined && 'player' in file ? [file.player] : [])),
        rounds: side.roundIds.slice(0, balls).flatMap((id) => {
          const found = all.find((one) => one.id === id)
          if (found === undefined) return []
          const { name, round, belongs, player } = found
          const place = `${name}, ${player.name}`
          faults.push(...found.faults.map((fault) => ({ ...fault, place: `${place}, ${fault.place}` })))
          const own = { round, course: belongs.courseId === null ? belongs.course : null }
          return [{ ...own, file: place, tee: tee === '' ? round.tee : tee }]
        }),
      }
    })
    if (sides.some((side, number) => playersOf(side, choice, of).length !== entered[number]?.players.length))
      return { waiting: 'The players are coming.' }
    const competition = competitionOf(choice)
    const card = competitionCard(course, competition, entered)
    return { competition, card: { ...card, faults: [...faults, ...card.faults] } }
  } catch (error) {
    // Where it says an option of the command line, the page has the field in view.
    const trouble = troubleOf(error)
    return { trouble: trouble.where.startsWith('--') ? { ...trouble, where: '' } : trouble }
  }
}
