import { type ReactElement, useState } from 'react'
import type { CardHole, KeptRound } from '#golf/round/kept-round.ts'
import { addStroke, changeStroke, insertStroke, say, type TappedStroke } from '#golf/round/log-steps.ts'
import type { Finish } from '#golf/round/round.ts'
import { holeOfLog, holesOfLog, isClosed } from '#golf/round/round-of-log.ts'
import { LatePart } from '../page/late-part.tsx'
import { useReader } from '../reading/use-reader.ts'
import { ClubKeys } from './club-keys.tsx'
import { GreenMap } from './green-map.tsx'
import { HoleBar } from './hole-bar.tsx'
import { LetterKeys } from './letter-keys.tsx'
import { holePlace } from './places.ts'
import { PuttKeys } from './putt-keys.tsx'
import { RoundEnd } from './round-end.tsx'
import { StrokeList } from './stroke-list.tsx'
import { TapPicture } from './tap-picture.tsx'
import { TwoPhones } from './two-phones.tsx'
import { type RoundAtHand, useRound } from './use-round.ts'

const loadPractice = async () => (await import('./practice-view.tsx')).PracticeView

/** One round of this phone, at one hole. */
export function RoundPage(props: { readonly id: string; readonly holeRef: string }): ReactElement {
  const atHand = useRound(props.id)
  const { open } = atHand
  if (open === undefined) return <p>Looking for the round.</p>
  if (open === null)
    return (
      <main>
        <p role="alert">This round is not on this phone.</p>
        <a className="wide" href="#/">
          The rounds
        </a>
      </main>
    )
  return <PageOfHole {...atHand} round={open.round} holeRef={props.holeRef} />
}

/** The hole of the address; without one the first that is not finished, which stays when it is finished. */
function PageOfHole(
  props: RoundAtHand & { readonly round: KeptRound; readonly holeRef: string },
): ReactElement {
  const { round, holeRef } = props
  const refs = refsOf(round)
  const [first] = useState(() => firstOpen(round, refs))
  const ref = refs.includes(holeRef) ? holeRef : first
  return <HolePage key={ref} {...props} refs={refs} holeRef={ref} />
}

/** What is changed by the next taps; `null` = a new stroke is added. */
export interface Target {
  readonly id: string
  readonly how: 'change' | 'before'
}

