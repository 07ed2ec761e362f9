import { type ReactElement, useCallback, useEffect, useMemo, useState } from 'react'
import type { Course } from '#golf/course/course.ts'
import { isSamePlace, type OwnSentence } from '#golf/player/own-sentence.ts'
import type { Player } from '#golf/player/player.ts'
import { CARD_KINDS } from '#paper/book/card-kinds.ts'
import { wordsUnder } from '#paper/book/own-words.ts'
import { hasPlans, isForAll, readerOf } from '#paper/book/printed-kinds.ts'
import { AS_DRAWN, EngravedFor } from '../chart/picture.tsx'
import { useCommands } from '../commands/use-commands.ts'
import { useDay } from '../course/use-day.ts'
import type { Reader } from '../desk/desk.ts'
import { troubleOf } from '../documents/use-library.ts'
import { TroubleNote } from '../page/trouble-note.tsx'
import { WaitingFor } from '../page/waiting-for.tsx'
import { PlanProgress } from '../planning/plan-progress.tsx'
import type { Trouble } from '../planning/questions.ts'
import { type CardChoice, keepChoice, keptChoice, kindOf } from './card-choice.ts'
import { CardChoices } from './card-choices.tsx'
import { CardTools } from './card-tools.tsx'
import { ChangedList } from './changed-list.tsx'
import { keepMadeCard } from './keep-made-card.ts'
import { layOut } from './lay-out.ts'
import { LegalLight } from './legal-light.tsx'
import { roundHoles } from './round-holes.ts'
import { Sheet } from './sheet.tsx'
import { useLaidOut } from './use-laid-out.ts'
import { useRoundPlans } from './use-round-plans.ts'
import { useSentences } from './use-sentences.ts'
import { useWriting } from './use-writing.ts'

/** The pages of one player, once course and player are there. */
export function CardDesk(props: {
  readonly course: Course
  readonly courseId: string
  readonly playerId: string
  readonly kept: Player
  readonly days: readonly { readonly id: string; readonly name: string }[]
  readonly reader: Reader
}): ReactElement {
  const { course, courseId, playerId, kept, reader } = props
  const { units } = reader
  const { day, dayId, chooseDay, dayTrouble } = useDay()
  const [tee, setTee] = useState('')
  const [choice, setChoice] = useState(keptChoice)
  const kind = kindOf(choice)
  const { holes, left } = useMemo(() => roundHoles(course, tee, day), [course, tee, day])
  const { sentences: found = NONE, ...numbers } = kept
  // biome-ignore lint/correctness/useExhaustiveDependencies: the numbers are the kept player's.
  const player = useMemo(() => numbers, [kept])
  const sentences = useSentences(playerId, found)
  const isPlanned = hasPlans(kind)
  const round = useMemo(
    () => (isPlanned ? { course: course.name, holes, day } : null),
    [isPlanned, course, holes, day],
  )
  const plans = useRoundPlans(round, player, units, choice.isQuick)
  const { states, isRunning } = plans
  const asked = useMemo(
    () => ({
      course,
      holes,
      day,
      player: { ...player, sentences: sentences.written },
      states,
      isRunning,
      choice,
      units,
    }),
    [course, holes, day, player, sentences.written, states, isRunning, choice, units],
  )
  const { laid, trouble } = useLaidOut(asked, layOut)
  // What is typed stands in its field at once; the page follows as soon as it is laid out.
  const facts = useMemo(
    () => laid && { ...laid.facts, player: { ...player, sentences: sentences.written } },
    [laid, player, sentences.written],
  )
  const writing = useWriting()
  const choose = (change: Partial<CardChoice>): void => {
    keepChoice({ ...choice, ...change })
    setChoice({ ...choice, ...change })
  }
  const { undo, redo, canUndo, canRedo, write, drop } = sentences
  const steps = { undo: canUndo ? undo : null, redo: canRedo ? redo : null }
  const isReady = laid?.asked === asked && !(isPlanned && isRunning)
  const [leaveTrouble, setLeaveTrouble] = useState<Trouble | null>(null)
  const leave = useCallback((): void => {
    if (!isPlanned || !isReady) return
    keepMadeCard({ course, courseId, player, playerId, day, dayId }).then(
      () => setLeaveTrouble(null),
      (error: unknown) => setLeaveTrouble(troubleOf(error)),
    )
  }, [isPlanned, isReady, course, courseId, player, playerId, day, dayId])
  // However it is printed: by the button, by the key, or by the browser's own menu.
  useEffect(() => {
    window.addEventListener('beforeprint', leave)
    return () => window.removeEventListener('beforeprint', leave)
  }, [leave])
  useCommands({ ...steps, print: isReady && laid.faults.length === 0 ? () => print() : null }, true)

  const whose = readerOf(kind)
  const keepMine = (sentence: OwnSentence): void => {
    const one = laid?.facts.holes.find(({ hole }) => hole.ref === sentence.hole)
    if (one === undefined || laid === null) return
    write({ ...sentence, units, under: wordsUnder({ ...sentence, units }, one, laid.facts) }, Date.now())
  }
  const isOwn = (ref: string): boolean => sentences.written.some((one) => isOn(one, course.name, ref, whose))
  const shown = dayTrouble ?? trouble ?? sentences.trouble ?? leaveTrouble
  return (
    <>
      <CardChoices
        choice={choice}
        onChoose={choose}
        course={course}
        tee={tee}
        onTee={setTee}
        days={props.days}
        dayId={dayId}
        onDay={chooseDay}
      />
      {laid !== null && <LegalLight laid={laid} />}
      {shown !== null && <TroubleNote trouble={shown} />}
      {left.map((words) => (
        <p key={words}>{words}</p>
      ))}
      {isPlanned && <PlanProgress work={plans} />}
      <CardTools
        laid={laid}
        isReady={isReady}
        name={`${courseId}-${playerId}-${kind}`}
        steps={steps}
        keeping={sentences.state}
        text={isForAll(kind) ? null : CARD_KINDS[kind === 'book' ? 'card' : kind]}
        onLeave={leave}
      />
      {laid === null && trouble === null && <WaitingFor what="the letters of the page" />}
      {laid !== null && facts !== null && (
        <>
          <ChangedList changed={laid.changed} onTake={drop} onKeep={keepMine} />
          <EngravedFor value={AS_DRAWN}>
            {laid.sheets.map(({ drawing, rows }, index) => (
              <Sheet
                key={drawing.title + String(index)}
                drawing={drawing}
                rows={whose === null ? [] : rows}
                paper={choice.paper}
                facts={facts}
                changed={laid.changed}
                whose={whose ?? 'player'}
                units={units}
                isOwn={isOwn}
                writing={writing}
                onWrite={write}
                onDrop={drop}
              />
            ))}
          </EngravedFor>
        </>
      )}
    </>
  )
}

const NONE: readonly OwnSentence[] = []

function isOn(
  sentence: OwnSentence,
  course: string,
  hole: string,
  reader: OwnSentence['reader'] | null,
): boolean {
  return reader !== null && isSamePlace(sentence, { ...sentence, course, hole, reader })
}
