import { type ReactElement, useMemo, useState } from 'react'
import { hasPlans, isForAll, PRINTED_KINDS } from '#paper/book/printed-kinds.ts'
import { type CardChoice, keepChoice, keptChoice, kindOf } from '../card/card-choice.ts'
import { CardChoices } from '../card/card-choices.tsx'
import { keepMadeCard } from '../card/keep-made-card.ts'
import { roundHoles } from '../card/round-holes.ts'
import { usePdf } from '../card/use-pdf.ts'
import { useDay } from '../course/use-day.ts'
import { ownStorage } from '../documents/own-storage.ts'
import { troubleOf } from '../documents/use-library.ts'
import { Section } from '../ledger/section.tsx'
import { TroubleNote } from '../page/trouble-note.tsx'
import { PlanProgress } from '../planning/plan-progress.tsx'
import type { Trouble } from '../planning/questions.ts'
import { GroupPlayer } from './group-player.tsx'
import { keepGroup, keptGroup } from './kept-group.ts'
import { type LaidField, layOutField } from './lay-out-field.ts'
import type { OfField } from './page-of-field.tsx'
import { useField } from './use-field.ts'
import { useFieldPlans } from './use-field-plans.ts'

/** What comes to one player each. */
const KINDS = PRINTED_KINDS.filter((kind) => !isForAll(kind))

/** The group, once course and players are there. */
export function GroupDesk(props: OfField): ReactElement {
  const { course, courseId, players, reader } = props
  const { units } = reader
  const { day, dayId, chooseDay, dayTrouble } = useDay()
  const [tee, setTee] = useState('')
  const [choice, setChoice] = useState(firstChoice)
  const [kept, setKept] = useState(() => keptGroup(ownStorage))
  const ids = useMemo(() => players.map(({ id }) => id).filter((id) => kept.includes(id)), [players, kept])
  const loaded = useField(ids)
  const field = useMemo(
    () =>
      ids.flatMap((id) => {
        const one = loaded[id]
        return one !== undefined && 'player' in one ? [{ id, player: one.player }] : []
      }),
    [ids, loaded],
  )
  const { holes, left } = useMemo(() => roundHoles(course, tee, day), [course, tee, day])
  const isPlanned = hasPlans(kindOf(choice))
  const round = useMemo(
    () => (isPlanned ? { course: course.name, holes, day } : null),
    [isPlanned, course, holes, day],
  )
  const { current, work, plans } = useFieldPlans(round, field, units, choice.isQuick)
  const { save, isMaking, fault } = usePdf()
  const [refusals, setRefusals] = useState<LaidField['refusals']>([])
  const [pressTrouble, setPressTrouble] = useState<Trouble | null>(null)
  const isReady = field.length > 0 && field.length === ids.length && current === null
  const setGroup = (next: readonly string[]): void => {
    keepGroup(next, ownStorage)
    setKept(next)
    setRefusals([])
  }
  const choose = (change: Partial<CardChoice>): void => {
    keepChoice({ ...choice, ...change })
    setChoice({ ...choice, ...change })
    setRefusals([])
  }
  const print = async (): Promise<void> => {
    setPressTrouble(null)
    try {
      const all = field.map(({ id, player }) => ({ player, states: plans[id] ?? {} }))
      const laid = await layOutField({ course, holes, day, choice, units }, all)
      setRefusals(laid.refusals)
      if (laid.refusals.length > 0) return
      save(laid.sheets, course.name, `${courseId}-group-${kindOf(choice)}`)
      if (!isPlanned) return
      const keeping = field.map(({ id, player }) =>
        keepMadeCard({ course, courseId, player, playerId: id, day, dayId }),
      )
      await Promise.allSettled(keeping)
      await Promise.all(keeping)
    } catch (error) {
      setPressTrouble(troubleOf(error))
    }
  }
  const shown = dayTrouble ?? pressTrouble ?? fault
  return (
    <main className="ruled-page card-page group-page">
      <CardChoices
        kinds={KINDS}
        choice={choice}
        onChoose={choose}
        course={course}
        tee={tee}
        onTee={setTee}
        days={props.days}
        dayId={dayId}
        onDay={chooseDay}
      />
      {shown !== null && <TroubleNote trouble={shown} />}
      {left.map((words) => (
        <p key={words}>{words}</p>
      ))}
      <Section title="Who is in the group">
        <div className="head-buttons">
          <button type="button" onClick={() => setGroup(players.map(({ id }) => id))}>
            Everybody
          </button>
          <button type="button" onClick={() => setGroup([])}>
            Nobody
          </button>
        </div>
        <ul className="group-players">
          {players.map(({ id, name }) => (
            <GroupPlayer
              key={id}
              id={id}
              name={name}
              courseId={courseId}
              isIn={ids.includes(id)}
              loaded={loaded[id] ?? null}
              plans={plans[id] ?? null}
              isCurrent={current === id}
              hasPlans={isPlanned}
              onIn={(isIn) => setGroup(isIn ? [...ids, id] : ids.filter((each) => each !== id))}
            />
          ))}
        </ul>
      </Section>
      <Section title="Their cards">
        <p role="status">{fieldWords(ids.length, field.length, Object.keys(plans).length, isPlanned)}</p>
        {current !== null && <PlanProgress work={work} />}
        {refusals.length > 0 && (
          <ul className="group-refusals">
            {refusals.map(({ name, words }) => (
              <li key={name}>
                {name}: {words}
              </li>
            ))}
          </ul>
        )}
        <div className="head-buttons">
          <button type="button" disabled={!isReady || isMaking} onClick={() => void print()}>
            Save all as one PDF
          </button>
        </div>
        <p>Each player begins a new sheet of paper, so the file can be printed on both sides.</p>
      </Section>
    </main>
  )
}

function firstChoice(): CardChoice {
  const choice = keptChoice()
  return isForAll(choice.kind) ? { ...choice, kind: 'card' } : choice
}

function fieldWords(asked: number, loaded: number, planned: number, isPlanned: boolean): string {
  if (asked === 0) return 'Choose the players for whom to print.'
  const unread = asked === loaded ? '' : ` ${asked - loaded} cannot be printed yet.`
  if (!isPlanned) return `${asked} ${asked === 1 ? 'player' : 'players'}; these pages need no plan.${unread}`
  return `${planned} of ${asked} ${asked === 1 ? 'player' : 'players'} planned.${unread}`
}