function HolePage(
  props: RoundAtHand & {
    readonly round: KeptRound
    readonly refs: readonly string[]
    readonly holeRef: string
  },
): ReactElement {
  const { round, refs, holeRef, open, step, undo, trouble, pictures } = props
  const { facts, log } = round
  const [{ units }] = useReader()
  const [club, setClub] = useState<string | null>(null)
  const [target, setTarget] = useState<Target | null>(null)
  const hole = holeOfLog(log, holeRef)
  const next = refs[refs.indexOf(holeRef) + 1]
  const card = facts.card.find(({ ref }) => ref === holeRef)
  // Until it is closed, a round that counts is kept to what the Rules allow.
  const isHeld = facts.purpose === 'counting' && !isClosed(log)
  const picture = isHeld && facts.isTextOnly ? undefined : pictures.find(({ ref }) => ref === holeRef)

  const chooseClub = (name: string): void => {
    if (target?.how === 'change') step(changeStroke(target.id, { club: name }))
    else setClub(club === name ? null : name)
  }
  const finish = (at: Finish | null): void => {
    const tapped: TappedStroke = { club, finish: at, penalty: null, isAsPlanned: false }
    if (target?.how === 'change') step(changeStroke(target.id, { finish: at }))
    else if (target !== null) step(insertStroke(target.id, tapped))
    else {
      const add = addStroke(holeRef, tapped)
      // Holed without a putt, and one step of undo.
      const holed = { kind: 'putts', hole: holeRef, putts: 0 } as const
      step(at === null ? (known, by) => [...add(known, by), holed] : add)
    }
    setClub(null)
    setTarget(null)
  }
  const changed = target?.how === 'change' ? hole.strokes.find(({ id }) => id === target.id) : undefined
  return (
    <main>
      <h1 className="unseen">Hole {holeRef} of the round</h1>
      <HoleBar round={round} refs={refs} holeRef={holeRef} />
      {trouble !== '' && <p role="alert">{trouble}</p>}
      {card !== undefined && <Card card={card} isOpen={hole.strokes.length === 0} />}
      <TwoPhones hole={hole} step={step} />
      <ClubKeys clubs={facts.clubs} pressed={changed?.stroke.club ?? club} onPress={chooseClub} />
      {picture !== undefined && (
        <TapPicture
          picture={picture}
          strokes={hole.strokes}
          units={units}
          mayMeasure={!isHeld || facts.hasDevices}
          onTap={(at) => finish({ x: at[0], y: at[1] })}
        />
      )}
      <LetterKeys units={units} hasPicture={picture !== undefined} onFinish={finish} />
      {target !== null && (
        <p className="target" role="status">
          {target.how === 'change'
            ? 'The next taps change that stroke.'
            : 'The next taps put a stroke before it.'}{' '}
          <button type="button" onClick={() => setTarget(null)}>
            Done
          </button>
        </p>
      )}
      <StrokeList hole={hole} units={units} card={card} target={target} onTarget={setTarget} step={step} />
      <PuttKeys key={hole.ref} hole={hole} units={units} step={step} />
      {next !== undefined && (
        <a className="wide next" href={holePlace(facts.id, next)}>
          On to hole {next}
        </a>
      )}
      <div className="keys two">
        <button type="button" disabled={!open?.canUndo} onClick={undo}>
          Undo
        </button>
        <button
          type="button"
          aria-pressed={hole.isPickedUp}
          onClick={() => step(say({ kind: 'picked up', hole: holeRef, isSo: !hole.isPickedUp }))}
        >
          Picked up
        </button>
        <button
          type="button"
          aria-pressed={hole.isSkipped}
          onClick={() => step(say({ kind: 'skipped', hole: holeRef, isSo: !hole.isSkipped }))}
        >
          Not played
        </button>
      </div>
      <GreenMap
        green={isHeld && facts.isTextOnly ? null : (picture?.green ?? null)}
        isHeld={isHeld}
        holeRef={holeRef}
      />
      {isHeld ? (
        <p className="held">
          Nothing is worked out until the round is closed (Rules of Golf 2023, Rule 4.3a).
          {facts.hasDevices ? '' : ' No distances are measured (Local Rule G-5).'}
          {facts.isTextOnly ? ' No picture of the hole (Local Rule G-11).' : ''}
        </p>
      ) : (
        <LatePart what="the practice view" load={loadPractice} show={{ round, holeRef, units }} />
      )}
      <RoundEnd round={round} isToSend={open?.isToSend ?? false} step={step} reload={props.reload} />
    </main>
  )
}

/** The hole as it was prepared; nothing here changes after the start. */
function Card(props: { readonly card: CardHole; readonly isOpen: boolean }): ReactElement | null {
  const { par, facts, club, words, numbers } = props.card
  return (
    <details className="card" open={props.isOpen}>
      <summary>The card</summary>
      <p>
        {[par === null ? '' : `par ${par}`, ...facts].filter((fact) => fact !== '').join(', ')}
        {club !== '' && (
          <>
            {' '}
            <b>{club}</b>
          </>
        )}
      </p>
      {words !== '' && <p>{words}</p>}
      {numbers !== '' && <p className="numbers">{numbers}</p>}
    </details>
  )
}

/** The holes of the round: those of the card, and any other that was written down. */
function refsOf({ facts, log }: KeptRound): readonly string[] {
  const card = facts.card.map(({ ref }) => ref)
  const written = holesOfLog(log, card).map(({ ref }) => ref)
  const refs = [...new Set([...card, ...written])]
  return refs.length > 0 ? refs : EIGHTEEN
}

/** The first hole that is neither holed, picked up nor left out. */
function firstOpen({ log }: KeptRound, refs: readonly string[]): string {
  const open = refs.find((ref) => {
    const { putts, isPickedUp, isSkipped } = holeOfLog(log, ref)
    return putts === null && !isPickedUp && !isSkipped
  })
  return open ?? refs[0] ?? '1'
}

const EIGHTEEN = Array.from({ length: 18 }, (_, index) => `${index + 1}`)
